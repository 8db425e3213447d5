import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mm } from "../../src/lengths/index.ts";
import { type Page } from "../../src/papers/index.ts";
import { anyCase } from "./family.ts";
import { jobOf, METRIC_DESIGN } from "./fixtures.ts";
import { textsOf, reading } from "./ink.ts";
import { sheetOf, textMarks, textOf } from "./reading.ts";

const RUNS = { numRuns: 60 };

describe("the drawing is the back", () => {
  const uneven = jobOf({ ...METRIC_DESIGN, mats: METRIC_DESIGN.mats.slice(0, 1) });

  test("[PP16] the front's right border is figured at the left hand, the front's left at the right", () => {
    const { borders } = uneven.composition.mats[0] ?? { borders: { left: 0, right: 0 } };
    expect(borders.left).toBe(mm(59));
    expect(borders.right).toBe(mm(60));
    for (const hand of ["left", "right"] as const) {
      const [page] = sheetOf({ ...uneven, bench: { ...uneven.bench, hand } }, "a4");
      const marks = textMarks(page as Page);
      const figure = (text: string): number =>
        Math.min(
          ...marks
            .filter((mark) => mark.weight === "bold" && reading(mark).startsWith(text))
            .map(({ at }) => at.x),
        );
      const out = marks.find((mark) => reading(mark) === "OUT")?.at.x ?? 0;
      expect(figure("60 ")).toBeLessThan(out);
      const tags = marks.filter((mark) => reading(mark) === "LEFT HAND").map(({ at }) => at.x);
      expect(Math.min(...tags)).toBeLessThan(out);
      expect(textOf([page as Page])).toContain("the wider side, 60, is at your LEFT");
    }
  });

  test("[PP17] settings are in the order to cut, their cuts numbered on through all mats from the top one down", () => {
    const text = textsOf(sheetOf(jobOf(METRIC_DESIGN), "a4")[0] as Page);
    const order = text.filter((each) => /^\d+ mm$/.test(each) || /\d+(st|nd|rd|th) stop/.test(each));
    const keys = order.filter((_, index) => /stop/.test(order[index - 1] ?? ""));
    expect(keys).toEqual(["52 mm", "53 mm", "54 mm", "67 mm", "59 mm", "60 mm", "61 mm", "74 mm"]);
    const names = text.filter((each) => /^(front’s left|front’s right|head|foot)$/.test(each));
    expect(names).toHaveLength(12);
    const numbers = text.filter((each) => /^[1-8]$/.test(each));
    expect(numbers.toSorted()).toEqual([
      "1",
      "1",
      "2",
      "2",
      "3",
      "3",
      "4",
      "4",
      "5",
      "5",
      "6",
      "6",
      "7",
      "7",
      "8",
      "8",
    ]);
  });

  test("[PP18] a left-handed bench mirrors the rail's picture and its sentence and nothing else", () => {
    fc.assert(
      fc.property(anyCase, ({ job, paper }) => {
        const of = (hand: "left" | "right"): readonly string[] =>
          sheetOf({ ...job, bench: { ...job.bench, hand } }, paper).flatMap((page) =>
            textMarks(page).map((mark) => `${reading(mark)} ${mark.at.x} ${mark.at.y}`),
          );
        const [left, right] = [of("left"), of("right")];
        const differ = left
          .filter((text, index) => text !== right[index])
          .map((text) => text.replace(/ \d+ \d+$/, ""));
        const mirrored = new Set([
          "left-handed",
          "Window to the LEFT of the rail",
          "rail",
          "border",
          "blade",
          "OUT",
        ]);
        expect(differ.filter((text) => !mirrored.has(text) && !FACT_NAMES.test(text))).toEqual([]);
      }),
      RUNS,
    );
  });
});

/** Facts stand side by side, so that a longer word moves those after it. */
const FACT_NAMES =
  /^(unit|bench|mat boards?|mount boards?|bevel|scale tested|make|makes void|\d+°|\d.*alike|\d*,? ?4-ply.*|not tested|20 Nov|plan 2 .*)/;
