export * from "./block.ts";
export * from "./dimension.ts";
export * from "./frame.ts";
export * from "./paper.ts";
export * from "./table.ts";
export * from "./tags.ts";
export * from "./text.ts";
export * from "./type.ts";
export { benchSheet } from "./bench/bench-sheet.ts";
export type { Bench, BenchSheetJob, BlanksOfWork, House, PlanWords, WorkWords } from "./job.ts";
export type { LabelledBlank, LabelledWork, LabelsJob } from "./labels/job.ts";
export { backLabels, boardLabels, wallLabels } from "./labels/labels.ts";
export { cutPlan } from "./cutting/cut-plan.ts";
export { sheetDrawings, type SheetDrawn } from "./cutting/sheet-drawing.ts";
export type { CutPlanJob } from "./cutting/desk.ts";
export {
  type BoardToBuy,
  type Buying,
  buying,
  lengthsToGet,
  sheetsToGet,
  shoppingRows,
} from "./shopping/items.ts";
export type { ShoppingJob } from "./shopping/desk.ts";
export { shoppingList } from "./shopping/shopping-list.ts";
export type { HangingSheetJob } from "./hanging/desk.ts";
export { hangingSheet } from "./hanging/hanging-sheet.ts";
export { chopList } from "./chopping/chop-list.ts";
export { type ChopListJob, type FrameMade, markOf } from "./chopping/desk.ts";
export { benchOrderPaper } from "./bench-order/bench-order.ts";
export type { BenchOrderJob, CutOfDay, MarkedAlike, RunOfDay, SizeOfDay } from "./bench-order/job.ts";
export type { ClosingStack, MountingSheetJob } from "./mounting/desk.ts";
export { mountingSheet } from "./mounting/mounting-sheet.ts";
export type { QuoteSheetJob } from "./quote/job.ts";
export { quoteSheet } from "./quote/quote-sheet.ts";
export { conditionNotes } from "./travel/condition-notes.ts";
export type {
  ConditionNotesJob,
  LentWork,
  LoanListJob,
  NotedWork,
  PackingListJob,
} from "./travel/job.ts";
export type { LightSheetJob, LitWork } from "./light/job.ts";
export { lightSheet } from "./light/light-sheet.ts";
export { loanList } from "./travel/loan-list.ts";
export { packingList } from "./travel/packing-list.ts";
export type { FrameSheetJob } from "./framing/desk.ts";
export { frameSheet } from "./framing/frame-sheet.ts";
