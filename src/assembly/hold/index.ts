export type * from "./beds.ts";
export * from "./facts.ts";
export { type HeldHinges, hingeCount, type HingeKind, roomAboveHinge } from "./hinges.ts";
export { holdStops, planHold } from "./hold.ts";
export type * from "./hold-plan.ts";
export * from "./materials.ts";
export { EACH_PERCENT, type Movement, movementOf, ORDINARY } from "./movement.ts";
export { type HeldPocket, type HeldPockets, type HeldStrip, type HeldStrips } from "./pockets.ts";
export { holdingOfWay, isHinge } from "./ways.ts";
