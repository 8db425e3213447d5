import { type Mark, type SetText, setRun } from "../../src/drawings/index.ts";
import type { Ink, PdfTypeface } from "../../src/drawings/writers/pdf/index.ts";
import { plainText } from "../../src/words/index.ts";
import { CORNER_RULE, type Page, paperOf, type PaperSize } from "../../src/papers/index.ts";

/** The ink of one word of one text mark, in ticks of the page. */
export interface WordInk {
  readonly word: string;
  readonly mark: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
}

/** Marks in the order they are drawn, groups opened; the corner rule left out where asked. */
export function flatMarks(marks: readonly Mark[], withRule = false): readonly Mark[] {
  return marks.flatMap((mark) =>
    mark.kind === "group"
      ? !withRule && mark.name === CORNER_RULE
        ? []
        : flatMarks(mark.marks, withRule)
      : [mark],
  );
}

/** Where the ink of every word lies: by the font's own outlines, not by its line height. */
export function wordInks(marks: readonly Mark[], typeface: PdfTypeface): readonly WordInk[] {
  return marks.flatMap((mark, index) => {
    if (mark.kind !== "text") return [];
    const set = mark.runs.map((run) => setRun(run, mark.size, mark.weight, typeface.measure));
    const width = set.reduce((sum, run) => sum + run.width, 0);
    let x = mark.anchor === "start" ? 0 : mark.anchor === "middle" ? -width / 2 : -width;
    const turned = (mark.degrees ?? 0) !== 0;
    const words: WordInk[] = [];
    for (const run of set) {
      for (const part of run.texts) {
        const ink = inkOf(typeface, part);
        if (ink === null) continue;
        const along = [x + part.x + ink.from, x + part.x + ink.to] as const;
        const across = [part.up + ink.up, part.up - ink.down] as const;
        words.push({
          word: part.text,
          mark: index,
          // A turned caption runs upwards: along the page's minus y.
          left: mark.at.x + (turned ? -across[0] : along[0]),
          right: mark.at.x + (turned ? -across[1] : along[1]),
          top: mark.at.y - (turned ? along[1] : across[0]),
          foot: mark.at.y - (turned ? along[0] : across[1]),
        });
      }
      x += run.width;
    }
    return words;
  });
}

const seen = new Map<string, Ink | null>();

/** A word's ink at a size; words repeat from page to page. */
function inkOf(typeface: PdfTypeface, { text, weight, size }: SetText): Ink | null {
  const key = `${weight} ${size} ${text}`;
  const known = seen.get(key);
  if (known !== undefined) return known;
  const ink = typeface.ink(text, weight, size);
  seen.set(key, ink);
  return ink;
}

const HAIR = 2_000; // 0.025 mm: two outlines that share a rounded edge do not touch.

/** Pairs of words from different marks whose ink meets. */
export function touching(inks: readonly WordInk[]): readonly string[] {
  const found: string[] = [];
  inks.forEach((a, index) => {
    for (const b of inks.slice(index + 1)) {
      if (a.mark === b.mark) continue;
      if (
        a.left + HAIR < b.right &&
        b.left + HAIR < a.right &&
        a.top + HAIR < b.foot &&
        b.top + HAIR < a.foot
      ) {
        found.push(`"${a.word}" meets "${b.word}"`);
      }
    }
  });
  return found;
}

/** Rules, dimensions and edges that run through a word's ink; what a later clear field covers is not seen. */
export function struckThrough(marks: readonly Mark[], inks: readonly WordInk[]): readonly string[] {
  const found: string[] = [];
  marks.forEach((mark, at) => {
    if (mark.kind !== "line" || mark.line === "centre") return;
    const box = {
      left: Math.min(mark.from.x, mark.to.x),
      right: Math.max(mark.from.x, mark.to.x),
      top: Math.min(mark.from.y, mark.to.y),
      foot: Math.max(mark.from.y, mark.to.y),
    };
    for (const ink of inks) {
      const text = marks[ink.mark];
      if (text?.kind !== "text" || text.halo === true) continue;
      const meets =
        ink.left + HAIR < box.right + 1 &&
        box.left < ink.right - HAIR &&
        ink.top + HAIR < box.foot + 1 &&
        box.top < ink.foot - HAIR;
      if (meets && !coveredBetween(marks, at, ink)) found.push(`a ${mark.line} line strikes "${ink.word}"`);
    }
  });
  return found;
}

/** Whether a clear field was laid over the line before the word was set on it. */
function coveredBetween(marks: readonly Mark[], line: number, ink: WordInk): boolean {
  return marks.slice(line, ink.mark).some((mark) => {
    if (mark.kind === "circle") {
      const reach = mark.radius;
      return (
        mark.fill !== "none" &&
        ink.left >= mark.centre.x - reach &&
        ink.right <= mark.centre.x + reach &&
        ink.top >= mark.centre.y - reach &&
        ink.foot <= mark.centre.y + reach
      );
    }
    if (mark.kind !== "area" || (mark.fill !== "paper" && mark.fill !== "ink")) return false;
    const [xs, ys] = [mark.points.map(({ x }) => x), mark.points.map(({ y }) => y)];
    return (
      Math.min(...xs) <= ink.left &&
      Math.max(...xs) >= ink.right &&
      Math.min(...ys) <= ink.top &&
      Math.max(...ys) >= ink.foot
    );
  });
}

/** Points of any mark, and ink of any word, that leave the paper's content box. */
export function outside(page: Page, size: PaperSize, typeface: PdfTypeface): readonly string[] {
  const { left, top, width, height } = paperOf(size).content;
  // A line on the box's edge has half its width outside.
  const slack = 0.46 * 80_000;
  const out = (x: number, y: number): boolean =>
    x < left - slack || x > left + width + slack || y < top - slack || y > top + height + slack;
  const marks = flatMarks(page.marks);
  const found = wordInks(marks, typeface)
    .filter((ink) => out(ink.left, ink.top) || out(ink.right, ink.foot))
    .map(({ word }) => `"${word}" leaves the box`);
  for (const mark of marks) {
    const points =
      mark.kind === "line"
        ? [mark.from, mark.to]
        : mark.kind === "polyline" || mark.kind === "area"
          ? mark.points
          : mark.kind === "circle"
            ? [
                { x: mark.centre.x - mark.radius, y: mark.centre.y - mark.radius },
                { x: mark.centre.x + mark.radius, y: mark.centre.y + mark.radius },
              ]
            : mark.kind === "picture"
              ? (mark.clip ?? [])
              : [];
    if (points.some(({ x, y }) => out(x, y))) found.push(`a ${mark.kind} leaves the box`);
  }
  return found;
}

export type TextMark = Extract<Mark, { kind: "text" }>;

/** A text mark as it reads, fractions as `1 3/4`. */
export const reading = (mark: TextMark): string => plainText(mark.runs);

/** Every text of a page, in the order it is drawn. */
export const textsOf = (page: Page, withRule = false): readonly string[] =>
  flatMarks(page.marks, withRule).flatMap((mark) => (mark.kind === "text" ? [reading(mark)] : []));
