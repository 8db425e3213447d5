export type * from "./types.ts";
export { area, clippedArea } from "./area.ts";
export { mirroredBox, mirroredOutline, mirroredPoint, quarterTurned, SIDES, withinBox } from "./boxes.ts";
export * from "./constructions.ts";
export { outlineHolds } from "./contains.ts";
export { twiceSignedArea, windingOf } from "./exact.ts";
export {
  type LargestRectangle,
  largestUprightRectangle,
  largestUprightRectangleWithin,
} from "./largest/index.ts";
export { extentOf, placeOf, smallestUprightRectangle } from "./polygon.ts";
export { CORNERS, cornerInSheetAxes, reach } from "./sheet.ts";
export { outlineFault } from "./simple.ts";
export { simplified } from "./simplify.ts";
export { turned } from "./turning.ts";
