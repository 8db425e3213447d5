import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hangResult, readMass } from "../../src/show/index.ts";

const rings = { kind: "rings", below: "3", apart: "8" };
const wire = { kind: "wire", below: "5", apart: "12", length: "13" };
const wall = { width: "144", height: "96" };
const ebb = { title: "Ebb", width: "12", height: "15", weight: "1.6 kg", hang: rings };
const flow = { title: "Flow", width: "15 3/8", height: "19", weight: "2.4 kg", hang: wire };

interface LengthOut {
  readonly mm: number;
  readonly text: string;
}
interface WallOut {
  readonly works: readonly {
    readonly title: string;
    readonly frame: { readonly x: LengthOut; readonly y: LengthOut };
    readonly hooks: readonly { readonly x: LengthOut; readonly bear: LengthOut; readonly nail: LengthOut }[];
    readonly loads: Readonly<Record<string, { readonly N: number; readonly kgf: number }>> & {
      readonly angle: number;
    };
    readonly checks: readonly { readonly code: string; readonly level: string; readonly text: string }[];
    readonly reckoning: readonly { readonly sum: string }[];
  }[];
  readonly wall: {
    readonly gaps: readonly LengthOut[];
    readonly order: readonly number[];
    readonly checks: readonly { readonly code: string }[];
  };
  readonly checks: readonly { readonly code: string }[];
}

const hang = (more: object): { readonly json: WallOut; readonly stopped: boolean } => {
  const { json, stopped } = hangResult({
    unit: "in",
    wall,
    eyeLine: "57",
    hookDrop: "1/2",
    rule: { row: "gap", gap: "8" },
    works: [ebb, flow, { ...ebb, title: "Slack" }],
    ...more,
  });
  return { json: json as WallOut, stopped };
};

const problemsOf = (document: unknown): readonly string[] => {
  const { json } = hangResult(document) as {
    json: { error?: { field: string }; more?: { field: string }[] };
  };
  return [json.error, ...(json.more ?? [])].flatMap((one) => (one === undefined ? [] : [one.field]));
};

describe("a wall as JSON", () => {
  it("[HG2] [HG10] [HG17] three works in a row: gaps, hooks, nails and loads, and the sums behind them", () => {
    const { json, stopped } = hang({});
    expect(stopped).toBe(false);
    expect(json.wall.gaps.map(({ text }) => text)).toEqual(["44 5/16 in", "8 in", "8 in", "44 5/16 in"]);
    expect(json.works.map(({ hooks }) => hooks.map(({ x, nail }) => [x.text, nail.text]))).toEqual([
      [
        ["46 5/16 in", "62 in"],
        ["54 5/16 in", "62 in"],
      ],
      [["72 in", "64 1/2 in"]],
      [
        ["89 11/16 in", "62 in"],
        ["97 11/16 in", "62 in"],
      ],
    ]);
    const second = json.works[1];
    // 13 in of wire between rings 12 in apart: 6.5 over 2.5, so each ring carries 1.3 times the weight.
    expect(second?.loads["ring"]?.kgf).toBe(3.12);
    expect(second?.loads["hook"]).toEqual({ N: 23.54, kgf: 2.4 });
    expect(second?.loads.angle).toBe(22.62);
    expect(second?.reckoning[0]?.sum).toBe("√((13 in)² - (12 in)²) / 2 = 2 1/2 in");
  });

  it("[HG11] [HG17] a work hangs beside the one it names, and those that share a name beside each other", () => {
    expect(hang({ works: [ebb, flow, { ...ebb, title: "Slack", with: "Ebb" }] }).json.wall.order).toEqual([
      0, 2, 1,
    ]);
    const pair = [{ ...ebb, with: "pair" }, flow, { ...flow, title: "Neap", with: "pair" }];
    expect(hang({ works: pair }).json.wall.order).toEqual([0, 2, 1]);
  });

  it("[HG10] [HG14] heights count from the level line where there is one, down to the floor", () => {
    const { json, stopped } = hang({ eyeLine: "9", levelLine: "48" });
    expect(stopped).toBe(false);
    expect(json.works[0]?.hooks[0]?.nail.text).toBe("14 in");
    expect(hang({ eyeLine: "-45", levelLine: "48" }).json.works[0]?.checks[0]?.code).toBe("off-wall");
  });

  it("[HG14] [HG17] what cannot be hung as asked is said with the work, and the wall with its own", () => {
    const { json, stopped } = hang({ wall: { width: "30", height: "96" } });
    expect(stopped).toBe(true);
    expect(json.wall.checks.map(({ code }) => code)).toEqual(["wall-too-narrow"]);
    expect(json.works.map(({ checks }) => checks.map(({ code }) => code))).toEqual([
      ["off-wall"],
      [],
      ["off-wall"],
    ]);
    const door = [{ name: "the door", x: 2, y: 0, width: 140, height: 80 }];
    const over = hang({ avoid: door }).json;
    expect(over.works[1]?.checks[0]?.text).toMatch(/^It lies over the door\./);
    expect(over.wall.checks.map(({ code }) => code)).toEqual(["no-way-past"]);
  });

  it("[HG2] [HG9] a hook's drop or a weight that is not given is a note, never a guess", () => {
    const { json } = hang({ hookDrop: undefined, works: [{ ...ebb, weight: undefined }] });
    expect(json.checks.map(({ code }) => code)).toEqual(["hook-unknown"]);
    expect(json.works[0]?.loads).toBeNull();
    expect(json.works[0]?.checks[0]?.code).toBe("weight-unknown");
  });

  it("[HG18] every field that cannot be read is named", () => {
    expect(problemsOf(5)).toEqual([""]);
    expect(problemsOf({ wall: { width: 0, height: "x" }, works: [] })).toEqual(["wall.width", "wall.height"]);
    const works = [
      { ...ebb, weight: "heavy" },
      { ...flow, hang: { kind: "wire", below: "-1", apart: "12" } },
      { ...flow, hang: { ...wire, hooks: 2 } },
      { ...flow, hang: { kind: "cleat", below: 2, screws: 0 } },
    ];
    expect(
      problemsOf({ wall, works, rule: { grid: { columns: 0, gap: 2 } }, safety: 0, seed: 1.5 }).toSorted(),
    ).toEqual(
      [
        "rule.grid.columns",
        "safety",
        "seed",
        "works.0.weight",
        "works.1.hang.below",
        "works.1.hang.length",
        "works.2.hang.hooksApart",
        "works.3.hang.screws",
      ].toSorted(),
    );
    expect(problemsOf({ wall, works: [{ ...ebb, hang: { kind: "nail" } }] })).toEqual(["works.0.hang.kind"]);
  });

  it("[HG18] anything at all gives a wall or a problem, never an exception", () => {
    const odd = fc.oneof(fc.jsonValue(), fc.constantFrom("1e9", "-3", "½", 1e308, -1, 0, null, "9 mm"));
    fc.assert(
      fc.property(odd, odd, odd, odd, (a, b, c, d) => {
        const { json } = hangResult({
          wall: { width: a, height: "96" },
          eyeLine: b,
          rule: { row: "gap", gap: c },
          works: [
            { width: "12", height: "15", weight: d, hang: { kind: "wire", below: a, apart: b, length: c } },
          ],
        });
        expect(Object.keys(json).length).toBeGreaterThan(0);
      }),
      { numRuns: 300 },
    );
  });
});

describe("a weight", () => {
  it.each([
    ["3.2 kg", "in", 3.2],
    ["3,2kg", "in", 3.2],
    ["800 g", "mm", 0.8],
    ["7 lb", "mm", 7 * 0.45359237],
    ["7 lb 4 oz", "mm", 7.25 * 0.45359237],
    ["7", "in", 7 * 0.45359237],
    [7, "mm", 7],
  ] as const)("[HG19] %s beside %s is %d kg", (written, unit, mass) => {
    expect(readMass(written, unit)).toBeCloseTo(mass, 12);
  });

  it.each(["", "heavy", "0 kg", "-1 kg", "3 stone", "1e99 kg", "7 lb 4"])(
    "[HG19] %s is no weight",
    (written) => {
      expect(readMass(written, "mm")).toBeNull();
    },
  );
});
