export * from "./cutting/index.ts";
