import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Run } from "../../src/drawings/index.ts";
import { inch, type Length, mm } from "../../src/lengths/index.ts";
import { type Page, paperOf } from "../../src/papers/index.ts";
import { anyCase } from "./family.ts";
import { INCH_DESIGN, INCH_PRINT, jobOf, METRIC_DESIGN } from "./fixtures.ts";
import { flatMarks, textsOf } from "./ink.ts";
import { sheetOf, textMarks, textOf, valueOf } from "./reading.ts";

const RUNS = { numRuns: 60 };

describe("the page", () => {
  test("[PP4] every page stands alone: name, house, plan, date, page, work, unit, hand, what it makes void, the corner rule", () => {
    for (const page of sheetOf(jobOf(METRIC_DESIGN), "a4")) {
      const texts = textsOf(page, true).join("\n");
      for (const needed of [
        "BENCH SHEET",
        "Tidewater Print Room · Slack Water",
        "plan 3 · 25 Nov 2026",
        "Low Water, Pewter Light",
        "whole mm",
        "right-handed",
        "plan 2 of 19 Nov: tear it up",
        "MEASURE ME",
      ]) {
        expect(texts).toContain(needed);
      }
      expect(texts).toMatch(/page \d of 2: (cut|steps)/);
    }
  });

  test("[PP7] what is read is at least 8 points, a step's fractions' digits 11, a key figure's 14", () => {
    const point = inch(1) / 72;
    fc.assert(
      fc.property(anyCase, ({ job, paper }) => {
        for (const page of sheetOf(job, paper)) {
          for (const mark of textMarks(page)) {
            for (const run of mark.runs) {
              const size = (run.size ?? mark.size) / point;
              expect(size).toBeGreaterThan(7.99);
              if (run.kind === "fraction" && run.numerator !== "") expect(size * 0.68).toBeGreaterThan(7.4);
              if (mark.weight === "bold" && size > 20 && run.kind === "fraction" && run.numerator !== "") {
                expect(size * 0.68).toBeGreaterThan(14);
              }
            }
          }
        }
      }),
      RUNS,
    );
  });

  test("[PP15] one mat with one print is one page on either paper; several mats have their cuts first, then the steps", () => {
    expect(sheetOf(jobOf(INCH_DESIGN), "letter")).toHaveLength(1);
    expect(sheetOf(jobOf(INCH_DESIGN), "a4")).toHaveLength(1);
    const pages = sheetOf(jobOf(METRIC_DESIGN), "letter");
    expect(pages).toHaveLength(2);
    expect(textOf(pages.slice(0, 1))).toContain("1st stop");
    expect(textOf(pages.slice(1))).not.toContain("1st stop");
    expect(textOf(pages.slice(1))).toContain("Free hand behind the blade, never in its path.");
    expect(textOf(pages.slice(0, 1))).toContain("Free hand behind the blade.");
    expect(textOf(pages.slice(0, 1))).toContain("past the line, both ends: 4.5 mm");
  });

  test("[PP14] signs that the type lacks are told", () => {
    const job = jobOf(INCH_DESIGN);
    const text = textOf(sheetOf({ ...job, work: { ...job.work, title: "満潮 Zażółć", maker: "עדה" } }));
    expect(text).toContain("□□ Zażółć");
    expect(text).toContain("5 signs are not in this paper’s type: □. Write them in by hand.");
    expect(textOf(sheetOf(job))).not.toContain("□");
  });
});

describe("figures", () => {
  test("[PP10] every printed sum is true of the figures printed, and none is printed of a figure between marks", () => {
    let sums = 0;
    fc.assert(
      fc.property(anyCase, ({ job, paper }) => {
        for (const page of sheetOf(job, paper)) {
          for (const mark of textMarks(page)) {
            if (!mark.runs.some((run) => run.kind === "text" && run.text.includes("="))) continue;
            for (const side of sumsIn(mark.runs)) {
              expect(side.parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(side.total, 9);
              sums += 1;
            }
          }
        }
      }),
      RUNS,
    );
    expect(sums).toBeGreaterThan(50);

    const between = jobOf({ ...INCH_DESIGN, outer: { kind: "size", width: mm(280), height: mm(356) } });
    const text = textOf(sheetOf(between));
    expect(text).toContain("≈");
    expect(text).not.toContain(" = ");
  });

  test("[PP11] a bound is printed on its safe side, without a sign of doubt", () => {
    const skew = { ...INCH_DESIGN, print: { ...INCH_PRINT, angle: 1.3 } };
    const { composition } = jobOf(skew);
    const text = textOf(sheetOf(jobOf(skew)));
    const least = Math.min(...Object.values(composition.print?.pockets ?? {})) as Length;
    const printed = /Hidden up to ([\d /]+) in/.exec(text)?.[1] ?? "";
    const [whole = "0", over = "0", under = "1"] = printed.split(/[ /]/);
    const limit = (Number(whole) + Number(over) / Number(under)) * inch(1);
    expect(limit).toBeLessThanOrEqual(least);
    expect(limit).toBeGreaterThan(least - inch(1, 16));
    expect(text).not.toContain("up to ≈");
  });

  test("[PP12] the scale's reading stands beside each setting; metric ones keep their tenth", () => {
    const texts = textsOf(sheetOf(jobOf(METRIC_DESIGN), "a4")[0] as Page);
    for (const reads of ["51.5", "52.5", "53.5", "66.5", "58.5", "59.5", "60.5", "73.5"])
      expect(texts).toContain(reads);
    const exact = textsOf(sheetOf(jobOf({ ...METRIC_DESIGN, scaleOffset: mm(0) }), "a4")[0] as Page);
    expect(exact).toContain("52.0");
    const sixtyFourth = textsOf(sheetOf(jobOf({ ...INCH_DESIGN, scaleOffset: inch(-1, 64) }))[0] as Page);
    for (const reads of ["1 47/64", "1 63/64", "2 15/64"]) expect(sixtyFourth).toContain(reads);
  });

  test("[PP13] a cut's number stands in a black ring on a bar", () => {
    const [page] = sheetOf(jobOf(INCH_DESIGN));
    const marks = flatMarks(page?.marks ?? []);
    const rings = marks.flatMap((mark, index) => (mark.kind === "circle" ? [index] : []));
    expect(rings).toHaveLength(8);
    for (const index of rings) {
      const [circle, number, bar] = marks.slice(index, index + 3);
      expect(circle?.kind === "circle" && circle.fill).toBe("ink");
      expect(number?.kind === "text" && number.onInk).toBe(true);
      expect(bar?.kind === "area" && bar.fill).toBe("paper");
    }
  });
});

/** Every sum of a line, from its figures' own parts. */
function sumsIn(runs: readonly Run[]): readonly { parts: readonly number[]; total: number }[] {
  const found: { parts: number[]; total: number }[] = [];
  let parts: number[] = [];
  let closing = false;
  for (const run of runs) {
    if (run.kind === "fraction") {
      if (closing) {
        found.push({ parts, total: valueOf(run) });
        parts = [];
        closing = false;
      } else {
        parts.push(valueOf(run));
      }
    } else if (run.text.includes("=")) {
      closing = true;
    } else if (!/^\u00a0\+\u00a0$/.test(run.text)) {
      parts = [];
    }
  }
  return found;
}

test("the content box of each paper is what is left of clip, printer and corner rule", () => {
  expect(paperOf("a4").content).toEqual({ left: mm(18), top: mm(10), width: mm(182), height: mm(270) });
  expect(paperOf("letter").content).toEqual({
    left: mm(18),
    top: mm(10),
    width: mm(187.9),
    height: mm(252.4),
  });
});
