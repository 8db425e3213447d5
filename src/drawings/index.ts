export * from "./conventions.ts";
export * from "./figures.ts";
export * from "./lettering.ts";
export type * from "./marks.ts";
export * from "./views/index.ts";
