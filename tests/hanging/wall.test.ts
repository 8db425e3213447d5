import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inch, type Length, mm, subtract, sum, ticks, ZERO } from "../../src/lengths/index.ts";
import {
  type FrameWanted,
  LARGEST_AT,
  planWall,
  wallFaults,
  type WallJob,
  type WallRule,
} from "../../src/plans/index.ts";

const length = (least: number, most: number): fc.Arbitrary<Length> =>
  fc.integer({ min: least * 80_000, max: most * 80_000 }).map(ticks);

const frame: fc.Arbitrary<FrameWanted> = fc.record({
  title: fc.constant(""),
  width: length(100, 900),
  height: length(100, 900),
  weight: fc.double({ min: 0.5, max: 30, noNaN: true }),
  set: fc.option(fc.nat(2), { freq: 4 }),
});

const avoid = fc.array(
  fc.record({
    name: fc.constant("door"),
    x: length(0, 6000),
    y: length(0, 2000),
    width: length(50, 1200),
    height: length(50, 2000),
  }),
  { maxLength: 3 },
);

const centre = fc.option(length(1000, 6000));

const jobs = (rule: fc.Arbitrary<WallRule>, most: number): fc.Arbitrary<WallJob> =>
  fc.record({
    wall: fc.record({ width: length(3000, 12_000), height: length(2000, 4000) }),
    floor: length(-1500, 0),
    avoid,
    eyeLine: length(0, 1700),
    rule,
    frames: fc.array(frame, { maxLength: most }),
  });

const gap = length(0, 300);
const rows: fc.Arbitrary<WallRule> = fc.oneof(
  fc.record({ kind: fc.constant("gap" as const), gap, centre }),
  fc.constant({ kind: "spread" } as const),
);
const grids: fc.Arbitrary<WallRule> = fc.record({
  kind: fc.constant("grid" as const),
  columns: fc.integer({ min: 1, max: 6 }),
  gap,
  rowGap: gap,
  centre,
});
const clusters: fc.Arbitrary<WallRule> = fc.record({
  kind: fc.constant("cluster" as const),
  gap,
  centre,
  largest: fc.constantFrom(...LARGEST_AT),
});
const several: fc.Arbitrary<WallRule> = fc.record({
  kind: fc.constant("rows" as const),
  count: fc.integer({ min: 1, max: 5 }),
  gap,
  rowGap: gap,
  centre,
});

/** The least width of the widest row, by trying every place where rows may begin. */
function narrowest(job: WallJob, count: number, between: Length): number {
  const order = planWall({ ...job, rule: { kind: "spread" } }, 1).order;
  const frames = order.map((index) => job.frames[index]);
  const rowWidth = (from: number, to: number): number =>
    frames.slice(from, to).reduce((all, one) => all + (one?.width ?? 0), between * (to - from - 1));
  const begins = (at: number): boolean =>
    at === 0 || frames[at]?.set === null || frames[at]?.set !== frames[at - 1]?.set;
  const groups = frames.filter((_, at) => begins(at)).length;
  const best = (from: number, left: number): number => {
    if (left === 1) return rowWidth(from, frames.length);
    let least = Number.POSITIVE_INFINITY;
    for (let next = from + 1; next < frames.length; next++)
      if (begins(next)) least = Math.min(least, Math.max(rowWidth(from, next), best(next, left - 1)));
    return least;
  };
  return best(0, Math.min(count, groups));
}

const sound = (job: WallJob): void => {
  expect(wallFaults(job, planWall(job, 1))).toEqual([]);
};

describe("a wall", () => {
  it("[HG10] [HG11] [HG14] a row holds: middles on the eye line, gaps and widths make the wall, sets together, every fault said", () => {
    fc.assert(fc.property(jobs(rows, 20), sound), { numRuns: 1000 });
  });

  it("[HG10] gaps that fill the wall differ by a tick at most, the ends included", () => {
    fc.assert(
      fc.property(jobs(fc.constant({ kind: "spread" }), 20), (any) => {
        const job = { ...any, avoid: [] };
        const { gaps } = planWall(job, 1);
        expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(1);
        expect(sum(gaps) + sum(job.frames.map(({ width }) => width))).toBe(job.wall.width);
      }),
    );
  });

  it("[HG11] [HG12] [HG14] a grid holds, every frame in the middle of its column", () => {
    fc.assert(
      fc.property(jobs(grids, 20), (job) => {
        sound(job);
        const { rule } = job;
        if (rule.kind !== "grid" || job.frames.length === 0) return;
        const { places, order } = planWall(job, 1);
        const middles = new Map<number, number>();
        order.forEach((index, turn) => {
          const column = turn % rule.columns;
          const middle = (places[index]?.x ?? 0) + (job.frames[index]?.width ?? 0) / 2;
          expect(Math.abs((middles.get(column) ?? middle) - middle)).toBeLessThanOrEqual(1);
          middles.set(column, middle);
        });
      }),
      { numRuns: 400 },
    );
  });

  it("[HG11] [HG23] rows hold: as many as asked, gaps equal to the tick, middles level, the widest as narrow as can be", () => {
    fc.assert(
      fc.property(jobs(several, 12), (job) => {
        sound(job);
        const { rule } = job;
        if (rule.kind !== "rows" || job.frames.length === 0) return;
        const { gaps } = planWall({ ...job, avoid: [] }, 1);
        const widest = subtract(job.wall.width, sum(gaps));
        expect(widest).toBe(narrowest(job, rule.count, rule.gap));
      }),
      { numRuns: 300 },
    );
  });

  it("[HG11] [HG13] [HG14] a cluster holds: no two nearer than the gap, every frame a gap from a neighbour", () => {
    fc.assert(fc.property(jobs(clusters, 12), sound), { numRuns: 8, endOnFailure: true });
  });

  it("[HG13] a cluster keeps its own gap from a door where there is room", () => {
    const door = { name: "door", x: mm(2600), y: ZERO, width: mm(900), height: mm(2100) };
    const job: WallJob = {
      wall: { width: mm(9000), height: mm(3000) },
      floor: ZERO,
      avoid: [door],
      eyeLine: mm(1500),
      rule: { kind: "cluster", gap: mm(50), centre: mm(3000), largest: "middle" },
      frames: Array.from({ length: 6 }, (_, index) => ({
        title: "",
        width: mm(300 + 40 * index),
        height: mm(400),
        weight: 1,
        set: null,
      })),
    };
    const plan = planWall(job, 3);
    expect(plan.checks).toEqual([]);
    plan.places.forEach(({ x }, index) => {
      const right = x + (job.frames[index]?.width ?? 0);
      expect(x >= door.x + door.width + mm(50) || right <= door.x - mm(50)).toBe(true);
    });
  });

  it("[HG14] a row wider than its wall says what it needs, and names what passes which edge", () => {
    const job: WallJob = {
      wall: { width: inch(40), height: inch(96) },
      floor: ZERO,
      avoid: [],
      eyeLine: inch(57),
      rule: { kind: "gap", gap: inch(2), centre: null },
      frames: [1, 2].map(() => ({ title: "", width: inch(20), height: inch(20), weight: 1, set: null })),
    };
    const { checks, gaps } = planWall(job, 1);
    expect(gaps).toEqual([inch(-1), inch(2), inch(-1)]);
    expect(checks).toEqual([
      { level: "stop", code: "wall-too-narrow", needs: inch(42), has: inch(40) },
      { level: "stop", code: "off-wall", frame: 0, side: "left", by: inch(1) },
      { level: "stop", code: "off-wall", frame: 1, side: "right", by: inch(1) },
    ]);
  });

  it("[HG15] a row of two, one three times as heavy, balances a quarter of the way from its middle", () => {
    const job: WallJob = {
      wall: { width: inch(100), height: inch(96) },
      floor: ZERO,
      avoid: [],
      eyeLine: inch(57),
      rule: { kind: "gap", gap: ZERO, centre: null },
      frames: [3, 1].map((weight) => ({ title: "", width: inch(20), height: inch(20), weight, set: null })),
    };
    expect(planWall(job, 1).balance).toEqual({ across: inch(-5), up: ZERO, share: 0.25 });
  });

  it("[HG16] the same job and seed give the same wall, and a wall with nothing on it is a wall", () => {
    const [job] = fc.sample(jobs(clusters, 9), { numRuns: 1, seed: 11 });
    if (job === undefined) throw new Error("there is a job");
    expect(planWall(job, 5)).toEqual(planWall(job, 5));
    const bare = planWall({ ...job, frames: [] }, 1);
    expect(bare.gaps).toEqual([job.wall.width]);
  });
});
