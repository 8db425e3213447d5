import { expect, test } from "vitest";
import { inch, mm, type Ruler } from "../../src/lengths/index.ts";
import { type BenchOrderJob, benchOrderPaper, type Page } from "../../src/papers/index.ts";
import { figureOf, figureText } from "../../src/lengths/index.ts";
import { figureWords } from "../../src/words/index.ts";
import { ringsOf, said, typeface } from "../papers-cutting/papers.ts";
import { dayOf } from "./day.ts";
import { expectClean } from "../papers/clean.ts";

const SHOW = await dayOf("examples/slack-water/show.json", 300);
const CLASS = await dayOf("examples/lists/evening-class.csv");
const METRIC = await dayOf("examples/lists/werkverzeichnis.csv");
const papers = ["letter", "a4"] as const;

const LONG = "Fog on the Bar, Seen from the Long Staithe before Rain, with the Ferry Slip at Ebb";
/** Every title the longest, every mat in forty copies, figures of every width. */
const crowded = (job: BenchOrderJob, ruler: Ruler): BenchOrderJob => ({
  ...job,
  ruler,
  runs: job.runs.map((run, at) => ({
    ...run,
    set: ruler.unit === "in" ? inch(17 + 2 * at, 16) : mm(59.5 + at),
    ruler,
    cuts: run.cuts.map((cut) => ({
      ...cut,
      title: LONG,
      blanks: Array.from({ length: 40 }, (_, copy) => 1000 + copy),
      sides: ["right"],
      hands: ["left"],
    })),
  })),
});

const days: readonly (readonly [string, BenchOrderJob])[] = [
  ["the example show", SHOW.job],
  ["an evening class", CLASS.job],
  ["a metric list", METRIC.job],
  ["long titles and many copies, inches", crowded(SHOW.job, { unit: "in", graduation: inch(1, 16) })],
  ["long titles and many copies, millimetres", crowded(METRIC.job, { unit: "mm", graduation: mm(0.5) })],
];

test.each(days)("[BO12] words keep apart and inside the page, %s", (_, job) => {
  for (const paper of papers)
    for (const page of benchOrderPaper(job, paper, typeface)) {
      expectClean(page, paper, typeface);
    }
});

test("[BO12] a run that goes on says which it is", () => {
  const job = crowded(SHOW.job, { unit: "in", graduation: inch(1, 16) });
  expect(all(benchOrderPaper(job, "letter", typeface))).toMatch(/\d(st|nd|rd|th) stop, goes on/);
});

test.each([SHOW, CLASS, METRIC])(
  "[BO9] every blank is ringed as often as the hand takes it up",
  ({ day, blanks, job }) => {
    const board = blanks.all.filter((blank) => blank.board.material === "board").map(({ number }) => number);
    const cuts = day.mats.flatMap(({ blank, stops }) => stops.map(() => blank.number));
    const mats = day.mats.map(({ blank }) => blank.number);
    const expected = [...board, ...mats, ...cuts].map(String).toSorted();
    for (const paper of papers) {
      const rings = benchOrderPaper(job, paper, typeface).flatMap((page) => ringsOf(page, "white"));
      expect(rings.map(({ text }) => text).toSorted()).toEqual(expected);
    }
  },
);

test.each([SHOW, CLASS, METRIC])(
  "[BO10] each run has its figure in words, exact on its own ruler",
  ({ job }) => {
    const words = all(benchOrderPaper(job, "letter", typeface)).split("\n");
    for (const { set, ruler } of job.runs) {
      const figure = figureOf(set, ruler);
      expect(figure.approximate, figureText(figure)).toBe(false);
      expect(words).toContain(figureWords(figure));
      expect(words.some((line) => line.replaceAll("\u00a0", " ") === figureText(figure))).toBe(true);
    }
  },
);

test("[BO11] a window out of which a blank comes is told where it falls, and an upper OUT is taped back", () => {
  const hosted = SHOW.blanks.all.filter(({ host, use }) => host !== null && use.mat !== null);
  expect(hosted.length).toBeGreaterThan(0);
  const told = SHOW.job.runs.flatMap(({ cuts }) => cuts.flatMap(({ outs }) => outs));
  for (const { number, host } of hosted) {
    expect(told.filter(({ blank }) => blank === number)).toMatchObject([{ host }]);
  }
  const words = all(benchOrderPaper(SHOW.job, "letter", typeface));
  for (const { blank, host } of told) expect(words).toContain(`The OUT of ${host} is blank ${blank}.`);
  expect(words).toContain("OUT: tape back in");
});

test("[BO3] in the packet a blank out of a window is cut after all mats of its host's work", () => {
  const place = new Map(SHOW.day.plan.runs.flatMap(({ mats }) => mats).map((mat, at) => [mat, at]));
  const placeOf = new Map(SHOW.day.mats.map(({ blank }, mat) => [blank.number, mat]));
  for (const [mat, { blank }] of SHOW.day.mats.entries()) {
    const host = blank.host === null ? undefined : placeOf.get(blank.host);
    if (host === undefined) continue;
    for (const other of SHOW.day.mats[host]?.copy ?? []) expect(place.get(other)).toBeLessThan(firstOf(mat));
  }
});

/** Where in the day a mat is first taken up. */
const firstOf = (mat: number): number => SHOW.day.plan.runs.flatMap(({ mats }) => mats).indexOf(mat);

test("[BO1] the list has a row for every mat at every figure, in the order of the runs", () => {
  const { table, day } = SHOW;
  const run = table.header.indexOf("run");
  const blanks = table.header.indexOf("blanks");
  const cuts = day.plan.runs.flatMap(({ mats }, at) =>
    mats.map((mat) => `${at + 1} ${day.mats[mat]?.blank.number}`),
  );
  const rows = table.rows.flatMap((row) =>
    (row[blanks] ?? "").split(" ").map((blank) => `${row[run]} ${blank}`),
  );
  expect(rows.toSorted()).toEqual(cuts.toSorted());
});

test("[BO6] the paper claims no more than the bound proves, and what it saves against work by work", () => {
  const claim = (job: BenchOrderJob): string =>
    all(benchOrderPaper(job, "letter", typeface)).replaceAll("\n", " ");
  expect(SHOW.day.plan.proven).toBe(true);
  expect(SHOW.day.oneByOne).toBeGreaterThan(SHOW.job.runs.length);
  expect(claim(SHOW.job)).toContain("no order sets it fewer times");
  expect(claim({ ...SHOW.job, bound: 20 })).toContain("no order sets it fewer than twenty times");
  expect(benchOrderPaper({ ...SHOW.job, runs: [] }, "a4", typeface)).toEqual([]);
});

const all = (pages: readonly Page[]): string => pages.map(said).join("\n");
