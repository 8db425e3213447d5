import type { Point } from "../../geometry/index.ts";
import { add, fromReal, type Length, subtract } from "../../lengths/index.ts";
import { FRACTION_DOWN, FRACTION_UP, widthOfRuns } from "../figures.ts";
import type { Drawing, Mark, MeasureText } from "../marks.ts";
import { aroundAll, type Rect } from "./shapes.ts";

/** How far text reaches above and below its baseline, as a share of its size: the larger of a letter's and a stacked fraction's. */
const TEXT_UP = FRACTION_UP;
const TEXT_DOWN = Math.max(FRACTION_DOWN, 0.25);

/** The box round a text on its baseline, before it is turned about `at`. */
function textBox(mark: Extract<Mark, { kind: "text" }>, measure: MeasureText): Rect {
  const width = widthOfRuns(mark.runs, mark.size, mark.weight, measure);
  const before = mark.anchor === "start" ? 0 : mark.anchor === "middle" ? width / 2 : width;
  return {
    left: -before,
    right: width - before,
    top: -TEXT_UP * mark.size,
    bottom: TEXT_DOWN * mark.size,
  };
}

function turnedBox(at: Point, box: Rect, degrees: number): Rect {
  const turn = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const xs: number[] = [];
  const ys: number[] = [];
  for (const x of [box.left, box.right]) {
    for (const y of [box.top, box.bottom]) {
      xs.push(at.x + x * cos - y * sin);
      ys.push(at.y + x * sin + y * cos);
    }
  }
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

const NOTHING: Rect = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };

const joined = (a: Rect, b: Rect): Rect => ({
  left: Math.min(a.left, b.left),
  top: Math.min(a.top, b.top),
  right: Math.max(a.right, b.right),
  bottom: Math.max(a.bottom, b.bottom),
});

/** The box that holds one mark; text by its measure, a line without its own width. */
export function extentOf(mark: Mark, measure: MeasureText): Rect {
  switch (mark.kind) {
    case "line":
      return aroundAll([mark.from, mark.to]);
    case "polyline":
    case "area":
      return aroundAll(mark.points);
    case "circle":
      return {
        left: mark.centre.x - mark.radius,
        right: mark.centre.x + mark.radius,
        top: mark.centre.y - mark.radius,
        bottom: mark.centre.y + mark.radius,
      };
    case "arrowhead": {
      const turn = (mark.degrees * Math.PI) / 180;
      const back = { x: mark.at.x - mark.size * Math.cos(turn), y: mark.at.y - mark.size * Math.sin(turn) };
      return joined(aroundAll([mark.at]), { left: back.x, right: back.x, top: back.y, bottom: back.y });
    }
    case "text":
      return turnedBox(mark.at, textBox(mark, measure), mark.degrees ?? 0);
    case "picture": {
      if (mark.clip) return aroundAll(mark.clip);
      const [halfWidth, halfHeight] = [mark.width / 2, mark.height / 2];
      const box = { left: -halfWidth, right: halfWidth, top: -halfHeight, bottom: halfHeight };
      const centre = {
        x: fromReal(mark.left + halfWidth, "nearest"),
        y: fromReal(mark.top + halfHeight, "nearest"),
      };
      return turnedBox(centre, box, mark.degrees ?? 0);
    }
    case "group":
      return extentOfAll(mark.marks, measure);
  }
}

/** The box that holds all marks; `left` past `right` where there are none. */
export const extentOfAll = (marks: readonly Mark[], measure: MeasureText): Rect =>
  marks.reduce((box, mark) => joined(box, extentOf(mark, measure)), NOTHING);

const moved = (point: Point, by: Point): Point => ({ x: add(point.x, by.x), y: add(point.y, by.y) });

/** The same mark somewhere else on its sheet. */
export function shifted(mark: Mark, by: Point): Mark {
  const all = (points: readonly Point[]): Point[] => points.map((point) => moved(point, by));
  switch (mark.kind) {
    case "line":
      return { ...mark, from: moved(mark.from, by), to: moved(mark.to, by) };
    case "polyline":
      return { ...mark, points: all(mark.points) };
    case "area":
      return { ...mark, points: all(mark.points), ...(mark.holes ? { holes: mark.holes.map(all) } : {}) };
    case "circle":
      return { ...mark, centre: moved(mark.centre, by) };
    case "arrowhead":
    case "text":
      return { ...mark, at: moved(mark.at, by) };
    case "picture":
      return {
        ...mark,
        left: add(mark.left, by.x),
        top: add(mark.top, by.y),
        ...(mark.clip ? { clip: all(mark.clip) } : {}),
      };
    case "group":
      return { ...mark, marks: mark.marks.map((inner) => shifted(inner, by)) };
  }
}

/** A drawing just large enough for its marks and a margin all round, and how far they were moved to lie on it. */
export function fitted(
  marks: readonly Mark[],
  margin: Length,
  measure: MeasureText,
): Drawing & { readonly origin: Point } {
  const box = extentOfAll(marks, measure);
  const origin = {
    x: subtract(margin, fromReal(box.left, "down")),
    y: subtract(margin, fromReal(box.top, "down")),
  };
  return {
    width: add(add(fromReal(box.right, "up"), origin.x), margin),
    height: add(add(fromReal(box.bottom, "up"), origin.y), margin),
    marks: marks.map((mark) => shifted(mark, origin)),
    origin,
  };
}
