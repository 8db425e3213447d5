import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { framedSize, NOTHING_KNOWN, planFrame, planHold, USUAL_HOLD } from "../../src/assembly/index.ts";
import { inch, mm, toInches, ZERO } from "../../src/lengths/index.ts";
import type { ComposeDocument } from "../../src/show/index.ts";
import { codesOf, composedOf, framedOf, frameOf, LETTER, RANDOM } from "./frames.ts";

describe("a frame made to its package", () => {
  test("[FR1] opening, rails and sight size of 11 × 14 in in 3/4 in oak", () => {
    const { sizes } = framedOf();
    expect(sizes.opening).toEqual({ width: inch(89, 8), height: inch(113, 8) });
    expect(sizes.outer).toEqual({ width: inch(97, 8), height: inch(121, 8) });
    expect(sizes.sight).toEqual({ width: inch(85, 8), height: inch(109, 8) });
  });

  test("[FR2] on the foot rail the head is covered by less, and the lift seen is half of the slack smaller; a shim gives it back", () => {
    const { onFoot, shimmed } = framedOf();
    expect(toInches(onFoot.hidden.foot)).toBe(1 / 4);
    expect(toInches(onFoot.hidden.head)).toBe(1 / 8);
    expect(toInches(shimmed.hidden.head)).toBe(3 / 16);
    expect(toInches(shimmed.hidden.foot)).toBe(3 / 16);
    expect(toInches(shimmed.lift)).toBe(1 / 4);
    expect(toInches(onFoot.lift)).toBe(3 / 16);
  });

  test("[FR3] [FR4] the stack, and what is left of the rabbet's depth", () => {
    const { stack, left } = framedOf(LETTER);
    // 1/8 acrylic, 1/16 mat, 0.3 mm print, 1/16 mount, 3/16 backing: 7/16 in and 0.3 mm.
    expect(toInches(stack.depth)).toBeCloseTo(7 / 16 + 0.3 / 25.4, 9);
    expect(toInches(left ?? stack.depth)).toBeCloseTo(5 / 16 - 0.3 / 25.4, 9);
    expect(stack.clear).toBe(inch(1, 16));
  });

  test("[FR6] a wall is told the outer size, the whole weight and the depth", () => {
    const framed = framedSize(planFrame(composedOf(LETTER), frameOf()));
    expect(toInches(framed.width)).toBe(12.125);
    expect(toInches(framed.height)).toBe(15.125);
    // Acrylic 0.36, mat, mount and print 0.2, backing 0.09, oak 0.6 kg, fittings.
    expect(framed.mass).toBeGreaterThan(1);
    expect(framed.mass).toBeLessThan(1.6);
    expect(toInches(framed.depth)).toBe(1 + 1 / 8);
  });
});

describe("glazing and wood in the air", () => {
  const hot = { temperature: { from: 0, to: 50 }, humidity: { from: 20, to: 80 } };

  test("[FR5] acrylic that fills its rabbet is warned about where it may grow past it; glass is not", () => {
    const large = { ...LETTER, outer: { width: 40, height: 60 } };
    const full = (kind: "acrylic" | "glass") => {
      const glazing = { kind, board: kind, less: ZERO, thickness: inch(1, 8), massPerArea: null };
      return codesOf(framedOf(large, { glazing, air: hot }));
    };
    expect(full("acrylic")).toContain("glazing-tight");
    expect(full("glass")).not.toContain("glazing-tight");
  });

  test("[FR5] mat and mount are held against their room too", () => {
    const large = { ...LETTER, outer: { width: 40, height: 60 } };
    expect(codesOf(framedOf(large, { air: hot }))).toContain("package-tight");
    expect(codesOf(framedOf())).not.toContain("package-tight");
  });

  test("[FR7] a wide mitre is told to open, a narrow one is not; a wood of no table says nothing", () => {
    const air = { temperature: { from: 5, to: 35 }, humidity: { from: 35, to: 65 } };
    const wide = framedOf(LETTER, { air }, { overall: inch(3) });
    expect(wide.wood?.sure).toBe(true);
    expect(wide.wood?.mitre).toBeGreaterThan(wide.wood?.across ?? 0);
    expect(codesOf(wide)).toContain("mitre-opens");
    expect(codesOf(framedOf(LETTER, { air }, { overall: inch(1, 2) }))).not.toContain("mitre-opens");
    expect(framedOf(LETTER, {}, { wood: null }).wood).toBeNull();
  });
});

describe("a frame that does not do", () => {
  test("[FR8] an edge that the lip does not reach is a stop at its side, by how much", () => {
    const { checks } = framedOf(LETTER, { opening: { width: inch(11), height: inch(57, 4) } });
    expect(checks).toContainEqual({
      level: "stop",
      code: "edge-shows",
      side: "head",
      by: ZERO,
      layer: "package",
    });
    // A shim halves what has to be covered.
    const shimmed = framedOf(LETTER, { opening: { width: inch(11), height: inch(57, 4) }, seat: "shimmed" });
    expect(codesOf(shimmed)).not.toContain("edge-shows");
  });

  test("[FR8] glazing that is cut much smaller shows its own edge", () => {
    const glazing = {
      kind: "glass" as const,
      board: "glass",
      less: inch(1, 4),
      thickness: inch(1, 8),
      massPerArea: null,
    };
    expect(framedOf(LETTER, { glazing }).checks).toContainEqual(
      expect.objectContaining({ level: "stop", code: "edge-shows", layer: "glazing", by: inch(1, 8) }),
    );
  });

  test("[FR8] a package that does not go in, and a lip over the window", () => {
    const small = framedOf(LETTER, { opening: { width: inch(10), height: inch(14) } });
    expect(small.checks).toContainEqual({
      level: "stop",
      code: "package-large",
      direction: "width",
      size: inch(11),
      opening: inch(10),
    });
    const close = { ...LETTER, outer: { borders: { head: "1/8", side: "1/8", foot: "1/8" } } };
    expect(codesOf(framedOf(close, {}, { rabbet: inch(1, 2) }))).toContain("lip-covers");
  });
});

describe("any work in any frame", () => {
  test("[FR1] [FR2] seen and hidden are the border, opening and slack the package, on the foot rail and shimmed", () => {
    fc.assert(
      fc.property(RANDOM, ({ document, frame }) => {
        const composition = composedOf(document);
        const { sizes, onFoot, shimmed } = planFrame(composition, frame);
        const { borders } = composition.mats[0] ?? {};
        if (borders === undefined) throw new Error("it has a mat");
        for (const { hidden, seen } of [onFoot, shimmed]) {
          for (const side of ["head", "left", "right", "foot"] as const)
            expect(seen[side] + hidden[side]).toBe(borders[side]);
          expect(hidden.left + hidden.right + sizes.slack.width).toBe(2 * frame.profile.rabbet);
          expect(hidden.head + hidden.foot + sizes.slack.height).toBe(2 * frame.profile.rabbet);
        }
        expect(onFoot.hidden.foot).toBe(frame.profile.rabbet);
        expect(Math.abs(shimmed.hidden.foot - shimmed.hidden.head)).toBeLessThanOrEqual(1);
        for (const side of ["width", "height"] as const) {
          expect(sizes.opening[side] - sizes.slack[side]).toBe(composition.outer[side]);
          expect(sizes.outer[side] - sizes.sight[side]).toBe(2 * frame.profile.overall);
          expect(sizes.opening[side] - sizes.sight[side]).toBe(2 * frame.profile.rabbet);
        }
      }),
    );
  });

  test("[FR3] [FR6] the stack is the sum of what does not lie within something, the weight that of its parts", () => {
    fc.assert(
      fc.property(RANDOM, ({ document, frame }) => {
        const { stack, left, mass } = planFrame(composedOf(document), frame);
        const outside = stack.layers.filter(({ within }) => !within);
        expect(outside.reduce((total, { thickness }) => total + thickness, 0)).toBe(stack.depth);
        expect(left).toBe(frame.profile.depth === null ? null : frame.profile.depth - stack.depth);
        expect(mass.parts.reduce((total, part) => total + part.mass, 0)).toBeCloseTo(mass.total, 9);
        expect(mass.parts.every((part) => part.mass >= 0)).toBe(true);
      }),
    );
  });

  test("[FR1] [FR6] a window that grows moves package, glazing, rails, dust cover and weight with it", () => {
    const sized = (high: number) =>
      framedOf({
        unit: "in",
        window: { show: "typed", width: 7, height: high },
        outer: { borders: { head: 2, side: 2, foot: "2 1/2" } },
      });
    fc.assert(
      fc.property(fc.integer({ min: 16, max: 480 }), fc.integer({ min: 1, max: 160 }), (from, by) => {
        const [before, after] = [sized(from / 16), sized((from + by) / 16)];
        const grown = inch(by, 16);
        const heights = (plan: typeof before) => [
          plan.sizes.opening.height,
          plan.sizes.outer.height,
          plan.sizes.sight.height,
          plan.glazing?.height ?? 0,
          plan.backing?.height ?? 0,
          plan.dustCover.height,
          ...plan.stack.layers.map(({ size }) => size.height),
        ];
        const moved = heights(after).map((height, index) => height - (heights(before)[index] ?? 0));
        expect(moved.every((difference) => difference === grown)).toBe(true);
        expect(after.mass.total).toBeGreaterThan(before.mass.total);
        expect(after.stack.depth).toBe(before.stack.depth);
      }),
    );
  });
});

describe("beds", () => {
  const held = (document: ComposeDocument) => {
    const composition = composedOf(document);
    const plan = planHold(composition, NOTHING_KNOWN, USUAL_HOLD.in);
    return { plan, framed: planFrame(composition, frameOf(), plan) };
  };

  test("[FR3] [FR4] a thick sheet lies within its sink, whose walls the stack counts", () => {
    const { plan, framed } = held({
      ...LETTER,
      outer: { width: 16, height: 20 },
      print: { width: 9, height: 11, thickness: "1/4" },
    });
    if (plan?.bed.kind !== "sink") throw new Error("it is thick");
    const flat = framedOf({
      ...LETTER,
      outer: { width: 16, height: 20 },
      print: { width: 9, height: 11, thickness: 0 },
    });
    expect(framed.stack.depth - flat.stack.depth).toBe(plan.bed.depth);
    expect(framed.stack.clear).toBe(inch(1, 16) + plan.bed.clears);
  });

  test("[FR3] [FR4] a float on its riser lies within the spacers under the mat", () => {
    const { plan, framed } = held({
      unit: "in",
      print: { width: 9, height: 11 },
      window: { show: "sheet", gap: "1/4" },
      outer: { width: 16, height: 20 },
    });
    if (plan?.bed.kind !== "raised") throw new Error("it floats");
    const { bed } = plan;
    expect(framed.stack.layers.filter(({ within }) => within).map(({ kind }) => kind)).toEqual([
      "print",
      "riser",
    ]);
    // Glazing, mat, spacer, mount, backing.
    expect(framed.stack.depth).toBe(inch(1, 8) + inch(1, 16) + bed.spacer + inch(1, 16) + inch(3, 16));
    expect(framed.stack.clear).toBeGreaterThanOrEqual(inch(1, 16) + USUAL_HOLD.in.clear);
  });

  test("[FR4] nothing between glazing and print is a stop, too little a warning, a spacer mends both", () => {
    const thin = { ...LETTER, mats: [{ thickness: "0.5 mm" }] };
    const near = (document: ComposeDocument, spacer = ZERO) =>
      framedOf(document, { spacer }).checks.filter(({ code }) => code === "glazing-near");
    expect(near(thin)).toEqual([{ level: "warn", code: "glazing-near", clear: mm(0.5), least: mm(1.1) }]);
    expect(near({ ...LETTER, mats: [{ thickness: 0 }] })[0]?.level).toBe("stop");
    expect(near(thin, inch(1, 8))).toEqual([]);
  });

  test("[FR3] a stack over its rabbet says by how much, past the reach of offset fittings it is a stop", () => {
    const over = framedOf(LETTER, {}, { depth: inch(3, 8) }).checks.find(({ code }) => code === "stack-over");
    expect(over).toMatchObject({ level: "warn", rabbet: inch(3, 8) });
    const deep = framedOf(
      { ...LETTER, print: { width: 9, height: 11, thickness: "3/4" } },
      {},
      { depth: inch(3, 8) },
    );
    expect(deep.checks[0]).toMatchObject({ level: "stop", code: "stack-over" });
    expect(codesOf(framedOf(LETTER, {}, { depth: inch(1, 2) }))).toContain("fittings-short");
    expect(codesOf(framedOf(LETTER, {}, { depth: null }))).toContain("depth-unknown");
    expect(codesOf(framedOf())).not.toContain("fittings-short");
  });

  test("[FR6] what is told weighs what was told; what is not is said", () => {
    const assumed = framedOf().checks.find(({ code }) => code === "mass-assumed");
    expect(assumed?.code === "mass-assumed" ? assumed.parts.map(({ part }) => part) : []).toEqual([
      "mat",
      "print",
      "mount",
    ]);
    const weighed = framedOf(LETTER, {}, { massPerMetre: 0.5 });
    const moulding = weighed.mass.parts.find(({ part }) => part === "moulding");
    // Twice 12 1/8 and 15 1/8 in.
    expect(moulding?.mass).toBeCloseTo(0.5 * 2 * (12.125 + 15.125) * 0.0254, 9);
    expect(framedOf(LETTER, {}, { wood: null }).mass.total).toBeGreaterThan(framedOf().mass.total);
  });
});
