export * from "./conventions.ts";
export * from "./figures.ts";
export type * from "./marks.ts";
