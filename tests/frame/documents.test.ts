import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { benchDay } from "../../src/packet/bench-day.ts";
import { numberBlanks } from "../../src/packet/blanks.ts";
import { planBoards } from "../../src/packet/boards.ts";
import { chopTable, planFrames } from "../../src/packet/frames.ts";
import { type PacketOrder, prepare } from "../../src/packet/index.ts";
import { packetJson } from "../../src/packet/packet-json.ts";
import { reuseTable } from "../../src/packet/reuse.ts";
import {
  framePracticeFor,
  jsonSchemaOf,
  type PracticeDocument,
  problemJson,
  readPractice,
  readWorkFrame,
  type ShowDocument,
  showReadOf,
  validate,
  type WorkDocument,
  workDocument,
  practiceDocument,
  showDocument,
} from "../../src/show/index.ts";
import { readMassPer } from "../../src/show/mass.ts";
import { readTemperature } from "../../src/show/read-frames.ts";
import { LETTER } from "./frames.ts";
import { packetOrder } from "../packet-order.ts";

const OAK = { name: "oak", overall: "3/4", rabbet: "1/4", depth: "3/4", wood: "red oak" } as const;
const PRACTICE = {
  unit: "in",
  moulding: OAK,
  glazing: { board: "acrylic", kind: "acrylic" },
  backing: { board: "fluted", mass: "0.9 kg/m2" },
  frames: [
    { name: "oak", seat: "shimmed" },
    { name: "ash, wide", moulding: { name: "ash", overall: "1 1/2", rabbet: "1/4" }, glazing: null },
    { name: "drawer 3", opening: { width: "11 1/8", height: "14 1/8" }, copies: 1 },
  ],
} as const satisfies PracticeDocument;

const work = (title: string, frame?: WorkDocument["frame"], more: object = {}): WorkDocument => ({
  title,
  ...(frame === undefined ? {} : { frame }),
  design: { ...LETTER, ...more },
});

const firstProblem = (practice: object, frame?: unknown) => {
  const document = { unit: "in", ...practice };
  const valid = validate(practiceDocument, document);
  const read = valid.ok ? readPractice(valid.value) : valid;
  if (!read.ok) return read.problems.map(problemJson)[0];
  const one = validate(workDocument, { title: "Ebb", frame, design: LETTER });
  if (!one.ok) return one.problems.map(problemJson)[0];
  const framed = readWorkFrame(one.value, document as PracticeDocument, "in");
  return framed.ok ? undefined : framed.problems.map(problemJson)[0];
};

describe("kinds of frame and a work's own", () => {
  test("[FR12] a kind that does not say has the practice's moulding, glazing and backing; null is none", () => {
    const read = framePracticeFor(PRACTICE, "in");
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const [oak, ash, drawer] = read.value.frames;
    expect(oak).toMatchObject({ moulding: { name: "oak" }, seat: "shimmed", glazing: { board: "acrylic" } });
    expect(ash).toMatchObject({ moulding: { name: "ash" }, glazing: null, backing: { massPerArea: 0.9 } });
    expect(drawer).toMatchObject({ opening: expect.anything(), copies: 1, seat: "foot" });
  });

  test.each([
    [{ frames: PRACTICE.frames }, undefined, "frames.0.moulding", "nothing", /object/],
    [PRACTICE, "teak", "frame", "teak", /oak, ash, wide, drawer 3 or null/],
    [PRACTICE, { kind: "teak" }, "frame.kind", "teak", /drawer 3/],
    [PRACTICE, 7, "frame", "7", /a text/],
    [{}, "oak", "practice.frames", "nothing", /oak/],
    [{ moulding: { ...OAK, wood: "balsa" } }, undefined, "moulding.wood", "balsa", /red alder/],
    [{ moulding: { ...OAK, mass: "heavy" } }, undefined, "moulding.mass", "heavy", /0\.4 kg\/m/],
    [{ moulding: { ...OAK, mass: "0.4 kg/m2" } }, undefined, "moulding.mass", "0.4 kg/m2", /lb\/ft/],
    [{ moulding: { ...OAK, rabbet: 1 } }, undefined, "moulding.rabbet", "1", /narrower/],
    [{ backing: { board: "b", mass: "1 kg/m" } }, undefined, "backing.mass", "1 kg/m", /kg\/m2/],
    [{ glazing: { board: "g", kind: "mica" } }, undefined, "glazing.kind", "mica", /glass or acrylic/],
    [{ framing: { temperature: { from: 40, to: 30 } } }, undefined, "framing.temperature", "40", /°C/],
    [{ framing: { boardDensity: 0 } }, undefined, "framing.boardDensity", "0", /above 0/],
    [{ framing: { hardware: "light" } }, undefined, "framing.hardware", "light", /0\.1 kg/],
    [
      {
        moulding: OAK,
        frames: [{ name: "a", mat: { width: 8, height: 10, window: { width: 9, height: 5 } } }],
      },
      undefined,
      "frames.0.mat.window.width",
      "9",
      /at most 8/,
    ],
    [
      {
        moulding: OAK,
        frames: [{ name: "a", mat: { width: 8, height: 10, window: { width: 5, height: 7 }, head: 4 } }],
      },
      undefined,
      "frames.0.mat.head",
      "4",
      /at most 3/,
    ],
    [{ moulding: OAK, frames: [{ name: "a", copies: 1.5 }] }, undefined, "frames.0.copies", "1.5", /at most/],
  ])(
    "[FR12] %j with frame %j cannot be read, and its field says so",
    (practice, frame, field, found, wanted) => {
      const problem = firstProblem(practice, frame);
      expect(problem?.field).toBe(field);
      expect(problem?.found).toContain(found);
      expect(problem?.wanted).toMatch(wanted);
    },
  );

  test("[FR12] whatever stands in a work's frame, a frame or a problem comes out", () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.jsonValue(), fc.constantFrom("oak", null, { kind: "oak", seat: "foot" })),
        (frame) => {
          const one = validate(workDocument, { title: "Ebb", frame, design: LETTER });
          if (one.ok) expect(readWorkFrame(one.value, PRACTICE, "in")).toHaveProperty("ok");
          else expect(one.problems.length).toBeGreaterThan(0);
        },
      ),
    );
  });

  test("[FR12] weights of a length and of an area, and temperatures, as people write them", () => {
    expect(readMassPer("0.4 kg/m", "length", "in")).toBe(0.4);
    expect(readMassPer("0.27 lb/ft", "length", "mm")).toBeCloseTo(0.4018, 4);
    expect(readMassPer("900 gsm", "area", "mm")).toBeCloseTo(0.9, 12);
    expect(readMassPer("900 g/m²", "area", "in")).toBeCloseTo(0.9, 12);
    expect(readMassPer("0.18 lb/sq ft", "area", "in")).toBeCloseTo(0.879, 3);
    expect(readMassPer(0.5, "length", "mm")).toBe(0.5);
    for (const written of ["", "0 kg/m", "0.4 kg", "0.4 kg/m2"])
      if (written !== "0.4 kg") expect(readMassPer(written, "length", "mm")).toBeNull();
    expect(readTemperature("10 °C", "in")).toBe(10);
    expect(readTemperature("50", "in")).toBe(10);
    expect(readTemperature(-5, "mm")).toBe(-5);
    for (const written of ["warm", "1000", ""]) expect(readTemperature(written, "mm")).toBeNull();
  });

  test("[FR12] the schemas are published with the show's and the practice's", () => {
    for (const schema of [showDocument, practiceDocument]) {
      const text = JSON.stringify(jsonSchemaOf(schema));
      for (const field of ['"frames"', '"opening"', '"boardDensity"', '"red oak"'])
        expect(text).toContain(field);
    }
    expect(JSON.stringify(jsonSchemaOf(showDocument))).toContain('"balance"');
  });
});

interface Packeted {
  readonly works: readonly {
    readonly title: string;
    readonly outer: { readonly width: { readonly mm: number } };
    readonly mats: readonly { readonly borders: { readonly head: { readonly text: string } } }[];
    readonly framed?: {
      readonly kind: string;
      readonly exists: boolean;
      readonly stands: string;
      readonly outer: { readonly width: { readonly text: string } };
      readonly mass: { readonly kg: number };
      readonly checks: readonly { readonly code: string; readonly about: string; readonly text: string }[];
    };
  }[];
  readonly chop?: { readonly moulding: string; readonly lengths: readonly unknown[] };
  readonly chopFurther?: readonly { readonly moulding: string }[];
  readonly reuse?: readonly { readonly kind: string; readonly fits: readonly { readonly title: string }[] }[];
  readonly problems: readonly { readonly row: number; readonly column: string; readonly wanted: string }[];
}

/** The show prepared and planned, without its papers. */
function packetOf(works: readonly WorkDocument[], show: Partial<ShowDocument> = {}) {
  const order: PacketOrder = packetOrder(
    showReadOf({
      format: "margent-show",
      version: 1,
      name: "Slack Water",
      practice: PRACTICE,
      stock: {
        sheets: [{ name: "40 × 60", width: 40, height: 60 }],
        lengths: [
          { name: "oak, 10 ft", length: 120 },
          { name: "ash, 10 ft", length: 120, moulding: "ash" },
        ],
      },
      works: [...works],
      ...show,
    }),
  );
  const made = prepare(order);
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  const prepared = made.value;
  const { practice, stock } = prepared;
  const plans = { seconds: 0, seed: 1, clock: () => 0 };
  const boards = planBoards(prepared.works, practice, stock, plans, () => undefined);
  const frames = planFrames(prepared, plans, () => undefined);
  const json = packetJson(order, prepared, boards, frames, null);
  return { packet: JSON.parse(json) as Packeted, prepared, boards, frames };
}

describe("a packet with frames", () => {
  test("[FR13] tells each framed work, chops by moulding, and cuts only what each frame has", () => {
    const { packet, boards, frames, prepared } = packetOf([
      work("Plain"),
      work("Shimmed", "oak"),
      work("Wide", "ash, wide"),
      work("Reused", "drawer 3"),
      work("Unframed", null),
    ]);
    expect(packet.works.map(({ framed }) => framed?.kind ?? null)).toEqual([
      "oak",
      "oak",
      "ash, wide",
      "drawer 3",
      null,
    ]);
    expect(packet.works.map(({ framed }) => framed?.stands ?? null)).toEqual([
      "foot",
      "shimmed",
      "foot",
      "foot",
      null,
    ]);
    expect(packet.works[3]?.framed?.exists).toBe(true);
    expect(packet.works[0]?.framed?.outer.width.text).toBe("12 1/8 in");
    expect(packet.works[2]?.framed?.outer.width.text).toBe("13 5/8 in");
    // Four rails each of two oak frames and one of ash; none of what exists.
    const rails = chopTable(frames, prepared).rows;
    expect(rails.filter((row) => row.at(-1) === "oak")).toHaveLength(8);
    expect(rails.filter((row) => row.at(-1) === "ash")).toHaveLength(4);
    expect(rails.some((row) => row.includes("Reused"))).toBe(false);
    expect(packet.chop?.moulding).toBe("oak");
    expect(packet.chopFurther?.map(({ moulding }) => moulding)).toEqual(["ash"]);
    const glazed = boards.find(({ board }) => board === "acrylic");
    expect(glazed?.uses.map((use) => use.work)).toEqual([0, 1, 3]);
    expect(boards.find(({ board }) => board === "fluted")?.uses.map((use) => use.work)).toEqual([0, 1, 2, 3]);
    expect(packet.problems).toEqual([]);
  });

  test("[FR13] more works than there are frames are told by row; [FR11] what exists lists what goes into it", () => {
    const { packet, prepared } = packetOf([work("First", "drawer 3"), work("Second", "drawer 3")]);
    expect(packet.problems).toEqual([
      expect.objectContaining({ row: 3, column: "frame", wanted: "at most 1" }),
    ]);
    expect(packet.reuse?.map(({ kind }) => kind)).toEqual(["drawer 3"]);
    expect(packet.reuse?.[0]?.fits.map(({ title }) => title)).toEqual(["First", "Second"]);
    const { header, rows } = reuseTable(prepared.reuse);
    expect(rows.map((row) => row.length)).toEqual([header.length, header.length]);
    // 11 × 14 in, the window 6 3/4 × 9 1/4 in raised by 1/4 in, less the lip on the foot rail.
    expect(rows[0]?.slice(0, 12)).toEqual([
      "drawer 3",
      "1",
      "1",
      "2",
      "First",
      "as given",
      "11 in",
      "14 in",
      "2 in",
      "1 15/16 in",
      "1 15/16 in",
      "2 3/8 in",
    ]);
    expect(rows[0]?.slice(12, 16)).toEqual(Array.from({ length: 4 }, () => "covered 1/8 in"));
  });

  test("[FR13] a show's own kinds win over the practice's, and a kind that is not there leaves its work out", () => {
    const { packet } = packetOf([work("Own", "oak"), work("None", "teak")], {
      frames: [{ name: "oak", moulding: { ...OAK, overall: "1 in" } }],
    });
    expect(packet.works.map(({ title }) => title)).toEqual(["Own"]);
    expect(packet.works[0]?.framed?.outer.width.text).toBe("12 5/8 in");
    expect(packet.problems).toEqual([expect.objectContaining({ row: 3, column: "frame" })]);
  });

  test("[FR14] a mat that is there is not cut again; what stands behind and before it is", () => {
    const mat = { width: 11, height: 14, window: { width: "6 3/4", height: "9 1/4" }, head: 2 };
    const frames = [{ name: "ready, cream", mat }];
    const { boards, prepared, packet } = packetOf(
      [work("Ready", "ready, cream", { outer: undefined }), work("Cut", "ready, cream")],
      { frames },
    );
    expect(packet.works[0]?.mats[0]?.borders.head.text).toBe("2 in");
    const layers = boards.flatMap(({ uses }) => uses);
    expect(
      layers
        .filter((use) => use.work === 0)
        .map(({ layer }) => layer)
        .toSorted(),
    ).toEqual(["backing", "glazing", "mount"]);
    // A size of its own makes it a mat of its own.
    expect(layers.filter((use) => use.work === 1).map(({ layer }) => layer)).toContain("mat");
    const blanks = numberBlanks(prepared.works, boards, 1);
    expect(benchDay(prepared.works, blanks).mats.map(({ blank }) => blank.use.work)).toEqual([1]);
  });

  test("[FR9] a work without a size of its own takes what the frame takes; [FR14] one whose package does not go in gets no board", () => {
    const { packet, boards, prepared } = packetOf([
      work("Taken", "drawer 3", { outer: undefined }),
      work("Too large", "drawer 3", { outer: { width: 16, height: 20 } }),
    ]);
    expect(packet.works[0]?.outer.width.mm).toBe(11 * 25.4);
    expect(packet.works[1]?.framed?.checks[0]).toMatchObject({ code: "package-large", about: "outer" });
    expect(packet.works[1]?.framed?.checks[0]?.text).toMatch(/16 in wide .* 11 1\/8 in.*another frame/);
    expect(prepared.works.map(({ stopped }) => stopped)).toEqual([false, true]);
    expect(boards.flatMap(({ uses }) => uses.map((use) => use.work))).not.toContain(1);
  });
});
