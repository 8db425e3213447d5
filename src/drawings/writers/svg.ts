import type { Point } from "../../geometry/index.ts";
import { add, type Length, TICKS_PER_MILLIMETRE, ZERO } from "../../lengths/index.ts";
import { type SetRun, type SetText, setRun } from "../figures.ts";
import { estimateText } from "../lettering.ts";
import type { Drawing, Fill, LineKind, Mark, MeasureText, Weight } from "../marks.ts";
import { arrowCorners } from "./arrow.ts";
import { plainText, WriterRefusal } from "./refusal.ts";
import { hatchPatterns, styleSheet } from "./style.ts";

export interface SvgOptions {
  /** Said to a reader that does not see it. */
  readonly title?: string;
  /** The address of a picture by the name that a mark gives it. */
  readonly pictures?: (source: string) => string | undefined;
  /** The font's own measure where there is a font; else a close estimate. */
  readonly measure?: MeasureText;
}

interface Writing {
  readonly pictures: (source: string) => string | undefined;
  readonly measure: MeasureText;
  readonly lines: Set<LineKind>;
  readonly fills: Set<Fill>;
  readonly weights: Set<Weight>;
  readonly clips: string[];
}

/**
 * A drawing as an SVG file of its own, in millimetres, to a thousandth. Fractions stand stacked, so that
 * they need no feature of the font. Throws WriterRefusal for a mark that it does not know, a picture
 * that nobody resolves, or a control character in a text.
 */
export function writeSvg(drawing: Drawing, options: SvgOptions = {}): string {
  const writing: Writing = {
    pictures: options.pictures ?? (() => undefined),
    measure: options.measure ?? estimateText,
    lines: new Set(),
    fills: new Set(),
    weights: new Set(),
    clips: [],
  };
  const body = drawing.marks.map((mark) => markText(writing, mark)).join("\n");
  const { lines, fills, weights, clips } = writing;
  const [width, height] = [millimetres(drawing.width), millimetres(drawing.height)];
  const title = options.title === undefined ? "" : `<title>${escaped(options.title)}</title>\n`;
  const definitions = `${hatchPatterns(fills)}${clips.join("")}`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img">`,
    `${title}<style>${styleSheet(lines, fills, weights)}</style>`,
    ...(definitions === "" ? [] : [`<defs>${definitions}</defs>`]),
    body,
    "</svg>",
    "",
  ].join("\n");
}

function markText(writing: Writing, mark: Mark): string {
  switch (mark.kind) {
    case "line":
      return path(writing, pathOf([mark.from, mark.to]), "none", mark.line);
    case "polyline":
      return path(writing, pathOf(mark.points), "none", mark.line);
    case "area": {
      const rings = [mark.points, ...(mark.holes ?? [])].map((ring) => `${pathOf(ring)}Z`);
      return path(writing, rings.join(""), mark.fill, mark.line);
    }
    case "circle": {
      const { x, y } = mark.centre;
      const at = `cx="${millimetres(x)}" cy="${millimetres(y)}" r="${millimetres(mark.radius)}"`;
      return `<circle${classes(writing, mark.fill, mark.line)} ${at}/>`;
    }
    case "arrowhead":
      return path(writing, `M${arrowCorners(mark).map(pair).join("L")}Z`, "ink", null);
    case "text":
      return textGroup(writing, mark);
    case "picture":
      return picture(writing, mark);
    case "group": {
      const inner = mark.marks.map((each) => markText(writing, each)).join("\n");
      return `<g data-name="${escaped(mark.name)}">\n${inner}\n</g>`;
    }
    default:
      return refuseUnknown(mark);
  }
}

/** A mark from outside the house's own types, read back from a file perhaps. */
function refuseUnknown(mark: never): never {
  const { kind }: { readonly kind?: unknown } = mark;
  throw new WriterRefusal({ code: "unknown-mark", kind: String(kind) });
}

/** Millimetres to a thousandth, without noughts that say nothing. */
function millimetres(ticks: number): string {
  const thousandths = Math.round((ticks * 1000) / TICKS_PER_MILLIMETRE);
  return String((thousandths === 0 ? 0 : thousandths) / 1000);
}

const pair = (point: { readonly x: number; readonly y: number }): string =>
  `${millimetres(point.x)} ${millimetres(point.y)}`;

const pathOf = (points: readonly Point[]): string =>
  points.map((point, index) => `${index === 0 ? "M" : "L"}${pair(point)}`).join("");

function path(writing: Writing, d: string, fill: Fill, line: LineKind | null): string {
  const rule = d.indexOf("M", 1) > 0 ? ' fill-rule="evenodd"' : "";
  return `<path${classes(writing, fill, line)}${rule} d="${d}"/>`;
}

function classes(writing: Writing, fill: Fill, line: LineKind | null): string {
  const names: string[] = [];
  if (fill !== "none") {
    writing.fills.add(fill);
    names.push(`f-${fill}`);
  }
  if (line !== null) {
    writing.lines.add(line);
    names.push(line);
  }
  return names.length === 0 ? "" : ` class="${names.join(" ")}"`;
}

function textGroup(writing: Writing, mark: Extract<Mark, { kind: "text" }>): string {
  const turn = mark.degrees === undefined || mark.degrees === 0 ? "" : ` rotate(${mark.degrees})`;
  const style = `${mark.halo === true ? " halo" : ""}${mark.onInk === true ? " on-ink" : ""}`;
  const runs = mark.runs.map((run) => setRun(run, mark.size, mark.weight, writing.measure));
  const plain = runs.flatMap((run) => (run.bar === null ? run.texts : []));
  const [first] = plain;
  if (first && plain.length === 1 && runs.length === 1) {
    // One plain text: whoever sets it knows its true width better than an estimate.
    const place = `transform="translate(${pair(mark.at)})${turn}"`;
    const anchor = mark.anchor === "start" ? "" : ` text-anchor="${mark.anchor}"`;
    return textPart(writing, first, `${anchor} ${place}`, style);
  }
  const width = runs.reduce((sum, run) => add(sum, run.width), ZERO);
  const start = mark.anchor === "start" ? 0 : mark.anchor === "middle" ? width / 2 : width;
  let x = ZERO;
  const parts = runs.map((run) => {
    const set = setRunText(writing, run, x, style);
    x = add(x, run.width);
    return set;
  });
  const spoken = runs.map((run) => run.spoken).join("");
  const stacked = runs.some((run) => run.bar !== null);
  const label = stacked ? ` role="img" aria-label="${escaped(spoken)}"` : "";
  const shift = start === 0 ? "" : ` translate(${millimetres(-start)} 0)`;
  return `<g${label} transform="translate(${pair(mark.at)})${turn}${shift}">${parts.join("")}</g>`;
}

function textPart(writing: Writing, part: SetText, attributes: string, style: string): string {
  writing.weights.add(part.weight);
  return `<text class="${part.weight}${style}"${attributes} font-size="${millimetres(part.size)}" xml:space="preserve">${escaped(part.text)}</text>`;
}

function setRunText(writing: Writing, run: SetRun, x: Length, style: string): string {
  const texts = run.texts.map((part) => {
    const along = add(x, part.x);
    const up = part.up === 0 ? "" : ` y="${millimetres(-part.up)}"`;
    return textPart(writing, part, `${along === 0 ? "" : ` x="${millimetres(along)}"`}${up}`, style);
  });
  if (run.bar === null) return texts.join("");
  const { bar } = run;
  const top = -bar.up - bar.thickness / 2;
  writing.fills.add("ink");
  const rule = `<rect class="f-ink" x="${millimetres(add(x, bar.x))}" y="${millimetres(top)}" width="${millimetres(bar.width)}" height="${millimetres(bar.thickness)}"/>`;
  return `${texts.join("")}${rule}`;
}

function picture(writing: Writing, mark: Extract<Mark, { kind: "picture" }>): string {
  const address = writing.pictures(mark.source);
  if (address === undefined) throw new WriterRefusal({ code: "no-picture", source: mark.source });
  const { left, top, width, height } = mark;
  const turn =
    mark.degrees === undefined || mark.degrees === 0
      ? ""
      : ` transform="rotate(${mark.degrees} ${pair({ x: left + width / 2, y: top + height / 2 })})"`;
  const box = `x="${millimetres(left)}" y="${millimetres(top)}" width="${millimetres(width)}" height="${millimetres(height)}"`;
  const image = `<image ${box} preserveAspectRatio="xMidYMid slice"${turn} href="${escaped(address)}"/>`;
  if (!mark.clip) return image;
  const id = `clip-${writing.clips.length + 1}`;
  writing.clips.push(`<clipPath id="${id}"><path d="${pathOf(mark.clip)}Z"/></clipPath>`);
  return `<g clip-path="url(#${id})">${image}</g>`;
}

const escaped = (text: string): string =>
  plainText(text)
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
