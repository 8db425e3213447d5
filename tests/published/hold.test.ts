import { describe, expect, it } from "vitest";
import {
  bufferAdvice,
  FLUTES,
  layersFor,
  PERMANENT_PAPER,
  EACH_PERCENT,
  HOLD_FIGURES,
  type HoldFacts,
  MATERIAL_RULES,
  type MaterialTopic,
  movementOf,
  ORDINARY,
  processKindOf,
  rulesFor,
  USUAL_HOLD,
} from "../../src/assembly/index.ts";
import { inch, mm, toInches, toMillimetres } from "../../src/lengths/index.ts";
import type { ComposeDocument } from "../../src/show/index.ts";
import { sayMaterial } from "../../src/words/held.ts";
import { codesOf, heldOf, printed } from "../hold/works.ts";

const hung = (width: number, height: number, facts: Partial<HoldFacts> = {}): readonly number[] =>
  heldOf(printed(width, height, 1, { holding: "hinges" }), facts).hinges.at.map(toInches);

describe("hinges", () => {
  it("[HO5] two for 15 × 22 in of light paper upright; 22 × 30 in at 140 lb three upright, four landscape (C. A. Paschke, The Artists Magazine, Jan/Feb 2014)", () => {
    expect(hung(15, 22, { grammage: 120 })).toHaveLength(2);
    expect(hung(22, 30, { grammage: 298 })).toHaveLength(3);
    expect(hung(30, 22, { grammage: 298 })).toHaveLength(4);
  });

  it("[HO5] an eighth of an inch stays without paste, half an inch is pasted behind the sheet (C. A. Paschke)", () => {
    expect(toInches(USUAL_HOLD.in.bare)).toBe(1 / 8);
    expect(toInches(USUAL_HOLD.in.pasted)).toBe(1 / 2);
  });

  it("[HO5] about 1 × 1 1/2 in (2.5 × 4 cm), two at least, 1 to 2 in from the corners, one every 10 to 15 in on large or heavy work (exhibit-preparation handbook, Mounting artwork or documents)", () => {
    expect(USUAL_HOLD.in.tab).toEqual({ width: inch(1), height: inch(3, 2) });
    expect(USUAL_HOLD.mm.tab).toEqual({ width: mm(25), height: mm(40) });
    expect(hung(7, 9)).toHaveLength(2);
    for (const grammage of [120, 298, 640]) {
      const at = hung(60, 40, { grammage });
      expect((at[0] ?? 0) - 0.5).toBeGreaterThanOrEqual(1);
      expect((at[0] ?? 0) - 0.5).toBeLessThanOrEqual(2);
    }
    const { apart } = HOLD_FIGURES.in;
    for (const each of [apart.light, apart.usual, apart.heavy]) {
      expect(toInches(each)).toBeGreaterThanOrEqual(10);
      expect(toInches(each)).toBeLessThanOrEqual(15);
    }
  });

  it("[HO6] a T-hinge needs an edge that is matted over, a V-hinge is the weaker (Library of Congress Research Guide, Paper Hinges)", () => {
    const float = {
      unit: "in",
      print: { width: 9, height: 12 },
      window: { show: "sheet" },
      outer: { width: 16, height: 20 },
    } as const satisfies ComposeDocument;
    const light = heldOf(float, { grammage: 120 });
    expect(light.way).toBe("V");
    expect(light.refused.map(({ way }) => way)).toContain("T");
    expect(heldOf(float, { grammage: 640 }).way).not.toBe("V");
  });
});

describe("boards and sinks", () => {
  it("[HO9] about 1 mm between the boards, a hinge 1 to 2 in wide, left of an upright one and on top of a wide one (Library of Congress Research Guide, Basic Storage Mat)", () => {
    expect(HOLD_FIGURES.mm.betweenBoards).toBe(mm(1));
    expect(toMillimetres(HOLD_FIGURES.in.betweenBoards)).toBeCloseTo(0.79, 2);
    expect(HOLD_FIGURES.in).toMatchObject({ tape: inch(1), wideTape: inch(2) });
    expect(heldOf(printed(9, 12), { use: "storage" }).boards.side).toBe("left");
    expect(heldOf(printed(12, 9), { use: "storage" }).boards.side).toBe("head");
  });

  it("[HO7] 1/8 to 1/4 in round the object, and a ruler laid over the sink clears it (Library of Congress Research Guide, Basic Sink Mat)", () => {
    for (const [from, to] of [
      [50, 50],
      [30, 70],
      [5, 95],
    ] as const) {
      const { bed } = heldOf(printed(20, 26, 1, { print: { width: 20, height: 26, thickness: "1/4" } }), {
        humidity: { from, to },
      });
      if (bed.kind !== "sink") throw new Error("it is thick");
      expect(bed.room).toBeGreaterThanOrEqual(inch(1, 8));
      expect(bed.room).toBeLessThanOrEqual(inch(1, 4));
      expect(bed.depth).toBeGreaterThan(inch(1, 4));
    }
  });

  it("[HO10] a window board of 1100 micrometres at least (Fine Art Trade Guild framing standards, as reprinted on members' sites)", () => {
    const of = (thickness: string) => codesOf(heldOf(printed(9, 12, 1, { mats: [{ thickness }] })));
    expect(of("1.1 mm")).not.toContain("window-thin");
    expect(of("1.09 mm")).toContain("window-thin");
  });
});

describe("movement of paper", () => {
  const square = { width: mm(500), height: mm(300) };

  it("[HO10] 0.4 % across the fibres: 500 mm by 2.0 mm, 300 mm by 1.2 mm; 0.2 % along them (C. Green, Dimensional Stability, as cited in a paper-chemistry teaching blog, 2011: bond 0.20 to 0.40 and 0.10 to 0.20 %)", () => {
    const moved = movementOf(square, { grain: null, humidity: null });
    expect(toMillimetres(moved.width)).toBe(2);
    expect(toMillimetres(moved.height)).toBe(1.2);
    expect(movementOf(square, { grain: "across", humidity: null }).width).toBe(mm(1));
    expect(ORDINARY).toEqual({ across: 4000, along: 2000 });
  });

  it("[HO10] 2 to 3 % across between dry and wet, a tenth along (Conservation Science, ch. 3, p. 38; Book Arts list, June 2000)", () => {
    const moved = movementOf(square, { grain: "across", humidity: { from: 0, to: 100 } });
    expect(toMillimetres(moved.height)).toBe(9);
    expect(moved.height / 300).toBe((moved.width / 500) * 10);
    expect(EACH_PERCENT.across * 100).toBe(30_000);
  });
});

describe("what may touch a work", () => {
  const topics = (process: string): readonly MaterialTopic[] =>
    rulesFor(processKindOf(process)).map(({ topic }) => topic);

  it("[HO12] a buffer for prints (CCI Notes 11/5; CCAHA), none for a cyanotype, where the one experiment found neutral board to fade it too (CCAHA)", () => {
    expect(bufferAdvice(processKindOf("Drypoint on laid paper"))).toBe("buffered");
    expect(bufferAdvice(processKindOf("Cyanotype"))).toBe("unbuffered");
    expect(topics("cyanotype")).toEqual(expect.arrayContaining(["unbuffered", "neutral-fades-too"]));
  });

  it("[HO12] no consensus on dye transfer, salted paper, albumen, collodion, platinum and diazotype (CCAHA on ISO 18902:2013)", () => {
    for (const process of [
      "Dye transfer",
      "Salted paper print",
      "Albumen print",
      "Collodion",
      "Platinum print",
      "Diazotype",
    ]) {
      expect(bufferAdvice(processKindOf(process))).toBe("disputed");
      expect(topics(process)).toContain("omitted-no-consensus");
    }
  });

  it("[HO12] either board for silver gelatin, neutral for chromogenic and inkjet (E. Stapel handout)", () => {
    expect(bufferAdvice(processKindOf("Gelatin silver print"))).toBe("either");
    expect(bufferAdvice(processKindOf("Silver gelatin"))).toBe("either");
    for (const process of ["Chromogenic print", "Inkjet print"])
      expect(bufferAdvice(processKindOf(process))).toBe("unbuffered");
  });

  it("[HO12] boards of photographs pass the activity test of ISO 18916; its 70 °C, 86 % and 15 days are from memory", () => {
    expect(topics("Inkjet print")).toContain("activity-test");
    expect(topics("Linocut")).not.toContain("activity-test");
    expect(MATERIAL_RULES.filter(({ known }) => known === "from memory").map(({ topic }) => topic)).toEqual([
      "activity-test-conditions",
      "boxes",
    ]);
  });

  it("[HO12] permanent paper side by side: pH 7.5 to 10, 20 g/kg (2 %), kappa 5 and 7 (Library of Congress, permanent papers, appendix 3)", () => {
    const { iso9706, z3948 } = PERMANENT_PAPER;
    for (const { leastPh, mostPh, reserve } of [iso9706, z3948])
      expect([leastPh, mostPh, reserve]).toEqual([7.5, 10, 20]);
    expect([iso9706.mostKappa, z3948.mostKappa]).toEqual([5, 7]);
    expect(sayMaterial("paper-not-board")).toContain(
      `pH ${iso9706.leastPh} to ${iso9706.mostPh}, ${iso9706.reserve} g/kg`,
    );
  });

  it("[HO12] a sheet of 50 g/m² tears at 230 mN or more, one of 70 at 350, r = 6w - 70 between 25 and 70 (ISO 9706, same appendix; computed)", () => {
    const { leastTear } = PERMANENT_PAPER.iso9706;
    expect([50, 70, 90, 25].map(leastTear)).toEqual([230, 350, 350, 80]);
    expect(leastTear(24)).toBeNull();
    expect(PERMANENT_PAPER.z3948.leastTear(80)).toBe(420);
  });

  it("[HO12] colour prints are stored cold: inkjet and dye sublimation at 2 or 5 °C, electrophotographs at 16 °C (ISO 18920 as reported by the Image Permanence Institute)", () => {
    expect(topics("Dye sublimation")).toContain("store-inkjet");
    expect(sayMaterial("store-inkjet")).toMatch(/2 °C or less and 30 to 50 %.*5 °C and 30 to 40 %/);
    expect(topics("Laser print")).toContain("store-electrophotographic");
    expect(sayMaterial("store-electrophotographic")).toContain("16 °C");
  });

  it("[HO7] [HO12] B-flute about 3 mm and E-flute about 1.5 mm, from memory: a deep sink takes fewer layers of it", () => {
    expect(FLUTES).toEqual({ B: mm(3), E: mm(1.5) });
    expect(layersFor(mm(20), FLUTES.B)).toBe(7);
    // Exactly as thick would let a ruler rest on the object.
    expect(layersFor(mm(21), FLUTES.B)).toBe(8);
  });

  it("[HO12] ISO 9706 is for paper, not for board; facing papers lightfast to Blue Wool 5 (Guild review of 2019, trade news)", () => {
    expect(topics("")).toEqual(expect.arrayContaining(["paper-not-board", "lightfast"]));
  });

  it("[HO12] a process that no source names is unknown", () => {
    expect(processKindOf("Tintype of unknown make")).toBeNull();
    expect(bufferAdvice(null)).toBe("unknown");
    expect(codesOf(heldOf(printed(9, 12), { process: "Oilette" }))).toContain("process-unknown");
  });

  it("[HO11] [HO12] a buffered board beside a cyanotype is a stop, beside a platinum print a warning, a board of unknown make a warning", () => {
    const checked = (process: string, board: HoldFacts["board"]) =>
      heldOf(printed(9, 12), { process, board }).checks.flatMap(({ code, level }) =>
        code === "buffer" || code === "board-unknown" ? [`${level} ${code}`] : [],
      );
    expect(checked("Cyanotype", "buffered")).toEqual(["stop buffer"]);
    expect(checked("Platinum print", "buffered")).toEqual(["warn buffer"]);
    expect(checked("Platinum print", "unbuffered")).toEqual([]);
    expect(checked("Cyanotype", null)).toEqual(["warn board-unknown"]);
    expect(checked("Etching", "buffered")).toEqual([]);
  });
});
