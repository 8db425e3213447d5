export type * from "./check.ts";
export { compose, isStopped } from "./compose.ts";
export type * from "./composition.ts";
export type * from "./design.ts";
export type * from "./reckoning.ts";
export { SIZE_LISTS } from "./sizes.ts";
export { holdAsked } from "./window.ts";
export * from "./hang/index.ts";
export * from "./light/index.ts";
