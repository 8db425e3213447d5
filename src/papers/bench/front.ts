import type { Mark } from "../../drawings/index.ts";
import type { RealPoint } from "../../geometry/index.ts";
import { add, fromReal, larger, type Length, mm, smaller, subtract, ZERO } from "../../lengths/index.ts";
import { frontAtScale } from "../../words/bench-sheet.ts";
import { type Block, block, cornersOf, placed } from "../block.ts";
import { part } from "../paper.ts";
import { textAt } from "../text.ts";
import { TYPE } from "../type.ts";
import { drawn } from "../scale.ts";
import { type BenchDesk } from "./desk.ts";

/** A real point of the package, drawn at a scale. */
export const drawnPoint = ({ x, y }: RealPoint, over: number): { x: Length; y: Length } => ({
  x: fromReal(x / over, "nearest"),
  y: fromReal(y / over, "nearest"),
});

/** The package from its front, small, so that the right work is known at a glance; its scale stands below. */
export function frontThumbnail(desk: BenchDesk, room: Length, high: Length): Block {
  const { composition, picture } = desk.job;
  const { outer, mats, print } = composition;
  const captionHeight = mm(4.2);
  // Known at a glance, not measured: any whole scale will do.
  const over = Math.ceil(Math.max(outer.width / room, outer.height / subtract(high, captionHeight)));
  const [width, height] = [drawn(outer.width, over), drawn(outer.height, over)];
  const left = part(subtract(room, width), 0.5);
  // What cannot be cut has no opening to show.
  const cuttable = mats.filter(
    ({ borders, bevel }) =>
      smaller(smaller(borders.head, borders.foot), smaller(borders.left, borders.right)) >= bevel.plan,
  );
  const openings: Mark[] = cuttable.toReversed().map(({ borders, face, bevel }) => ({
    kind: "area",
    points: cornersOf({
      left: drawn(subtract(borders.left, bevel.plan), over),
      top: drawn(subtract(borders.head, bevel.plan), over),
      width: drawn(face.width, over),
      height: drawn(face.height, over),
    }),
    fill: "none",
    line: "thin",
  }));
  const lowest = cuttable[0];
  const shown: Mark[] = [];
  if (print !== null && lowest !== undefined && lowest.back.width > 0 && lowest.back.height > 0) {
    const clip = cornersOf({
      left: drawn(lowest.borders.left, over),
      top: drawn(lowest.borders.head, over),
      width: drawn(lowest.back.width, over),
      height: drawn(lowest.back.height, over),
    });
    shown.push(...printShown(print.imageOutline, clip, picture, over));
    if (composition.design.window.show === "sheet") {
      const sheet = print.sheetOutline ?? print.sheetCorners;
      shown.push({
        kind: "area",
        points: sheet.map((point) => drawnPoint(point, over)),
        fill: "none",
        line: "thin",
      });
    }
  }
  return block(room, high, [
    ...placed(
      block(width, height, [
        ...shown,
        ...openings,
        {
          kind: "area",
          points: cornersOf({ left: ZERO, top: ZERO, width, height }),
          fill: "none",
          line: "outline",
        },
      ]),
      left,
      mm(0.4),
    ),
    textAt(part(room, 0.5), add(height, mm(4)), frontAtScale(over), TYPE.caption, "middle"),
  ]);
}

/** The picture where there is one, else the image's own outline with two light lines from corner to corner. */
function printShown(
  outline: readonly RealPoint[],
  clip: readonly { x: Length; y: Length }[],
  picture: string | null,
  over: number,
): readonly Mark[] {
  const points = outline.map((point) => drawnPoint(point, over));
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const [left, top] = [xs.reduce(smaller), ys.reduce(smaller)];
  const [width, height] = [subtract(xs.reduce(larger), left), subtract(ys.reduce(larger), top)];
  if (picture !== null) return [{ kind: "picture", source: picture, left, top, width, height, clip }];
  return [{ kind: "area", points: clip, fill: "image", line: null }];
}
