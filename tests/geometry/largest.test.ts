import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Box,
  largestUprightRectangle,
  largestUprightRectangleWithin,
  type Outline,
  outlineFault,
  outlineHolds,
  type RealPoint,
  turned,
} from "../../src/geometry/index.ts";
import { ticks } from "../../src/lengths/index.ts";
import { Chance } from "../reference/chance.ts";
import { climbedArea, exactlyInside } from "./brute.ts";
import {
  anyPoints,
  areaOf,
  box,
  ellipse,
  outline,
  point,
  roughRectangle,
  roundedStars,
  shifted,
  type SquareFigure,
  squareFigures,
} from "./outlines.ts";

function found(points: Outline | readonly RealPoint[]): Box {
  const rectangle = largestUprightRectangle(points);
  if (rectangle === null) throw new Error("no rectangle was found");
  return rectangle;
}

/** The area of a rectangle let out by one tick on every side. */
const letOutArea = ({ width, height }: Box): number => (width + 2) * (height + 2);

function expectBest(rectangle: Box, points: Outline | readonly RealPoint[], area: number): void {
  expect(exactlyInside(points, rectangle)).toBe(true);
  expect(areaOf(rectangle)).toBeLessThanOrEqual(area);
  expect(letOutArea(rectangle)).toBeGreaterThan(area);
}

const grownBy = (of: Box, left: number, top: number, right: number, bottom: number): Box =>
  box(of.left - left, of.top - top, of.width + left + right, of.height + top + bottom);

const bound = (points: readonly RealPoint[]): number => largestUprightRectangleWithin(points).atMost;

/** A square of ten ticks drawn in by a little on each side. */
const squareDrawnIn = (by: number): RealPoint[] => [
  { x: by, y: by },
  { x: 10 - by, y: by },
  { x: 10 - by, y: 10 - by },
  { x: by, y: 10 - by },
];

/** As every real outline is read: what lies within a millionth of a tick of a whole one is that whole one. */
const settled = (points: readonly RealPoint[]): readonly RealPoint[] =>
  points.map(({ x, y }) => {
    const whole = { x: Math.round(x), y: Math.round(y) };
    return { x: Math.abs(x - whole.x) < 1e-6 ? whole.x : x, y: Math.abs(y - whole.y) < 1e-6 ? whole.y : y };
  });

const simpleStars = roundedStars(3, 24, 1_000_000).filter((points) => outlineFault(points) === null);

/** The largest box of whole squares of a figure, by trying all. */
function largestOfSquares({ columns, rows, has }: SquareFigure): number {
  let most = 0;
  for (const [left] of columns.entries()) {
    for (const [top] of rows.entries()) {
      let reach = columns.length;
      let tall = 0;
      for (let row = top; row < rows.length; row++) {
        let column = left;
        while (column < reach && has(column, row)) column++;
        reach = column;
        tall += rows[row] ?? 0;
        const wide = columns.slice(left, reach).reduce((sum, width) => sum + width, 0);
        most = Math.max(most, wide * tall);
      }
    }
  }
  return most;
}

describe("the largest upright rectangle inside an outline", () => {
  it("[G6] [G8] lies inside, and no side of it can be moved out by a tick", () => {
    fc.assert(
      fc.property(simpleStars, (points) => {
        const rectangle = found(points);
        expect(exactlyInside(points, rectangle)).toBe(true);
        expect(exactlyInside(points, grownBy(rectangle, 1, 0, 0, 0))).toBe(false);
        expect(exactlyInside(points, grownBy(rectangle, 0, 1, 0, 0))).toBe(false);
        expect(exactlyInside(points, grownBy(rectangle, 0, 0, 1, 0))).toBe(false);
        expect(exactlyInside(points, grownBy(rectangle, 0, 0, 0, 1))).toBe(false);
      }),
      { numRuns: 60 },
    );
  });

  it("[G6] the test that has the last word agrees with exact common areas", () => {
    const boxes = fc.tuple(
      fc.integer({ min: -12, max: 12 }),
      fc.integer({ min: -12, max: 12 }),
      fc.integer({ min: 1, max: 12 }),
      fc.integer({ min: 1, max: 12 }),
    );
    fc.assert(
      fc.property(roundedStars(3, 12, 14), boxes, (points, [left, top, width, height]) => {
        fc.pre(outlineFault(points) === null);
        const tried = box(left, top, width, height);
        expect(outlineHolds(points, tried)).toBe(exactlyInside(points, tried));
      }),
      { numRuns: 1500 },
    );
  });

  it("[G7] let out by a tick it is larger than what any climber finds, and never larger than its own bound", () => {
    fc.assert(
      fc.property(simpleStars, fc.nat(), (points, seed) => {
        const { box: rectangle, atMost, proven } = largestUprightRectangleWithin(points);
        if (rectangle === null) throw new Error("no rectangle was found");
        expect(proven).toBe(true);
        expect(areaOf(rectangle)).toBeLessThanOrEqual(atMost * (1 + 1e-12));
        expect(letOutArea(rectangle)).toBeGreaterThan(atMost * (1 - 1e-12));
        expect(letOutArea(rectangle)).toBeGreaterThan(climbedArea(points, new Chance(seed), 12));
      }),
      { numRuns: 60 },
    );
  });

  it("[G7] of turned outlines, whose points are real, too", () => {
    fc.assert(
      fc.property(
        simpleStars,
        fc.double({ min: -180, max: 180, noNaN: true }),
        fc.nat(),
        (points, degrees, seed) => {
          const skew = turned(points, { x: 12.5, y: -7 }, degrees);
          const rectangle = found(skew);
          expect(exactlyInside(settled(skew), rectangle)).toBe(true);
          expect(letOutArea(rectangle)).toBeGreaterThan(climbedArea(skew, new Chance(seed), 6));
        },
      ),
      { numRuns: 40 },
    );
  });

  it("[G9] of figures with level and upright edges it is the very largest", () => {
    fc.assert(
      fc.property(squareFigures, (figure) => {
        const rectangle = found(figure.edge);
        expect(areaOf(rectangle)).toBe(largestOfSquares(figure));
        expect(exactlyInside(figure.edge, rectangle)).toBe(true);
      }),
      { numRuns: 400 },
    );
  });

  it("[G10] is the same from any start and either way round, and moves with the outline", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          simpleStars,
          squareFigures.map(({ edge }) => edge),
        ),
        fc.nat(30),
        fc.integer({ min: -7_000_000_000, max: 7_000_000_000 }),
        (points, start, by) => {
          const rectangle = found(points);
          expect(found(shifted(points, start))).toEqual(rectangle);
          expect(found(shifted(points, start).toReversed())).toEqual(rectangle);
          const moved = points.map(({ x, y }) => ({ x: ticks(x + by), y: ticks(y - by) }));
          expect(found(moved)).toEqual(grownBy(rectangle, -by, by, by, -by));
        },
      ),
      { numRuns: 60 },
    );
  });

  it("[G7] mirrored, lying on its side, or drawn larger it is as large", () => {
    fc.assert(
      fc.property(simpleStars, fc.integer({ min: 2, max: 900 }), (points, times) => {
        const area = bound(points);
        const same = (of: readonly RealPoint[], factor = 1): void =>
          expect(bound(of) / factor / area).toBeCloseTo(1, 10);
        same(points.map(({ x, y }) => ({ x: -x, y })));
        same(points.map(({ x, y }) => ({ x, y: -y })));
        same(points.map(({ x, y }) => ({ x: y, y: x })));
        same(
          points.map(({ x, y }) => ({ x: x * times, y: y * times })),
          times * times,
        );
      }),
      { numRuns: 60 },
    );
  });

  it("[G7] points put between the corners of an edge change nothing", () => {
    fc.assert(
      fc.property(simpleStars, (points) => {
        const doubled = points.map(({ x, y }) => ({ x: ticks(x * 2), y: ticks(y * 2) }));
        const halved = doubled.flatMap((from, index) => {
          const to = doubled[(index + 1) % doubled.length] ?? from;
          return [from, { x: ticks((from.x + to.x) / 2), y: ticks((from.y + to.y) / 2) }];
        });
        expect(bound(halved) / bound(doubled)).toBeCloseTo(1, 10);
      }),
      { numRuns: 60 },
    );
  });
});

// Closed forms: in a triangle of base b and height h standing on its base, a rectangle of height y is
// b (h - y) / h wide, so the largest is b h / 4. The others follow the same way (elementary calculus).
describe("largest rectangles with a closed form", () => {
  it("[G7] half of a triangle that stands on its base", () => {
    const points = outline([0, 3_000_000], [4_000_000, 3_000_000], [1_300_000, 0]);
    expectBest(found(points), points, (4_000_000 * 3_000_000) / 4);
    expect(found(points).height).toBe(1_500_000);
  });

  it("[G7] half of a right triangle, exactly where the half ticks are whole", () => {
    const points = outline([0, 0], [5_000_000, 0], [0, 2_400_000]);
    expect(found(points)).toEqual(box(0, 0, 2_500_000, 1_200_000));
  });

  it("[G7] half of a diamond", () => {
    const points = outline([4_000_000, 0], [8_000_000, 1_500_000], [4_000_000, 3_000_000], [0, 1_500_000]);
    expect(found(points)).toEqual(box(2_000_000, 750_000, 4_000_000, 1_500_000));
  });

  it("[G7] a square in a regular octagon of side a: (2 + sqrt 2)² a² / 4", () => {
    const a = 10_000_000;
    const leg = a / Math.SQRT2;
    const width = a + 2 * leg;
    const octagon = [
      [leg, 0],
      [leg + a, 0],
      [width, leg],
      [width, leg + a],
      [leg + a, width],
      [leg, width],
      [0, leg + a],
      [0, leg],
    ].map(([x = 0, y = 0]) => ({ x, y }));
    expectBest(found(octagon), octagon, ((2 + Math.SQRT2) ** 2 * a * a) / 4);
  });

  it("[G7] in an ellipse of half axes a and b: 2 a b, which is 2 / pi of it", () => {
    const [a, b] = [9_000_000, 14_000_000];
    const points = ellipse(a, b, 2000);
    const rectangle = found(points);
    expect(exactlyInside(points, rectangle)).toBe(true);
    // A polygon of 2,000 points on the ellipse is smaller than it by 1 - sin(t) / t of its area, t = 2 pi / 2000.
    expect(areaOf(rectangle) / (2 * a * b)).toBeGreaterThan(1 - 5e-6);
    expect(areaOf(rectangle) / (2 * a * b)).toBeLessThan(1 + 1e-6);
  });

  it("[G7] in a rectangle w x h turned by an angle: (w cos a - h sin a)(h cos a - w sin a) / cos² 2a while h sin 2a < w", () => {
    const [w, h, degrees] = [20_000_000, 26_000_000, 3];
    const points = turned(outline([0, 0], [w, 0], [w, h], [0, h]), { x: w / 2, y: h / 2 }, degrees);
    const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    const area = ((w * cos - h * sin) * (h * cos - w * sin)) / (cos * cos - sin * sin) ** 2;
    expectBest(found(points), points, area);
  });

  it("[G7] a slanting strip holds a square on its middle line at any place", () => {
    const points = outline([0, 0], [9_000_000, 9_000_000], [9_000_000, 8_000_000], [1_000_000, 0]);
    expectBest(found(points), points, 500_000 * 500_000);
  });

  it("[G9] the longer limb of an L, the back of a comb", () => {
    const limb = outline([0, 0], [100, 0], [100, 50], [50, 50], [50, 120], [0, 120]);
    expect(found(limb)).toEqual(box(0, 0, 50, 120));
    const teeth = Array.from({ length: 40 }, (_, tooth): [number, number][] => [
      [20 * tooth, 300],
      [20 * tooth + 10, 300],
      [20 * tooth + 10, 40],
      [20 * tooth + 20, 40],
    ]).flat();
    expect(found(outline([800, 0], [0, 0], ...teeth.slice(0, -1), [790, 0]))).toEqual(box(0, 0, 790, 40));
  });

  it("[G6] [G7] in a spiral it lies in one turn of it", () => {
    const turns = 200;
    const arm = (outer: number): [number, number][] =>
      Array.from({ length: turns }, (_, index) => {
        const angle = (index / turns) * 6 * Math.PI;
        const radius = 800_000 + angle * 900_000 + outer;
        return [Math.round(radius * Math.cos(angle)), Math.round(radius * Math.sin(angle))];
      });
    const points = outline(...arm(0), ...arm(2_500_000).toReversed());
    expect(outlineFault(points)).toBeNull();
    const rectangle = found(points);
    expect(exactlyInside(points, rectangle)).toBe(true);
    expect(letOutArea(rectangle)).toBeGreaterThan(climbedArea(points, new Chance(7), 10));
  });
});

describe("what has no rectangle, or not much of one", () => {
  it("[G12] nothing, a point, a line, a sliver between two ticks: none", () => {
    const none: readonly (readonly RealPoint[])[] = [
      [],
      outline([3, 4]),
      outline([0, 0], [9, 9]),
      outline([0, 0], [5, 0], [9, 0]),
      outline([0, 0], [0, 5], [0, 9]),
      outline([0, 0], [4, 4], [9, 9]),
      outline([2, 2], [2, 2], [2, 2]),
      [
        { x: 0.2, y: 0 },
        { x: 0.8, y: 0 },
        { x: 0.8, y: 50 },
        { x: 0.2, y: 50 },
      ],
      [
        { x: 0, y: 0 },
        { x: Number.NaN, y: 0 },
        { x: 5, y: 5 },
      ],
    ];
    for (const points of none) expect(largestUprightRectangle(points)).toBeNull();
  });

  it("[G9] one tick square, and a square that repeats its first point", () => {
    expect(found(outline([0, 0], [1, 0], [1, 1], [0, 1]))).toEqual(box(0, 0, 1, 1));
    expect(found(outline([0, 0], [7, 0], [7, 7], [0, 7], [0, 0]))).toEqual(box(0, 0, 7, 7));
  });

  it("[G6] a real outline a hair inside whole ticks loses the tick, a millionth of one is forgiven", () => {
    expect(found(squareDrawnIn(1e-9))).toEqual(box(0, 0, 10, 10));
    expect(found(squareDrawnIn(1e-4))).toEqual(box(1, 1, 8, 8));
  });

  it("[G6] [G12] any points in any order, crossing or not, never throw; a simple one's rectangle lies inside", () => {
    fc.assert(
      fc.property(anyPoints(9, 30), (points) => {
        const rectangle = largestUprightRectangle(points);
        if (rectangle === null) return;
        expect(outlineHolds(points, rectangle)).toBe(true);
        if (outlineFault(points) === null) expect(exactlyInside(points, rectangle)).toBe(true);
      }),
      { numRuns: 600 },
    );
  });
});

describe("bounded work", () => {
  const chance = new Chance(11);
  const rough = roughRectangle(24_000_000, 32_000_000, 500, 160_000, () => chance.next());

  it("[G6] [G7] a rough edge of 2,000 points is proven within a hundredth of the usual effort", () => {
    const { box: rectangle, proven, atMost } = largestUprightRectangleWithin(rough, 100_000);
    if (rectangle === null) throw new Error("no rectangle was found");
    expect(proven).toBe(true);
    expect(exactlyInside(rough, rectangle)).toBe(true);
    expect(letOutArea(rectangle)).toBeGreaterThan(atMost);
  });

  it("[G11] cut short, what was found still lies inside and cannot be let out, and the bound still holds", () => {
    const points = [
      ...Array.from({ length: 400 }, (_, index) => point(index * 50_000, index * 50_000)),
      ...Array.from({ length: 400 }, (_, index) => {
        const at = (399 - index) * 50_000;
        return point(at + 900_000, at - 900_000 - Math.round(chance.next() * 90_000));
      }),
    ];
    const whole = largestUprightRectangleWithin(points);
    expect(whole.proven).toBe(true);
    let shorts = 0;
    for (const effort of [0, 2_000, 10_000, 40_000, 100_000]) {
      const short = largestUprightRectangleWithin(points, effort);
      if (!short.proven) shorts++;
      expect(short.atMost).toBeGreaterThanOrEqual(whole.atMost * (1 - 1e-12));
      expect(largestUprightRectangleWithin(points, effort)).toEqual(short);
      if (short.box === null) continue;
      expect(exactlyInside(points, short.box)).toBe(true);
      expect(exactlyInside(points, grownBy(short.box, 1, 0, 0, 0))).toBe(false);
      expect(exactlyInside(points, grownBy(short.box, 0, 0, 0, 1))).toBe(false);
    }
    expect(shorts).toBeGreaterThanOrEqual(3);
  });
});
