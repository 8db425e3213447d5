import { describe, expect, it } from "vitest";
import { hangFor, type HungWall } from "../../src/show/index.ts";
import {
  angleOf,
  chooseHardware,
  type FramedWork,
  type Hanging,
  hangWork,
  KILOGRAMS_PER_POUND,
  sharedLoads,
  tensionAt,
  triangleOfLength,
  triangleOfRise,
  wireLoads,
} from "../../src/assembly/index.ts";
import { half, inch, mm, subtract, toInches, toMillimetres, ZERO } from "../../src/lengths/index.ts";

/** A wall that says nothing of itself but its size. */
function usualRequest(unit: "in" | "mm", eyeLine?: string): HungWall["request"] {
  const hung = hangFor({
    unit,
    wall: { width: "100 in", height: "100 in" },
    works: [],
    ...(eyeLine === undefined ? {} : { eyeLine }),
  });
  if (!hung.ok) throw new Error(JSON.stringify(hung.problems));
  return hung.value.request;
}
const usualWall = (unit: "in" | "mm", eyeLine?: string): HungWall["request"]["job"] =>
  usualRequest(unit, eyeLine).job;

const HABITS = { hookDrop: ZERO, publicWay: false, floor: ZERO, wall: null, shakes: false, seats: [] };

const framed = (height: number, hanging: Hanging, depth: number | null = null): FramedWork => ({
  title: "",
  width: inch(40),
  height: inch(height),
  mass: 5,
  depth: depth === null ? null : inch(depth * 100, 100),
  hanging,
});

/** A work whose middle hangs at a height, its taut wire so far below the top of the frame. */
function bearing(centre: number, height: number, tautBelow: number): number {
  const hanging: Hanging = {
    kind: "wire",
    below: inch(tautBelow + 3),
    apart: inch(16),
    wire: { drop: inch(3) },
    hooks: 1,
    hooksApart: ZERO,
  };
  const y = subtract(inch(centre), half(inch(height), "down"));
  return toInches(hangWork(framed(height, hanging), { x: ZERO, y }, HABITS).hooks[0]?.bear ?? ZERO);
}

describe("tension in a wire", () => {
  it("[HG4] 70.0 kg at 5.0 degrees, g 9.80: 3,935 N, printed 3900 N (OpenStax College Physics, m42075)", () => {
    expect(tensionAt(70 * 9.8, 5)).toBeCloseTo(3935.48, 1);
  });

  it("[HG4] a picture of 40 cm and 40 N, the nail 3 cm above its fixing points: 134.8 N (homework forum, 2010; number computed)", () => {
    expect(wireLoads(40, triangleOfRise(30, 400, 0), 1).ring).toBeCloseTo(134.83, 1);
  });

  it("[HG4] each wire at three quarters of the weight hangs 48.2 degrees from the vertical (four physics-answer pages)", () => {
    expect(tensionAt(1, 90 - (Math.acos(2 / 3) * 180) / Math.PI)).toBeCloseTo(0.75, 12);
    expect((Math.acos(2 / 3) * 180) / Math.PI).toBeCloseTo(48.19, 2);
  });

  it("[HG4] two strings of 3.5 N at 45 degrees carry 4.95 N (physicsforums thread)", () => {
    expect(tensionAt(4.95, 45)).toBeCloseTo(3.5, 3);
  });

  it("[HG1] [HG4] a string of 50 cm on a frame of 20 cm and 10 N: 23.6 degrees from the vertical, 5.455 N (homework forum; tension computed)", () => {
    const triangle = triangleOfLength(500, 200, 0);
    if (triangle === null) throw new Error("it is long enough");
    expect(90 - angleOf(triangle)).toBeCloseTo(23.58, 2);
    expect(wireLoads(10, triangle, 1).wire).toBeCloseTo(5.4554, 3);
  });

  it.each([
    [10, 2.879],
    [15, 1.932],
    [30, 1],
    [45, Math.SQRT1_2],
    [60, 0.5774],
  ])(
    "[HG4] at %d degrees each side carries %d times the weight (OpenStax formula, computed)",
    (angle, times) => {
      expect(tensionAt(1, angle)).toBeCloseTo(times, 3);
    },
  );
});

describe("the height of a hook", () => {
  it.each([
    [57, 30, 1, 71],
    [57, 20, 2, 65],
  ])(
    "[HG2] centre %d in, frame %d in, wire %d in below its top: %d in (art-collective guide 2014; artist's guide)",
    (centre, height, below, hook) => {
      expect(bearing(centre, height, below)).toBe(hook);
    },
  );

  it("[HG2] it is not the centre less height less drop, as one design page prints (known wrong number)", () => {
    const right = 1450 + 300 - 50;
    const frame = { ...framed(0, { kind: "rings", below: mm(50), apart: mm(200) }), height: mm(600) };
    const hung = hangWork(frame, { x: ZERO, y: mm(1450 - 300) }, HABITS);
    expect(toMillimetres(hung.hooks[0]?.bear ?? ZERO)).toBe(right);
    expect(right).not.toBe(1450 - 600 - 50);
  });
});

describe("the middle that works hang on", () => {
  it("[HG10] 57 in is the usual one, within every printed range (gallery guide 56 to 58 in; several 57; others 57 to 60)", () => {
    const { eyeLine } = usualWall("in");
    expect(toInches(eyeLine)).toBe(57);
    for (const [least, most] of [
      [56, 58],
      [57, 57],
      [57, 60],
    ] as const)
      expect(toInches(eyeLine) >= least && toInches(eyeLine) <= most).toBe(true);
  });

  it("[HG10] 145 cm beside millimetres (a gallery worker: 145 to 150 cm)", () => {
    expect(toMillimetres(usualWall("mm").eyeLine)).toBe(1450);
  });

  it("[HG10] older guidance that differs is entered, not assumed: 5 1/2 ft (NAVEDTRA 14065, p. 4-4)", () => {
    expect(toInches(usualWall("in", "5' 6\"").eyeLine)).toBe(66);
  });
});

describe("how strong a fitting must be", () => {
  it("[HG27] braided wire of four times the frame's weight is where the usual factor comes from (C. A. Paschke, 2013)", () => {
    expect(usualRequest("in").safety).toBe(4);
  });

  it("[HG27] three times the weight, as the same article has it for coated stainless wire, can be asked for: 10 lb want 30 lb", () => {
    const straight = sharedLoads(10 * KILOGRAMS_PER_POUND * 9.80665, 1);
    const wire = { name: "stainless", use: "hook", rated: 30 * KILOGRAMS_PER_POUND + 1e-9 } as const;
    expect(chooseHardware(straight, 3, [wire]).chosen.hook).toEqual(wire);
    expect(chooseHardware(straight, 3.01, [wire]).chosen.hook).toBeNull();
  });
});

describe("weights at which the fixing changes (Earthquake Country Alliance, securing your space)", () => {
  const codes = (pounds: number): readonly string[] =>
    hangWork(
      {
        ...framed(20, { kind: "rings", below: inch(3), apart: inch(16) }),
        mass: pounds * KILOGRAMS_PER_POUND,
      },
      { x: ZERO, y: inch(50) },
      { ...HABITS, wall: "plasterboard" },
    ).checks.map(({ code }) => code);

  it.each([
    [19.9, []],
    [20, ["into-frame"]],
    [49.9, ["into-frame"]],
    [50, ["heavy"]],
  ])("[HG7] [HG25] %d lb: %j", (pounds, wanted) => {
    expect(codes(pounds)).toEqual(wanted);
  });
});

describe("what may stand out into a public way (2010 ADA Standards, 307.2)", () => {
  const projects = (lowerEdge: number, depth: number): boolean =>
    hangWork(
      framed(20, { kind: "rings", below: inch(3), apart: inch(16) }, depth),
      { x: ZERO, y: inch(lowerEdge * 100, 100) },
      { ...HABITS, publicWay: true },
    ).checks.some(({ code }) => code === "projects");

  it.each([
    [27, 5, false],
    [27.01, 5, true],
    [50, 4, false],
    [50, 4.01, true],
    [80, 5, true],
    [80.01, 5, false],
    [40, 4, false],
    [40, 4.1, true],
    [27, 60, false],
    [27.1, 4.1, true],
    [80.1, 60, false],
  ])("[HG8] lower edge at %d in, %d in deep: warned about %s", (edge, depth, warned) => {
    expect(projects(edge, depth)).toBe(warned);
  });

  it("[HG8] in the earlier text's millimetres, 685 and 2030 and 100 (ADAAG 4.4.1), no edge that it lets through is warned about", () => {
    const warned = (edge: number, depth: number): boolean =>
      hangWork(
        { ...framed(20, { kind: "rings", below: inch(3), apart: inch(16) }), depth: mm(depth) },
        { x: ZERO, y: mm(edge) },
        { ...HABITS, publicWay: true },
      ).checks.some(({ code }) => code === "projects");
    expect(warned(685, 500)).toBe(false);
    expect(warned(1000, 100)).toBe(false);
    expect(warned(1000, 102)).toBe(true);
    expect(warned(2033, 500)).toBe(false);
  });
});
