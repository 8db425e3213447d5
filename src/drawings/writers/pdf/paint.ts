import { LINE_STYLES } from "../../conventions.ts";
import type { Fill, LineKind, Mark } from "../../marks.ts";
import type { Point } from "../../../geometry/index.ts";
import { hatchLines } from "./hatch.ts";
import { inPoints, millimetresInPoints, operand } from "./numbers.ts";
import { haloBox, textOperators, type TypeSetter } from "./text.ts";

export interface PaintContext {
  readonly document: PDFKit.PDFDocument;
  readonly setter: TypeSetter;
  /** The bytes of a picture by its name: PNG or JPEG. */
  readonly pictures: (source: string) => Uint8Array | undefined;
}

/**
 * How much light a fill gives back, 0 black to 1 white; null for nothing at all. Only pictured
 * things carry a grey, and none of it means anything: a photocopy loses nothing.
 */
const TONES: Readonly<Record<Fill, number | null>> = {
  none: null,
  ink: 0,
  paper: 1,
  mat: 1,
  "mat-lower": 1,
  "bevel-head": 0.72,
  "bevel-left": 0.8,
  "bevel-right": 0.9,
  "bevel-foot": 0.96,
  "print-paper": 1,
  image: 0.86,
  wood: 0.8,
  glazing: null,
  shadow: null,
  mount: 1,
  backing: 1,
  "hatch-out": null,
  "hatch-section": null,
  "hatch-waste": null,
  "hatch-floor": null,
};

/** Draws marks onto the document's current page, whose axes must already run right and down. Throws RangeError on what it cannot write. */
export function paint(context: PaintContext, marks: readonly Mark[]): void {
  const { document } = context;
  for (const mark of marks) {
    switch (mark.kind) {
      case "line":
        document.addContent(`${penOf(mark.line)}${path([mark.from, mark.to])}S`);
        break;
      case "polyline":
        document.addContent(`${penOf(mark.line)}${path(mark.points)}S`);
        break;
      case "area":
        area(
          context,
          mark.fill,
          mark.line,
          [mark.points, ...(mark.holes ?? [])].map(closed).join(""),
          mark.points,
        );
        break;
      case "circle": {
        const { centre, radius } = mark;
        const corners = [
          { x: centre.x - radius, y: centre.y - radius },
          { x: centre.x + radius, y: centre.y + radius },
        ];
        area(context, mark.fill, mark.line, circle(centre, radius), corners);
        break;
      }
      case "arrowhead":
        document.addContent(`0 g ${arrowhead(mark.at, mark.degrees, mark.size)}f`);
        break;
      case "text": {
        if (mark.halo === true) document.addContent(halo(context, mark));
        const operators = textOperators(context.setter, mark);
        if (operators !== "") document.addContent(operators);
        break;
      }
      case "picture":
        picture(context, mark);
        break;
      case "group":
        paint(context, mark.marks);
        break;
      default:
        throw new RangeError(`this writer cannot draw ${JSON.stringify(mark satisfies never)}`);
    }
  }
}

const at = (x: number, y: number): string => `${operand(inPoints(x))} ${operand(inPoints(y))}`;

function path(points: readonly { readonly x: number; readonly y: number }[]): string {
  return points.map(({ x, y }, index) => `${at(x, y)} ${index === 0 ? "m" : "l"} `).join("");
}

const closed = (points: readonly Point[]): string => `${path(points)}h `;

function penOf(line: LineKind): string {
  const { width, dashes } = LINE_STYLES[line];
  const pattern = dashes.map((long) => operand(millimetresInPoints(long))).join(" ");
  return `0 G ${operand(millimetresInPoints(width))} w [${pattern}] 0 d 0 J 0 j `;
}

/** Four Bézier quarters; their handles at 0.5523 of the radius keep within 0.03 % of a true circle. */
function circle(centre: Point, radius: number): string {
  const handle = radius * 0.552_284_75;
  const { x, y } = centre;
  return (
    `${at(x + radius, y)} m ` +
    `${at(x + radius, y + handle)} ${at(x + handle, y + radius)} ${at(x, y + radius)} c ` +
    `${at(x - handle, y + radius)} ${at(x - radius, y + handle)} ${at(x - radius, y)} c ` +
    `${at(x - radius, y - handle)} ${at(x - handle, y - radius)} ${at(x, y - radius)} c ` +
    `${at(x + handle, y - radius)} ${at(x + radius, y - handle)} ${at(x + radius, y)} c h `
  );
}

function area(
  { document }: PaintContext,
  fill: Fill,
  line: LineKind | null,
  outline: string,
  extent: readonly { readonly x: number; readonly y: number }[],
): void {
  const tone = TONES[fill];
  if (tone !== null) document.addContent(`${operand(tone)} g ${outline}f* 0 g`);
  const lines = hatchLines(fill, {
    left: inPoints(Math.min(...extent.map(({ x }) => x))),
    right: inPoints(Math.max(...extent.map(({ x }) => x))),
    top: inPoints(Math.min(...extent.map(({ y }) => y))),
    bottom: inPoints(Math.max(...extent.map(({ y }) => y))),
  });
  if (lines !== "") document.addContent(`q ${outline}W* n ${penOf("hatch")}${lines}S Q`);
  if (line !== null) document.addContent(`${penOf(line)}${outline}S`);
}

/** A filled head of 30 degrees, `size` long. */
function arrowhead(tip: Point, degrees: number, size: number): string {
  const corner = (off: number): string => {
    const turn = ((degrees + 180 + off) * Math.PI) / 180;
    const reach = size / Math.cos(Math.PI / 12);
    return at(tip.x + reach * Math.cos(turn), tip.y + reach * Math.sin(turn));
  };
  return `${at(tip.x, tip.y)} m ${corner(15)} l ${corner(-15)} l h `;
}

function halo({ setter }: PaintContext, mark: Extract<Mark, { kind: "text" }>): string {
  const box = haloBox(mark, setter.measure);
  const turn = ((mark.degrees ?? 0) * Math.PI) / 180;
  const corner = (x: number, up: number): { x: number; y: number } => ({
    x: mark.at.x + x * Math.cos(turn) + up * Math.sin(turn),
    y: mark.at.y + x * Math.sin(turn) - up * Math.cos(turn),
  });
  const [left, right] = [box.x, box.x + box.width];
  const low = box.up - box.height;
  return `1 g ${path([corner(left, box.up), corner(right, box.up), corner(right, low), corner(left, low)])}h f 0 g`;
}

function picture({ document, pictures }: PaintContext, mark: Extract<Mark, { kind: "picture" }>): void {
  const bytes = pictures(mark.source);
  if (bytes === undefined)
    throw new RangeError(`no picture is at hand under the name ${JSON.stringify(mark.source)}`);
  const [left, top, width, height] = [mark.left, mark.top, mark.width, mark.height].map(inPoints);
  if (left === undefined || top === undefined || width === undefined || height === undefined) return;
  document.addContent("q");
  if (mark.clip) document.addContent(`${closed(mark.clip)}W n`);
  if (mark.degrees !== undefined && mark.degrees !== 0) {
    const turn = (mark.degrees * Math.PI) / 180;
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    const [x, y] = [left + width / 2, top + height / 2];
    const matrix = [cos, sin, -sin, cos, x - x * cos + y * sin, y - x * sin - y * cos];
    document.addContent(`${matrix.map(operand).join(" ")} cm`);
  }
  document.image(Buffer.from(bytes), left, top, { width, height });
  document.addContent("Q");
}
