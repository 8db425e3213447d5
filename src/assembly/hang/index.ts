export { hangWork, type HangingHabits } from "./hang-work.ts";
export type * from "./hanging.ts";
export * from "./statics.ts";
