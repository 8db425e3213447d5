import type { Composition } from "../../../assembly/index.ts";
import type { Length } from "../../../lengths/index.ts";
import type { Mark } from "../../marks.ts";
import { shifted } from "../extent.ts";
import { frontMarks } from "../front.ts";
import { surfaceOf } from "../layout.ts";
import { area, group, lettering, type Pen, spot, spots, textRun } from "../pen.ts";
import { corners, type Rect } from "../shapes.ts";

/** What is seen in a frame on the wall. */
export interface HangingFront {
  readonly composition: Composition;
  readonly picture: string | undefined;
  /** How wide the frame is across its face. */
  readonly face: Length;
}

/** How far a frame's shade falls, in pixels. */
const SHADE = 3;
const NUMBER = 14;

/** One frame where it hangs: its shade, what is seen in it, its moulding. The group is named by the work's place. */
export function frameOnWall(
  pen: Pen,
  { composition, picture, face }: HangingFront,
  box: Rect,
  scale: number,
  work: number,
): Mark {
  const wide = Math.min(face * scale, (box.right - box.left) / 3, (box.bottom - box.top) / 3);
  const sight: Rect = {
    left: box.left + wide,
    right: box.right - wide,
    top: box.top + wide,
    bottom: box.bottom - wide,
  };
  const shade = SHADE * pen.pixel;
  const fallen: Rect = {
    left: box.left + shade,
    right: box.right + shade,
    top: box.top + shade,
    bottom: box.bottom + shade,
  };
  return group(`work-${work}`, [
    area(corners(fallen), "shadow"),
    area(corners(sight), "mat"),
    ...seenIn(pen, composition, picture, box, scale),
    {
      kind: "area",
      points: spots(corners(box)),
      holes: [spots(corners(sight))],
      fill: "wood",
      line: "thin",
    },
  ]);
}

/** The package in the middle of its frame; where it is larger than the frame nothing but its face is drawn. */
function seenIn(
  pen: Pen,
  composition: Composition,
  picture: string | undefined,
  box: Rect,
  scale: number,
): readonly Mark[] {
  const { width, height } = composition.outer;
  const [across, down] = [box.right - box.left - width * scale, box.bottom - box.top - height * scale];
  if (across < 0 || down < 0) return [];
  const on = surfaceOf(composition, scale, false);
  const by = spot(box.left + across / 2, box.top + down / 2);
  return frontMarks(composition, on, pen, { plain: true, ...(picture === undefined ? {} : { picture }) })
    .flatMap((mark) => (mark.kind === "group" ? mark.marks : [mark]))
    .map((mark) => shifted(mark, by));
}

/** A work's number: over its frame in a row, else on a clear field in the frame's lower corner. */
export function numberOf(pen: Pen, number: number, box: Rect, over: boolean): readonly Mark[] {
  const runs = [textRun(String(number))];
  if (over)
    return [
      lettering(pen, (box.left + box.right) / 2, box.top - 7 * pen.pixel, runs, { size: NUMBER, halo: true }),
    ];
  const [wide, high] = [(number < 10 ? 15 : 22) * pen.pixel, 18 * pen.pixel];
  const field: Rect = { left: box.left, right: box.left + wide, top: box.bottom - high, bottom: box.bottom };
  return [
    area(corners(field), "paper", "thin"),
    lettering(pen, field.left + wide / 2, field.bottom - 4 * pen.pixel, runs, { size: NUMBER }),
  ];
}
