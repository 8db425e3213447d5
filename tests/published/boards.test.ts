import { describe, expect, it } from "vitest";
import { inch, type Length, mm, readLength } from "../../src/lengths/index.ts";
import { DEFAULT_HABITS } from "../../src/show/index.ts";
import { work } from "./bench.ts";

const cut = (thickness: string, bevel: number) =>
  work({
    unit: "mm",
    window: { show: "typed", width: "200", height: "250" },
    outer: { width: "300", height: "400" },
    mats: [{ thickness, bevel }],
  }).mats[0];

describe("a bevel (plain geometry)", () => {
  it.each([
    { thickness: "1.40 mm", plan: 1.4, slope: 1.98 },
    { thickness: "1.50 mm", plan: 1.5, slope: 2.12 },
  ])(
    "[M1] at 45 degrees through $thickness shows $plan mm square-on and $slope mm along its slope",
    ({ thickness, plan, slope }) => {
      const mat = cut(thickness, 45);
      expect(mat?.bevel.plan.mm).toBe(plan);
      expect(mat?.bevel.slope.mm).toBeCloseTo(slope, 2);
      expect(mat?.face.width.mm).toBe(200 + 2 * plan);
    },
  );

  it("[M1] a knife held upright leaves a square edge, a tilted one a bevel (NAVEDTRA 14066, p. 2-32 and 2-33)", () => {
    expect(cut("1.5 mm", 90)?.bevel.plan.mm).toBe(0);
    expect(cut("1.5 mm", 90)?.face).toEqual(cut("1.5 mm", 90)?.back);
    expect(cut("1.5 mm", 60)?.bevel.plan.mm).toBeGreaterThan(0);
  });
});

const defaultThickness = (unit: "in" | "mm"): Length => DEFAULT_HABITS[unit].mats[0]?.thickness ?? mm(0);

describe("the thickness of board", () => {
  const POINT = inch(1, 1000);

  it.each(["in", "mm"] as const)(
    "the house's own mat (%s) is 4-ply: 50 to 60 point, at most 4 points off inside a maker's stated thickness (S. Saitzyk, Art Hardware, 1987)",
    (unit) => {
      expect(defaultThickness(unit)).toBeGreaterThanOrEqual(50 * POINT);
      expect(defaultThickness(unit)).toBeLessThanOrEqual(64 * POINT);
    },
  );

  it("50 to 60 point is 1.27 to 1.52 mm (S. Saitzyk, Art Hardware, 1987)", () => {
    expect(readLength("0.050 in", "in")).toEqual(readLength("1.27 mm", "in"));
    expect(readLength("0.060", "in")).toEqual(readLength("1.524 mm", "in"));
  });

  it.each(["in", "mm"] as const)(
    "a known wrong number: 4-ply is not 2 mm (%s; one web page, against S. Saitzyk)",
    (unit) => {
      expect(defaultThickness(unit)).toBeLessThan(mm(2) - 4 * POINT);
    },
  );

  it("anything of 0.012 in or more counts as board, so the house's mats do (S. Saitzyk, Art Hardware, 1987)", () => {
    expect(defaultThickness("in")).toBeGreaterThan(12 * POINT);
    expect(defaultThickness("mm")).toBeGreaterThan(12 * POINT);
  });

  it.each(["in", "mm"] as const)(
    "a window board is at least 1100 micrometres (%s; Fine Art Trade Guild framing standards, as reprinted on members' sites)",
    (unit) => {
      expect(defaultThickness(unit)).toBeGreaterThanOrEqual(mm(1.1));
    },
  );
});

describe("the cut", () => {
  it("runs about 3/16 in, 4 to 5 mm, past the line at both ends (exhibit-preparation handbook, Mounting artwork or documents)", () => {
    expect(DEFAULT_HABITS.in.overrun).toBe(inch(3, 16));
    for (const unit of ["in", "mm"] as const) {
      expect(DEFAULT_HABITS[unit].overrun).toBeGreaterThanOrEqual(mm(4));
      expect(DEFAULT_HABITS[unit].overrun).toBeLessThanOrEqual(mm(5));
    }
  });
});
