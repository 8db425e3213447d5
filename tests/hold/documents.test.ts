import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { composeJson, composeResult, jsonSchemaOf, composeDocument } from "../../src/show/index.ts";
import { readGrammage } from "../../src/show/read-held.ts";
import { printed } from "./works.ts";

interface Answer {
  readonly held?: {
    readonly way: string | null;
    readonly pockets: {
      readonly leg: { readonly mm: number; readonly text: string };
      readonly hidden: Readonly<Record<string, { readonly text: string }>>;
    };
    readonly hinges: { readonly at: readonly { readonly text: string }[] };
    readonly movement: { readonly width: { readonly text: string } };
    readonly materials: readonly { readonly source: string; readonly known: string }[];
    readonly checks: readonly {
      readonly code: string;
      readonly level: string;
      readonly text: string;
      readonly about: string;
    }[];
  };
  readonly error?: { readonly field: string; readonly found: string; readonly wanted: string };
}

const answer = (document: object, practice = {}): Answer => composeJson(document, practice) as Answer;

describe("a design's held", () => {
  test("[HO14] is answered only where it is asked, and changes nothing else", () => {
    const plain = answer(printed(9, 12));
    expect(plain).not.toHaveProperty("held");
    const { held, ...rest } = answer({ ...printed(9, 12), held: {} });
    expect(rest).toEqual(plain);
    expect(held?.way).toBe("pockets");
  });

  test("[HO14] maxima are printed rounded down, minima up", () => {
    const { held } = answer({ ...printed(9, 12, 1), held: { humidity: { from: 40, to: 60 } } });
    // 1 1/8 + 1 1/8 - 1/8 in; 0.6 % of 9 in is 0.054 in.
    expect(held?.pockets.hidden["topLeft"]?.text).toBe("2 1/8 in");
    expect(held?.pockets.leg.text).toBe("2 in");
    expect(held?.movement.width.text).toBe("≈ 1/16 in");
  });

  test("[HO1] [HO11] what cannot be held is a stop with the way out, said and with its field", () => {
    const document = { ...printed(9, 12), held: { never: ["paste", "pockets", "strips"] } };
    const { held } = answer(document);
    expect(held?.way).toBeNull();
    expect(held?.checks[0]).toMatchObject({ code: "no-holding", level: "stop", about: "holding" });
    expect(held?.checks[0]?.text).toMatch(
      /^Nothing that is allowed holds it: corner pockets: never pockets; .*Show less of the sheet/,
    );
    expect(composeResult(document).stopped).toBe(true);
    expect(composeResult({ ...document, held: {} }).stopped).toBe(false);
  });

  test("[HO12] every rule of materials comes with its source and how sure it is", () => {
    const { held } = answer({
      ...printed(9, 12),
      print: { width: 9, height: 12, process: "Inkjet print" },
      held: {},
    });
    expect(held?.materials.length).toBeGreaterThan(8);
    for (const { source, known } of held?.materials ?? []) {
      expect(source.length).toBeGreaterThan(8);
      expect(["read", "read in a copy", "second-hand", "from memory"]).toContain(known);
    }
  });

  test.each([
    [{ grammage: "heavy" }, "held.grammage", "heavy", /300 gsm or 140 lb/],
    [{ grammage: 0 }, "held.grammage", "0", /paper's weight/],
    [{ humidity: { from: 60, to: 40 } }, "held.humidity", "", /drier first/],
    [{ humidity: { from: -5, to: 40 } }, "held.humidity", "", /0 to 100/],
    [{ never: ["glue"] }, "held.never.0", "glue", /paste, hinges/],
    [{ grain: "short" }, "held.grain", "short", /upright or across/],
  ])("[HO13] %j cannot be read, and its field says so", (held, field, found, wanted) => {
    const { error } = answer({ ...printed(9, 12), held });
    expect(error?.field).toBe(field);
    expect(error?.found).toContain(found);
    expect(error?.wanted).toMatch(wanted);
  });

  test("[HO13] the practice's are read in its own unit, and held to what can be made", () => {
    const held = {
      hinge: { width: "30 mm", height: "50 mm" },
      sink: { thickness: "3 mm", board: "B-flute" },
      use: "storage",
    };
    const document = { ...printed(9, 12), print: { width: 9, height: 12, thickness: "8 mm" }, held: {} };
    const made = JSON.stringify(answer(document, { held }).held);
    expect(made).toContain("B-flute");
    expect(made).toContain('"layers":3');
    expect(answer(document, { held: { hinge: { pasted: "2 in" } } }).error?.field).toBe(
      "practice.held.hinge.bare",
    );
    expect(answer(document, { held: { humidity: { from: 1, to: 200 } } }).error?.field).toBe(
      "practice.held.humidity",
    );
  });

  test("[HO13] whatever is written in it, an answer or a problem comes out", () => {
    const anything = fc.dictionary(
      fc.constantFrom("never", "grammage", "grain", "humidity", "bed", "use", "board"),
      fc.oneof(
        fc.jsonValue(),
        fc.constantFrom("sink", "across", "storage", "buffered", "140 lb"),
        fc.constant(["press"]),
        fc.constant({ from: 30, to: 55 }),
      ),
    );
    fc.assert(
      fc.property(anything, (held) => {
        const { held: made, error } = answer({ ...printed(9, 12), held });
        expect(made === undefined).toBe(error !== undefined);
      }),
      { numRuns: 200 },
    );
  });

  test("[HO11] [HO13] a board that nothing is told of is what its name says", () => {
    const codes = (mount: string, board: string): readonly string[] =>
      (
        answer({
          ...printed(9, 12),
          print: { width: 9, height: 12, process: "Cyanotype" },
          mount,
          mats: [{ board }],
          held: {},
        }).held?.checks ?? []
      )
        .map(({ code }) => code)
        .filter((code) => code === "buffer" || code === "board-unknown");
    expect(codes("4-ply rag, unbuffered", "white rag, Unbuffered")).toEqual([]);
    expect(codes("4-ply rag, unbuffered", "buffered rag")).toEqual(["buffer"]);
    expect(codes("4-ply rag, unbuffered", "white rag")).toEqual(["board-unknown"]);
  });

  test("[HO13] its schema is published with the design's", () => {
    expect(JSON.stringify(jsonSchemaOf(composeDocument))).toContain('"grammage"');
  });
});

test("[HO15] a paper's weight is read in grams a square metre, and in pounds a ream", () => {
  for (const written of [300, "300", "300 gsm", "300 g/m²", "300g/m2", "300 g"])
    expect(readGrammage(written)).toBe(300);
  // A ream of 22 × 30 in weighs 63.5 kg over 212.9 m²: the trade calls it 300 gsm.
  expect(readGrammage("140 lb")).toBeCloseTo(298.3, 1);
  expect(readGrammage("90lb")).toBeCloseTo(191.7, 1);
  for (const written of ["", "lb", "-3", "0", 4000, "1e3", "300 oz"])
    expect(readGrammage(written)).toBeNull();
});
