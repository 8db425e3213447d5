import { expect, test } from "vitest";
import { inch, mm } from "../../src/lengths/index.ts";
import { composeFrom, foundText } from "../../src/show/index.ts";
import { sayCheck } from "../../src/words/index.ts";
import { composed } from "./helpers.ts";

const edition = composed({
  unit: "mm",
  print: {
    width: "200",
    height: "260",
    image: { left: "20", top: "20", width: "160", height: "220" },
    edition: [
      {
        name: "2/3",
        width: "204",
        height: "262",
        image: { left: "22", top: "20", width: "160", height: "220" },
      },
      {
        name: "3/3",
        width: "196",
        height: "258",
        image: { left: "18", top: "19", width: "160", height: "220" },
      },
    ],
  },
  window: { show: "overlap", overlap: "3" },
  outer: { width: "202", height: "300" },
  play: "1",
});

test("[U4] a pocket of an edition stays hidden on every sheet, and its sum makes it", () => {
  const print = edition.print;
  if (print === null) throw new Error("no print");
  const least = Math.min(...print.edition.map(({ cover }) => cover.left + cover.head)) - mm(1);
  expect(print.pockets.topLeft).toBe(least);
  expect(print.pockets.topLeft).toBeLessThan(print.cover.left + print.cover.head - mm(1));
  const step = edition.reckoning.find(({ name }) => name.of === "pocket" && name.corner === "topLeft");
  expect([step?.makes, step?.is]).toEqual([least, least]);
});

test("[U6] the sheet of an edition that goes furthest past the package is named", () => {
  const past = edition.checks.filter(({ code }) => code === "sheet-past-board");
  expect(past.map((check) => sayCheck(check, { ruler: edition.design.ruler, language: "en-US" }))).toEqual([
    "The front's left (sheet 2/3): the sheet is larger than the package by 1 mm. Take a larger board; a print is not trimmed to fit.",
    "The front's right (sheet 2/3): the sheet is larger than the package by 1 mm. Take a larger board; a print is not trimmed to fit.",
  ]);
});

test("[U10] habits of the other unit come to the work's own marks, minimums up; the work's own words stay", () => {
  const work = {
    unit: "mm",
    print: { width: "200", height: "260" },
    outer: { width: "300", height: "400" },
  } as const;
  const inches = { unit: "in", hold: "1/8", overlap: "1/8", lift: { rule: "fixed", by: "1/4" } } as const;
  const design = composed(work, inches).design;
  expect([design.hold, design.lift]).toEqual([mm(4), { rule: "fixed", by: mm(6) }]);
  expect(composed({ ...work, graduation: "0.5" }, inches).design.hold).toBe(mm(3.5));
  expect(composed({ ...work, hold: "1/8 in" }, inches).design.hold).toBe(inch(1, 8));
  expect(
    composed(
      { ...work, unit: "in", print: { width: "8", height: "10" }, outer: { width: "12", height: "14" } },
      inches,
    ).design.hold,
  ).toBe(inch(1, 8));
});

test("[R4] what was found is never cut within a sign", () => {
  for (let before = 50; before < 60; before++) {
    const told = foundText(`${"7".repeat(before)}${"𝟕".repeat(9)}`);
    expect([before, /[\uD800-\uDBFF]…/.test(told), told.length <= 60]).toEqual([before, false, true]);
  }
  expect(composeFrom("x".repeat(100)).ok).toBe(false);
});
