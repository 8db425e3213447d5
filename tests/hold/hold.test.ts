import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type HoldFacts,
  type HoldPlan,
  NEVERS,
  planHold,
  NOTHING_KNOWN,
  roomAboveHinge,
  USUAL_HOLD,
} from "../../src/assembly/index.ts";
import { inch, subtract, toInches } from "../../src/lengths/index.ts";
import type { ComposeDocument } from "../../src/show/index.ts";
import { codesOf, composedOf, heldOf, printed } from "./works.ts";

const float = (width: number, height: number): ComposeDocument => ({
  unit: "in",
  print: { width, height },
  window: { show: "sheet", gap: "1/4" },
  outer: { borders: { head: 3, side: 3, foot: 3 } },
});

const refusals = ({ refused }: HoldPlan): readonly string[] =>
  refused.map(({ way, why }) => `${way}: ${why.kind}`);

describe("the way of holding", () => {
  test("[HO1] is the asked one where it fits", () => {
    for (const holding of ["pockets", "strips", "hinges"] as const) {
      const plan = heldOf(printed(9, 12, 1, { holding }));
      expect(plan.way).toBe(holding === "hinges" ? "T" : holding);
      expect(plan.refused).toEqual([]);
    }
  });

  test("[HO1] pockets that would be too small give way to strips, and strips to hinges, with a warning", () => {
    const strips = heldOf(printed(9, 12, 0.5, { leastPocket: 3 } as ComposeDocument));
    expect(strips.way).toBe("pockets");
    const narrow = heldOf(printed(9, 12, 0.125, { window: { show: "overlap", overlap: "1/8" } }), {});
    expect(narrow.way).toBe("T");
    expect(refusals(narrow)).toEqual(["pockets: pocket", "strips: strip"]);
    expect(codesOf(narrow)).toContain("holding-changed");
  });

  test("[HO1] [HO11] with everything forbidden it is a stop that names each way, and figures are still given", () => {
    const plan = heldOf(printed(9, 12), { never: ["paste", "pockets", "strips"] });
    expect(plan.way).toBeNull();
    expect(refusals(plan)).toEqual([
      "pockets: never",
      "strips: never",
      "T: never",
      "V: never",
      "pass-through: never",
    ]);
    expect(plan.checks[0]).toMatchObject({ level: "stop", code: "no-holding" });
    expect(plan.hinges.at).toHaveLength(2);
    expect(plan.pockets?.leg).toBeGreaterThan(0);
  });

  test("[HO11] a never leaves out its way and no other", () => {
    expect(heldOf(printed(9, 12), { never: ["pockets"] }).way).toBe("strips");
    expect(heldOf(printed(9, 12, 1, { holding: "strips" }), { never: ["strips"] }).way).toBe("pockets");
    for (const never of ["hinges", "paste"] as const)
      expect(heldOf(printed(9, 12, 1, { holding: "hinges" }), { never: [never] }).way).toBe("pockets");
    expect(heldOf(printed(9, 12), { never: ["press", "cut", "glass"] }).way).toBe("pockets");
  });

  test("[HO11] a buffered board and a glazing that must never be near are stops", () => {
    expect(codesOf(heldOf(printed(9, 12), { never: ["buffered"], board: "buffered" }))).toContain(
      "buffer-never",
    );
    const glass = heldOf(printed(9, 12), { never: ["glass"], glazing: "glass" });
    expect(glass.checks).toContainEqual({ level: "stop", code: "glazing-never", glazing: "glass" });
    expect(codesOf(heldOf(printed(9, 12), { never: ["glass"], glazing: "acrylic" }))).not.toContain(
      "glazing-never",
    );
  });

  test("a mat without a print is not held", () => {
    const alone = composedOf({
      unit: "in",
      window: { show: "typed", width: 5, height: 7 },
      outer: { width: 11, height: 14 },
    });
    expect(planHold(alone, NOTHING_KNOWN, USUAL_HOLD.in)).toBeNull();
  });
});

describe("strips", () => {
  test("[HO4] run along both sides and the foot, hidden, off the corners, with room to move", () => {
    const plan = heldOf(printed(9, 12, 0.25, { holding: "strips" }));
    expect(plan.way).toBe("strips");
    expect(plan.strips?.each.map(({ side }) => side)).toEqual(["left", "right", "foot"]);
    const print = composedOf(printed(9, 12, 0.25)).print;
    for (const { side, reach, gap, from, length } of plan.strips?.each ?? []) {
      expect(reach).toBeLessThanOrEqual(print?.cover[side] ?? 0);
      expect(2 * gap).toBeGreaterThanOrEqual(side === "foot" ? plan.movement.height : plan.movement.width);
      expect(2 * from + length).toBe(inch(side === "foot" ? 9 : 12));
    }
  });
});

describe("hinges", () => {
  test("[HO5] are at the head, alike from both corners, no nearer to a corner than an inch and no farther apart than their weight allows", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 64, max: 900 }),
        fc.constantFrom(null, 90, 250, 300, 640),
        (sixteenths, grammage) => {
          const width = sixteenths / 16;
          const plan = heldOf(printed(width, 20, 1, { holding: "hinges" }), { grammage });
          const at = plan.hinges.at.map(toInches);
          expect(at.length).toBeGreaterThanOrEqual(2);
          at.forEach((place, index) => expect(place + (at.at(-1 - index) ?? 0)).toBeCloseTo(width, 9));
          const half = toInches(plan.hinges.tab.width) / 2;
          expect((at[0] ?? 0) - half).toBeGreaterThanOrEqual(width >= 6 ? 1.49 : width / 5 - 1 / 16);
          const apart = at.slice(1).map((place, index) => place - (at[index] ?? 0));
          expect(Math.max(...apart)).toBeLessThanOrEqual(grammage === 90 ? 15 : grammage === 640 ? 10 : 12);
        },
      ),
      { numRuns: 150 },
    );
  });

  test("[HO5] a T-hinge without room above the sheet gives way to one behind it", () => {
    const low = printed(9, 12, 1, { holding: "hinges", outer: { borders: { head: 1.5, side: 3, foot: 3 } } });
    const plan = heldOf(low);
    expect(plan.way).toBe("V");
    expect(plan.refused[0]?.why).toMatchObject({ kind: "no-room", needs: inch(1) });
    const t = heldOf(printed(9, 12, 1, { holding: "hinges" })).hinges;
    // What is pasted, bare and crossed makes the tab.
    expect(roomAboveHinge(t) + t.pasted).toBe(t.tab.height);
    expect(t.cross.width * t.cross.height).toBeGreaterThan(t.tab.width * t.tab.height);
  });

  test("[HO6] a float hangs from V-hinges, a large or heavy one through slits in its riser", () => {
    expect(heldOf(float(9, 12), { grammage: 250 }).way).toBe("V");
    expect(heldOf(float(9, 12), { grammage: 640 }).way).toBe("pass-through");
    const large = heldOf(float(22, 30));
    expect(large.way).toBe("pass-through");
    // The slit lies within the riser: riser's inset and a quarter of an inch below the head.
    expect(large.hinges.slit.down).toBe(inch(3, 4));
    expect(heldOf(float(9, 12), { never: ["paste"] }).way).toBeNull();
  });
});

describe("what it lies on", () => {
  test("[HO7] a thick object lies in a sink that a ruler clears, walls and opening make the board", () => {
    fc.assert(
      fc.property(fc.integer({ min: 16, max: 400 }), fc.integer({ min: 60, max: 300 }), (tenths, width) => {
        const document: ComposeDocument = {
          unit: "mm",
          print: {
            width,
            height: 200,
            image: { left: 12, top: 12, width: width - 24, height: 176 },
            thickness: tenths / 10,
          },
          outer: { borders: { head: 60, side: 50, foot: 70 } },
        };
        const { bed } = heldOf(document);
        const { outer } = composedOf(document);
        if (bed.kind !== "sink") throw new Error("it is thick");
        expect(bed.clears).toBeGreaterThan(0);
        expect(bed.clears).toBeLessThanOrEqual(bed.layer);
        expect(bed.depth).toBe(bed.layers * bed.layer);
        expect(bed.walls.left + bed.opening.width + bed.walls.right).toBe(outer.width);
        expect(bed.walls.head + bed.opening.height + bed.walls.foot).toBe(outer.height);
        for (const layer of [bed.odd, bed.even]) {
          const area = layer.reduce((sum, piece) => sum + piece.width * piece.length, 0);
          expect(area).toBeCloseTo(outer.width * outer.height - bed.opening.width * bed.opening.height, -3);
        }
        // Pieces that run past a corner in one layer stop at it in the next.
        for (const piece of bed.odd)
          expect(bed.even.find(({ side }) => side === piece.side)?.length).not.toBe(piece.length);
      }),
      { numRuns: 60 },
    );
  });

  test("[HO7] one may be asked for or left out; no wall is a stop", () => {
    expect(heldOf(printed(9, 12)).bed.kind).toBe("flat");
    expect(heldOf(printed(9, 12), { bed: "sink" }).bed.kind).toBe("sink");
    const thick = printed(9, 12, 1, { print: { width: 9, height: 12, thickness: "1/4" } });
    expect(heldOf(thick).bed.kind).toBe("sink");
    expect(heldOf(thick, { bed: "flat" }).bed.kind).toBe("flat");
    const tight = heldOf({ ...thick, outer: { width: 9.5, height: 16 } });
    expect(tight.checks).toContainEqual(
      expect.objectContaining({ level: "stop", code: "sink-wall", side: "left" }),
    );
  });

  test("[HO8] a float lies on a smaller riser, its spacers clear riser and sheet", () => {
    const { bed } = heldOf(float(9, 12));
    if (bed.kind !== "raised") throw new Error("it floats");
    expect(bed.riser).toEqual({ width: inch(8), height: inch(11) });
    // 1/8 in of riser, 0.3 mm of sheet, 1/8 in clear, up to a sixteenth.
    expect(bed.spacer).toBe(inch(5, 16));
    expect(codesOf(heldOf(float(1, 4)))).toContain("riser-gone");
  });

  test("[HO9] boards are joined along the head for a frame, along the long side for storage", () => {
    const upright = printed(9, 12);
    expect(heldOf(upright).boards).toMatchObject({ side: "head", tape: inch(1) });
    expect(heldOf(upright, { use: "storage" }).boards).toMatchObject({ side: "left", length: inch(67, 4) });
    expect(heldOf(printed(16, 9), { use: "storage" }).boards.side).toBe("head");
    expect(heldOf(printed(30, 22)).boards.tape).toBe(inch(2));
  });
});

describe("movement", () => {
  test("[HO10] grows with the swing, and is least along the fibres", () => {
    const moved = (facts: Partial<HoldFacts>) => heldOf(printed(20, 20), facts).movement;
    const range = { from: 40, to: 60 };
    expect(moved({}).width).toBe(Math.ceil(inch(20) * 0.004));
    expect(moved({ humidity: range }).width).toBe(inch(20) * 0.006);
    expect(moved({ humidity: { from: 40, to: 52.5 } }).width).toBe(inch(20) * 0.00375);
    expect(moved({ humidity: range, grain: "upright" }).height).toBe(Math.ceil(inch(20) * 0.0006));
    expect(moved({ grain: "across" }).width).toBe(inch(20) * 0.002);
    expect(moved({ humidity: { from: 50, to: 50 } }).height).toBe(0);
  });

  test("[HO10] that cover, sink or float do not leave is warned about with side and figures", () => {
    const hung = heldOf(
      printed(9, 40, 0.25, { holding: "hinges", hold: "1/16", window: { show: "overlap", overlap: "0" } }),
      {
        humidity: { from: 20, to: 80 },
      },
    );
    // Hung from the head the foot takes it all: 1.8 % of 40 in against 1/4 in of cover.
    expect(hung.checks).toContainEqual({
      level: "warn",
      code: "cover-moves",
      side: "foot",
      cover: inch(1, 4),
      needs: inch(72, 100),
    });
    const wet = { humidity: { from: 10, to: 90 } };
    expect(codesOf(heldOf(float(20, 20), wet))).toContain("float-tight");
    expect(codesOf(heldOf(printed(30, 40), { ...wet, bed: "sink" }))).toContain("sink-tight");
    expect(codesOf(heldOf(printed(9, 12)))).not.toContain("cover-moves");
  });
});

test("[HO1] [HO2] [HO5] whatever is known and forbidden, something is given and nothing throws", () => {
  const facts = fc.record({
    never: fc.subarray([...NEVERS]),
    process: fc.constantFrom("", "cyanotype", "linocut", "tintype"),
    grammage: fc.constantFrom(null, 40, 300, 850),
    grain: fc.constantFrom(null, "upright" as const, "across" as const),
    humidity: fc.constantFrom(null, { from: 0, to: 100 }, { from: 45, to: 55 }),
    bed: fc.constantFrom(null, "flat" as const, "sink" as const),
    use: fc.constantFrom("frame" as const, "storage" as const),
    board: fc.constantFrom(null, "buffered" as const, "unbuffered" as const),
    glazing: fc.constantFrom(null, "glass" as const, "acrylic" as const),
  });
  const sizes = fc.record({
    width: fc.integer({ min: 10, max: 900 }),
    height: fc.integer({ min: 10, max: 900 }),
    margin: fc.integer({ min: 0, max: 4 }),
  });
  fc.assert(
    fc.property(facts, sizes, fc.boolean(), (known, { width, height, margin }, floats) => {
      const document: ComposeDocument = {
        unit: "mm",
        print: {
          width,
          height,
          image: { left: margin, top: margin, width: width - 2 * margin, height: height - 2 * margin },
        },
        ...(floats ? { window: { show: "sheet" } } : {}),
        outer: { borders: { head: 40, side: 30, foot: 50 } },
      };
      const plan = heldOf(document, known);
      const stops = plan.checks.filter(({ level }) => level === "stop").map(({ code }) => code);
      expect(stops.includes("no-holding")).toBe(plan.way === null);
      if (plan.way !== null) {
        const named = plan.way === "pockets" || plan.way === "strips" ? [plan.way] : ["hinges", "paste"];
        expect(known.never.filter((one) => named.includes(one))).toEqual([]);
      }
      const edges = plan.hinges.at;
      expect(edges.every((at, index) => index === 0 || at > (edges[index - 1] ?? at))).toBe(true);
      if (plan.pockets !== null)
        for (const { hidden } of plan.pockets.each)
          expect(subtract(hidden, plan.pockets.leg)).toBeGreaterThanOrEqual(0);
    }),
    { numRuns: 300 },
  );
});
