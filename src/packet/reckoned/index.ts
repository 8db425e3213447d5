/** What of a packet is reckoned, without its papers: for a page that plans and draws by itself. */
export { type BoardJob, boardJobs, type PieceUse } from "../boards.ts";
export { type ReadWall, type ReadWalls, readWalls } from "../hang.ts";
export { practiceOfShow, worksInFrames, type WorksInFrames } from "../in-frames.ts";
export type { ComposedWork } from "../works.ts";
export { afterCutting, type Boarded } from "../cut-sheet.ts";
