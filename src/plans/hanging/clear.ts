import { add, type Length, subtract, ZERO } from "../../lengths/index.ts";
import { at } from "../at.ts";
import type { WallBox, WallJob, WallPlan } from "./job.ts";

/** How far a whole group moves. */
export interface Way {
  readonly across: Length;
  readonly up: Length;
}

const STAY: Way = { across: ZERO, up: ZERO };
/** Of the ways across and up so many of the shortest are tried with each other. */
const MOST = 60;

/**
 * The shortest way for a group to where it touches nothing that must stay free and passes no edge of the
 * wall: across alone, else up or down alone, else both. It keeps the group's own gap from what must stay
 * free; where that cannot be, it touches nothing at least. It stays where neither can be.
 */
export function clearWay(job: WallJob, places: WallPlan["places"]): Way {
  const boxes = job.frames.map(
    ({ width, height }, index): WallBox => ({ ...at(places, index), width, height }),
  );
  const gap = job.rule.kind === "spread" ? ZERO : job.rule.gap;
  const clearBy = (room: Length) => {
    const avoid = job.avoid.map((box) => wider(box, room));
    return (way: Way): boolean =>
      boxes.every((box) => {
        const moved = { ...box, x: add(box.x, way.across), y: add(box.y, way.up) };
        return onWall(job, moved) && !avoid.some((other) => meet(moved, other));
      });
  };
  if (clearBy(gap)(STAY)) return STAY;
  const across = shortest(waysPast(boxes, job, gap, { axis: "x", size: "width", from: ZERO }));
  const up = shortest(waysPast(boxes, job, gap, { axis: "y", size: "height", from: job.floor }));
  const tries: readonly Way[] = [
    ...across.map((way) => ({ across: way, up: ZERO })),
    ...up.map((way) => ({ across: ZERO, up: way })),
    ...across
      .slice(0, MOST)
      .flatMap((one) => up.slice(0, MOST).map((other) => ({ across: one, up: other })))
      .toSorted((a, b) => Math.hypot(a.across, a.up) - Math.hypot(b.across, b.up)),
  ];
  return tries.find(clearBy(gap)) ?? [STAY, ...tries].find(clearBy(ZERO)) ?? STAY;
}

/** Along one axis: from each frame just past each obstacle, and the group flush with the wall's ends. */
function waysPast(
  boxes: readonly WallBox[],
  { avoid, wall }: WallJob,
  gap: Length,
  {
    axis,
    size,
    from,
  }: { readonly axis: "x" | "y"; readonly size: "width" | "height"; readonly from: Length },
): readonly Length[] {
  const ends = boxes.flatMap((box) => [
    subtract(from, box[axis]),
    subtract(add(from, wall[size]), add(box[axis], box[size])),
  ]);
  const past = boxes.flatMap((box) =>
    avoid.flatMap((other) => [
      subtract(subtract(other[axis], gap), add(box[axis], box[size])),
      subtract(add(add(other[axis], other[size]), gap), box[axis]),
    ]),
  );
  return [...past, ...ends];
}

const shortest = (ways: readonly Length[]): readonly Length[] =>
  [...new Set(ways)].toSorted((a, b) => Math.abs(a) - Math.abs(b));

const onWall = ({ wall, floor }: WallJob, box: WallBox): boolean =>
  box.x >= 0 &&
  box.y >= floor &&
  box.x + box.width <= wall.width &&
  box.y + box.height <= floor + wall.height;

/** A box with so much room round it. */
export const wider = (box: WallBox, room: Length): WallBox => ({
  x: subtract(box.x, room),
  y: subtract(box.y, room),
  width: add(box.width, add(room, room)),
  height: add(box.height, add(room, room)),
});

/** Whether two boxes share more than an edge. */
export const meet = (a: WallBox, b: WallBox): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
