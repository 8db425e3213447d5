import type { Mark, Run } from "../../src/drawings/index.ts";
import { pdfTypeface } from "../../src/drawings/writers/pdf/index.ts";
import { add, inch, type Length, mm, type Ruler, ticks, ZERO } from "../../src/lengths/index.ts";
import type { CutPlanJob, Page } from "../../src/papers/index.ts";
import type { CuttingJob, CuttingPlan, PieceWanted } from "../../src/plans/index.ts";
import { planCutting } from "../../src/plans/index.ts";
import { plainText } from "../../src/words/runs.ts";

export const typeface = pdfTypeface();

export const INCHES: Ruler = { unit: "in", graduation: inch(1, 16) };
export const MILLIMETRES: Ruler = { unit: "mm", graduation: mm(1) };

const size = (width: Length, height: Length) => ({ width, height });

const blank = (
  name: string,
  width: Length,
  height: Length,
  count = 1,
  window: PieceWanted["window"] = null,
): PieceWanted => ({ name, width, height, count, window, turns: true });

/** Eight mats of a small show: two of them small enough for the windows of the largest. */
export const EIGHT: CuttingJob = {
  sheets: [{ name: "32 × 40", ...size(inch(32), inch(40)), cost: 11.5, copies: null, trim: ZERO }],
  pieces: [
    blank("Ferry Slip", inch(14), inch(18), 1, size(inch(33, 4), inch(43, 4))),
    blank("Ferry Slip, Low", inch(14), inch(18), 1, size(inch(33, 4), inch(43, 4))),
    blank("Low Water, Pewter Light", inch(11), inch(14), 1, size(inch(27, 4), inch(39, 4))),
    blank("Mooring Lines", inch(11), inch(14), 1, size(inch(27, 4), inch(39, 4))),
    blank("Groyne", inch(11), inch(14), 1, size(inch(27, 4), inch(39, 4))),
    blank("Slipway", inch(11), inch(14), 1, size(inch(27, 4), inch(39, 4))),
    blank("Small Eddy", inch(8), inch(10)),
    blank("Ebb", inch(8), inch(10)),
  ],
  dropOuts: true,
  kerf: ZERO,
  least: size(inch(5), inch(7)),
  longestCut: null,
  tight: inch(1, 8),
};

/** Metric sheets with a trim, an offcut, windows in use. */
export const METRIC: CuttingJob = {
  ...EIGHT,
  sheets: [
    { name: "815 × 1120", ...size(mm(815), mm(1120)), cost: 9.8, copies: null, trim: mm(5) },
    { name: "offcut 3", ...size(mm(420), mm(310)), cost: 0, copies: 1, trim: ZERO },
  ],
  pieces: [
    blank("Kesä, Low Tide", mm(400), mm(500), 3, size(mm(280), mm(371))),
    blank("Winter Harbour", mm(300), mm(400), 4, size(mm(200), mm(280))),
    blank("Ærø", mm(240), mm(300), 5),
    blank("Zażółć", mm(180), mm(240), 6),
  ],
  least: size(mm(130), mm(180)),
  tight: mm(3),
};

export const planOf = (job: CuttingJob): CuttingPlan =>
  planCutting(job, { seconds: 1, seed: 1, clock: () => 0 });

export function paperJob(job: CuttingJob, ruler: Ruler, more: Partial<CutPlanJob> = {}): CutPlanJob {
  const plan = more.plan ?? planOf(job);
  let next = 1;
  return {
    board: "4-ply white rag",
    material: "board",
    job,
    plan,
    numbers: plan.sheets.map(({ placements }) => placements.map(() => next++)),
    house: { studio: "Tidewater Print Room", show: "Slack Water" },
    planWords: { number: 3, date: "2026-11-25", makesVoid: { number: 2, date: "2026-11-19" } },
    ruler,
    language: "en-US",
    ...more,
  };
}

/** All marks of a page, groups opened. */
export const marksOf = (page: Page): readonly Mark[] => page.marks.flatMap(opened);
const opened = (mark: Mark): readonly Mark[] => (mark.kind === "group" ? mark.marks.flatMap(opened) : [mark]);

export type TextMark = Extract<Mark, { kind: "text" }>;

export const textsOf = (page: Page): readonly TextMark[] =>
  marksOf(page).filter((mark) => mark.kind === "text");
export const said = (page: Page): string => textsOf(page).map(wordsOf).join("\n");
const wordsOf = ({ runs }: { runs: readonly Run[] }): string => plainText(runs);

/** Numbers in rings of a colour, each with its middle. */
export function ringsOf(
  page: Page,
  colour: "white" | "black",
): readonly { readonly text: string; readonly x: number; readonly y: number }[] {
  const marks = marksOf(page);
  return marks.flatMap((mark, index) => {
    if (mark.kind !== "circle" || mark.fill !== (colour === "black" ? "ink" : "paper")) return [];
    const next = marks[index + 1];
    return next?.kind === "text" ? [{ text: wordsOf(next), x: mark.centre.x, y: mark.centre.y }] : [];
  });
}

/** Where the layout of a sheet lies on its page: the first area with the outline's width. */
export function layoutBox(page: Page): { left: number; top: number; right: number; foot: number } | null {
  const outline = marksOf(page).find((mark) => mark.kind === "area" && mark.line === "outline");
  if (outline?.kind !== "area") return null;
  const [xs, ys] = [outline.points.map(({ x }) => x), outline.points.map(({ y }) => y)];
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), foot: Math.max(...ys) };
}

export const sumOf = (lengths: readonly Length[]): Length => lengths.reduce(add, ticks(0));
