import { add, fromReal, type Length, ZERO } from "../lengths/index.ts";
import type { MeasureText, Run, Weight } from "./marks.ts";

/** A piece of a set run: `x` from the run's start, `up` from its baseline. */
export interface SetText {
  readonly text: string;
  readonly x: Length;
  readonly up: Length;
  readonly size: Length;
  readonly weight: Weight;
}

/** One run with every part in its place, ready for any writer. */
export interface SetRun {
  readonly width: Length;
  readonly texts: readonly SetText[];
  /** The bar of a stacked fraction; `up` is its middle above the baseline. */
  readonly bar: {
    readonly x: Length;
    readonly up: Length;
    readonly width: Length;
    readonly thickness: Length;
  } | null;
  /** What a reader of the text gets: a stacked fraction reads `1 1⁄16`, with the fraction slash. */
  readonly spoken: string;
}

// Shares of the figure's size.
const ROW_SIZE = 0.68;
const BAR_THICKNESS = 0.056;
const BAR_UP = 0.33;
const AIR = 0.085;
const GAP = 0.09;
const OVERHANG = 0.045;
/** Height of a lining digit above the baseline, as a share of its own size. */
const DIGIT = 0.65;

/** How far a stacked fraction reaches above and below its baseline, as a share of the figure's size. */
export const FRACTION_UP = BAR_UP + BAR_THICKNESS / 2 + AIR + DIGIT * ROW_SIZE;
export const FRACTION_DOWN = -(BAR_UP - BAR_THICKNESS / 2 - AIR - DIGIT * ROW_SIZE);

const share = (size: Length, of: number): Length => fromReal(size * of, "nearest");

/**
 * Sets one run: a text as it stands, a figure whole beside stacked numerator, bar and denominator.
 * `size` and `weight` hold where the run has none of its own.
 */
export function setRun(run: Run, size: Length, weight: Weight, measure: MeasureText): SetRun {
  const own = run.size ?? size;
  const heavy = run.weight ?? weight;
  if (run.kind === "text") {
    return {
      width: measure(run.text, heavy, own),
      texts: [{ text: run.text, x: ZERO, up: ZERO, size: own, weight: heavy }],
      bar: null,
      spoken: run.text,
    };
  }
  const wholeWidth = run.whole === "" ? ZERO : measure(run.whole, heavy, own);
  const whole: SetText = { text: run.whole, x: ZERO, up: ZERO, size: own, weight: heavy };
  if (run.numerator === "") return { width: wholeWidth, texts: [whole], bar: null, spoken: run.whole };

  const rowSize = share(own, ROW_SIZE);
  const over = measure(run.numerator, heavy, rowSize);
  const under = measure(run.denominator, heavy, rowSize);
  const barWidth = add(over > under ? over : under, share(own, 2 * OVERHANG));
  const start = run.whole === "" ? ZERO : add(wholeWidth, share(own, GAP));
  const row = (text: string, width: Length, up: number): SetText => ({
    text,
    x: fromReal(start + (barWidth - width) / 2, "nearest"),
    up: share(own, up),
    size: rowSize,
    weight: heavy,
  });
  const fraction = `${run.numerator}\u2044${run.denominator}`;
  return {
    width: add(start, barWidth),
    texts: [
      ...(run.whole === "" ? [] : [whole]),
      row(run.numerator, over, BAR_UP + BAR_THICKNESS / 2 + AIR),
      row(run.denominator, under, -FRACTION_DOWN),
    ],
    bar: { x: start, up: share(own, BAR_UP), width: barWidth, thickness: share(own, BAR_THICKNESS) },
    spoken: run.whole === "" ? fraction : `${run.whole} ${fraction}`,
  };
}

/** How wide a line of runs is. */
export const widthOfRuns = (
  runs: readonly Run[],
  size: Length,
  weight: Weight,
  measure: MeasureText,
): Length => runs.reduce((width, run) => add(width, setRun(run, size, weight, measure).width), ZERO);
