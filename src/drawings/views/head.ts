import type { Mark } from "../marks.ts";
import { lettering, line, type Pen, place, polyline, textRun } from "./pen.ts";
import { type Rect, widthOf } from "./shapes.ts";

/** Where HEAD may stand: the board, the window in it, and the heights of other edges that it must not touch. */
export interface HeadRoom {
  readonly board: Rect;
  readonly window: Rect;
  readonly edges: readonly number[];
}

const SIZE = 14;
const ARROW_HEIGHT = 15;
const ARROW_WIDTH = 10;
const GAP = 8;
/** Capitals are 0.66 of the em: the words' middle lies half of that above the baseline. */
const CAPITAL = 0.66;
/** A strip narrower than this has no room for the word's capitals without touching a line. */
const LEAST_STRIP = 14;
/** Clear ground between the arrow and the strip's edges. */
const CLEAR = 2;
/** How far the dimension lines move up when the word has to stand between them and the board. */
export const ROOM_ABOVE = 22;

interface Strip {
  readonly top: number;
  readonly bottom: number;
}

/** The widest free strip above the window: between the head edge, the paper's edge, other openings, the window. */
function widestStrip({ board, window, edges }: HeadRoom): Strip {
  const bottom = Math.min(window.top, board.bottom);
  const between = edges.filter((y) => y > board.top && y < bottom);
  const all = [board.top, ...between, bottom].toSorted((first, second) => first - second);
  let widest: Strip = { top: board.top, bottom: board.top };
  for (const [index, top] of all.entries()) {
    const next = all[index + 1];
    if (next !== undefined && next - top > widest.bottom - widest.top) widest = { top, bottom: next };
  }
  return widest;
}

const roomIn = (strip: Strip): number => strip.bottom - strip.top;

/** Arrow, gap and word side by side. */
const markWidth = (pen: Pen, word: string): number =>
  (ARROW_WIDTH + GAP) * pen.pixel + pen.measure(word, "bold", place(SIZE * pen.pixel));

/** Whether no strip above the window is wide enough, so that HEAD has to stand above the board. */
export const needsRoomAbove = (pen: Pen, room: HeadRoom, word: string): boolean =>
  roomIn(widestStrip(room)) < LEAST_STRIP * pen.pixel ||
  widthOf(room.board) < markWidth(pen, word) + 2 * GAP * pen.pixel;

/** The arrow to the head and its word, in the widest free strip above the window, or above the board where there is none. */
export function headMark(pen: Pen, room: HeadRoom, word: string): Mark[] {
  const px = (count: number): number => count * pen.pixel;
  const strip = needsRoomAbove(pen, room, word)
    ? { top: room.board.top - px(ROOM_ABOVE), bottom: room.board.top - px(2) }
    : widestStrip(room);
  const middle = (strip.top + strip.bottom) / 2;
  const centre = (room.board.left + room.board.right) / 2;
  const left = centre - markWidth(pen, word) / 2;
  const shaft = left + px(ARROW_WIDTH / 2);
  const half = Math.min(px(ARROW_HEIGHT), roomIn(strip) - px(2 * CLEAR)) / 2;
  const [top, bottom] = [middle - half, middle + half];
  const barb = px(ARROW_WIDTH / 2);
  return [
    line(shaft, bottom, shaft, top, "edge"),
    polyline(
      [
        { x: shaft - barb, y: top + barb * 1.3 },
        { x: shaft, y: top },
        { x: shaft + barb, y: top + barb * 1.3 },
      ],
      "edge",
    ),
    lettering(pen, left + px(ARROW_WIDTH + GAP), middle + px((SIZE * CAPITAL) / 2), [textRun(word)], {
      size: SIZE,
      weight: "bold",
      anchor: "start",
      halo: true,
    }),
  ];
}
