import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  chooseHardware,
  type FramedWork,
  type HangCheck,
  type HangingHabits,
  hangWork,
  KILOGRAMS_PER_POUND,
  measuresOf,
  onTape,
  sharedLoads,
  STANDARD_GRAVITY,
  wireLoads,
  triangleOfRise,
} from "../../src/assembly/index.ts";
import { add, fromReal, inch, type Length, mm, ticks, ZERO } from "../../src/lengths/index.ts";
import { planWall, type WallJob } from "../../src/plans/index.ts";

const PLAIN: HangingHabits = {
  hookDrop: ZERO,
  publicWay: false,
  floor: ZERO,
  wall: null,
  shakes: false,
  seats: [],
};
const rings = { kind: "rings", below: inch(4), apart: inch(10) } as const;
const oneHook = {
  kind: "wire",
  below: inch(5),
  apart: inch(12),
  wire: { drop: inch(3) },
  hooks: 1,
  hooksApart: ZERO,
} as const;

const checksOf = (habits: Partial<HangingHabits>, more: Partial<FramedWork> = {}): readonly HangCheck[] =>
  hangWork(
    { title: "Ebb", width: inch(16), height: inch(20), mass: 2, depth: null, hanging: rings, ...more },
    { x: inch(40), y: inch(50) },
    { ...PLAIN, ...habits },
  ).checks;

const real = (millimetres: number): Length => fromReal(millimetres * 80_000, "nearest");
const pounds = (weight: number): number => weight * KILOGRAMS_PER_POUND;
const codes = (checks: readonly HangCheck[]): readonly string[] => checks.map(({ code }) => code);

describe("what the wall and the place ask for", () => {
  it("[HG25] in plaster and board a work from 20 lb up goes into a stud, into masonry and boards not", () => {
    for (const wall of ["plasterboard", "lath"] as const) {
      expect(codes(checksOf({ wall }, { mass: pounds(19.99) }))).toEqual([]);
      expect(codes(checksOf({ wall }, { mass: pounds(20) }))).toEqual(["into-frame"]);
      expect(codes(checksOf({ wall }, { mass: pounds(50) }))).toEqual(["heavy"]);
    }
    for (const wall of ["boards", "masonry", null] as const)
      expect(codes(checksOf({ wall }, { mass: pounds(30) }))).toEqual([]);
  });

  it("[HG26] where the ground shakes: putty for a light work, a closed hanger else, two hooks for one; heavy ones are for a licensed hand", () => {
    const shakes = true;
    expect(checksOf({ shakes })).toEqual([{ level: "warn", code: "shakes", light: true, oneHook: false }]);
    expect(checksOf({ shakes }, { mass: pounds(20), hanging: oneHook })).toEqual([
      { level: "warn", code: "shakes", light: false, oneHook: true },
    ]);
    expect(codes(checksOf({ shakes }, { mass: null }))).toEqual(["weight-unknown", "shakes"]);
    expect(codes(checksOf({ shakes }, { mass: pounds(51) }))).toEqual(["heavy"]);
  });

  it("[HG26] a work over a seat is warned about, one beside it not", () => {
    const over = (x: number, width: number): readonly string[] =>
      codes(checksOf({ seats: [{ name: "the bench", x: inch(x), width: inch(width) }] }));
    expect(over(0, 40)).toEqual([]);
    expect(over(56, 30)).toEqual([]);
    expect(over(0, 41)).toEqual(["over-people"]);
    expect(over(45, 2)).toEqual(["over-people"]);
  });
});

describe("two tape measures", () => {
  const wall = { width: inch(144), tape: null, fall: ZERO };

  it("[HG24] without sag and fall they are the places, and make the wall", () => {
    const place = { x: inch(40), bear: inch(60), nail: inch(61) };
    expect(measuresOf(place, wall)).toEqual({ across: inch(40), up: inch(61), back: inch(104) });
  });

  it("[HG24] a tape reads its whole error over the span it was tried on, an eighth of it over half", () => {
    const tape = { span: inch(144), over: inch(1, 8) };
    expect(onTape(inch(144), tape)).toBe(add(inch(144), inch(1, 8)));
    expect(onTape(inch(72), tape)).toBe(add(inch(72), inch(1, 64)));
  });

  it("[HG24] the third power is that of a hanging chain: its length over its span, by the catenary itself", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1000, max: 9000, noNaN: true }),
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        (span, part) => {
          // y = a cosh(x / a): a chain whose pull is a times its weight by length is 2 a sinh(span / 2a) long.
          const pull = 120_000;
          const excess = (over: number): number => 2 * pull * Math.sinh(over / (2 * pull)) - over;
          const tape = { span: real(span), over: real(excess(span)) };
          const read = onTape(real(span * part), tape) - real(span * part);
          expect(Math.abs(read - real(excess(span * part)))).toBeLessThanOrEqual(2 + 0.001 * Math.abs(read));
        },
      ),
    );
  });

  it("[HG24] where the floor falls an inch to the right corner, a hook in the middle is half an inch farther up", () => {
    const place = { x: inch(72), bear: inch(60), nail: inch(60) };
    expect(measuresOf(place, { ...wall, fall: inch(1) }).up).toBe(inch(121, 2));
    expect(measuresOf(place, { ...wall, fall: inch(-1) }).up).toBe(inch(119, 2));
  });
});

describe("fittings by their rated load", () => {
  const hook = (name: string, kilograms: number) => ({ name, use: "hook" as const, rated: kilograms });
  const drawer = [hook("steel", 30), hook("brass", 8), hook("small", 2)];

  it("[HG27] the weakest that holds so many times its load is taken", () => {
    const loads = sharedLoads(4 * STANDARD_GRAVITY, 2);
    expect(chooseHardware(loads, 4, drawer)).toEqual({
      chosen: { hook: hook("brass", 8), ring: null, wire: null },
      checks: [],
    });
    expect(chooseHardware(loads, 4.01, drawer).chosen.hook?.name).toBe("steel");
  });

  it("[HG27] where none is strong enough it says what is needed, by the pull and not by the weight", () => {
    // A rise of 1 over a run of 5: each ring and the wire pull 2.55 times the weight.
    const loads = wireLoads(10 * STANDARD_GRAVITY, triangleOfRise(1, 10, 0), 1);
    const wire = { name: "braided", use: "wire", rated: 60 } as const;
    const { chosen, checks } = chooseHardware(loads, 4, [wire]);
    expect(chosen.wire).toBeNull();
    expect(checks).toEqual([
      { level: "warn", code: "no-hardware", use: "wire", needs: expect.closeTo(20 * Math.sqrt(26), 6) },
    ]);
  });

  it("[HG27] without a load nothing is chosen", () => {
    expect(chooseHardware(null, 4, drawer)).toEqual({
      chosen: { hook: null, ring: null, wire: null },
      checks: [],
    });
  });
});

describe("the largest works of a group", () => {
  const job = (largest: "left" | "right"): WallJob => ({
    wall: { width: mm(8000), height: mm(3000) },
    floor: ZERO,
    avoid: [],
    eyeLine: mm(1450),
    rule: { kind: "cluster", gap: mm(40), centre: null, largest },
    frames: Array.from({ length: 9 }, (_, index) => ({
      title: "",
      width: index === 4 ? mm(700) : ticks(mm(220 + 9 * index)),
      height: index === 4 ? mm(800) : mm(260),
      weight: index === 4 ? 9 : 1,
      set: null,
    })),
  });
  const offMiddle = (largest: "left" | "right"): number => {
    const { places, centre } = planWall(job(largest), 1);
    return (places[4]?.x ?? 0) + mm(350) - centre;
  };

  it("[HG28] lie to the side on which they are asked for", () => {
    expect(offMiddle("left")).toBeLessThan(mm(-200));
    expect(offMiddle("right")).toBeGreaterThan(mm(200));
  });
});
