export * from "./facts.ts";
export { LEAST_ROOM } from "./checks.ts";
export { type FramedSize, framedSize, frameStops, planFrame } from "./frame.ts";
export type * from "./frame-plan.ts";
export * from "./glazings.ts";
export { type FrameSizes, frameSizes, liftOf, lipHides, seenBorders } from "./opening.ts";
export { type Stack, type StackLayer, stackOf, type Strips, stripsRound } from "./stack.ts";
export { type FrameMass, massPerMetre, type PartMass, profileHeight } from "./weight.ts";
export * from "./woods.ts";
