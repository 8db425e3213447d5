import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inch, type Length, mm, ZERO } from "../../src/lengths/index.ts";
import {
  type FrameWanted,
  type Obstacle,
  planWall,
  wallFaults,
  type WallJob,
  type WallRule,
} from "../../src/plans/index.ts";
import { sayWallCheck } from "../../src/words/hanging.ts";

const framed = (width: Length, height: Length = inch(20)): FrameWanted => ({
  title: "",
  width,
  height,
  weight: 1,
  set: null,
});
const DOOR: Obstacle = { name: "door", x: inch(100), y: ZERO, width: inch(40), height: inch(84) };

const wall = (
  rule: WallRule,
  frames: readonly FrameWanted[],
  avoid: readonly Obstacle[] = [DOOR],
): WallJob => ({
  wall: { width: inch(240), height: inch(108) },
  floor: ZERO,
  avoid,
  eyeLine: inch(57),
  rule,
  frames,
});
const five = Array.from({ length: 5 }, () => framed(inch(16)));
const leftsOf = (job: WallJob): readonly number[] => planWall(job, 1).places.map(({ x }) => x / inch(1));

describe("past a door", () => {
  it("[HG34] a row is parted at it, its gap kept, each part in the middle of its stretch, the eye line kept", () => {
    const job = wall({ kind: "gap", gap: inch(4), centre: null }, five);
    const plan = planWall(job, 1);
    // 100 in on either side: two of 16 in with 4 in between leave 32 in at each end, three 22 in.
    const [left, right] = [
      [32, 52],
      [162, 182, 202],
    ];
    expect([
      [...left, ...right],
      [22, 42, 62, 172, 192],
    ]).toContainEqual(leftsOf(job));
    expect(plan.checks).toEqual([{ level: "note", code: "parted", obstacles: [0] }]);
    expect(wallFaults(job, plan)).toEqual([]);
    expect(plan.places.every(({ y }) => y === inch(47))).toBe(true);
  });

  it("[HG34] gaps that fill the wall fill it on each side, equal on each part", () => {
    const job = wall({ kind: "spread" }, five);
    // Two in 100 in: gaps of 68/3; three: 52/4.
    const { gaps } = planWall(job, 1);
    expect(gaps.reduce((all, gap) => all + gap, 0)).toBe(inch(240 - 80));
    expect(wallFaults(job, planWall(job, 1))).toEqual([]);
    expect(planWall(job, 1).checks.map(({ code }) => code)).toEqual(["parted"]);
  });

  it("[HG34] a row with a place of its own moves as little as can be, and keeps its gap from the door", () => {
    const job = wall({ kind: "gap", gap: inch(4), centre: inch(90) }, five.slice(0, 3));
    // Asked at 62, 82 and 102: two move 2 in to keep the gap and one goes past, rather than all three by 22 in.
    expect(leftsOf(job)).toEqual([60, 80, 144]);
  });

  it("[HG34] a grid is parted between two columns, rows each by themselves, a set never", () => {
    const grid = wall({ kind: "grid", columns: 4, gap: inch(4), rowGap: inch(2), centre: null }, [
      ...five,
      ...five.slice(0, 3),
    ]);
    expect(wallFaults(grid, planWall(grid, 1))).toEqual([]);
    expect(leftsOf(grid)).toEqual([32, 52, 172, 192, 32, 52, 172, 192]);
    const low: Obstacle = { name: "switch", x: inch(110), y: inch(34), width: inch(4), height: inch(8) };
    const rows = wall(
      { kind: "rows", count: 2, gap: inch(4), rowGap: inch(2), centre: null },
      [...five, ...five.slice(0, 1)],
      [low],
    );
    const plan = planWall(rows, 1);
    expect(wallFaults(rows, plan)).toEqual([]);
    // The upper row hangs over the switch and stays as it is.
    expect(plan.places.slice(0, 3).map(({ x }) => x / inch(1))).toEqual([92, 112, 132]);
    expect(plan.checks).toEqual([{ level: "note", code: "parted", obstacles: [0] }]);
    const pair = five.slice(0, 2).map((frame) => ({ ...frame, set: 1 }));
    const together = leftsOf(wall({ kind: "gap", gap: inch(4), centre: null }, pair));
    expect(Math.abs((together[0] ?? 0) - (together[1] ?? 0))).toBe(20);
  });

  it("[HG34] where no way past is, the stop names what the frames take, what is free, and a way out", () => {
    const wide = Array.from({ length: 3 }, () => framed(inch(60)));
    const job = wall({ kind: "gap", gap: inch(4), centre: null }, wide);
    const plan = planWall(job, 1);
    const [check] = plan.checks;
    expect(check).toEqual({
      level: "stop",
      code: "no-way-past",
      obstacles: [0],
      needs: inch(188),
      free: [inch(100), inch(100)],
    });
    if (check === undefined) throw new Error("it is a stop");
    expect(sayWallCheck(check, { ruler: { unit: "in", graduation: inch(1, 16) }, job })).toBe(
      "Frames and gaps take 188 in; beside door 100 in and 100 in of wall are free. Hang fewer, narrow the gap, or ask for a cluster.",
    );
    expect(wallFaults(job, plan)).toEqual([]);
  });
});

/** Whether frames go one after the other into stretches, tried in every way. */
function goesIn(widths: readonly number[], gap: number, stretches: readonly number[]): boolean {
  if (widths.length === 0) return true;
  const [first, ...others] = stretches;
  if (first === undefined) return false;
  return [...widths.keys(), widths.length].some((count) => {
    const taken = widths.slice(0, count).reduce((all, one) => all + one, gap * Math.max(0, count - 1));
    return (count === 0 || taken <= first) && goesIn(widths.slice(count), gap, others);
  });
}

const rule: fc.Arbitrary<WallRule> = fc.oneof(
  fc.record({
    kind: fc.constant("gap" as const),
    gap: fc.integer({ min: 0, max: 200 }).map((value) => mm(value)),
    centre: fc.option(fc.integer({ min: 1000, max: 5000 }).map((value) => mm(value))),
  }),
  fc.constant({ kind: "spread" } as const),
);

describe("past anything", () => {
  it("[HG34] a row stays over what must stay free only where no way of parting it exists, and the checker finds nothing", () => {
    const [parted, stuck] = [{ times: 0 }, { times: 0 }];
    fc.assert(
      fc.property(
        rule,
        fc.array(fc.integer({ min: 150, max: 1500 }), { minLength: 1, maxLength: 7 }),
        fc.array(fc.tuple(fc.integer({ min: 0, max: 5900 }), fc.integer({ min: 20, max: 1500 })), {
          minLength: 1,
          maxLength: 3,
        }),
        (asked, widths, doors) => {
          const job: WallJob = {
            wall: { width: mm(6000), height: mm(2800) },
            floor: ZERO,
            avoid: doors.map(([x, width]) => ({
              name: "",
              x: mm(x),
              y: ZERO,
              width: mm(width),
              height: mm(2100),
            })),
            eyeLine: mm(1500),
            rule: asked,
            frames: widths.map((width) => framed(mm(width), mm(400))),
          };
          const plan = planWall(job, 1);
          expect(wallFaults(job, plan)).toEqual([]);
          const codes = plan.checks.map(({ code }) => code);
          if (codes.includes("parted")) parted.times++;
          if (!codes.includes("no-way-past")) return;
          stuck.times++;
          const edges = doors.toSorted((a, b) => a[0] - b[0]);
          const stretches: number[] = [];
          let from = 0;
          for (const [x, width] of [...edges, [6000, 0] as const]) {
            if (x > from) stretches.push(Math.min(x, 6000) - from);
            from = Math.max(from, x + width);
          }
          const gap = asked.kind === "gap" ? asked.gap / mm(1) : 0;
          expect(goesIn(widths, gap, stretches)).toBe(false);
        },
      ),
      { numRuns: 500 },
    );
    expect(parted.times).toBeGreaterThan(20);
    expect(stuck.times).toBeGreaterThan(20);
  });

  it("[HG34] the checker that did not part a row finds uneven parts, and a row that lies over a door in silence", () => {
    const job = wall({ kind: "gap", gap: inch(4), centre: null }, five);
    const plan = planWall(job, 1);
    const [first] = plan.places;
    if (first === undefined) throw new Error("it has a frame");
    const moved = plan.places.map((place) => ({ ...place, x: (place.x + inch(1)) as Length }));
    expect(wallFaults(job, { ...plan, places: moved }).join()).toContain("are not equal");
    const over = plan.places.map((place, index) => (index === 0 ? { ...place, x: inch(95) } : place));
    expect(wallFaults(job, { ...plan, places: over }).join()).toContain("could not give way");
  });
});
