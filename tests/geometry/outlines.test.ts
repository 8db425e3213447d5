import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  area,
  clippedArea,
  extentOf,
  mirroredBox,
  mirroredOutline,
  mirroredPoint,
  type Outline,
  outlineFault,
  placeOf,
  type RealPoint,
  simplified,
  smallestUprightRectangle,
  turned,
  twiceSignedArea,
  windingOf,
  withinBox,
} from "../../src/geometry/index.ts";
import { mm, ticks } from "../../src/lengths/index.ts";
import { Fraction } from "../reference/fraction.ts";
import { exactly, exactTwiceCommonArea, firstCrossing } from "./brute.ts";
import { anyPoints, box, ellipse, outline, point, roundedStars, shifted } from "./outlines.ts";

const lengths = fc.integer({ min: -8_000_000_000, max: 8_000_000_000 });
const steps = fc.integer({ min: -13, max: 13 });
const realPoints = fc.record({
  x: fc.double({ min: -1e6, max: 1e6, noNaN: true }),
  y: fc.double({ min: -1e6, max: 1e6, noNaN: true }),
});
const SQUARE_MILLIMETRE = 80_000 ** 2;

describe("what is an outline", () => {
  it("[G1] finds crossing, touching and folded edges like exact fractions do, one pair or none", () => {
    let refused = 0;
    let passed = 0;
    fc.assert(
      fc.property(anyPoints(7, 5), (points) => {
        const edges = points.map(
          (from, index) => [from, points[(index + 1) % points.length] ?? from] as const,
        );
        fc.pre(points.length >= 3 && edges.every(([from, to]) => from.x !== to.x || from.y !== to.y));
        const fault = outlineFault(points);
        expect(fault === null).toBe(firstCrossing(points) === null);
        if (fault === null) passed++;
        else refused++;
        if (fault?.code !== "crosses-itself") return;
        const [a, b] = fault.edges;
        expect(a).toBeLessThan(b);
        // The two edges named, bridged by nothing else, are at fault by themselves.
        const [from, to] = [edges[a], edges[b]];
        expect(from && to && meet(from, to, b - a === 1, a === 0 && b === points.length - 1)).toBe(true);
      }),
      { numRuns: 2000 },
    );
    expect(Math.min(refused, passed)).toBeGreaterThan(50);
  });

  it("[G1] names points without a position, too few points, and takes equal neighbours as one", () => {
    expect(
      outlineFault([
        { x: 0, y: 0 },
        { x: Number.NaN, y: 1 },
      ]),
    ).toEqual({ code: "not-a-point", point: 1 });
    expect(outlineFault([])).toEqual({ code: "too-few-points", points: 0 });
    expect(outlineFault(outline([1, 1], [1, 1], [5, 5]))).toEqual({ code: "too-few-points", points: 2 });
    expect(outlineFault(outline([0, 0], [4, 0], [4, 0], [4, 4], [0, 0]))).toBeNull();
    expect(outlineFault(outline([0, 0], [4, 0], [9, 0]))).toMatchObject({ code: "crosses-itself" });
    expect(outlineFault(outline([0, 0], [4, 4], [4, 0], [0, 4]))).toEqual({
      code: "crosses-itself",
      edges: [0, 2],
    });
  });

  it("[G1] a crossing by less than doubles can tell is still seen", () => {
    const far = 7_999_999_999;
    const thin = outline([0, 0], [far, far - 1], [far, far], [1, 1]);
    expect(outlineFault(thin)).toBeNull();
    expect(outlineFault(outline([0, 0], [far, far], [far, far - 1], [1, 1]))).not.toBeNull();
  });
});

const cross = (p: RealPoint, q: RealPoint, r: RealPoint): number =>
  Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));

/** Whether two edges of an outline meet where they should not, by their exact common points. */
function meet(
  [a, b]: readonly [RealPoint, RealPoint],
  [c, d]: readonly [RealPoint, RealPoint],
  follows: boolean,
  closes: boolean,
): boolean {
  if (follows) return cross(a, b, d) === 0 && (a.x - b.x) * (d.x - b.x) + (a.y - b.y) * (d.y - b.y) > 0;
  if (closes) return cross(c, d, b) === 0 && (c.x - d.x) * (b.x - d.x) + (c.y - d.y) * (b.y - d.y) > 0;
  return cross(a, b, c) * cross(a, b, d) <= 0 && cross(c, d, a) * cross(c, d, b) <= 0;
}

describe("points and areas", () => {
  it("[G2] a point is on the edge exactly when it is, and inside when the outline winds round it", () => {
    fc.assert(
      fc.property(roundedStars(3, 10, 12), steps, steps, (points, x, y) => {
        fc.pre(outlineFault(points) === null);
        const tried = point(x, y);
        // Drawn large, no edge that misses the point comes near it: the small box round it is common in full, in part, or not at all.
        const large = points.map((of) => ({ x: of.x * 2000, y: of.y * 2000 }));
        const probe = box(x * 2000 - 1, y * 2000 - 1, 2, 2);
        const common = exactTwiceCommonArea(large, probe);
        const place = common.sign() === 0 ? "outside" : common.same(Fraction.of(8)) ? "inside" : "edge";
        expect(placeOf(tried, points)).toBe(place);
      }),
      { numRuns: 800 },
    );
  });

  it("[G2] tells sides apart that doubles cannot", () => {
    const far = 7_999_999_999;
    const triangle = outline([0, 0], [far, far - 1], [far, far]);
    expect(placeOf({ x: far - 1, y: far - 2 + 2 ** -19 }, triangle)).toBe("inside");
    expect(placeOf(point(far - 1, far - 2), triangle)).toBe("outside");
    expect(placeOf({ x: far / 2, y: (far - 1) / 2 }, triangle)).toBe("edge");
    const hair = [
      { x: 1, y: 1 },
      { x: 3 + 2 ** -50, y: 3 },
      { x: 3, y: 9 },
    ];
    expect(windingOf(hair)).toBe(1);
    expect(placeOf({ x: 2, y: 2 }, hair)).toBe("inside");
  });

  it("[G3] twice the area is exact and tells the way round", () => {
    expect(twiceSignedArea(outline([0, 0], [10, 0], [10, 10], [0, 10]))).toBe(200n);
    expect(twiceSignedArea(outline([0, 10], [10, 10], [10, 0], [0, 0]))).toBe(-200n);
    const far = 8_000_000_000;
    expect(twiceSignedArea(outline([-far, -far], [far, -far], [far, far], [-far, far - 1]))).toBe(
      2n * (2n * BigInt(far)) ** 2n - 2n * BigInt(far),
    );
    expect(
      windingOf([
        { x: 0, y: 0 },
        { x: 0.1, y: 0.1 },
        { x: 0.2, y: 0.2 },
      ]),
    ).toBe(0);
  });

  it("[G3] square millimetres, from any start and either way round", () => {
    const sheet = outline([0, 0], [mm(200), 0], [mm(200), mm(150)], [0, mm(150)]);
    expect(area(sheet)).toBe(30_000);
    expect(area([])).toBe(0);
    const round = ellipse(mm(100), mm(70), 4000);
    expect(area(round) / (Math.PI * 7000)).toBeCloseTo(1, 5);
    fc.assert(
      fc.property(roundedStars(3, 20, 30_000_000), fc.nat(20), lengths, (points, start, by) => {
        const moved = points.map(({ x, y }) => point(x + by, y - by));
        const size = Math.abs(Number(twiceSignedArea(points))) / 2 / SQUARE_MILLIMETRE;
        expect(Math.abs(area(shifted(moved, start).toReversed()) - size)).toBeLessThan(1e-6);
      }),
    );
  });

  it("[G14] the common area is that of exact cutting", () => {
    const boxes = fc.tuple(
      fc.integer({ min: -1_000_000, max: 1_000_000 }),
      fc.integer({ min: -1_000_000, max: 1_000_000 }),
      fc.integer({ min: 1, max: 1_500_000 }),
      fc.integer({ min: 1, max: 1_500_000 }),
    );
    fc.assert(
      fc.property(roundedStars(3, 14, 1_000_000), boxes, (points, [left, top, width, height]) => {
        fc.pre(outlineFault(points) === null);
        const window = box(left, top, width, height);
        const exact = exactTwiceCommonArea(points, window).halved().over(exactly(SQUARE_MILLIMETRE));
        expect(clippedArea(points, window)).toBeCloseTo(exact.toNumber(), 8);
      }),
      { numRuns: 150 },
    );
    const u = outline(
      [0, 0],
      [mm(1), 0],
      [mm(1), mm(9)],
      [mm(3), mm(9)],
      [mm(3), 0],
      [mm(4), 0],
      [mm(4), mm(10)],
      [0, mm(10)],
    );
    expect(clippedArea(u, box(0, 0, mm(4), mm(5)))).toBeCloseTo(10, 12);
    expect(clippedArea(u, box(mm(1), 0, mm(2), mm(9)))).toBe(0);
    expect(clippedArea(u, box(-mm(5), -mm(5), mm(50), mm(50)))).toBeCloseTo(area(u), 12);
  });

  it("[G13] the smallest rectangle round whole points is their extent, round real ones a tick larger at most", () => {
    fc.assert(
      fc.property(fc.array(realPoints, { minLength: 1, maxLength: 20 }), (points) => {
        const around = smallestUprightRectangle(points);
        const extent = extentOf(points);
        const slack = [
          extent.left - around.left,
          extent.top - around.top,
          around.left + around.width - extent.right,
          around.top + around.height - extent.bottom,
        ];
        for (const side of slack) {
          expect(side).toBeGreaterThanOrEqual(-1e-6);
          expect(side).toBeLessThan(1);
        }
      }),
    );
    expect(smallestUprightRectangle(outline([3, 9], [-4, 2], [5, 5]))).toEqual(box(-4, 2, 9, 7));
    expect(() => smallestUprightRectangle([])).toThrow(RangeError);
    expect(() => smallestUprightRectangle([{ x: Number.NaN, y: 0 }])).toThrow(RangeError);
  });
});

describe("turns and mirrors", () => {
  it("[G4] quarter turns are exact, clockwise, and any whole turns more or less", () => {
    const [centre, dot] = [point(1000, 2000), point(1007, 2003)];
    const to = (degrees: number): RealPoint | undefined => turned([dot], centre, degrees)[0];
    expect(to(0)).toEqual(dot);
    expect(to(90)).toEqual({ x: 997, y: 2007 });
    expect(to(180)).toEqual({ x: 993, y: 1997 });
    expect(to(270)).toEqual({ x: 1003, y: 1993 });
    expect(to(-90)).toEqual(to(270));
    expect(to(90 + 360 * 7)).toEqual(to(90));
    expect(to(-360)).toEqual(dot);
  });

  it("[G4] any turn keeps distances and angles, and its opposite undoes it", () => {
    fc.assert(
      fc.property(
        realPoints,
        realPoints,
        fc.double({ min: -720, max: 720, noNaN: true }),
        (dot, centre, degrees) => {
          const [there] = turned([dot], centre, degrees);
          if (there === undefined) throw new Error("a point was lost");
          const [back] = turned([there], centre, -degrees);
          expect(back?.x).toBeCloseTo(dot.x, 6);
          expect(back?.y).toBeCloseTo(dot.y, 6);
          const radius = Math.hypot(dot.x - centre.x, dot.y - centre.y);
          const before = Math.atan2(dot.y - centre.y, dot.x - centre.x);
          expect(there.x).toBeCloseTo(centre.x + radius * Math.cos(before + (degrees * Math.PI) / 180), 5);
          expect(there.y).toBeCloseTo(centre.y + radius * Math.sin(before + (degrees * Math.PI) / 180), 5);
        },
      ),
    );
  });

  it("[G15] from behind a point lies at W - x, a box at W - left - width; twice is the same", () => {
    expect(mirroredPoint(point(30, 7), ticks(100))).toEqual(point(70, 7));
    expect(mirroredBox(box(10, 5, 30, 20), ticks(100))).toEqual(box(60, 5, 30, 20));
    fc.assert(
      fc.property(lengths, lengths, fc.nat(1_000_000), fc.nat(1_000_000), (x, y, size, board) => {
        const width = ticks(board);
        const [dot, one] = [point(x, y), box(x, y, size, size)];
        expect(mirroredPoint(mirroredPoint(dot, width), width)).toEqual(dot);
        expect(mirroredBox(mirroredBox(one, width), width)).toEqual(one);
        expect(mirroredOutline([dot], width)).toEqual([mirroredPoint(dot, width)]);
      }),
    );
    const round = ellipse(500, 300, 12);
    expect(windingOf(mirroredOutline(round, 900))).toBe(-windingOf(round));
  });

  it("[G15] a box is within another when no side passes", () => {
    const outer = box(0, 0, 10, 10);
    expect(withinBox(box(0, 0, 10, 10), outer)).toBe(true);
    expect(withinBox(box(2, 3, 8, 7), outer)).toBe(true);
    for (const past of [box(-1, 0, 5, 5), box(0, -1, 5, 5), box(6, 0, 5, 5), box(0, 6, 5, 5)]) {
      expect(withinBox(past, outer)).toBe(false);
    }
  });
});

describe("fewer points", () => {
  it("[G5] keeps points of the outline, stays within the tolerance, and stays simple", () => {
    let dropped = 0;
    fc.assert(
      fc.property(roundedStars(4, 40, 100_000), fc.nat(90_000), (points, tolerance) => {
        fc.pre(outlineFault(points) === null);
        dropped += points.length - expectLikeness(points, tolerance).length;
      }),
      { numRuns: 300 },
    );
    expect(dropped).toBeGreaterThan(300);
  });

  it("[G5] also where thorns reach into dents that would be drawn straight", () => {
    const columns = fc.array(fc.tuple(fc.nat(100), fc.nat(100)), { minLength: 4, maxLength: 30 });
    fc.assert(
      fc.property(columns, fc.integer({ min: 1, max: 120 }), (pairs, tolerance) => {
        expectLikeness(thorns(pairs), tolerance);
      }),
      { numRuns: 300 },
    );
  });

  it("[G5] a square with points along its sides is a square, at no tolerance at all", () => {
    const square = outline([0, 0], [5, 0], [10, 0], [10, 4], [10, 10], [3, 10], [0, 10], [0, 5]);
    expect(simplified(square, ticks(0))).toEqual(outline([0, 0], [10, 0], [10, 10], [0, 10]));
    expect(simplified(shifted(square, 5), ticks(0))).toHaveLength(4);
  });

  it("[G5] a dent that a thorn reaches into is not drawn straight", () => {
    const thorn = [
      [95, 0],
      [100, 105],
      [105, 0],
    ] as const;
    const rim = [
      [200, 0],
      [200, 100],
      [120, 100],
      [115, 110],
      [85, 110],
      [80, 100],
      [0, 100],
    ] as const;
    const dented = outline([0, 0], ...thorn, ...rim);
    // Without the thorn the dent, ten deep, is within the tolerance.
    expect(simplified(outline([0, 0], ...rim), ticks(12))).toHaveLength(4);
    const fewer = expectLikeness(dented, 12);
    expect(fewer).toContainEqual(point(100, 105));
    expect(fewer.some(({ y }) => y === 110)).toBe(true);
    expect(fewer.length).toBeLessThan(dented.length);
  });

  it("[G5] an outline that crosses itself comes back as it is", () => {
    const crossed = outline([0, 0], [50, 1], [100, 0], [0, 100], [50, 101], [100, 100]);
    expect(outlineFault(crossed)).not.toBeNull();
    expect(simplified(crossed, ticks(1000))).toBe(crossed);
  });
});

/** A strip whose foot wavers, with a thorn of nothing over each column that ends a hair above the foot. */
function thorns(columns: readonly (readonly [number, number])[]): Outline {
  const foot = columns.map(([low], index) => point(index * 40, 1000 + low));
  const head = columns.slice(0, -1).flatMap(([low, short], index) => {
    // The foot half way to the next column, less a little.
    const depth = 1000 + Math.floor((low + (columns[index + 1]?.[0] ?? low)) / 2) - 4 - Math.floor(short / 2);
    return [point(index * 40 + 15, 0), point(index * 40 + 20, depth), point(index * 40 + 25, 0)];
  });
  return [point(0, 0), ...head, point((columns.length - 1) * 40, 0), ...foot.toReversed()];
}

/** Simplifies, and sees that what comes back is simple, made of the outline's own points, and near all of them. */
function expectLikeness(points: Outline, tolerance: number): Outline {
  expect(outlineFault(points)).toBeNull();
  const fewer = simplified(points, ticks(tolerance));
  expect(outlineFault(fewer)).toBeNull();
  const places = fewer.map((kept) => points.indexOf(kept));
  expect(places).toEqual(places.toSorted((a, b) => a - b));
  expect(places).not.toContain(-1);
  points.forEach((left, place) => {
    const after = places.findIndex((kept) => kept > place);
    const to = fewer[after < 0 ? 0 : after];
    const from = fewer.at((after < 0 ? 0 : after) - 1);
    if (from === undefined || to === undefined) throw new Error("nothing was kept");
    expect(distance(left, from, to)).toBeLessThanOrEqual(tolerance + 1e-6);
  });
  return fewer;
}

function distance(dot: RealPoint, from: RealPoint, to: RealPoint): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const share = Math.min(
    1,
    Math.max(0, ((dot.x - from.x) * dx + (dot.y - from.y) * dy) / (dx * dx + dy * dy)),
  );
  return Math.hypot(dot.x - from.x - share * dx, dot.y - from.y - share * dy);
}
