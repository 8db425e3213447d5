import type { Mark } from "../marks.ts";
import { area, group, lettering, line, type Pen, place, spot, textRun } from "./pen.ts";
import { corners, heightOf, isOpen, type Rect, widthOf } from "./shapes.ts";

const LARGEST = 21;
/** 8 pt: nothing is read below it. */
const SMALLEST = 10.7;
const CAPITAL = 0.66;
/** Clear ground at the word's ends, and above and below it, as shares of its size. */
const AIR_ENDS = 0.42;
const AIR_ABOVE = 0.27;
/** How far inside a window's left edge a leader ends. */
const LEADER_INSIDE = 10;
/** How much of the window the clear field may take, either way. */
const SHARE = 0.8;

interface Fit {
  readonly size: number;
  readonly turned: boolean;
}

/**
 * OUT on the part that falls out, in a clear field that never breaks the window's outline. The word
 * shrinks with the window, is turned where that gives it room, and stands beside a leader where the
 * window is too small to hold it.
 */
export function outMarks(pen: Pen, window: Rect, board: Rect, word: string): Mark[] {
  if (!isOpen(window)) return [];
  const fit = fitIn(pen, window, word);
  return [group("out", fit ? fieldMarks(pen, window, word, fit) : leaderMarks(pen, window, board, word))];
}

/** The word's field at a size: width and height before it is turned. */
function fieldAt(pen: Pen, word: string, size: number): readonly [number, number] {
  const em = size * pen.pixel;
  return [pen.measure(word, "black", place(em)) + 2 * AIR_ENDS * em, (CAPITAL + 2 * AIR_ABOVE) * em];
}

function fitIn(pen: Pen, window: Rect, word: string): Fit | null {
  const [width, height] = fieldAt(pen, word, 1);
  const lying = Math.min((SHARE * widthOf(window)) / width, (SHARE * heightOf(window)) / height, LARGEST);
  if (lying >= SMALLEST) return { size: lying, turned: false };
  const upright = Math.min((SHARE * widthOf(window)) / height, (SHARE * heightOf(window)) / width, LARGEST);
  return upright >= SMALLEST ? { size: upright, turned: true } : null;
}

function fieldMarks(pen: Pen, window: Rect, word: string, fit: Fit): Mark[] {
  const [along, across] = fieldAt(pen, word, fit.size);
  const [halfWidth, halfHeight] = fit.turned ? [across / 2, along / 2] : [along / 2, across / 2];
  const centre = { x: (window.left + window.right) / 2, y: (window.top + window.bottom) / 2 };
  const field = {
    left: centre.x - halfWidth,
    right: centre.x + halfWidth,
    top: centre.y - halfHeight,
    bottom: centre.y + halfHeight,
  };
  // Half a capital's height moves the middle of the word, not its baseline, to the centre.
  const drop = (CAPITAL * fit.size * pen.pixel) / 2;
  const style = { size: fit.size, weight: "black" } as const;
  return [
    area(corners(field), "paper"),
    fit.turned
      ? lettering(pen, centre.x + drop, centre.y, [textRun(word)], { ...style, degrees: -90 })
      : lettering(pen, centre.x, centre.y + drop, [textRun(word)], style),
  ];
}

/** From just inside the window out past the board's left edge, where nothing else stands. */
function leaderMarks(pen: Pen, window: Rect, board: Rect, word: string): Mark[] {
  const px = (count: number): number => count * pen.pixel;
  const dot = {
    x: window.left + Math.min(widthOf(window) / 2, px(LEADER_INSIDE)),
    y: (window.top + window.bottom) / 2,
  };
  const end = board.left - px(12);
  return [
    {
      kind: "circle",
      centre: spot(dot.x, dot.y),
      radius: place(px(2)),
      fill: "ink",
      line: null,
    },
    line(dot.x, dot.y, end, dot.y, "thin"),
    lettering(pen, end - px(4), dot.y + px(4.5), [textRun(word)], {
      size: 14,
      weight: "black",
      anchor: "end",
    }),
  ];
}
