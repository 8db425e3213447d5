import { FRACTION_DOWN, FRACTION_UP, type Mark, type Run, setRun, widthOfRuns } from "../drawings/index.ts";
import { add, type Length, larger, sum, ZERO } from "../lengths/index.ts";
import { flat, type Phrase } from "../words/runs.ts";
import { type Align, type Block, block } from "./block.ts";
import { type Desk, part } from "./paper.ts";
import { HAIR, type TextStyle } from "./type.ts";

// Ink of a letter above and below its baseline, as shares of its size (capitals with an accent; a tail).
const LETTER_UP = 0.78;
const LETTER_DOWN = 0.24;
const DIGIT_UP = 0.66;

/** Figures of a sentence in the sizes that a style gives them. */
function sized(phrase: Phrase, style: TextStyle): readonly Run[] {
  const { figures } = style;
  return flat(phrase).map((run) =>
    run.kind === "text" || run.size !== undefined || figures === undefined
      ? run
      : { ...run, size: run.numerator === "" ? figures.whole : figures.stacked },
  );
}

const upOf = (run: Run): number =>
  run.kind === "text" ? LETTER_UP : run.numerator === "" ? DIGIT_UP : FRACTION_UP;
const downOf = (run: Run): number =>
  run.kind === "text" ? LETTER_DOWN : run.numerator === "" ? 0 : FRACTION_DOWN;

/** How far the ink of a line may reach from its baseline. */
function reach(all: readonly Run[], size: Length): { readonly up: Length; readonly down: Length } {
  return {
    up: all.reduce((most, run) => larger(most, part(run.size ?? size, upOf(run))), ZERO),
    down: all.reduce((most, run) => larger(most, part(run.size ?? size, downOf(run))), ZERO),
  };
}

/** How wide a phrase is in a style, on one line. */
export const widthOf = (desk: Desk, phrase: Phrase, style: TextStyle): Length =>
  widthOfRuns(sized(phrase, style), style.size, style.weight, desk.typeface.measure);

/** A text mark whose baseline starts (or ends, or has its middle) at a point. */
export const textAt = (
  x: Length,
  y: Length,
  phrase: Phrase,
  style: TextStyle,
  anchor: Align = "start",
  more: { readonly onInk?: boolean; readonly halo?: boolean; readonly degrees?: number } = {},
): Mark => ({
  kind: "text",
  at: { x, y },
  runs: sized(phrase, style),
  size: style.size,
  weight: style.weight,
  anchor,
  ...more,
});

/** A phrase on one line as a block as high as its ink may reach. */
export function textLine(desk: Desk, phrase: Phrase, style: TextStyle, onInk = false): Block {
  const all = sized(phrase, style);
  const { up, down } = reach(all, style.size);
  const width = widthOfRuns(all, style.size, style.weight, desk.typeface.measure);
  return block(width, add(up, down), [textAt(ZERO, up, all, style, "start", onInk ? { onInk } : {})]);
}

/**
 * A phrase broken at its spaces to a width. Lines stand `leading` apart, further where figures of
 * two neighbouring lines would touch. A word wider than the width is broken where it must be.
 */
export function paragraph(
  desk: Desk,
  phrase: Phrase,
  style: TextStyle,
  width: Length,
  align: Align = "start",
): Block {
  return setLines(brokenLines(desk, phrase, style, width), style, width, align);
}

/** Lines already broken, set one below another. */
export function setLines(
  lines: readonly (readonly Run[])[],
  style: TextStyle,
  width: Length,
  align: Align = "start",
): Block {
  const x = align === "start" ? ZERO : align === "end" ? width : part(width, 0.5);
  const marks: Mark[] = [];
  let baseline = ZERO;
  let below = ZERO;
  lines.forEach((line, index) => {
    const { up, down } = reach(line, style.size);
    baseline = index === 0 ? up : add(baseline, larger(style.leading, sum([below, up, HAIR])));
    below = down;
    marks.push(textAt(x, baseline, line, style, align));
  });
  return block(width, add(baseline, below), marks);
}

/** The lines of a phrase at a width. */
export function brokenLines(
  desk: Desk,
  phrase: Phrase,
  style: TextStyle,
  width: Length,
): readonly (readonly Run[])[] {
  const lines: Run[][] = [];
  let line: Run[] = [];
  let used = ZERO;
  const widthOfAll = (all: readonly Run[]): Length =>
    widthOfRuns(all, style.size, style.weight, desk.typeface.measure);
  for (const { word, space } of words(sized(phrase, style))) {
    const long = widthOfAll(word);
    const gap = line.length === 0 || space === null ? ZERO : widthOfAll([space]);
    if (line.length > 0 && sum([used, gap, long]) > width) {
      lines.push(line);
      line = [];
      used = ZERO;
    }
    const pieces = long > width ? forced(desk, word, style, width) : [word];
    pieces.forEach((piece, index) => {
      if (index > 0) {
        lines.push(line);
        line = [];
        used = ZERO;
      }
      const joined = line.length === 0 || space === null ? piece : [space, ...piece];
      used = add(used, widthOfAll(joined));
      line = [...flat([line, joined])];
    });
  }
  return line.length === 0 ? lines : [...lines, line];
}

/** Words with the space before each; a word is everything up to the next ordinary space, figures included. */
function words(
  all: readonly Run[],
): readonly { readonly word: readonly Run[]; readonly space: Run | null }[] {
  const found: { word: Run[]; space: Run | null }[] = [];
  let open: { word: Run[]; space: Run | null } | null = null;
  for (const run of all) {
    if (run.kind === "fraction") {
      open ??= start(found, null);
      open.word.push(run);
      continue;
    }
    for (const piece of run.text.split(/( +)/)) {
      if (piece === "") continue;
      if (piece.startsWith(" ")) {
        open = start(found, { ...run, text: " " });
      } else {
        open ??= start(found, null);
        open.word.push({ ...run, text: piece });
      }
    }
  }
  return found.filter(({ word }) => word.length > 0);
}

function start(
  found: { word: Run[]; space: Run | null }[],
  space: Run | null,
): { word: Run[]; space: Run | null } {
  const opened = { word: [], space };
  found.push(opened);
  return opened;
}

/** A word wider than the line, cut between characters. */
function forced(
  desk: Desk,
  word: readonly Run[],
  style: TextStyle,
  width: Length,
): readonly (readonly Run[])[] {
  const pieces: Run[][] = [[]];
  let used = ZERO;
  const single = word.flatMap((run): Run[] =>
    run.kind === "text" ? [...run.text].map((text) => ({ ...run, text })) : [run],
  );
  for (const run of single) {
    const long = setRun(run, style.size, style.weight, desk.typeface.measure).width;
    if (used > 0 && add(used, long) > width) {
      pieces.push([]);
      used = ZERO;
    }
    pieces.at(-1)?.push(run);
    used = add(used, long);
  }
  return pieces;
}

/** The largest of some sizes at which a phrase fits a width on one line; the last when none does. */
export function fitting(
  desk: Desk,
  phrase: Phrase,
  styles: readonly TextStyle[],
  width: Length,
): TextStyle | undefined {
  return styles.find((style) => widthOf(desk, phrase, style) <= width);
}

/** A phrase cut at a word to a width, an ellipsis after it; whole where it fits. */
export function shortened(desk: Desk, text: string, style: TextStyle, width: Length): string {
  if (widthOf(desk, text, style) <= width) return text;
  const all = text.split(" ");
  for (let kept = all.length - 1; kept > 0; kept--) {
    const shorter = `${all.slice(0, kept).join(" ")} …`;
    if (widthOf(desk, shorter, style) <= width) return shorter;
  }
  let letters = [...text];
  while (letters.length > 1 && widthOf(desk, `${letters.join("")}…`, style) > width)
    letters = letters.slice(0, -1);
  return `${letters.join("")}…`;
}

/** The lines of a text at a width, at most so many; of one that needs more the last is cut at a word, an ellipsis after it. */
export function clampedLines(
  desk: Desk,
  text: string,
  style: TextStyle,
  width: Length,
  most: number,
): readonly (readonly Run[])[] {
  const lines = brokenLines(desk, text, style, width);
  if (lines.length <= most) return lines;
  const rest = lines
    .slice(most - 1)
    .map((line) => line.map((run) => (run.kind === "text" ? run.text : "")).join(""))
    .join(" ");
  return [...lines.slice(0, most - 1), flat(shortened(desk, rest, style, width))];
}
