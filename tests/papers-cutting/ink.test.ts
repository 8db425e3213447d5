import { expect, test } from "vitest";
import { inch, type Length, mm, type Ruler } from "../../src/lengths/index.ts";
import { cutPlan, type Page, type PaperSize } from "../../src/papers/index.ts";
import type { CuttingJob } from "../../src/plans/index.ts";
import { flatMarks, outside, touching, wordInks } from "../papers/ink.ts";
import { EIGHT, INCHES, METRIC, MILLIMETRES, paperJob, typeface } from "./papers.ts";

const LONG = "Fog on the Bar, Seen from the Long Staithe before Rain, with the Ferry Slip";
const many = (job: CuttingJob): CuttingJob => ({
  ...job,
  pieces: job.pieces.map((piece, index) => ({ ...piece, name: LONG, count: piece.count + (index % 3) })),
});
/** Sizes between the ruler's marks, whose figures are the widest. */
const off = (job: CuttingJob, by: Length): CuttingJob => ({
  ...job,
  pieces: job.pieces.map((piece) => ({ ...piece, width: (piece.width - by) as Length })),
});

const jobs: readonly (readonly [string, CuttingJob, Ruler])[] = [
  ["inches", EIGHT, INCHES],
  ["millimetres", METRIC, MILLIMETRES],
  ["many in inches", many(EIGHT), INCHES],
  ["many in millimetres", many(METRIC), MILLIMETRES],
  ["between the marks", off(EIGHT, mm(0.3)), INCHES],
  ["wide fractions", off(many(EIGHT), inch(1, 16)), INCHES],
];

test.each(jobs)("[PP1] [PP3] a cut plan's words keep apart and inside the page, %s", (_, job, ruler) => {
  for (const paper of ["a4", "letter"] as const)
    for (const page of cutPlan(paperJob(job, ruler), paper, typeface)) expectApart(page, paper);
});

function expectApart(page: Page, paper: PaperSize): void {
  const inks = wordInks(flatMarks(page.marks), typeface);
  expect(touching(inks)).toEqual([]);
  expect(outside(page, paper, typeface)).toEqual([]);
}
