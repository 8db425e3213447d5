import type { RealPoint } from "../../geometry/index.ts";
import type { Mark } from "../marks.ts";
import type { Layer } from "./layers.ts";
import { group, lettering, type Pen, place, polyline, spot, textRun } from "./pen.ts";

const SIZE = 14;
const ROW = 20;
/** From the section's inner end, in pixels to the left. */
const NUMBER_AT = 50;
const LINE_FROM = 44;
const ELBOW = 36;
const STRAIGHTEN = 10;
const DOT = 2;

/** A number for each layer in a column at the left, its leader ending in a dot on the layer. `inner` is where the section breaks off. */
export function leaderMarks(
  pen: Pen,
  layers: readonly Layer[],
  targets: readonly RealPoint[],
  inner: number,
): Mark[] {
  const px = (count: number): number => count * pen.pixel;
  const middle = targets.reduce((sum, target) => sum + target.y, 0) / Math.max(targets.length, 1);
  return layers.flatMap((layer, index) => {
    const target = targets[index];
    if (!target) return [];
    const y = middle + px((index - (layers.length - 1) / 2) * ROW);
    const bend = inner - px(STRAIGHTEN);
    const path = [
      { x: inner - px(LINE_FROM), y },
      { x: inner - px(ELBOW), y },
      { x: bend, y: target.y },
      target,
    ];
    return [
      group(`leader-${layer.number}`, [
        polyline(path, "thin"),
        { kind: "circle", centre: spot(target.x, target.y), radius: place(px(DOT)), fill: "ink", line: null },
        lettering(pen, inner - px(NUMBER_AT), y + px(5), [textRun(String(layer.number))], {
          size: SIZE,
          anchor: "end",
        }),
      ]),
    ];
  });
}
