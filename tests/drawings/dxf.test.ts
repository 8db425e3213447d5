import Parser from "dxf-parser";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compose, type Design } from "../../src/assembly/index.ts";
import { CUT_LAYERS, cutDrawing, type Mark, writeDxf, WriterRefusal } from "../../src/drawings/index.ts";
import { inch, type Length, mm, TICKS_PER_MILLIMETRE } from "../../src/lengths/index.ts";
import { anyDesign } from "./arbitrary.ts";
import { DESIGNS, ferrySlip } from "./designs.ts";
import { inGroup } from "./reading.ts";
import { viewsOf } from "./shown.ts";

const WORDS = { head: "HEAD", out: "OUT" };

interface Vertex {
  readonly x: number;
  readonly y: number;
}

interface ReadEntity {
  readonly type: string;
  readonly layer: string;
  readonly vertices?: readonly Vertex[];
  readonly shape?: boolean;
  readonly text?: string;
  readonly lineType?: string;
  readonly lineweight?: number;
}

function read(text: string) {
  const file = new Parser().parseSync(text);
  if (!file) throw new Error("not read");
  const entities: readonly ReadEntity[] = file.entities;
  return { file, entities, layers: Object.keys(file.tables["layer"].layers) };
}

function cut(design: Design, mat = 0, view: "back" | "front" = "back") {
  const composition = compose(design);
  const drawing = cutDrawing(composition, mat, { ruler: design.ruler, view, words: WORDS });
  return { composition, drawing, ...read(writeDxf(drawing)) };
}

const inTicks = (vertices: readonly Vertex[] | undefined): number[][] =>
  (vertices ?? []).map(({ x, y }) => [
    Math.round(x * TICKS_PER_MILLIMETRE),
    Math.round(y * TICKS_PER_MILLIMETRE),
  ]);

/** The cut's x from the front's left, whichever way the board lies. */
const cutFromTheLeft = (view: "back" | "front"): number[] => {
  const { drawing, entities, composition } = cut(DESIGNS["unequal-borders"], 0, view);
  const opening = entities.find((entity) => entity.layer === "CUT");
  return inTicks(opening?.vertices)
    .map(([x = 0]) => x - drawing.frame.left)
    .map((x) => (view === "back" ? composition.outer.width - x : x))
    .toSorted((a, b) => a - b);
};

/** A mark of another time, as a file may hold it. */
const STRANGE: Mark = JSON.parse('{"kind":"spline"}');

describe("the cut drawing in DXF", () => {
  it("[D32] reads back with the same vertices, at full size, y up", () => {
    const { composition, drawing, entities } = cut(ferrySlip);
    const [mat] = composition.mats;
    const opening = entities.find((entity) => entity.layer === "CUT");
    if (!mat || !opening) throw new Error("no cut");
    expect(opening.type).toBe("LWPOLYLINE");
    expect(opening.shape).toBe(true);
    const left = drawing.frame.left + mat.borders.right;
    const right = drawing.frame.left + composition.outer.width - mat.borders.left;
    const top = drawing.height - drawing.frame.top - mat.borders.head;
    const bottom = drawing.height - drawing.frame.top - composition.outer.height + mat.borders.foot;
    expect(inTicks(opening.vertices)).toEqual([
      [left, top],
      [right, top],
      [right, bottom],
      [left, bottom],
    ]);
    expect(right - left).toBe(inch(7));
    expect(top - bottom).toBe(inch(10));
  });

  it("[D32] every outline, cut and paper's edge comes back to the tick", () => {
    fc.assert(
      fc.property(anyDesign, fc.constantFrom("back" as const, "front" as const), (design, view) => {
        const composition = compose(design);
        const mat = composition.mats.length - 1;
        const { drawing, entities } = cut(design, mat, view);
        for (const name of ["OUTLINE", "CUT", "PAPER"]) {
          const drawn = inGroup(drawing, name).flatMap((mark) => (mark.kind === "area" ? [mark.points] : []));
          const back = entities.filter((entity) => entity.layer === name);
          expect(back.map((entity) => inTicks(entity.vertices))).toEqual(
            drawn.map((points) => points.map(({ x, y }) => [x, drawing.height - y])),
          );
        }
      }),
      { numRuns: 60 },
    );
  });

  it("[D1] [D32] the front's cut is the back's, mirrored", () => {
    expect(cutFromTheLeft("back")).toEqual(cutFromTheLeft("front"));
  });

  it("[D33] has a layer for each group, in millimetres, in the release that reads UTF-8", () => {
    const { layers, file } = cut(ferrySlip);
    expect(new Set(layers)).toEqual(new Set(["0", ...CUT_LAYERS]));
    expect(file.header["$ACADVER"]).toBe("AC1021");
    expect(file.header["$INSUNITS"]).toBe(4);
  });

  it("[D33] gives each line its type and weight", () => {
    const { entities } = cut(ferrySlip);
    const styleOf = (layer: string) => {
      const entity = entities.find((each) => each.layer === layer && each.type === "LWPOLYLINE");
      return [entity?.lineType, entity?.lineweight];
    };
    expect(styleOf("OUTLINE")).toEqual(["CONTINUOUS", 70]);
    expect(styleOf("CUT")).toEqual(["CONTINUOUS", 50]);
    expect(styleOf("PAPER")).toEqual(["PHANTOM", 25]);
  });

  it("[D33] writes HEAD, OUT and the borders as text", () => {
    const { entities } = cut(ferrySlip);
    const textsOn = (layer: string) =>
      entities
        .filter((entity) => entity.layer === layer && entity.type === "TEXT")
        .map((entity) => entity.text);
    expect(textsOn("TEXT")).toEqual(["HEAD", "OUT"]);
    expect(textsOn("DIMENSION")).toEqual(["2", "7", "2", "11", "1 3/4", "10", "2 1/4", "14"]);
  });

  it("[D34] draws no cut where the opening leaves the board", () => {
    const { entities, drawing } = cut(DESIGNS["window-past-board"]);
    expect(entities.filter((entity) => entity.layer === "CUT")).toEqual([]);
    expect(inGroup(drawing, "CUT")).toEqual([]);
    expect(entities.filter((entity) => entity.text === "OUT")).toEqual([]);
  });

  it("[D33] refuses pictures, fills and strange marks with a record", () => {
    const square = [0, 10, 10].map((x, index) => ({ x: mm(x), y: mm(index * 5) }));
    const marks: readonly (readonly [Mark, object])[] = [
      [
        { kind: "picture", source: "slip", left: mm(0), top: mm(0), width: mm(9), height: mm(9) },
        { code: "cannot-write", kind: "picture", fill: null },
      ],
      [
        { kind: "area", points: square, fill: "hatch-out", line: null },
        { code: "cannot-write", kind: "area", fill: "hatch-out" },
      ],
      [
        { kind: "circle", centre: { x: mm(1), y: mm(1) }, radius: mm(1), fill: "mat", line: "thin" },
        { code: "cannot-write", kind: "circle", fill: "mat" },
      ],
      [STRANGE, { code: "unknown-mark", kind: "spline" }],
      [
        {
          kind: "text",
          at: { x: mm(1), y: mm(1) },
          runs: [{ kind: "text", text: "a\nb" }],
          size: mm(4),
          weight: "bold",
          anchor: "end",
        },
        { code: "control-character", text: "a\nb", at: 1 },
      ],
    ];
    for (const [mark, fault] of marks) {
      const write = () => writeDxf({ width: mm(20), height: mm(20), marks: [mark] });
      expect(write).toThrow(WriterRefusal);
      expect(write).toThrow(expect.objectContaining({ fault }));
    }
    expect(() => writeDxf(viewsOf(ferrySlip).back)).toThrow(WriterRefusal);
  });

  it("[D32] keeps circles, dots and text with signs of DXF's own", () => {
    const centre = { x: mm(5), y: mm(8) };
    const { entities } = read(
      writeDxf({
        width: mm(20),
        height: mm(20),
        marks: [
          { kind: "circle", centre, radius: mm(2), fill: "none", line: "thin" },
          { kind: "circle", centre, radius: mm(2), fill: "ink", line: null },
          {
            kind: "text",
            at: centre,
            runs: [{ kind: "text", text: "91%, Zażółć" }],
            size: mm(4),
            weight: "bold",
            anchor: "middle",
          },
        ],
      }),
    );
    expect(entities.map((entity) => entity.type)).toEqual(["CIRCLE", "LWPOLYLINE", "TEXT"]);
    expect(entities[0]).toMatchObject({ center: { x: 5, y: 12 }, radius: 2 });
    expect(entities[1]?.vertices).toMatchObject([
      { x: 4, y: 12, bulge: 1 },
      { x: 6, y: 12, bulge: 1 },
    ]);
    expect(entities[2]?.text).toBe("91%, Zażółć");
  });

  it("refuses a mat that is not there", () => {
    expect(() => cut(ferrySlip, 3)).toThrow(RangeError);
  });

  it("sizes its lettering for a board, not for a page", () => {
    const { drawing } = cut(ferrySlip);
    const sizes = inGroup(drawing, "DIMENSION").flatMap((mark): Length[] =>
      mark.kind === "text" ? [mark.size] : [],
    );
    expect(new Set(sizes)).toEqual(new Set([mm(7)]));
  });
});
