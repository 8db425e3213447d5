export { type BackOptions, type BackWords, backView } from "./back.ts";
export { figureRuns, type Reading } from "./dimension.ts";
export { extentOf, extentOfAll } from "./extent.ts";
export { type FitOptions, fitScale, type Room } from "./fit.ts";
export {
  type FramedSection,
  framedSection,
  type SectionScale,
} from "./framed-section.ts";
export type { FramedSectionJob } from "./framed-places.ts";
export { type FrontOptions, frontView } from "./front.ts";
export { type Grip, grips, onView } from "./grips.ts";
export type { HandWords } from "./hands.ts";
export { type Layer, layersOf, type Mount } from "./layers.ts";
export type { View } from "./layout.ts";
export { packageView } from "./package.ts";
export { PIXEL, type ViewOptions } from "./pen.ts";
export { type HangingFront } from "./wall/frames.ts";
export { hangingBoxes, type WallExtent } from "./wall/placing.ts";
export { wallView, type WallSeen, type WallView, type WallViewOptions } from "./wall/elevation.ts";
export { type SectionOptions, type SectionView, sectionView } from "./section.ts";
