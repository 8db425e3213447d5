import { describe, expect, test } from "vitest";
import { framedSize } from "../../src/assembly/index.ts";
import { inch, toInches, ZERO } from "../../src/lengths/index.ts";
import { codesOf, composedOf, framedOf, frameOf, LETTER } from "./frames.ts";

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
    const framed = framedSize(composedOf(LETTER), frameOf());
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
