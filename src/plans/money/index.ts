export * from "./job.ts";
export * from "./price.ts";
export * from "./quote.ts";
export * from "./share.ts";
