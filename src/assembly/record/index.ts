export * from "./wall-label.ts";
