export * from "./chopping/index.ts";
export * from "./cutting/index.ts";
export * from "./hanging/index.ts";
export * from "./bench/index.ts";
export * from "./series/index.ts";
export * from "./money/index.ts";
export * from "./packing/index.ts";
