import type { Mark } from "../../drawings/index.ts";
import type { Size } from "../../geometry/index.ts";
import { type Length, larger, mm, subtract, sum, times, ZERO } from "../../lengths/index.ts";
import { CUT_PLAN, fromOutOf } from "../../words/cut-plan.ts";
import { bold, type Phrase, sizeRuns } from "../../words/index.ts";
import { aligned, beside, type Block, block, gap, placed, stack } from "../block.ts";
import { part, points } from "../paper.ts";
import { ringBlock } from "../tags.ts";
import { shortened, textLine } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { CuttingDesk } from "./desk.ts";

/** What a blank is called on the drawing. */
export interface BlankWords {
  readonly number: number;
  readonly size: Size;
  readonly name: string;
  /** Whether its window goes to the rack when it falls out. */
  readonly toRack: boolean;
  /** The blank whose OUT it is cut from; null: from the sheet. */
  readonly from: number | null;
}

const SMALLEST_RING = mm(2.7);
const NAME: TextStyle = { ...TYPE.fine, weight: "semibold" };

const sizeStyle = (size: number): TextStyle => ({
  size: points(size),
  weight: "bold",
  leading: points(size * 1.1),
  figures: { whole: points(size), stacked: points(size * 1.15) },
});

/** A label, and whether the blank's size stands in it. */
export interface Label {
  readonly block: Block;
  readonly saysSize: boolean;
}

/**
 * Number, size, what becomes of the window and whose it is, as fully as a box allows: clear of the
 * rings of the cuts at its sides where it can be, else up to its lines, else the number alone.
 */
export function labelIn(desk: CuttingDesk, words: BlankWords, box: Size): Label {
  for (const [x, y] of MARGINS) {
    const label = largestLabel(desk, words, inset(box, x, y));
    if (label !== null && label.width > times(SMALLEST_RING, 2)) return { block: label, saysSize: true };
  }
  return { block: ringBlock(desk, String(words.number), "white", SMALLEST_RING), saysSize: false };
}

const MARGINS: readonly (readonly [Length, Length])[] = [
  [mm(3.1), mm(1)],
  [mm(1), mm(1)],
];

export function inset({ width, height }: Size, x: Length, y: Length = x): Size {
  return {
    width: larger(ZERO, subtract(width, times(x, 2))),
    height: larger(ZERO, subtract(height, times(y, 2))),
  };
}

function largestLabel(desk: CuttingDesk, words: BlankWords, room: Size): Block | null {
  return (
    variants(desk, words, room).find(({ width, height }) => width <= room.width && height <= room.height) ??
    null
  );
}

/** From the fullest to number and size alone. */
function variants(desk: CuttingDesk, words: BlankWords, room: Size): readonly Block[] {
  const { ruler } = desk.speech;
  const size = (pt: number): Block =>
    textLine(desk, bold(sizeRuns(words.size, ruler, "nearest", false)), sizeStyle(pt));
  const note = noteOf(words);
  const small = note === null ? [] : [gap(mm(0.6)), textLine(desk, note, TYPE.fine)];
  const named = (width: Length): Block[] =>
    words.name === "" ? [] : [gap(mm(0.6)), textLine(desk, shortened(desk, words.name, NAME, width), NAME)];
  const number = (radius: number): Block => ringBlock(desk, String(words.number), "white", mm(radius));
  const high = (radius: number, pt: number, rest: readonly Block[]): Block =>
    centred([number(radius), gap(mm(1.2)), size(pt), ...rest]);
  const wide = (radius: number, pt: number, rest: readonly Block[]): Block =>
    centred([beside([number(radius), size(pt)], mm(1.8), "middle"), ...rest]);
  return [
    high(4.2, 17, [...small, ...named(room.width)]),
    wide(4.2, 17, [...small, ...named(room.width)]),
    high(3.4, 14, [...small, ...named(room.width)]),
    wide(3.4, 14, [...small, ...named(room.width)]),
    wide(3.4, 14, named(room.width)),
    high(3.4, 14, named(room.width)),
    wide(3.4, 14, []),
    high(3.4, 14, []),
    wide(2.7, 14, []),
  ];
}

function noteOf({ toRack, from }: BlankWords): string | null {
  if (from !== null) return fromOutOf(from);
  return toRack ? CUT_PLAN.toRack : null;
}

/** One below another, middles on one line. */
function centred(pieces: readonly Block[]): Block {
  const width = pieces.reduce((most, piece) => larger(most, piece.width), ZERO);
  return stack(pieces.map((piece) => aligned(piece, width, "middle")));
}

/** A phrase in a clear field, to stand on a hatch. */
export function fieldOf(
  desk: CuttingDesk,
  lines: readonly (readonly [Phrase, TextStyle])[],
  round: Length = mm(1.4),
): Block {
  return inField(centred(lines.map(([phrase, style]) => textLine(desk, phrase, style))), round);
}

/** What is written, in a clear field that stands out at its sides by `round`, above and below by a little more than half of that. */
export function inField(text: Block, round: Length): Block {
  const [x, y] = [round, part(round, 0.57)];
  const width = sum([text.width, times(x, 2)]);
  const height = sum([text.height, times(y, 2)]);
  const field: Mark = {
    kind: "area",
    points: [
      { x: ZERO, y: ZERO },
      { x: width, y: ZERO },
      { x: width, y: height },
      { x: ZERO, y: height },
    ],
    fill: "paper",
    line: null,
  };
  return block(width, height, [field, ...placed(text, x, y)]);
}

/** A block's marks with its middle in the middle of a box. */
export const inMiddle = (
  piece: Block,
  box: { readonly left: Length; readonly top: Length; readonly width: Length; readonly height: Length },
): readonly Mark[] =>
  placed(
    piece,
    sum([box.left, part(subtract(box.width, piece.width), 0.5)]),
    sum([box.top, part(subtract(box.height, piece.height), 0.5)]),
  );
