import * as fc from "fast-check";
import { expect, test } from "vitest";
import { setRun, type Run } from "../../src/drawings/index.ts";
import { figureText, figureOf, inch, type Length, mm, ticks } from "../../src/lengths/index.ts";
import { cutPlan, type Page } from "../../src/papers/index.ts";
import { fenceSettings } from "../../src/papers/cutting/fence.ts";
import type { CuttingJob } from "../../src/plans/index.ts";
import { smallJob } from "../plans/jobs.ts";
import {
  EIGHT,
  INCHES,
  layoutBox,
  METRIC,
  MILLIMETRES,
  marksOf,
  paperJob,
  planOf,
  ringsOf,
  said,
  type TextMark,
  textsOf,
  typeface,
} from "./papers.ts";

const papers = ["letter", "a4"] as const;
const examples = [
  ["inches", EIGHT, INCHES],
  ["millimetres", METRIC, MILLIMETRES],
] as const;

const pagesOfSheet = (pages: readonly Page[], sheet: number, of: number): readonly Page[] =>
  pages.filter((page) => page.bookmark.startsWith(`4-ply white rag: sheet ${sheet} of ${of}`));

test.each(examples)("[CP1] every blank is ringed white once in its place, in %s", (_, job, ruler) => {
  const asked = paperJob(job, ruler);
  const { plan, numbers } = asked;
  const bought = plan.sheets.flatMap(({ from }, index) => (from.kind === "stock" ? [index] : []));
  for (const paper of papers) {
    const pages = cutPlan(asked, paper, typeface);
    bought.forEach((sheet, index) => {
      const [first] = pagesOfSheet(pages, index + 1, bought.length);
      if (first === undefined) throw new Error("no page");
      const box = layoutBox(first);
      if (box === null) throw new Error("no layout");
      const inside = ringsOf(first, "white").filter(
        ({ x, y }) => x > box.left && x < box.right && y > box.top && y < box.foot,
      );
      const outs = plan.sheets.flatMap(({ from }, at) =>
        from.kind === "drop-out" && from.sheet === sheet ? (numbers[at] ?? []) : [],
      );
      const expected = [...(numbers[sheet] ?? []), ...outs].map(String);
      expect(inside.map(({ text }) => text).toSorted()).toEqual(expected.toSorted());
    });
  }
});

test.each(examples)(
  "[CP2] every cut is ringed black on the layout and beside its tick, in %s",
  (_, job, ruler) => {
    const asked = paperJob(job, ruler);
    const bought = asked.plan.sheets.filter(({ from }) => from.kind === "stock");
    for (const paper of papers) {
      const pages = cutPlan(asked, paper, typeface);
      bought.forEach((sheet, index) => {
        const own = pagesOfSheet(pages, index + 1, bought.length);
        const rings = own.flatMap((page) => ringsOf(page, "black").map(({ text }) => text));
        // One on the drawing, one in the table, and the legend's 3.
        const wanted = sheet.cuts.flatMap((_cut, number) => [String(number + 1), String(number + 1)]);
        expect(rings.toSorted()).toEqual([...wanted, "3"].toSorted());
        const settings = fenceSettings(sheet).map(({ set }) => figureText(figureOf(set, ruler), false));
        const figures = own
          .flatMap((page) => textsOf(page))
          .filter(({ weight, size }) => weight === "bold" && size > mm(9))
          .map((mark) => figureOfMark(mark));
        expect(figures).toEqual(settings);
      });
    }
  },
);

const figureOfMark = ({ runs }: TextMark): string =>
  runs
    .filter((run): run is Extract<Run, { kind: "fraction" }> => run.kind === "fraction")
    .map(({ whole, numerator, denominator }) =>
      [whole, numerator === "" ? "" : `${numerator}/${denominator}`].filter((one) => one !== "").join(" "),
    )
    .join("");

/** At least this much, on the ruler. */
const atLeast = (length: Length): string => figureText(figureOf(length, INCHES, "up"), false);

test("[CP3] the page says what to measure first, the least that serves, and what to do when it is less", () => {
  const [page] = cutPlan(paperJob(EIGHT, INCHES), "letter", typeface);
  if (page === undefined) throw new Error("no page");
  const needs = planOf(EIGHT).sheets[0]?.needs;
  if (needs === undefined) throw new Error("no sheet");
  expect(said(page)).toContain("FIRST");
  expect(said(page)).toContain(`${atLeast(needs.height)} × ${atLeast(needs.width)} or more: go on`);
  expect(said(page)).toContain("less: stop, ask for a new plan");
});

test("[CP4] what goes in at a setting is what comes off, less what the blade takes", () => {
  fc.assert(
    fc.property(smallJob, (job) => {
      for (const sheet of planOf({ ...job, kerf: ticks(0) }).sheets) {
        for (const { goesIn, comesOff, cuts } of fenceSettings(sheet)) {
          expect(cuts.length).toBeGreaterThan(0);
          expect(goesIn.reduce((sum, { times }) => sum + times, 0)).toBe(cuts.length);
          expect(
            comesOff.pieces.length + comesOff.boards.length + comesOff.keep.length + comesOff.waste,
          ).toBeGreaterThan(0);
        }
        const freed = fenceSettings(sheet).flatMap(({ comesOff }) => comesOff.pieces);
        // A piece that needs no cut is the board itself.
        const wanted = sheet.cuts.length === 0 ? [] : sheet.placements.map((_, index) => index);
        expect(freed.toSorted((a, b) => a - b)).toEqual(wanted);
      }
    }),
    { numRuns: 150 },
  );
});

/** The ink of a text, from its runs. */
function inkOf(mark: TextMark): { left: number; right: number; top: number; foot: number } {
  const width = mark.runs.reduce(
    (sum, run) => sum + setRun(run, mark.size, mark.weight, typeface.measure).width,
    0,
  );
  const left =
    mark.anchor === "start" ? mark.at.x : mark.anchor === "end" ? mark.at.x - width : mark.at.x - width / 2;
  return { left, right: left + width, top: mark.at.y - mark.size * 0.8, foot: mark.at.y + mark.size * 0.25 };
}

test("[CP5] nothing stands outside the content box, and the same job gives the same pages", () => {
  for (const [, job, ruler] of examples) {
    const asked = paperJob(job, ruler);
    for (const paper of papers) {
      const pages = cutPlan(asked, paper, typeface);
      expect(cutPlan(asked, paper, typeface)).toEqual(pages);
      for (const page of pages) expectInside(page);
    }
  }
});

function expectInside(page: Page): void {
  const [left, right] = [mm(18) - mm(0.4), page.width - mm(10) + mm(0.4)];
  const foot = page.height - mm(17) + mm(0.4);
  for (const mark of textsOf(page)) {
    // The corner rule's own captions stand in the margins.
    if (mark.at.y > page.height - mm(17) || mark.at.x < mm(18) || mark.degrees !== undefined) continue;
    if (/^150|^6\s/.test(said({ ...page, marks: [mark] }))) continue;
    const ink = inkOf(mark);
    expect(ink.left).toBeGreaterThanOrEqual(left);
    expect(ink.right).toBeLessThanOrEqual(right);
    expect(ink.foot).toBeLessThanOrEqual(foot);
  }
  for (const mark of marksOf(page)) {
    if (mark.kind !== "circle") continue;
    expect(mark.centre.x + mark.radius).toBeLessThanOrEqual(right);
    expect(mark.centre.y + mark.radius).toBeLessThanOrEqual(foot);
  }
}

const up = (length: number): Length => ticks(length * inch(1));
const upSize = <S extends { width: number; height: number }>(one: S) => ({
  ...one,
  width: up(one.width),
  height: up(one.height),
});

/** A job counted in ticks as the same in inches. */
const scaled = (job: CuttingJob): CuttingJob => ({
  ...job,
  sheets: job.sheets.map((one) => ({ ...upSize(one), trim: up(one.trim) })),
  pieces: job.pieces.map((one) => ({
    ...upSize(one),
    window: one.window === null ? null : upSize(one.window),
  })),
  kerf: up(job.kerf),
  least: job.least === null ? null : upSize(job.least),
  longestCut: job.longestCut === null ? null : up(job.longestCut),
  tight: up(job.tight),
});

test("[CP5] any small job can be printed on both papers", () => {
  fc.assert(
    fc.property(smallJob, fc.constantFrom(...papers), (job, paper) => {
      for (const page of cutPlan(paperJob(scaled(job), INCHES), paper, typeface)) expectInside(page);
    }),
    { numRuns: 60 },
  );
});

test("[CP6] what could not be planned is named first", () => {
  const job = {
    ...EIGHT,
    pieces: [
      ...EIGHT.pieces,
      {
        ...EIGHT.pieces[0],
        name: "Seawall",
        width: inch(36),
        height: inch(44),
        count: 1,
        window: null,
        turns: true,
      },
    ],
  };
  const [first] = cutPlan(paperJob(job, INCHES), "letter", typeface);
  if (first === undefined) throw new Error("no page");
  expect(first.bookmark).toBe("4-ply white rag");
  expect(said(first).replaceAll("\n", " ")).toContain("Seawall (36 in × 44 in): no sheet is large enough");
});

test("[CP7] a blank too small to be written in is listed with its size", () => {
  const tiny = {
    ...EIGHT,
    pieces: [{ name: "Label", width: inch(2), height: inch(1), count: 3, window: null, turns: true }],
  };
  const [first] = cutPlan(paperJob(tiny, INCHES), "letter", typeface);
  if (first === undefined) throw new Error("no page");
  expect(said(first).replaceAll("\n", " ")).toMatch(
    /Sizes that the drawing has no room for: .*1 × 2 in, Label/,
  );
});

test("[CP8] every window with blanks in it has its own layout, fence and cuts, and its host's number", () => {
  const asked = paperJob(METRIC, MILLIMETRES);
  const { plan, numbers } = asked;
  const outs = plan.sheets.flatMap(({ from }, index) => (from.kind === "drop-out" ? [{ from, index }] : []));
  expect(outs.length).toBeGreaterThan(0);
  const pages = cutPlan(asked, "a4", typeface).filter(({ bookmark }) =>
    bookmark.includes("windows that fall out"),
  );
  const all = pages.map((page) => said(page)).join("\n");
  const rings = pages.flatMap((page) => ringsOf(page, "white").map(({ text }) => text));
  for (const { from, index } of outs) {
    expect(all).toContain(`The OUT of ${numbers[from.sheet]?.[from.placement]}`);
    for (const number of numbers[index] ?? []) expect(rings).toContain(String(number));
  }
  const cuts = outs.reduce((sum, { index }) => sum + (plan.sheets[index]?.cuts.length ?? 0), 0);
  expect(pages.flatMap((page) => ringsOf(page, "black"))).toHaveLength(2 * cuts);
});

test("[CP10] a sheet that only just fits says so before the first cut, one with room does not", () => {
  const one = (width: Length, height: Length): CuttingJob => ({
    ...EIGHT,
    pieces: [{ name: "Seawall", width, height, count: 2, window: null, turns: true }],
  });
  const words = (job: CuttingJob): string =>
    cutPlan(paperJob(job, INCHES), "letter", typeface)
      .map((page) => said(page))
      .join(" ")
      .replaceAll("\n", " ");
  expect(words(one(inch(20), inch(28)))).toContain("Just fits: nothing to spare of the 40. Trim nothing off");
  expect(words(one(inch(319, 16), inch(28)))).toContain("Just fits: 1/8 in to spare of the 40");
  expect(words(one(inch(19), inch(28)))).not.toContain("Just fits");
});

test("[CP11] what is left is hatched once to keep and crossed as waste, and is never a blank", () => {
  const asked = paperJob(METRIC, MILLIMETRES);
  const bought = asked.plan.sheets.filter(({ from }) => from.kind === "stock");
  const pages = cutPlan(asked, "a4", typeface);
  bought.forEach(({ left }, index) => {
    const [page] = pagesOfSheet(pages, index + 1, bought.length);
    if (page === undefined) throw new Error("no page");
    const drawing = page.marks.flatMap((mark) =>
      mark.kind === "group" && mark.name.startsWith("sheet") ? [{ ...page, marks: [mark] }] : [],
    );
    const fills = drawing.flatMap(marksOf).flatMap((mark) => (mark.kind === "area" ? [mark.fill] : []));
    expect(fills.filter((fill) => fill === "hatch-out")).toHaveLength(left.filter(({ keep }) => keep).length);
    expect(fills.filter((fill) => fill === "hatch-waste")).toHaveLength(
      left.filter(({ keep }) => !keep).length,
    );
  });
});
