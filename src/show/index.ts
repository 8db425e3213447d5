export {
  cannotBeMade,
  type ComposedDocument,
  composeFrom,
  composeHeld,
  Composer,
  composeJson,
  composeResult,
  compositionJson,
} from "./compose-json.ts";
export {
  type Act,
  ACTS,
  type Applied,
  apply,
  type Change,
  designChange,
  exactly,
  factsChange,
  inverse,
  type KeptShow,
  type KeptWork,
  type Patch,
  practiceChange,
  showChange,
  withIds,
} from "./change.ts";
export { upon } from "./upon.ts";
export { changeDocument } from "./change-schema.ts";
export { sameJson } from "./same-json.ts";
export type { Glazing, Layer, Moulding } from "./frame-habits.ts";
export { type FrameKind, type FramePractice, framePracticeFor } from "./read-frames.ts";
export { type Framed, readWorkFrame, type WorkFrame } from "./read-work-frame.ts";
export { checkJson, type ProblemJson, problemJson, unreadJson } from "./json.ts";
export { DEFAULT_HABITS, type Habits, type Practice } from "./practice.ts";
export { foundText, type Problem, type Wanted } from "./problem.ts";
export { habitsFor, inPractice, readDesign } from "./read-design.ts";
export { practiceFor, readPractice } from "./read-practice.ts";
export * from "./schema.ts";
export {
  DEFAULT_STOCK,
  type Pack,
  readStock,
  type Stock,
  type StockBoard,
  type StockMoulding,
} from "./stock.ts";
export { type Read, validate } from "./validate.ts";
export { readShow, type ShowFault, type ShowResult } from "./read-show.ts";
export { type RowWork, type ShowRead, showReadOf } from "./show-read.ts";
export { CutAlready, type CutBlank, nameOfWork, readCutBlanks } from "./cut-blanks.ts";
export { cutDocument } from "./cut-schema.ts";
export { chopDocument } from "./chop-schema.ts";
export { chopFor, chopResult, choppingPlanJson } from "./chop-json.ts";
export { type PlanAids, cutJson, cutProblemJson, cutResult, cuttingPlanJson, planFor } from "./cut-json.ts";
export { seriesDocument } from "./series-schema.ts";
export { seriesFor, seriesPlanJson, seriesResult } from "./series-json.ts";
export { isRecordColumn, worksToTable, writeCsv, writeXlsx } from "./lists/index.ts";
export { hangDocument, type WallDocument } from "./hang-schema.ts";
export { hangFor, hangProblemJson, hangResult, hungWallJson } from "./hang-json.ts";
export type { HangProblem, HangRead, HangRequest, HungWall } from "./hang-request.ts";
export { hangPlanned, hangWall } from "./hang-wall.ts";
export { type HookRow, hookRowsOf } from "./hook-rows.ts";
export {
  framedOnWall,
  readHangingHabits,
  type ShowHabits,
  readShowWall,
  readStatedFrame,
} from "./read-show-walls.ts";
export type { WallWork } from "./read-wall.ts";
export { wallName, worksOfWalls } from "./wall-works.ts";
export { readMass } from "./mass.ts";
export { heldDocument } from "./held-schema.ts";
export { fitJson, framedJson } from "./framed-json.ts";
export { heldJson } from "./held-json.ts";
export { holdWork, processOf } from "./read-held.ts";
export { dayOf, isoOf } from "./days.ts";
export { readLux, readShowLight, readWorkLight, type ShowLight } from "./read-light.ts";
export type { MoneyHabits } from "./read-money.ts";
export * from "./metadata/index.ts";
