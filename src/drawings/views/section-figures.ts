import type { Composition } from "../../assembly/index.ts";
import type { Mark } from "../marks.ts";
import { dimension, extensionLines, type Stretch } from "./dimension.ts";
import { group, type Pen } from "./pen.ts";
import type { Stack } from "./stack.ts";

/** Rows under the stack and above it, in pixels. */
const BELOW = { cover: 34, border: 62 };
const ABOVE_STACK = 14;
const ROW = 24;

/** The foot border, how far the paper reaches, and above them each strip as cut: by the true lengths, wherever a break shortens the drawing. */
export function sectionFigures(
  composition: Composition,
  pen: Pen,
  stack: Stack,
  map: (x: number) => number,
): Mark[] {
  const px = (count: number): number => count * pen.pixel;
  const lowest = composition.mats[0];
  if (!lowest) return [];
  const bottom = stack.mount.bottom;
  const outline = bottom + px(2);
  const edge = map(0);
  const cover = composition.print?.cover.foot;
  const coverLine =
    cover === undefined || cover === 0 || stack.floated
      ? []
      : [
          row(pen, bottom + px(BELOW.cover), outline, {
            name: "cover-foot",
            from: edge,
            to: map(stack.print?.end ?? 0),
            length: cover,
            read: { on: "closer", rounding: "down" },
          }),
        ];
  const borderAt = bottom + px(coverLine.length > 0 ? BELOW.border : BELOW.cover);
  const borderLine = row(pen, borderAt, outline, {
    name: "border-foot",
    from: edge,
    to: map(stack.outer),
    length: lowest.borders.foot,
  });
  const top = Math.min(...stack.mats.map((mat) => mat.top));
  const reveals = composition.mats.flatMap((mat, index) => {
    const [lower, upper] = [stack.mats[index - 1], stack.mats[index]];
    if (!lower || !upper || mat.revealAsCut === null) return [];
    const at = top - px(ABOVE_STACK + (index - 1) * ROW);
    return [
      row(pen, at, upper.bottom, {
        name: `reveal-${index}`,
        from: map(lower.face),
        to: map(upper.back),
        length: mat.revealAsCut,
        read: { on: "closer", rounding: "nearest" },
      }),
    ];
  });
  return [
    group("extension-lines", [
      ...extensionLines(pen, [...coverLine, borderLine]),
      ...reveals.flatMap((reveal) => extensionLines(pen, [reveal])),
    ]),
    ...[...coverLine, borderLine, ...reveals].flatMap(({ set }) => set.marks),
  ];
}

function row(pen: Pen, at: number, outline: number, stretch: Stretch) {
  const on = { along: "x", at, outline } as const;
  return { on, set: dimension(pen, on, [stretch]) };
}
