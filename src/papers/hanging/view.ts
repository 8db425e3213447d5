import { add, type Length, larger, smaller, subtract, ZERO } from "../../lengths/index.ts";
import { drawn, fittingScale } from "../scale.ts";
import { hangingBoxes, type WallExtent } from "../../drawings/index.ts";
import { part } from "../paper.ts";
import type { HangingDesk } from "./desk.ts";

type View = WallExtent;

/** A view to scale on the paper. */
export interface Drawn {
  readonly desk: HangingDesk;
  readonly view: View;
  readonly over: number;
  readonly left: Length;
  readonly top: Length;
  readonly width: Length;
  readonly height: Length;
  /** Where a place of the wall lies on the paper. */
  readonly x: (across: Length) => Length;
  readonly y: (up: Length) => Length;
}

/** No wall is drawn larger than this many times smaller than it is. */
const LARGEST = 10;

/** The view as large as `room` allows, in its middle, `top` from the block's head. */
export function drawView(
  desk: HangingDesk,
  view: View,
  room: { readonly width: Length; readonly height: Length },
  width: Length,
  top: Length,
): Drawn {
  const [wide, high] = [subtract(view.right, view.left), subtract(view.top, view.foot)];
  const over = Math.max(LARGEST, fittingScale(wide, high, room.width, room.height));
  const [onPaper, height] = [drawn(wide, over), drawn(high, over)];
  const left = part(subtract(width, onPaper), 0.5);
  return {
    desk,
    view,
    over,
    left,
    top,
    width: onPaper,
    height,
    x: (across) => add(left, drawn(subtract(across, view.left), over)),
    y: (up) => add(top, drawn(subtract(view.top, up), over)),
  };
}

/** The whole wall, and frames that pass its edges. */
export function wholeWall({ job: { job, plan } }: HangingDesk): View {
  const wall: View = {
    left: ZERO,
    right: job.wall.width,
    foot: job.floor,
    top: add(job.floor, job.wall.height),
  };
  return hangingBoxes(job, plan).reduce(around, wall);
}

interface Box {
  readonly x: Length;
  readonly y: Length;
  readonly width: Length;
  readonly height: Length;
}

/** Some works of a wall with a little room round them. */
export function viewRound({ job: { job, plan } }: HangingDesk, works: readonly number[]): View | null {
  let view: View | null = null;
  for (const index of works) {
    const [place, frame] = [plan.places[index], job.frames[index]];
    if (place === undefined || frame === undefined) continue;
    const box = { ...place, width: frame.width, height: frame.height };
    view = around(view ?? edgesOf(box), box);
  }
  if (view === null) return null;
  const room = part(larger(subtract(view.right, view.left), subtract(view.top, view.foot)), 0.02);
  return {
    left: subtract(view.left, room),
    right: add(view.right, room),
    foot: subtract(view.foot, room),
    top: add(view.top, room),
  };
}

const edgesOf = ({ x, y, width, height }: Box): View => ({
  left: x,
  right: add(x, width),
  foot: y,
  top: add(y, height),
});

function around(view: View, box: Box): View {
  const { left, right, foot, top } = edgesOf(box);
  return {
    left: smaller(view.left, left),
    right: larger(view.right, right),
    foot: smaller(view.foot, foot),
    top: larger(view.top, top),
  };
}

/** What of a box the view shows, on the paper; null where it lies outside. */
export function seenOf(
  { view, over, x, y }: Drawn,
  box: Box,
): { readonly left: Length; readonly top: Length; readonly width: Length; readonly height: Length } | null {
  const { left, right, foot, top } = edgesOf(box);
  const [from, to] = [larger(left, view.left), smaller(right, view.right)];
  const [low, high] = [larger(foot, view.foot), smaller(top, view.top)];
  if (from >= to || low >= high) return null;
  return {
    left: x(from),
    top: y(high),
    width: drawn(subtract(to, from), over),
    height: drawn(subtract(high, low), over),
  };
}
