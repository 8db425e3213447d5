import { describe, expect, it } from "vitest";
import { pdfTypeface } from "../../src/drawings/writers/pdf/index.ts";
import { mm } from "../../src/lengths/index.ts";
import { wallSheetJob } from "../../src/packet/index.ts";
import { hangingSheet, type Page, type PaperSize } from "../../src/papers/index.ts";
import { hangFor } from "../../src/show/index.ts";
import { flatMarks, outside, struckThrough, textsOf, touching, wordInks } from "../papers/ink.ts";

const typeface = pdfTypeface();

const work = (index: number) => ({
  title:
    index === 4
      ? "A very long title that goes on about the tide as though it would never turn"
      : `Tide ${index}`,
  width: 300 + ((index * 37) % 200),
  height: 400 + ((index * 53) % 200),
  weight: index % 5 === 4 ? null : 2 + (index % 3),
  hang:
    index % 3 === 0
      ? { kind: "wire", below: index === 3 ? 20 : 120, apart: 240, drop: 60, hooks: 2, hooksApart: 100 }
      : { kind: "rings", below: 70, apart: 200 },
});

function sheet(count: number, rule: object, size: PaperSize, more: object = {}): readonly Page[] {
  const document = {
    unit: "mm",
    wall: { width: 9000, height: 3000 },
    hookDrop: 12,
    rule,
    avoid: [{ name: "lights", x: 900, y: 1000, width: 90, height: 120 }],
    works: Array.from({ length: count }, (_, index) => work(index)),
    ...more,
  };
  const hung = hangFor(document);
  if (!hung.ok) throw new Error(JSON.stringify(hung.problems));
  const job = wallSheetJob(
    hung.value,
    { studio: "Tidewater Print Room", show: "Slack Water" },
    { number: 3, date: "2026-11-25", makesVoid: { number: 2, date: "2026-11-19" } },
  );
  return hangingSheet({ ...job, wall: "North wall" }, size, typeface);
}

const ROW = { row: "spread" };
const CLUSTER = { cluster: { gap: 50 } };
const level = { levelLine: 1200, eyeLine: 250 };
const walls: readonly (readonly [string, number, object, object])[] = [
  ["one work", 1, ROW, {}],
  ["three in a row from a level line", 3, { row: "gap", gap: 120 }, level],
  ["twelve that fill the wall", 12, ROW, {}],
  ["a cluster of twenty", 20, CLUSTER, {}],
  ["a grid of nine", 9, { grid: { columns: 3, gap: 60 } }, level],
  ["a wall that is too narrow", 6, { row: "gap", gap: 100 }, { wall: { width: 1500, height: 3000 } }],
];

describe("the hanging sheet", () => {
  for (const size of ["a4", "letter"] as const)
    it.each(walls)(
      `[HG20] %s on ${size}: no words meet, nothing strikes a word or leaves the page`,
      (_, count, rule, more) => {
        for (const page of sheet(count, rule, size, more)) {
          const marks = flatMarks(page.marks);
          const inks = wordInks(marks, typeface);
          expect(touching(inks)).toEqual([]);
          expect(struckThrough(marks, inks)).toEqual([]);
          expect(outside(page, size, typeface)).toEqual([]);
        }
      },
    );

  it("[HG20] each hook has its letter, and both measures across make the wall", () => {
    const texts = sheet(12, ROW, "a4").flatMap((page) => textsOf(page));
    // Eleven works have two hooks; the fourth cannot be hung as asked.
    for (const letter of ["A", "V"]) expect(texts).toContain(letter);
    expect(texts).not.toContain("W");
    expect(texts).toContain("435 mm");
    expect(texts).toContain("8565");
  });

  it("[HG21] a work that cannot be hung as asked has no row, and its reason stands at the top", () => {
    const texts = sheet(4, ROW, "a4")
      .flatMap((page) => textsOf(page))
      .join(" ");
    expect(texts).toContain("NOT ON THIS SHEET");
    expect(texts).toMatch(/4, Tide 3: The taut wire rises 60 mm/);
  });

  it("[HG21] nail, load, wall and licensed hand are cautioned of on the page of the first hook", () => {
    for (const count of [3, 20]) {
      const texts = textsOf(
        sheet(count, ROW, "a4")[0] ?? { width: mm(1), height: mm(1), bookmark: "", marks: [] },
      ).join(" ");
      for (const said of ["NAIL, not wire", "rated 4 times", "Plaster alone", "licensed hand", "Local codes"])
        expect(texts).toContain(said);
    }
  });
});
