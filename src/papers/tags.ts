import type { Mark } from "../drawings/index.ts";
import { add, fromReal, type Length, larger, mm, subtract, sum, times, ZERO } from "../lengths/index.ts";
import { EVERY_PAPER } from "../words/papers.ts";
import type { Phrase } from "../words/runs.ts";
import { type Block, beside, block, cornersOf, placed, rule } from "./block.ts";
import { type Desk, part, points } from "./paper.ts";
import { paragraph, textAt, widthOf } from "./text.ts";
import { TYPE, type TextStyle } from "./type.ts";

/** A box to tick; nothing else is boxed on a paper but what must be written in. */
export const TICK = mm(4.2);

export const tickBox = (size: Length = TICK): Block =>
  block(size, size, [
    {
      kind: "area",
      points: cornersOf({ left: ZERO, top: ZERO, width: size, height: size }),
      fill: "none",
      line: "edge",
    },
  ]);

/** Room for a figure in a hand's own writing. */
export const writeBox = (width: Length, height: Length): Block =>
  block(width, height, [
    { kind: "area", points: cornersOf({ left: ZERO, top: ZERO, width, height }), fill: "none", line: "edge" },
  ]);

/** A tick box and its words; the words may run over several lines beside it. */
export function tickLine(desk: Desk, words: Phrase, style: TextStyle, width: Length): Block {
  const text = paragraph(desk, words, style, subtract(width, add(TICK, TICK_GAP)));
  const first = firstMiddle(text);
  const box = placed(tickBox(), ZERO, larger(ZERO, subtract(first, part(TICK, 0.5))));
  const down = larger(ZERO, subtract(part(TICK, 0.5), first));
  return block(width, larger(add(text.height, down), TICK), [
    ...box,
    ...placed(text, add(TICK, TICK_GAP), down),
  ]);
}

export const TICK_GAP = mm(2.6);

/** The middle of the capitals of a block's first line of text. */
function firstMiddle(text: Block): Length {
  const first = text.marks.find((mark) => mark.kind === "text");
  return first === undefined ? ZERO : subtract(first.at.y, part(first.size, 0.33));
}

/**
 * A number on a loose thing (blank, cut, work): in a ring and on a bar, always, so that 6 and 9
 * cannot be taken for each other. `black` for a cut, white for a blank.
 */
export function ring(
  desk: Desk,
  text: string,
  colour: "white" | "black",
  radius: Length = mm(2.7),
): readonly Mark[] {
  const style = ringStyle(desk, text, radius);
  const onInk = colour === "black";
  const cap = part(style.size, 0.65);
  const width = larger(widthOf(desk, text, style), part(style.size, 0.6));
  const bar = part(style.size, 0.085);
  const gapBelow = part(style.size, 0.07);
  const baseline = part(subtract(cap, add(bar, gapBelow)), 0.5);
  const top = add(baseline, gapBelow);
  const half = part(width, 0.5);
  return [
    { kind: "circle", centre: { x: ZERO, y: ZERO }, radius, fill: onInk ? "ink" : "paper", line: "edge" },
    textAt(ZERO, baseline, text, style, "middle", onInk ? { onInk } : {}),
    {
      kind: "area",
      points: cornersOf({ left: subtract(ZERO, half), top, width, height: bar }),
      fill: onInk ? "paper" : "ink",
      line: null,
    },
  ];
}

/** The largest type at which a number keeps inside its ring. */
function ringStyle(desk: Desk, text: string, radius: Length): TextStyle {
  const size = fromReal(radius * 1.22, "down");
  const style: TextStyle = { size, weight: "bold", leading: size };
  const room = part(radius, 1.5);
  const width = widthOf(desk, text, style);
  if (width <= room) return style;
  const smaller = part(size, room / width);
  return { size: smaller, weight: "bold", leading: smaller };
}

/** A ring as a block, for rows. */
export const ringBlock = (
  desk: Desk,
  text: string,
  colour: "white" | "black",
  radius: Length = mm(2.7),
): Block =>
  block(
    times(radius, 2),
    times(radius, 2),
    placed(block(ZERO, ZERO, ring(desk, text, colour, radius)), radius, radius),
  );

/** The hands are told apart before they are read: the left one white on black, the right one black in a frame. */
export function handTag(desk: Desk, hand: "left" | "right"): Block {
  const text = hand === "left" ? EVERY_PAPER.leftHand : EVERY_PAPER.rightHand;
  const style = TYPE.tag;
  const width = add(widthOf(desk, text, style), mm(4));
  const height = mm(4.6);
  const onInk = hand === "left";
  const inset = onInk ? ZERO : mm(0.25);
  return block(width, height, [
    {
      kind: "area",
      points: cornersOf({
        left: inset,
        top: inset,
        width: subtract(width, times(inset, 2)),
        height: subtract(height, times(inset, 2)),
      }),
      fill: onInk ? "ink" : "none",
      line: onInk ? null : "edge",
    },
    textAt(
      part(width, 0.5),
      add(part(height, 0.5), part(style.size, 0.33)),
      text,
      style,
      "middle",
      onInk ? { onInk } : {},
    ),
  ]);
}

/** HEAD and its filled triangle, which stands on the head edge and points away from it; no other triangle does so on any paper. */
export function headArrow(desk: Desk, size: Length = mm(6)): Block {
  const style: TextStyle = { ...TYPE.head, size: part(size, 0.88) };
  const wide = widthOf(desk, EVERY_PAPER.head, style);
  const between = part(size, 0.3);
  const left = add(wide, between);
  const base = part(size, 1.12);
  return block(add(left, base), size, [
    textAt(ZERO, subtract(size, part(size, 0.16)), EVERY_PAPER.head, style),
    {
      kind: "area",
      points: [
        { x: left, y: size },
        { x: add(left, base), y: size },
        { x: add(left, part(base, 0.5)), y: part(size, 0.08) },
      ],
      fill: "ink",
      line: null,
    },
  ]);
}

/** A caution where the hand is about to do it: a black bar, and at most twelve words a sentence. */
export function caution(desk: Desk, words: Phrase, width: Length, style: TextStyle = TYPE.caution): Block {
  const bar = mm(1.6);
  const indent = add(bar, mm(2));
  const text = paragraph(desk, words, style, subtract(width, indent));
  return block(width, text.height, [
    {
      kind: "area",
      points: cornersOf({ left: ZERO, top: ZERO, width: bar, height: text.height }),
      fill: "ink",
      line: null,
    },
    ...placed(text, indent, ZERO),
  ]);
}

/** A sub-head with a thin rule from its end to the width's. */
export function ruledHead(desk: Desk, words: string, width: Length): Block {
  const style = TYPE.band;
  const text = paragraph(desk, words, style, width);
  const end = add(widthOf(desk, words, style), mm(1.8));
  const y = part(text.height, 0.5);
  return block(width, text.height, [
    ...text.marks,
    ...(end < width
      ? [{ kind: "line" as const, from: { x: end, y }, to: { x: width, y }, line: "rule-thin" as const }]
      : []),
  ]);
}

/** One fact of a paper's head: a small name over what it is. */
export interface Fact {
  readonly name: string;
  readonly value: Phrase;
}

/** Facts side by side, sharing the width by what they need; a second row where they do not fit. */
export function facts(desk: Desk, all: readonly Fact[], width: Length): Block {
  const style: TextStyle = { ...TYPE.fact, figures: { whole: points(10.5), stacked: points(11.5) } };
  const least = mm(4);
  const wide = all.map(({ name, value }) =>
    larger(widthOf(desk, name, TYPE.fine), widthOf(desk, value, style)),
  );
  const need = sum([...wide, times(least, Math.max(0, all.length - 1))]);
  if (need > width && all.length > 1) {
    const half = Math.ceil(all.length / 2);
    const [upper, lower] = [facts(desk, all.slice(0, half), width), facts(desk, all.slice(half), width)];
    return block(width, sum([upper.height, mm(1), lower.height]), [
      ...upper.marks,
      ...placed(lower, ZERO, add(upper.height, mm(1))),
    ]);
  }
  const spare = subtract(width, need);
  const each = all.length > 1 ? part(larger(spare, ZERO), 1 / all.length) : ZERO;
  const pieces = all.map(({ name, value }, index) => {
    const room = need > width ? width : (wide[index] ?? ZERO);
    const valueBlock = paragraph(desk, value, style, room);
    const first = valueBlock.marks.find((mark) => mark.kind === "text");
    // The values share one baseline, whether or not one of them has a fraction.
    const drop = subtract(mm(8.1), first?.at.y ?? ZERO);
    return block(room, add(drop, valueBlock.height), [
      textAt(ZERO, mm(3), name, TYPE.fine),
      ...placed(valueBlock, ZERO, drop),
    ]);
  });
  const spread = beside(
    pieces.flatMap((piece, index) => (index === 0 ? [piece] : [block(add(least, each), ZERO), piece])),
  );
  return block(width, larger(spread.height, mm(9.6)), spread.marks);
}

/** Lines to write on, side by side, as high as a hand needs; what is written there stands small below each. */
export function writingLines(width: Length, names: readonly string[], height: Length): Block {
  const between = mm(6);
  const each = part(subtract(width, times(between, names.length - 1)), 1 / names.length);
  return beside(
    names.map((name) =>
      block(each, height, [
        ...placed(rule(each, "edge"), ZERO, subtract(height, mm(5))),
        textAt(ZERO, subtract(height, mm(1)), name, TYPE.caption),
      ]),
    ),
    between,
  );
}
