import { at } from "../at.ts";

/** One frame of a group while it is laid; moved together with the others of its set. */
export interface LaidFrame {
  x: number;
  y: number;
  readonly width: number;
  readonly height: number;
  readonly block: number;
}

const WAYS = [
  { x: -1, y: 0 },
  { x: 1, y: 0 },
  { x: 0, y: -1 },
  { x: 0, y: 1 },
] as const;

/** Moves are few: each gives one more block a neighbour, and three rounds have always been enough. */
const ROUNDS = 8;

/**
 * Moves every block that faces no neighbour at exactly the gap by a short way to where it does;
 * never nearer than the gap to anything, and out of the group's own outline only where nothing in it is free.
 */
export function settle(frames: readonly LaidFrame[], gap: number): void {
  const blocks = new Set(frames.map(({ block }) => block));
  const outline = outlineOf(frames);
  for (let round = 0; round < ROUNDS; round++) {
    let moved = false;
    for (const block of blocks) {
      const own = frames.filter((frame) => frame.block === block);
      const others = frames.filter((frame) => frame.block !== block);
      if (others.length === 0 || own.every((frame) => nearest(frame, frames) === gap)) continue;
      const way = shortestWay(own, others, gap, outline) ?? wayBeside(own, others, gap, outline);
      if (way === null) continue;
      for (const frame of own) {
        frame.x += way.x;
        frame.y += way.y;
      }
      moved = true;
    }
    if (!moved) return;
  }
}

interface Edges {
  readonly left: number;
  readonly foot: number;
  readonly right: number;
  readonly top: number;
}

/** The edges of all of some frames together. */
export const outlineOf = (frames: readonly Omit<LaidFrame, "block">[]): Edges => ({
  left: Math.min(...frames.map(({ x }) => x)),
  foot: Math.min(...frames.map(({ y }) => y)),
  right: Math.max(...frames.map(({ x, width }) => x + width)),
  top: Math.max(...frames.map(({ y, height }) => y + height)),
});

/** How far apart two frames are, each way; below nought where they face each other. */
const apart = (a: LaidFrame, b: LaidFrame): { readonly across: number; readonly up: number } => ({
  across: Math.max(a.x, b.x) - Math.min(a.x + a.width, b.x + b.width),
  up: Math.max(a.y, b.y) - Math.min(a.y + a.height, b.y + b.height),
});

/** From a frame to the nearest that faces it. */
function nearest(frame: LaidFrame, all: readonly LaidFrame[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const other of all) {
    if (other === frame) continue;
    const { across, up } = apart(frame, other);
    if (Math.min(across, up) < 0) least = Math.min(least, Math.max(across, up));
  }
  return least;
}

/** Straight on, or round a corner: what stops a frame may lie beside it, not before it, and then it faces nothing yet. */
function shortestWay(
  own: readonly LaidFrame[],
  others: readonly LaidFrame[],
  gap: number,
  outline: Edges,
): Shift | null {
  const straight = stepsFrom(own, others, gap, { x: 0, y: 0 });
  const round = straight.flatMap((step) => stepsFrom(own, others, gap, step));
  let best: Shift | null = null;
  let length = Number.POSITIVE_INFINITY;
  for (const way of [...straight, ...round]) {
    const long = Math.abs(way.x) + Math.abs(way.y);
    if (long >= length) continue;
    const there = shifted(own, way);
    if (!within(there, outline) || !there.every((frame) => nearest(frame, [...others, ...there]) === gap))
      continue;
    best = way;
    length = long;
  }
  return best;
}

/**
 * Where no slide leads to a neighbour: the shortest way to beside, above or below any of them, over
 * whatever lies between; out of the outline only where nothing inside it is free.
 */
function wayBeside(
  own: readonly LaidFrame[],
  others: readonly LaidFrame[],
  gap: number,
  outline: Edges,
): Shift | null {
  const box = outlineOf(own);
  const ways = others.flatMap((other): readonly Shift[] => {
    const [right, top] = [other.x + other.width, other.y + other.height];
    const level = [0, other.y - box.foot, top - box.top];
    const plumb = [0, other.x - box.left, right - box.right];
    return [
      ...level.flatMap((y) => [
        { x: right + gap - box.left, y },
        { x: other.x - gap - box.right, y },
      ]),
      ...plumb.flatMap((x) => [
        { x, y: top + gap - box.foot },
        { x, y: other.y - gap - box.top },
      ]),
    ];
  });
  const free = ways
    .filter((way) => {
      const there = shifted(own, way);
      const clear = there.every((frame) =>
        others.every((other) => {
          const { across, up } = apart(frame, other);
          return Math.max(across, up) >= gap;
        }),
      );
      return clear && there.every((frame) => nearest(frame, [...others, ...there]) === gap);
    })
    .toSorted((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y));
  return free.find((way) => within(shifted(own, way), outline)) ?? free[0] ?? null;
}

const within = (frames: readonly LaidFrame[], outline: Edges): boolean => {
  const { left, foot, right, top } = outlineOf(frames);
  return left >= outline.left && foot >= outline.foot && right <= outline.right && top <= outline.top;
};

interface Shift {
  readonly x: number;
  readonly y: number;
}

/** From where it has come by `by`, as far as it goes each of the four ways. */
const stepsFrom = (
  own: readonly LaidFrame[],
  others: readonly LaidFrame[],
  gap: number,
  by: Shift,
): readonly Shift[] => {
  const from = shifted(own, by);
  return WAYS.flatMap((way) => {
    const room = roomTowards(from, others, gap, way);
    return room > 0 && Number.isFinite(room) ? [{ x: by.x + way.x * room, y: by.y + way.y * room }] : [];
  });
};

const shifted = (frames: readonly LaidFrame[], { x, y }: Shift): readonly LaidFrame[] =>
  frames.map((frame) => ({ ...frame, x: frame.x + x, y: frame.y + y }));

/** How far a block can go one way before it is a gap from what lies there; endless where nothing does. */
function roomTowards(
  own: readonly LaidFrame[],
  others: readonly LaidFrame[],
  gap: number,
  way: (typeof WAYS)[number],
): number {
  const level = way.y === 0;
  let room = Number.POSITIVE_INFINITY;
  for (const frame of own)
    for (const other of others) {
      const { across, up } = apart(frame, other);
      // Nearer than the gap the other way, it would be met.
      if ((level ? up : across) >= gap) continue;
      const ahead = level ? (other.x - frame.x) * way.x : (other.y - frame.y) * way.y;
      if (ahead > 0) room = Math.min(room, (level ? across : up) - gap);
    }
  return room;
}

/** The blocks' places as frames; a set stands in a row, each frame in the middle of its height. */
export function framesOf(
  blocks: readonly { readonly frames: readonly number[]; readonly height: number }[],
  sizes: readonly { readonly width: number; readonly height: number }[],
  laid: { readonly x: Float64Array; readonly y: Float64Array },
  gap: number,
): readonly LaidFrame[] {
  const frames: LaidFrame[] = [];
  blocks.forEach((block, index) => {
    let x = at(laid.x, index);
    for (const frame of block.frames) {
      const { width, height } = at(sizes, frame);
      const y = at(laid.y, index) + Math.floor((block.height - height) / 2);
      frames[frame] = { x, y, width, height, block: index };
      x += width + gap;
    }
  });
  return frames;
}
