export * from "./guidance.ts";
export * from "./light.ts";
