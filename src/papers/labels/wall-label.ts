import { add, type Length, larger, mm, subtract, times } from "../../lengths/index.ts";
import { processLine } from "../../words/labels.ts";
import { type Block, block, placed, stack } from "../block.ts";
import type { WorkWords } from "../job.ts";
import { type Desk, points } from "../paper.ts";
import { brokenLines, fitting, setLines } from "../text.ts";
import type { TextStyle } from "../type.ts";
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

/** Maker, title, year, process: what a visitor reads. */
export function wallLabel(desk: Desk, work: WorkWords, width: Length, least: Length): Block {
  const inner = subtract(width, times(PADDING, 2));
  const title = fitting(desk, work.title, WALL_TITLE, inner) ?? WALL_TITLE.at(-1) ?? WALL_LINE;
  const line = (text: string, style: TextStyle): readonly Block[] =>
    text === "" ? [] : [setLines(brokenLines(desk, text, style, inner), style, inner)];
  const text = stack(
    [
      ...line(work.maker, WALL_MAKER),
      ...line(work.title, title),
      ...line(work.year, WALL_LINE),
      ...line(processLine(work.process, work.edition), WALL_LINE),
    ],
    mm(2),
  );
  return block(width, larger(least, add(text.height, times(PADDING, 2))), placed(text, PADDING, PADDING));
}
