import { setRun } from "../../figures.ts";
import type { Mark, MeasureText, Weight } from "../../marks.ts";
import { type EmbeddedFont, fontOf, plainSpaces } from "./fonts.ts";
import { inPoints, operand } from "./numbers.ts";

type TextMark = Extract<Mark, { kind: "text" }>;

/** Sets text in one document: its fonts at hand, and the words it has set already. */
export interface TypeSetter {
  readonly document: PDFKit.PDFDocument;
  readonly measure: MeasureText;
  readonly fonts: Map<Weight, EmbeddedFont>;
  readonly words: Map<string, string>;
}

export const typeSetter = (document: PDFKit.PDFDocument, measure: MeasureText): TypeSetter => ({
  document,
  measure,
  fonts: new Map(),
  words: new Map(),
});

/** Captions repeat from page to page; a bound keeps a thousand titles from being held. */
const MOST_WORDS = 20_000;

/** A weight's font, named among the current page's resources. */
function fontFor({ document, fonts }: TypeSetter, weight: Weight): EmbeddedFont {
  let font = fonts.get(weight);
  if (font === undefined) {
    font = fontOf(document, weight);
    fonts.set(weight, font);
  }
  document.page.fonts[font.id] ??= font.ref();
  return font;
}

/** Text that a type lacks a sign for is refused, never left as an empty box that nobody notices. */
function refuseMissing({ font }: EmbeddedFont, text: string): void {
  for (const character of text) {
    if (!font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0)) {
      throw new RangeError(
        `the type has no sign for ${JSON.stringify(character)} in ${JSON.stringify(text)}`,
      );
    }
  }
}

/** The string operand of one show operator. */
function shown(setter: TypeSetter, text: string, weight: Weight): string {
  const font = fontFor(setter, weight);
  const key = `${weight}\n${text}`;
  const known = setter.words.get(key);
  if (known !== undefined) return known;
  refuseMissing(font, text);
  const array = kerned(font, text);
  if (setter.words.size >= MOST_WORDS) setter.words.clear();
  setter.words.set(key, array);
  return array;
}

/** Glyphs with their kerning; those that stand off their place move there and back. */
function kerned(font: EmbeddedFont, text: string): string {
  const [glyphs, positions] = font.encode(text);
  let array = "";
  let string = "";
  const flush = (): void => {
    if (string !== "") array += `<${string}>`;
    string = "";
  };
  glyphs.forEach((glyph, index) => {
    const at = positions[index];
    if (!at) return;
    if (at.xOffset !== 0) {
      flush();
      array += operand(-at.xOffset);
    }
    string += glyph;
    const back = at.advanceWidth + at.xOffset - at.xAdvance;
    if (back !== 0) {
      flush();
      array += operand(back);
    }
  });
  flush();
  return array;
}

/** A text as the file's own string: UTF-16, marked as such, in hexadecimal. */
const unicodeString = (text: string): string =>
  `<FEFF${Array.from({ length: text.length }, (_, i) => text.charCodeAt(i).toString(16).padStart(4, "0")).join("")}>`;

/**
 * The operators of one text mark. All runs stand in one text object, so that a reader takes them in
 * order. A stacked fraction is a marked span that carries its replacement text (`1 1⁄16`) inside the
 * text object; a reader that ignores the replacement still finds an unseen space after the whole
 * and an unseen fraction slash between the rows, so that 1 1/16 can never be taken for 11/16.
 */
export function textOperators(setter: TypeSetter, mark: TextMark): string {
  const set = mark.runs.map((run) => setRun(run, mark.size, mark.weight, setter.measure));
  const width = set.reduce((sum, run) => sum + run.width, 0);
  const start = mark.anchor === "start" ? 0 : mark.anchor === "middle" ? -width / 2 : -width;
  const turn = ((mark.degrees ?? 0) * Math.PI) / 180;
  const [along, across] = [Math.cos(turn), Math.sin(turn)];
  // `x` along the baseline and `up` from it, in ticks, to the page.
  const place = (x: number, up: number): [string, string] => [
    operand(inPoints(mark.at.x + x * along + up * across)),
    operand(inPoints(mark.at.y + x * across - up * along)),
  ];

  let text = "";
  let bars = "";
  let x = start;
  for (const run of set) {
    const parts = run.texts.map(({ text: own, x: right, up, size, weight }) => {
      const [left, base] = place(x + right, up);
      const plain = plainSpaces(own);
      if (plain === "") return "";
      const glyphs = shown(setter, plain, weight);
      const font = fontFor(setter, weight);
      const matrix = [along, across, across, -along].map(operand).join(" ");
      return `${matrix} ${left} ${base} Tm /${font.id} ${operand(inPoints(size))} Tf [${glyphs}] TJ\n`;
    });
    if (run.bar === null) {
      text += parts.join("");
    } else {
      text += `/Span << /ActualText ${unicodeString(run.spoken)} >> BDC\n`;
      text += joinedRows(setter, parts, run.texts[0]?.weight ?? mark.weight);
      text += "EMC\n";
      const { x: right, up, width: long, thickness } = run.bar;
      const [left, top] = place(x + right, up + thickness / 2);
      const [dx, dy] = [operand(inPoints(long * along)), operand(inPoints(long * across))];
      const [ex, ey] = [operand(inPoints(-thickness * across)), operand(inPoints(thickness * along))];
      bars += `${left} ${top} m ${sumOf(left, dx)} ${sumOf(top, dy)} l ${sumOf(left, dx, ex)} ${sumOf(top, dy, ey)} l ${sumOf(left, ex)} ${sumOf(top, ey)} l f\n`;
    }
    x += run.width;
  }
  if (text === "" && bars === "") return "";
  const ink = mark.onInk === true ? "1 g\n" : "0 g\n";
  return `${ink}BT\n${text}ET\n${bars}${mark.onInk === true ? "0 g\n" : ""}`;
}

const sumOf = (...parts: string[]): string => operand(parts.reduce((sum, part) => sum + Number(part), 0));

/** The rows of a stacked fraction with the unseen signs that part them; rendering mode 3 draws nothing. */
function joinedRows(setter: TypeSetter, parts: readonly string[], weight: Weight): string {
  const unseen = (sign: string): string => `3 Tr [${shown(setter, sign, weight)}] TJ 0 Tr\n`;
  const [first = "", second = "", third] = parts;
  if (third === undefined) return `${first}${unseen("\u2044")}${second}`;
  return `${first}${unseen(" ")}${second}${unseen("\u2044")}${third}`;
}

/** The ground cleared behind a text: as wide as the text and a little more, as high as its highest part. */
export function haloBox(
  mark: TextMark,
  measure: MeasureText,
): { x: number; up: number; width: number; height: number } {
  const set = mark.runs.map((run) => setRun(run, mark.size, mark.weight, measure));
  const width = set.reduce((sum, run) => sum + run.width, 0);
  const start = mark.anchor === "start" ? 0 : mark.anchor === "middle" ? -width / 2 : -width;
  const sizes = mark.runs.map((run) => ({
    size: run.size ?? mark.size,
    stacked: run.kind === "fraction" && run.numerator !== "",
  }));
  const up = Math.max(0, ...sizes.map(({ size, stacked }) => size * (stacked ? 0.92 : 0.74)));
  const down = Math.max(0, ...sizes.map(({ size, stacked }) => size * (stacked ? 0.26 : 0.24)));
  const air = mark.size * 0.12;
  return { x: start - air, up: up, width: width + 2 * air, height: up + down };
}
