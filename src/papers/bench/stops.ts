import type { Mark, Run } from "../../drawings/index.ts";
import { FRACTION_DOWN, FRACTION_UP } from "../../drawings/index.ts";
import { add, figureOf, larger, type Length, mm, subtract, sum, times, ZERO } from "../../lengths/index.ts";
import { AWAY, BENCH_SHEET, sideWords, stopName } from "../../words/bench-sheet.ts";
import { bold, bare, figureRuns, figureWords, flat, NBSP } from "../../words/index.ts";
import { type Block, block, placed, rule } from "../block.ts";
import { part, points } from "../paper.ts";
import { handTag, ringBlock, TICK, tickBox } from "../tags.ts";
import { fitting, textAt, widthOf } from "../text.ts";
import { FIGURE, TYPE, type TextStyle } from "../type.ts";
import { type BenchDesk, fineRuler, type NumberedCut, type NumberedStop } from "./desk.ts";

export const STOPS_WIDTH = mm(60);
const NAME_LINE = mm(5.2);
const NAME_BASE = mm(4.3);
const TICK_LINE = mm(5.6);
const BELOW = mm(1);

const KEY_SIZES: readonly Length[] = [FIGURE.key, FIGURE.keyFour, points(32), points(28)];
const WORDS: readonly TextStyle[] = [12, 11, 10, 9].map((size) => ({
  size: points(size),
  weight: "semibold",
  leading: points(size * 1.2),
}));

/** The least height that a column of stops needs at the smaller key figure. */
export const leastStopsHeight = (desk: BenchDesk, stops: readonly NumberedStop[]): Length =>
  sum(stops.map((stop) => leastRow(desk, stop, FIGURE.keyFour)));

/**
 * The stop's settings in the order to cut, one a row: the figure large, in words, what the scale must
 * read, and each cut with its number, its side and the hand at which it lies. The key figure is the
 * largest that the column's height and width leave room for.
 */
export function stopsColumn(desk: BenchDesk, stops: readonly NumberedStop[], height: Length): Block {
  const key = KEY_SIZES.find(
    (size) =>
      (stops.length < 4 || size <= FIGURE.keyFour) &&
      sum(stops.map((stop) => leastRow(desk, stop, size))) <= height &&
      stops.every((stop) => rowWidth(desk, stop, size) <= STOPS_WIDTH),
  );
  const size = key ?? points(28);
  const needed = sum(stops.map((stop) => leastRow(desk, stop, size)));
  const spare = stops.length === 0 ? ZERO : part(subtract(height, needed), 1 / stops.length);
  const marks: Mark[] = [];
  let top = ZERO;
  stops.forEach((stop, index) => {
    const high = add(leastRow(desk, stop, size), spare);
    if (index > 0) marks.push(...placed(rule(STOPS_WIDTH, "rule-thin"), ZERO, top));
    marks.push(...placed(stopRow(desk, stop, size, high), ZERO, top));
    top = add(top, high);
  });
  return block(STOPS_WIDTH, height, marks);
}

function keyHeight(
  desk: BenchDesk,
  length: Length,
  size: Length,
): { readonly up: Length; readonly down: Length } {
  const stacked = figureOf(length, desk.speech.ruler).numerator !== "";
  return stacked
    ? { up: part(size, FRACTION_UP), down: part(size, FRACTION_DOWN) }
    : { up: part(size, 0.65), down: ZERO };
}

/** From the scale's baseline up to its caption's. */
const captionUp = (stacked: boolean): Length => part(FIGURE.scale, stacked ? FRACTION_UP + 0.12 : 0.85);

/** Above and below the row's one baseline: the key figure's, or the scale's with its caption where that is more. */
function rowHeight(
  desk: BenchDesk,
  { set, scale }: NumberedStop["stop"],
  size: Length,
): { readonly up: Length; readonly down: Length } {
  const key = keyHeight(desk, set, size);
  const reading = isStacked(scaleRuns(desk, scale));
  return {
    up: larger(key.up, add(captionUp(reading), mm(2.1))),
    down: larger(key.down, reading ? part(FIGURE.scale, FRACTION_DOWN) : ZERO),
  };
}

function leastRow(desk: BenchDesk, { stop, cuts }: NumberedStop, size: Length): Length {
  const { up, down } = rowHeight(desk, stop, size);
  return sum([NAME_LINE, up, down, mm(0.8), times(TICK_LINE, cuts.length), BELOW]);
}

const keyStyle = (size: Length): TextStyle => ({ size, weight: "bold", leading: size });

/** Key figure and its unit as one line, so that the figure is never without it. */
function keyRuns(desk: BenchDesk, length: Length): ReturnType<typeof flat> {
  const { ruler } = desk.speech;
  return flat([
    bold(bare(length, ruler)),
    { kind: "text", text: `${NBSP}${ruler.unit}`, weight: "regular", size: FIGURE.keyUnit },
  ]);
}

/** What the cutter's scale must read: finer than the ruler, tenths always with their nought. */
function scaleRuns(desk: BenchDesk, length: Length): ReturnType<typeof flat> {
  const { ruler } = desk.speech;
  const figure = { ...figureOf(length, fineRuler(desk)), approximate: false };
  return figureRuns(ruler.unit === "mm" && figure.decimals === "" ? { ...figure, decimals: "0" } : figure);
}

const isStacked = (all: readonly Run[]): boolean =>
  all.some((run) => run.kind === "fraction" && run.numerator !== "");

const SCALE: TextStyle = { size: FIGURE.scale, weight: "semibold", leading: FIGURE.scale };

function rowWidth(desk: BenchDesk, { stop }: NumberedStop, size: Length): Length {
  return sum([
    widthOf(desk, keyRuns(desk, stop.set), keyStyle(size)),
    mm(2.5),
    widthOf(desk, scaleRuns(desk, stop.scale), SCALE),
  ]);
}

function stopRow(desk: BenchDesk, { number, stop, cuts }: NumberedStop, size: Length, height: Length): Block {
  const name = stopName(number);
  const words = figureWords(figureOf(stop.set, desk.speech.ruler));
  const room = subtract(STOPS_WIDTH, add(widthOf(desk, name, TYPE.band), mm(2)));
  const wordStyle = fitting(desk, words, WORDS, room) ?? WORDS.at(-1) ?? TYPE.words;
  const { up, down } = rowHeight(desk, stop, size);
  const ticksTop = subtract(height, add(times(TICK_LINE, cuts.length), BELOW));
  const free = subtract(subtract(ticksTop, NAME_LINE), add(up, down));
  const baseline = sum([NAME_LINE, part(free, 0.45), up]);
  return block(STOPS_WIDTH, height, [
    textAt(ZERO, NAME_BASE, name, TYPE.band),
    textAt(STOPS_WIDTH, NAME_BASE, words, wordStyle, "end"),
    textAt(ZERO, baseline, keyRuns(desk, stop.set), keyStyle(size)),
    ...scaleReading(desk, stop.scale, baseline),
    ...cuts.flatMap((cut, index) => placed(cutLine(desk, cut), ZERO, add(ticksTop, times(TICK_LINE, index)))),
  ]);
}

function scaleReading(desk: BenchDesk, length: Length, baseline: Length): readonly Mark[] {
  const reading = scaleRuns(desk, length);
  const caption = subtract(baseline, captionUp(isStacked(reading)));
  return [
    textAt(STOPS_WIDTH, caption, BENCH_SHEET.scaleReads, TYPE.caption, "end"),
    textAt(STOPS_WIDTH, baseline, reading, SCALE, "end"),
  ];
}

/** One cut: its tick, its number, the front's name of its side, and the hand at which it lies on the back. */
function cutLine(desk: BenchDesk, { number, side, hand }: NumberedCut): Block {
  const middle = part(TICK_LINE, 0.5);
  const baseline = add(middle, mm(1.25));
  const ringLeft = add(TICK, mm(1.2));
  const nameLeft = sum([ringLeft, mm(5.4), mm(1.4)]);
  const centred = (piece: Block, x: Length): readonly Mark[] =>
    placed(piece, x, subtract(middle, part(piece.height, 0.5)));
  const at: readonly Mark[] =
    hand === "left" || hand === "right"
      ? (() => {
          const tag = handTag(desk, hand);
          return centred(tag, subtract(STOPS_WIDTH, tag.width));
        })()
      : [textAt(STOPS_WIDTH, baseline, side === "head" ? AWAY.head : AWAY.foot, TYPE.line, "end")];
  return block(STOPS_WIDTH, TICK_LINE, [
    ...centred(tickBox(), ZERO),
    ...centred(ringBlock(desk, String(number), "black", mm(2.5)), ringLeft),
    textAt(nameLeft, baseline, sideWords(side), TYPE.fact),
    ...at,
  ]);
}
