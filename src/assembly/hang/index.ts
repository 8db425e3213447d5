export * from "./hardware.ts";
export { hangWork } from "./hang-work.ts";
export * from "./hanging.ts";
export * from "./statics.ts";
export * from "./tape.ts";
