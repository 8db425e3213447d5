import type { Typeface } from "../drawings/index.ts";
import {
  backLabels,
  benchOrderPaper,
  boardLabels,
  cutPlan,
  type Page,
  type PaperSize,
  shoppingList,
  type ShoppingJob,
  wallLabels,
} from "../papers/index.ts";
import { sum, times } from "../lengths/index.ts";
import { PACKET } from "../words/packet.ts";
import type { PaperName } from "../words/paper-names.ts";
import type { BenchDay } from "./bench-day.ts";
import { benchOrderJob } from "./bench-order.ts";
import { benchSheetPages, type Packeted } from "./bench-sheets.ts";
import type { Blanks } from "./blanks.ts";
import type { PlannedBoard } from "./boards.ts";
import { frameSheetPages } from "./frame-sheets.ts";
import { chopListPages, type PlannedFrames } from "./frames.ts";
import { hangingPages, leftOffWalls } from "./hang.ts";
import { labelsJob } from "./labels.ts";
import { lightPages } from "./light.ts";
import type { Quoted } from "./money.ts";
import { mountingPages } from "./mounting.ts";
import type { Prepared } from "./order.ts";
import { quotePages } from "./quote.ts";
import { conditionPages, loanPages, packingPages } from "./travel.ts";

/** A packet as far as it is planned: what its papers are made from. */
export interface Planned {
  readonly prepared: Prepared;
  readonly shared: Packeted;
  readonly boards: readonly PlannedBoard[];
  readonly blanks: Blanks;
  /** For each moulding that frames are made of. */
  readonly frames: readonly PlannedFrames[];
  /** Null: no price is known. */
  readonly quoted: Quoted | null;
  /** The mats of the day in their order, found when a paper first asks. */
  readonly day: () => BenchDay;
}

export const PAPER_TITLES: Readonly<Record<PaperName, string>> = {
  "bench-sheets": PACKET.titles.benchSheets,
  "mounting-sheets": PACKET.titles.mountingSheets,
  "frame-sheets": PACKET.titles.frameSheets,
  "cut-plan": PACKET.titles.cutPlan,
  "chop-list": PACKET.titles.chopList,
  "shopping-list": PACKET.titles.shoppingList,
  hanging: PACKET.titles.hanging,
  light: PACKET.titles.light,
  "bench-order": PACKET.titles.benchOrder,
  labels: PACKET.titles.boardLabels,
  "back-labels": PACKET.titles.backLabels,
  "wall-labels": PACKET.titles.wallLabels,
  "packing-list": PACKET.titles.packingList,
  "loan-list": PACKET.titles.loanList,
  "condition-notes": PACKET.titles.condition,
  quote: PACKET.titles.quote,
};

type Pages = (
  planned: Planned,
  size: PaperSize,
  typeface: Typeface,
  told: (done: number) => void,
) => Iterable<Page>;

const PAGES: Readonly<Record<PaperName, Pages>> = {
  "bench-sheets": ({ prepared, blanks, shared }, size, typeface, told) =>
    benchSheetPages(prepared.works, blanks, shared, size, typeface, prepared.holds, told),
  "mounting-sheets": ({ prepared, shared }, size, typeface) =>
    mountingPages(prepared, shared, size, typeface),
  "frame-sheets": ({ prepared, shared }, size, typeface) => frameSheetPages(prepared, shared, size, typeface),
  "cut-plan": cutPlanPages,
  "chop-list": ({ frames, shared }, size, typeface) =>
    frames.length === 0 ? [] : chopListPages(frames, shared, size, typeface),
  "shopping-list": (planned, size, typeface) =>
    planned.boards.length === 0 ? [] : shoppingList(shoppingJob(planned), size, typeface),
  hanging: ({ prepared, shared }, size, typeface) => hangingPages(prepared.walls, shared, size, typeface),
  light: ({ prepared, shared }, size, typeface) => lightPages(prepared, shared, size, typeface),
  "bench-order": ({ blanks, shared, day }, size, typeface) =>
    benchOrderPaper(benchOrderJob(day(), blanks, shared), size, typeface),
  labels: ({ prepared, blanks, shared }, size, typeface) =>
    boardLabels(labelsJob(prepared, blanks, shared), size, typeface),
  "back-labels": ({ prepared, blanks, shared }, size, typeface) =>
    backLabels(labelsJob(prepared, blanks, shared), size, typeface),
  "wall-labels": ({ prepared, blanks, shared }, size, typeface) =>
    wallLabels(labelsJob(prepared, blanks, shared), size, typeface),
  "packing-list": ({ prepared, shared }, size, typeface) => packingPages(prepared, shared, size, typeface),
  "loan-list": ({ prepared, shared }, size, typeface) => loanPages(prepared, shared, size, typeface),
  "condition-notes": ({ prepared, shared }, size, typeface) =>
    conditionPages(prepared, shared, size, typeface),
  quote: ({ prepared, shared, quoted }, size, typeface) =>
    quoted === null ? [] : quotePages(quoted, prepared, shared, size, typeface),
};

/** The pages of one paper, each made as it is asked for; none where the show has no part for it. `told`: how many works are done. */
export const paperPages = (
  name: PaperName,
  planned: Planned,
  size: PaperSize,
  typeface: Typeface,
  told: (done: number) => void = () => undefined,
): Iterable<Page> => PAGES[name](planned, size, typeface, told);

/** Papers that the show has no part for, each as a sentence. */
export function leftOutOf({ prepared, boards, frames, quoted }: Planned): readonly string[] {
  const { framed, walls, lights } = prepared;
  return [
    ...(boards.length > 0 ? [] : [PACKET.leftOut.boards]),
    ...(frames.length === 0 ? [PACKET.leftOut.frames] : []),
    ...(framed.every((plan) => plan === null) ? [PACKET.leftOut.framed] : []),
    ...leftOffWalls(walls),
    ...(lights.every((plan) => plan === null) ? [PACKET.leftOut.light] : []),
    ...(quoted === null ? [PACKET.leftOut.quote] : []),
  ];
}

function* cutPlanPages(
  { boards, blanks, shared: { house, plan: planWords, practice } }: Planned,
  size: PaperSize,
  typeface: Typeface,
): Generator<Page> {
  for (const [place, { board, material, job, plan, ruler }] of boards.entries()) {
    const numbers = blanks.numbers[place] ?? [];
    yield* cutPlan(
      { board, material, job, plan, numbers, house, planWords, ruler, language: practice.language },
      size,
      typeface,
    );
  }
}

export function shoppingJob({ prepared, boards, frames, shared }: Planned): ShoppingJob {
  const { practice, stock, holds, works } = prepared;
  const { house, plan: planWords } = shared;
  const cut = works.filter(({ stopped }) => !stopped);
  // Each mat is hinged to its mount along one side.
  const hinged = works.flatMap(({ composition, quantity, stopped }, index) =>
    stopped ? [] : [times(holds[index]?.boards.length ?? composition.outer.width, quantity)],
  );
  return {
    boards,
    mouldings: frames.map((one) => ({ ...one, moulding: one.moulding.name })),
    works: cut.length,
    tape: hinged.length === 0 ? null : sum(hinged),
    currency: stock.currency,
    priced: stock.priced,
    house,
    planWords,
    ruler: practice.ruler,
    language: practice.language,
  };
}
