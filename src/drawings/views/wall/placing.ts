import { type Length, ZERO } from "../../../lengths/index.ts";
import type { WallBox, WallJob, WallPlan } from "../../../plans/index.ts";
import type { Rect } from "../shapes.ts";

/** What of a wall is drawn: places on the wall itself. */
export interface WallExtent {
  readonly left: Length;
  readonly right: Length;
  readonly foot: Length;
  readonly top: Length;
}

/** Each frame of a plan as a box on its wall. */
export const hangingBoxes = (job: WallJob, plan: WallPlan): readonly WallBox[] =>
  job.frames.flatMap(({ width, height }, index) => {
    const place = plan.places[index];
    return place === undefined ? [] : [{ ...place, width, height }];
  });

/** A wall on its sheet: one scale both ways, and between the floor and what hangs a stretch left out where nothing is lost by it. */
export interface WallPlacing {
  readonly scale: number;
  readonly x: (across: number) => number;
  readonly y: (up: number) => number;
  readonly box: (box: WallBox) => Rect;
  /** The uppermost height that is drawn. */
  readonly top: number;
  /** Whether the wall ends there. */
  readonly ceiling: boolean;
  /** The band that stands for what was left out; null: nothing was. */
  readonly band: { readonly top: number; readonly bottom: number } | null;
}

/** In pixels: kept over what hangs, between it and the break, over the floor, the band itself, and the least that is worth leaving out. */
const ROOM = { above: 26, below: 56, floor: 36, band: 30, least: 44 };

const topOf = ({ y, height }: WallBox): number => y + height;

/** Lays a wall down at a scale, its left corner `left` in, all in the sheet's own lengths; `pixel` is what room is counted in. */
export function placeWall(
  job: WallJob,
  plan: WallPlan,
  nails: readonly number[],
  { scale, left, pixel }: { readonly scale: number; readonly left: number; readonly pixel: number },
): WallPlacing {
  const px = (count: number): number => (count * pixel) / scale;
  const frames = hangingBoxes(job, plan);
  const ends = job.floor + job.wall.height;
  const highest = Math.max(job.eyeLine, ...nails, ...[...frames, ...job.avoid].map(topOf)) + px(ROOM.above);
  const lowest = Math.min(job.eyeLine, ...nails, ...frames.map(({ y }) => y));
  const ceiling = ends - highest < px(ROOM.least) || frames.some((box) => topOf(box) > ends);
  const top = ceiling ? Math.max(ends, highest) : highest;
  // No edge of a door or a switch is ever left out, nor the line that heights are counted from.
  const edges = [job.floor, ZERO, ...job.avoid.flatMap((box) => [box.y, topOf(box)])];
  const cut = longestFree(edges, job.floor + px(ROOM.floor), lowest - px(ROOM.below), px(10));
  const out =
    cut !== null && (cut.to - cut.from) * scale - ROOM.band * pixel > ROOM.least * pixel ? cut : null;
  const less = out === null ? 0 : (out.to - out.from) * scale - ROOM.band * pixel;
  const straight = (up: number): number => (top - up) * scale;
  const y = (up: number): number => {
    if (out === null || up >= out.to) return straight(up);
    return up <= out.from ? straight(up) - less : straight(out.to);
  };
  const x = (across: number): number => left + across * scale;
  return {
    scale,
    x,
    y,
    top,
    ceiling,
    box: (box) => ({ left: x(box.x), right: x(box.x + box.width), top: y(topOf(box)), bottom: y(box.y) }),
    band: out === null ? null : { top: y(out.to), bottom: y(out.from) },
  };
}

/** The longest stretch between two heights that holds no edge, and keeps `clear` from each; null where there is none. */
function longestFree(
  edges: readonly number[],
  from: number,
  to: number,
  clear: number,
): { readonly from: number; readonly to: number } | null {
  const inside = edges.filter((edge) => edge > from - clear && edge < to + clear).toSorted((a, b) => a - b);
  const starts = [from, ...inside.map((edge) => Math.max(from, edge + clear))];
  const ends = [...inside.map((edge) => Math.min(to, edge - clear)), to];
  let best: { from: number; to: number } | null = null;
  starts.forEach((start, index) => {
    const end = ends[index] ?? start;
    if (end > start && (best === null || end - start > best.to - best.from)) best = { from: start, to: end };
  });
  return best;
}
