import { add, type Length, larger, mm, subtract, sum, times } from "../../lengths/index.ts";
import { LABEL_LIMITS } from "../../assembly/index.ts";
import { flat, plainText } from "../../words/index.ts";
import { processLine } from "../../words/labels.ts";
import { type Block, block, gap, placed, stack } from "../block.ts";
import type { WorkWords } from "../job.ts";
import { type Desk, part, points } from "../paper.ts";
import { brokenLines, fitting, setLines } from "../text.ts";
import type { TextStyle } from "../type.ts";
import type { LabelledWork } from "./job.ts";
import { PADDING } from "./sheet.ts";

/**
 * A label's lines keep under 45 characters (the Smithsonian Guidelines for Accessible Exhibition
 * Design, section III, ask for at most 55 and call 45 to 50 better) and nothing is under 16 points.
 */
const WALL_TITLE: readonly TextStyle[] = [22, 20, 18, 16].map((size) => ({
  size: points(size),
  weight: "italic",
  leading: points(size * 1.2),
}));
const WALL_MAKER: TextStyle = { size: points(17), weight: "semibold", leading: points(21) };
const WALL_LINE: TextStyle = { size: points(16), weight: "regular", leading: points(20) };

/** Fewer characters a line than any guidance asks for. */
const MOST_IN_LINE = LABEL_LIMITS.line.better;

/** Lines of at most so many characters: narrow letters could put more of them into a width. */
function labelLines(
  desk: Desk,
  text: string,
  style: TextStyle,
  width: Length,
): ReturnType<typeof brokenLines> {
  const lines = brokenLines(desk, text, style, width);
  const long = lines.some((line) => [...plainText(line)].length > MOST_IN_LINE);
  return long ? labelLines(desk, text, style, part(width, 0.94)) : lines;
}

/** Maker, title, year, process. */
function titleBlock(desk: Desk, work: WorkWords, inner: Length): Block {
  const title = fitting(desk, work.title, WALL_TITLE, inner) ?? WALL_TITLE.at(-1) ?? WALL_LINE;
  const line = (text: string, style: TextStyle): readonly Block[] =>
    text === "" ? [] : [setLines(labelLines(desk, text, style, inner), style, inner)];
  return stack(
    [
      ...line(work.maker, WALL_MAKER),
      ...line(work.title, title),
      ...line(work.year, WALL_LINE),
      ...line(processLine(work.process, work.edition), WALL_LINE),
    ],
    mm(2),
  );
}

/** What a visitor reads: maker, title, year, process. */
export function wallLabel(desk: Desk, work: WorkWords, width: Length, least: Length): Block {
  const text = titleBlock(desk, work, subtract(width, times(PADDING, 2)));
  return block(width, larger(least, add(text.height, times(PADDING, 2))), placed(text, PADDING, PADDING));
}

/** As wide as 45 characters of a text need. */
const WIDE = mm(140);

/** The same with a text below, in a row of its own; of a text that `room` does not hold only its beginning. */
export function wideWallLabel(desk: Desk, own: LabelledWork, room: Length): Block {
  const inner = subtract(WIDE, times(PADDING, 2));
  const title = stack([titleBlock(desk, own.work, inner), gap(mm(4))]);
  const lines = labelLines(desk, own.text, WALL_LINE, inner);
  const free = subtract(room, sum([title.height, times(PADDING, 2), WALL_LINE.leading]));
  const held = Math.max(1, Math.floor(free / WALL_LINE.leading));
  const shown = lines.length > held ? [...lines.slice(0, held), flat("…")] : lines;
  const text = stack([title, setLines(shown, WALL_LINE, inner)]);
  return block(WIDE, add(text.height, times(PADDING, 2)), placed(text, PADDING, PADDING));
}
