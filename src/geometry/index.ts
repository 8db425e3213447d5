export type * from "./types.ts";
export * from "./constructions.ts";
