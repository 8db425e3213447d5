export * from "./chopping/index.ts";
export * from "./cutting/index.ts";
