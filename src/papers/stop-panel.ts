import type { Mark } from "../drawings/index.ts";
import { add, type Length, mm, subtract, ZERO } from "../lengths/index.ts";
import type { Phrase } from "../words/runs.ts";
import { type Block, block, cornersOf, gap, stack } from "./block.ts";
import { type Desk, part, points } from "./paper.ts";
import { paragraph, textAt } from "./text.ts";
import { TYPE, type TextStyle } from "./type.ts";

const HEIGHT = mm(15);
const SIDE = mm(4.5);
const WORDS: TextStyle = { size: points(27), weight: "black", leading: points(27) };
const REASON: TextStyle = { size: points(14), weight: "semibold", leading: points(15) };

const black = (width: Length, height: Length): Mark => ({
  kind: "area",
  points: cornersOf({ left: ZERO, top: ZERO, width, height }),
  fill: "ink",
  line: null,
});

const reasonAt = (reason: string, width: Length, base: Length): Mark =>
  textAt(subtract(width, SIDE), base, reason, REASON, "end", { onInk: true });

/** The black panel that takes the place of everything the hand would do; the reason at its right, where there is one to say. */
export function stopPanel(words: string, reason: string | null, width: Length): Block {
  const base = add(part(HEIGHT, 0.5), mm(3.1));
  return block(width, HEIGHT, [
    black(width, HEIGHT),
    textAt(SIDE, base, words, WORDS, "start", { onInk: true }),
    ...(reason === null ? [] : [reasonAt(reason, width, subtract(base, mm(0.6)))]),
  ]);
}

/** One more reason, under the panel. */
export const furtherReason = (reason: string, width: Length): Block =>
  block(width, mm(8), [black(width, mm(8)), reasonAt(reason, width, mm(5.2))]);

/** How it is said what stands in the way, and what would help. */
export const STOP_TEXT: TextStyle = { ...TYPE.step, leading: points(17), size: points(12) };

/** What takes the place of all that the hand would do: the panel, and below it why. */
export const stopPage = (words: string, reason: string | null, why: readonly Block[], width: Length): Block =>
  stack([gap(mm(3)), stopPanel(words, reason, width), gap(mm(4)), ...why]);

/** One reason in a sentence, with room below it. */
export const stopReason = (
  desk: Desk,
  said: Phrase,
  width: Length,
  style: TextStyle = STOP_TEXT,
): readonly Block[] => [paragraph(desk, said, style, width), gap(mm(3))];
