import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compose, isStopped, NOTHING_KNOWN, planHold, USUAL_HOLD } from "../../src/assembly/index.ts";
import type { ComposeDocument } from "../../src/show/index.ts";
import { designOf, heldOf, printed } from "./works.ts";

interface Point {
  readonly x: number;
  readonly y: number;
}

/** The part of a polygon inside an upright rectangle, cut edge by edge (Sutherland and Hodgman, 1974), and its area. */
function clippedArea(
  polygon: readonly Point[],
  left: number,
  top: number,
  right: number,
  foot: number,
): number {
  const sides: readonly ((point: Point) => number)[] = [
    ({ x }) => x - left,
    ({ x }) => right - x,
    ({ y }) => y - top,
    ({ y }) => foot - y,
  ];
  let all = [...polygon];
  for (const inside of sides) {
    const kept: Point[] = [];
    all.forEach((to, index) => {
      const from = all.at(index - 1) ?? to;
      const [a, b] = [inside(from), inside(to)];
      if (a > 0 !== b > 0)
        kept.push({
          x: from.x + ((to.x - from.x) * a) / (a - b),
          y: from.y + ((to.y - from.y) * a) / (a - b),
        });
      if (b > 0) kept.push(to);
    });
    all = kept;
  }
  return (
    Math.abs(
      all.reduce((sum, to, index) => {
        const from = all.at(index - 1) ?? to;
        return sum + from.x * to.y - to.x * from.y;
      }, 0),
    ) / 2
  );
}

/** A pocket on one corner of a sheet: the corner and where its fold meets both edges, `leg` along each. */
function pocketOn(corners: readonly Point[], at: number, leg: number): readonly Point[] {
  const corner = corners[at] ?? { x: 0, y: 0 };
  const along = (to: Point | undefined): Point => {
    const [dx, dy] = [(to?.x ?? 0) - corner.x, (to?.y ?? 0) - corner.y];
    const far = Math.hypot(dx, dy);
    return { x: corner.x + (dx / far) * leg, y: corner.y + (dy / far) * leg };
  };
  return [corner, along(corners.at(at - 1)), along(corners[(at + 1) % 4])];
}

const AT = { topLeft: 0, topRight: 1, bottomRight: 2, bottomLeft: 3 } as const;

const anyWork: fc.Arbitrary<ComposeDocument> = fc
  .record({
    width: fc.integer({ min: 30, max: 300 }),
    height: fc.integer({ min: 30, max: 300 }),
    left: fc.integer({ min: 3, max: 60 }),
    top: fc.integer({ min: 3, max: 60 }),
    right: fc.integer({ min: 3, max: 60 }),
    foot: fc.integer({ min: 3, max: 60 }),
    angle: fc.constantFrom(0, 0, 1.4, -3, 7.5),
    play: fc.integer({ min: 0, max: 40 }),
  })
  .map(({ width, height, left, top, right, foot, angle, play }) => ({
    unit: "mm",
    print: {
      width: width + left + right,
      height: height + top + foot,
      image: { left, top, width, height },
      angle,
    },
    window: { show: "overlap", overlap: 3 },
    play: play / 10,
    outer: { borders: { head: 90, side: 90, foot: 100 } },
  }));

describe("corner pockets", () => {
  test("[HO2] a pocket that fits never shows, and one mark more does, by clipping it with the window", () => {
    let seen = 0;
    fc.assert(
      fc.property(anyWork, (document) => {
        const design = designOf(document);
        const composition = compose(design);
        // Where the paper ends before the window there is no corner to hide anything.
        fc.pre(!isStopped(composition));
        const plan = planHold(composition, NOTHING_KNOWN, USUAL_HOLD.mm);
        const [mat, print] = [composition.mats[0], composition.print];
        if (plan?.pockets == null || mat === undefined || print === null) throw new Error("it has a print");
        const { borders, back } = mat;
        const shows = (at: number, leg: number): number =>
          clippedArea(
            pocketOn(print.sheetCorners, at, leg),
            borders.left,
            borders.head,
            borders.left + back.width,
            borders.head + back.height,
          );
        const { play, leg, each } = plan.pockets;
        for (const { corner, hidden, spare } of each) {
          if (hidden === 0) continue;
          seen += 1;
          // The sheet may lie so far out that all its play is at this corner.
          expect(shows(AT[corner], hidden + play)).toBeLessThan(1);
          expect(shows(AT[corner], leg + play)).toBeLessThan(1);
          expect(shows(AT[corner], hidden + play + design.ruler.graduation)).toBeGreaterThan(1);
          expect(spare).toBe(hidden - leg);
        }
      }),
      { numRuns: 400 },
    );
    expect(seen).toBeGreaterThan(500);
  });

  test("[HO2] are folded alike, by the corner that hides the least", () => {
    const plan = heldOf({
      unit: "in",
      print: { width: 9, height: 12, image: { left: 0.75, top: 0.5, width: 7, height: 10 } },
      outer: { width: 11, height: 14 },
    });
    expect(plan.way).toBe("pockets");
    expect(plan.pockets?.least.corner).toBe("topLeft");
    // 7/8 + 5/8 - 1/16 = 1 7/16 in hidden, folded to a whole quarter.
    expect(plan.pockets?.least.hidden).toBe((23 * 2_032_000) / 16);
    expect(plan.pockets?.leg).toBe(1.25 * 2_032_000);
  });

  test("[HO3] leave the play that the paper's movement needs, and say so", () => {
    const wide = heldOf(printed(30, 22, 2, { play: "1/16" }));
    // 0.4 % of 30 and of 22 in, half of both together: 0.104 in, up to 1/8 in.
    expect(wide.pockets?.play).toBe(2_032_000 / 8);
    expect(wide.checks).toContainEqual({
      level: "note",
      code: "play-widened",
      asked: 2_032_000 / 16,
      play: 2_032_000 / 8,
    });
    fc.assert(
      fc.property(anyWork, (document) => {
        const { pockets, movement } = heldOf(document);
        expect((pockets?.play ?? 0) * 2).toBeGreaterThanOrEqual(movement.width + movement.height);
      }),
      { numRuns: 100 },
    );
  });
});
