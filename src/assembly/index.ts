export type * from "./check.ts";
export type * from "./composition.ts";
export type * from "./design.ts";
export type * from "./reckoning.ts";
