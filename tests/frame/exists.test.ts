import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  balancedSeen,
  bestFitting,
  compose,
  composeInFrame,
  type Design,
  fitInto,
  type InFrame,
  planFrame,
} from "../../src/assembly/index.ts";
import { inch, type Length, toInches } from "../../src/lengths/index.ts";
import { readDesign } from "../../src/show/index.ts";
import { composedOf, frameOf, LETTER, RANDOM } from "./frames.ts";

const designOf = (document: Parameters<typeof readDesign>[0]): Design => {
  const design = readDesign(document);
  if (!design.ok) throw new Error(JSON.stringify(design.problems));
  return design.value;
};

const exists = (width: number, height: number, more: Partial<InFrame> = {}): InFrame => ({
  frame: frameOf({ opening: { width: inch(width), height: inch(height) } }),
  mat: null,
  balance: "package",
  around: true,
  ...more,
});

describe("a frame that is there", () => {
  test("[FR9] sets the package: its opening less the allowance, down to a mark", () => {
    const { outer } = composeInFrame(designOf(LETTER), exists(12.3, 16.2));
    // 12.175 and 16.075 in.
    expect([toInches(outer.width), toInches(outer.height)]).toEqual([12 + 1 / 8, 16 + 1 / 16]);
    const kept = composeInFrame(designOf(LETTER), exists(12.3, 16.2, { around: false }));
    expect([toInches(kept.outer.width), toInches(kept.outer.height)]).toEqual([11, 14]);
  });

  test("[FR9] hangs the way up in which the work goes into it better", () => {
    const lying = fitInto(designOf(LETTER), exists(14.125, 11.125));
    expect(lying.turned).toBe(true);
    expect(toInches(lying.composition.outer.height)).toBe(14);
    expect(fitInto(designOf(LETTER), exists(11.125, 14.125)).turned).toBe(false);
  });

  test("[FR9] a mat that is cut keeps its window and its place to the tick, whatever the ruler", () => {
    const mat = {
      width: inch(11),
      height: inch(14),
      window: { width: inch(627, 100), height: inch(9) },
      head: inch(203, 100),
      thickness: inch(1, 16),
      board: "ready, cream",
    };
    const { mats, outer } = composeInFrame(designOf(LETTER), exists(11.125, 14.125, { mat }));
    expect(outer).toEqual({ width: inch(11), height: inch(14) });
    expect(mats[0]?.back).toEqual(mat.window);
    expect(mats[0]?.borders.head).toBe(mat.head);
    expect(mats[0]?.borders.left).toBe(mats[0]?.borders.right);
  });

  test("[FR9] what is seen round the image in a window that is cut: paper above nought, cover below it", () => {
    const mat = {
      width: inch(11),
      height: inch(14),
      window: { width: inch(7.5), height: inch(9) },
      head: null,
      thickness: null,
      board: null,
    };
    const { shown } = fitInto(designOf(LETTER), exists(11.125, 14.125, { mat }));
    expect(shown === null ? [] : Object.values(shown).map((length: Length) => toInches(length))).toEqual([
      -0.25, 0.25, 0.25, -0.25,
    ]);
  });

  test("[FR11] of several works those stand first that nothing stops, then those whose seen borders are most alike", () => {
    const sheet = (width: number, height: number) => ({
      unit: "in" as const,
      print: { width: width + 1, height: height + 1, image: { left: "1/2", top: "1/2", width, height } },
    });
    const fits = [sheet(15, 9), sheet(6, 11), sheet(7, 9.5), sheet(30, 40)].map((document) =>
      fitInto(designOf(document), exists(11.125, 14.125)),
    );
    const order = bestFitting(fits);
    expect(order[0]).toBe(2);
    expect(order.at(-1)).toBe(3);
    const [stops, unlike] = [
      order.map((at) => fits[at]?.stops ?? 0),
      order.map((at) => fits[at]?.unlike ?? 0),
    ];
    expect(stops).toEqual(stops.toSorted((a, b) => a - b));
    expect(unlike[0]).toBeLessThan(unlike[1] ?? 0);
  });
});

describe("borders balanced as they are seen", () => {
  const seenOf = (document: Parameters<typeof readDesign>[0], frame = frameOf()) => {
    const composition = composeInFrame(designOf(document), { ...exists(0, 0), frame, balance: "seen" });
    return { composition, ...planFrame(composition, frame).stands };
  };

  test("[FR10] a fixed lift is what is seen of it on the foot rail, a ratio is a ratio of what is seen", () => {
    const { seen, lift } = seenOf(LETTER);
    expect(toInches(lift)).toBe(1 / 4);
    expect(seen.left).toBe(seen.right);
    const none = seenOf({ ...LETTER, lift: { rule: "none" } });
    expect(Math.abs(none.lift)).toBeLessThanOrEqual(inch(1, 32));
    const ratio = seenOf({ ...LETTER, lift: { rule: "ratio", foot: 1.5 } });
    expect(ratio.seen.foot / ratio.seen.head).toBeGreaterThanOrEqual(1.5);
    expect(ratio.seen.foot / ratio.seen.head).toBeLessThan(1.5 * (1 + 3 / 32));
  });

  test("[FR10] borders that were asked are what is seen of them", () => {
    const { seen } = seenOf({ ...LETTER, outer: { borders: { head: 2, side: "1 3/4", foot: "2 1/2" } } });
    expect([seen.head, seen.left, seen.right, seen.foot].map(toInches)).toEqual([2, 1.75, 1.75, 2.5]);
  });

  test("[FR10] in any frame seen and hidden are the border, and the lift seen is the one asked to a mark", () => {
    fc.assert(
      fc.property(RANDOM, ({ document, frame }) => {
        const { composition, seen, hidden, lift } = seenOf(
          { ...document, lift: { rule: "fixed", by: "1/4" } },
          frame,
        );
        const { borders } = composition.mats[0] ?? {};
        if (borders === undefined) throw new Error("it has a mat");
        for (const side of ["head", "left", "right", "foot"] as const)
          expect(seen[side] + hidden[side]).toBe(borders[side]);
        expect(Math.abs(lift - inch(1, 4))).toBeLessThanOrEqual(inch(1, 16));
      }),
      { numRuns: 200 },
    );
  });

  test("[FR10] a list without a size that serves stays as it was told", () => {
    const none = composedOf({ ...LETTER, outer: { smallest: [["5", "7"]], border: 1 } });
    expect(compose(balancedSeen(none, frameOf())).checks.map(({ code }) => code)).toContain("no-size");
  });
});
