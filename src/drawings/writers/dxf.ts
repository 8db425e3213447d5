import type { Length } from "../../lengths/index.ts";
import type { Drawing, LineKind, Mark, Run } from "../marks.ts";
import { arrowCorners } from "./arrow.ts";
import { type Entity, millimetres, type Pair, wholeFile } from "./dxf-file.ts";
import { plainText, WriterRefusal } from "./refusal.ts";

/** Height of a capital, which is what DXF calls a text's height, as a share of the em. */
const CAPITAL = 0.66;
const ALIGNED = { start: 0, middle: 1, end: 2 } as const;
/**
 * A drawing as DXF of the release AC1021 (2007, text in UTF-8), in millimetres, one layer for each group
 * and each line with its type and weight. y runs up, as everywhere in DXF, from the drawing's lower
 * edge. Throws WriterRefusal for what a line drawing has no form for: a picture, a filled or hatched
 * area, a mark that it does not know, a control character in a text.
 */
export function writeDxf(drawing: Drawing): string {
  const entities = drawing.marks.flatMap((mark) => entitiesOf(drawing.height, mark, "0"));
  return wholeFile(drawing, entities);
}

function entitiesOf(height: Length, mark: Mark, layer: string): Entity[] {
  const at = (point: { readonly x: number; readonly y: number }): readonly [string, string] => [
    millimetres(point.x),
    millimetres(height - point.y),
  ];
  switch (mark.kind) {
    case "line": {
      const [from, to] = [at(mark.from), at(mark.to)];
      const pairs: Pair[] = [
        [100, "AcDbLine"],
        [10, from[0]],
        [20, from[1]],
        [11, to[0]],
        [21, to[1]],
      ];
      return [{ type: "LINE", layer, line: mark.line, pairs }];
    }
    case "polyline":
      return [polyline(mark.points.map(at), false, layer, mark.line)];
    case "area": {
      const { fill, line } = mark;
      if (fill !== "none" || line === null)
        throw new WriterRefusal({ code: "cannot-write", kind: "area", fill });
      return [mark.points, ...(mark.holes ?? [])].map((ring) => polyline(ring.map(at), true, layer, line));
    }
    case "circle":
      return [circle(mark, at, layer)];
    case "arrowhead":
      return [arrowhead(mark, at, layer)];
    case "text":
      return [text(mark, at, layer)];
    case "picture":
      throw new WriterRefusal({ code: "cannot-write", kind: "picture", fill: null });
    case "group": {
      const own = layer === "0" ? plainText(mark.name) : layer;
      return mark.marks.flatMap((inner) => entitiesOf(height, inner, own));
    }
    default:
      return refuseUnknown(mark);
  }
}

function refuseUnknown(mark: never): never {
  const { kind }: { readonly kind?: unknown } = mark;
  throw new WriterRefusal({ code: "unknown-mark", kind: String(kind) });
}

type At = (point: { readonly x: number; readonly y: number }) => readonly [string, string];

function polyline(
  points: readonly (readonly [string, string])[],
  closed: boolean,
  layer: string,
  line: LineKind,
): Entity {
  const vertices = points.flatMap(([x, y]): Pair[] => [
    [10, x],
    [20, y],
  ]);
  return {
    type: "LWPOLYLINE",
    layer,
    line,
    pairs: [
      [100, "AcDbPolyline"],
      [90, String(points.length)],
      [70, closed ? "1" : "0"],
      [43, "0"],
      ...vertices,
    ],
  };
}

function circle(mark: Extract<Mark, { kind: "circle" }>, at: At, layer: string): Entity {
  const { centre, radius, fill, line } = mark;
  if (fill === "none" && line !== null) {
    const [x, y] = at(centre);
    return {
      type: "CIRCLE",
      layer,
      line,
      pairs: [
        [100, "AcDbCircle"],
        [10, x],
        [20, y],
        [40, millimetres(radius)],
      ],
    };
  }
  if (fill !== "ink") throw new WriterRefusal({ code: "cannot-write", kind: "circle", fill });
  // A dot: two half circles drawn with a pen as wide as the dot's radius.
  const [left, right] = [-1, 1].map((way) => at({ x: centre.x + (way * radius) / 2, y: centre.y }));
  if (!left || !right) throw new WriterRefusal({ code: "cannot-write", kind: "circle", fill });
  return {
    type: "LWPOLYLINE",
    layer,
    line: "thin",
    pairs: [
      [100, "AcDbPolyline"],
      [90, "2"],
      [70, "1"],
      [43, millimetres(radius)],
      [10, left[0]],
      [20, left[1]],
      [42, "1"],
      [10, right[0]],
      [20, right[1]],
      [42, "1"],
    ],
  };
}

function arrowhead(mark: Extract<Mark, { kind: "arrowhead" }>, at: At, layer: string): Entity {
  const [tip, one, other] = arrowCorners(mark);
  // A triangle is a solid whose last two corners are one.
  const corners = [tip, one, other, other].map(at);
  return {
    type: "SOLID",
    layer,
    line: "thin",
    pairs: [
      [100, "AcDbTrace"],
      ...corners.flatMap(([x, y], index): Pair[] => [
        [10 + index, x],
        [20 + index, y],
      ]),
    ],
  };
}

function text(mark: Extract<Mark, { kind: "text" }>, at: At, layer: string): Entity {
  const [x, y] = at(mark.at);
  const aligned = ALIGNED[mark.anchor];
  const rotation = mark.degrees === undefined ? 0 : (360 - mark.degrees) % 360;
  return {
    type: "TEXT",
    layer,
    line: "thin",
    pairs: [
      [100, "AcDbText"],
      [10, x],
      [20, y],
      [40, millimetres(mark.size * CAPITAL)],
      [1, signs(mark.runs.map(runText).join(""))],
      ...(rotation === 0 ? [] : [[50, String(rotation)] satisfies Pair]),
      [7, "Standard"],
      // Other than start, the text is placed by its second point.
      ...(aligned === 0
        ? []
        : ([
            [72, String(aligned)],
            [11, x],
            [21, y],
          ] satisfies Pair[])),
      [100, "AcDbText"],
    ],
  };
}

/** A figure as plain text; the fraction's own stroke keeps `1 1/16` from reading as `11/16`. */
function runText(run: Run): string {
  if (run.kind === "text") return run.text;
  const fraction = run.numerator === "" ? "" : `${run.numerator}/${run.denominator}`;
  return [run.whole, fraction].filter((part) => part !== "").join(" ");
}

/** In DXF a caret and a double per cent begin a code of their own. */
const signs = (written: string): string =>
  plainText(written).replaceAll("^", "^ ").replaceAll("%%", "%%%%%%");
