import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type FramedWork, type Hanging, hangWork, type HungWork } from "../../src/assembly/index.ts";
import { inch, subtract, ticks, ZERO } from "../../src/lengths/index.ts";

const length = (least: number, most: number) =>
  fc.integer({ min: least * 16, max: most * 16 }).map((marks) => inch(marks, 16));

const WALL = { x: inch(40), y: inch(50) };
const HABITS = { hookDrop: inch(1, 2), publicWay: false, floor: ZERO, wall: null, shakes: false, seats: [] };

const wire = (more: Partial<Extract<Hanging, { kind: "wire" }>> = {}): Hanging => ({
  kind: "wire",
  below: inch(5),
  apart: inch(12),
  wire: { length: inch(13) },
  hooks: 1,
  hooksApart: ZERO,
  ...more,
});

const hung = (hanging: Hanging, more: Partial<FramedWork> = {}): HungWork =>
  hangWork(
    { title: "Ebb", width: inch(16), height: inch(20), mass: 2.4, depth: null, hanging, ...more },
    WALL,
    HABITS,
  );

const codes = (work: HungWork): readonly string[] => work.checks.map(({ level, code }) => `${level} ${code}`);

describe("one work on its hooks", () => {
  it("[HG1] [HG2] 13 in of wire between rings 12 in apart rises 2 1/2 in, and the nail stands half an inch above the hook", () => {
    const { hooks, wire: taut } = hung(wire());
    expect(taut?.rise).toBe(inch(5, 2));
    expect(hooks).toEqual([{ x: inch(48), bear: inch(135, 2), nail: inch(68) }]);
  });

  it("[HG1] a rise of 2 1/2 in wants 13 in of wire", () => {
    expect(hung(wire({ wire: { drop: inch(5, 2) } })).wire?.length).toBe(inch(13));
  });

  it("[HG2] [HG3] rings bear themselves, plates have no drop, a cleat's screws lie below and spread evenly", () => {
    expect(hung({ kind: "rings", below: inch(3), apart: inch(8) }).hooks).toEqual([
      { x: inch(44), bear: inch(67), nail: inch(135, 2) },
      { x: inch(52), bear: inch(67), nail: inch(135, 2) },
    ]);
    expect(hung({ kind: "plates", below: inch(3), apart: inch(8) }).hooks[0]?.nail).toBe(inch(67));
    const cleat = hung({ kind: "cleat", below: inch(3), apart: inch(8), screws: 3, down: inch(1) });
    expect(cleat.hooks.map(({ x, nail }) => [x, nail])).toEqual([
      [inch(44), inch(66)],
      [inch(48), inch(66)],
      [inch(52), inch(66)],
    ]);
    expect(cleat.loads?.hook).toBeCloseTo((2.4 * 9.80665) / 3, 9);
  });

  it("[HG3] two hooks stand evenly about the middle, to the tick", () => {
    fc.assert(
      fc.property(length(2, 15), length(16, 60), fc.nat(5), (apart, width, odd) => {
        const wide = ticks(width + odd);
        const [left, right] = hung({ kind: "rings", below: inch(3), apart }, { width: wide }).hooks;
        if (left === undefined || right === undefined) throw new Error("there are two");
        expect(subtract(right.x, left.x)).toBe(apart);
        const toLeft = left.x - WALL.x;
        const toRight = WALL.x + wide - right.x;
        expect(Math.abs(toLeft - toRight)).toBeLessThanOrEqual(2);
      }),
    );
  });

  it("[HG6] a wire that is never taut, one that shows, hooks past the rings, a fitting past the frame are stops, and the hooks are there all the same", () => {
    const short = hung(wire({ wire: { length: inch(12) } }));
    expect(codes(short)).toEqual(["stop wire-short"]);
    expect(short.loads).toBeNull();
    expect(short.hooks).toHaveLength(1);
    expect(codes(hung(wire({ below: inch(2) })))).toEqual(["stop wire-shows", "warn nail-shows"]);
    expect(codes(hung(wire({ hooks: 2, hooksApart: inch(25, 2), wire: { length: inch(16) } })))).toContain(
      "stop hooks-past-rings",
    );
    expect(codes(hung({ kind: "rings", below: inch(3), apart: inch(16) }))).toEqual([
      "stop fitting-past-frame",
    ]);
    expect(codes(hung({ kind: "rings", below: inch(20), apart: inch(8) }))).toEqual([
      "stop fitting-past-frame",
    ]);
  });

  it("[HG7] a flat wire, a nail in sight, a work fixed below its middle and a heavy one are warned about", () => {
    const flat = hung(wire({ wire: { length: inch(12 * 64 + 1, 64) } }));
    expect(codes(flat)).toEqual(["warn wire-flat"]);
    expect(flat.loads?.ring).toBeGreaterThan(2.4 * 9.80665);
    expect(codes(hung({ kind: "rings", below: inch(1, 4), apart: inch(8) }))).toEqual(["warn nail-shows"]);
    expect(codes(hung({ kind: "rings", below: inch(11), apart: inch(8) }))).toEqual(["warn leans-out"]);
    expect(codes(hung(wire(), { mass: 22.68 }))).toEqual(["warn heavy"]);
    expect(codes(hung(wire(), { mass: 22.67 }))).toEqual([]);
  });

  it("[HG9] a weight that is not known gives no load and a note", () => {
    const work = hung(wire(), { mass: null });
    expect(work.loads).toBeNull();
    expect(codes(work)).toEqual(["note weight-unknown"]);
  });

  it("[HG1] [HG2] every sum of the reckoning makes what was kept of it", () => {
    fc.assert(
      fc.property(length(2, 14), length(15, 30), length(1, 9), fc.boolean(), (apart, long, below, two) => {
        const hooksApart = two ? ticks(apart / 2) : ZERO;
        const { reckoning } = hung(
          wire({ apart, wire: { length: long }, below, hooks: two ? 2 : 1, hooksApart }),
        );
        expect(reckoning.map(({ name }) => name)).toEqual(["rise", "bear", "nail"]);
        for (const { is, makes } of reckoning) expect(Math.abs(makes - is)).toBeLessThanOrEqual(0.5 + 1e-3);
      }),
    );
  });
});
