import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compose, type Composition } from "../../src/assembly/index.ts";
import {
  backView,
  type Drawing,
  fitScale,
  frontView,
  packageView,
  PIXEL,
  sectionView,
  writeSvg,
} from "../../src/drawings/index.ts";
import { fromReal, type Length } from "../../src/lengths/index.ts";
import { anyDesign } from "./arbitrary.ts";
import { boxOf, inkBox, leaves, overlap, said, texts } from "./reading.ts";
import { WORDS } from "./words.ts";

const px = (count: number): Length => fromReal(count * PIXEL, "nearest");

const shownAt = (composition: Composition, width: number) => ({
  scale: fitScale(composition, { width: px(width), height: null }),
  ruler: composition.design.ruler,
  words: WORDS,
});

const anyInput = fc.record({
  design: anyDesign,
  width: fc.constantFrom(160, 280, 360, 560),
  which: fc.constantFrom("front" as const, "back" as const, "section" as const, "package" as const),
});

function drawn({ design, width, which }: typeof anyInput extends fc.Arbitrary<infer T> ? T : never): Drawing {
  const composition = compose(design);
  const options = shownAt(composition, width);
  switch (which) {
    case "front":
      return frontView(composition, options);
    case "back":
      return backView(composition, { ...options, mat: composition.mats.length - 1 });
    case "section":
      return sectionView(composition, { ...options, width: px(width) });
    case "package":
      return packageView(composition, { ...options, scale: options.scale / 4 });
  }
}

describe("any design that can be read is drawn", () => {
  it("[D5] lies wholly on its drawing", () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const drawing = drawn(input);
        for (const { mark } of leaves(drawing.marks)) {
          const box = boxOf(mark);
          expect(box.left).toBeGreaterThanOrEqual(0);
          expect(box.top).toBeGreaterThanOrEqual(0);
          expect(box.right).toBeLessThanOrEqual(drawing.width);
          expect(box.bottom).toBeLessThanOrEqual(drawing.height);
        }
      }),
    );
  });

  it("[D6] sets no figure or word on another", () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const drawing = drawn(input);
        const all = texts(drawing).map((mark) => ({ said: said(mark), box: inkBox(mark) }));
        for (const [index, one] of all.entries()) {
          for (const other of all.slice(index + 1)) {
            expect(overlap(one.box, other.box), `${one.said} on ${other.said}`).toBe(false);
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  it("[D30] is written as SVG", () => {
    fc.assert(
      fc.property(anyInput, (input) => {
        const drawing = drawn(input);
        expect(writeSvg(drawing)).not.toMatch(/NaN|Infinity|undefined/);
      }),
    );
  });
});
