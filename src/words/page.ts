export * from "./page/blanks.ts";
export * from "./page/options.ts";
export * from "./page/says.ts";
export * from "./page/sentences.ts";
export * from "./page/sums.ts";
