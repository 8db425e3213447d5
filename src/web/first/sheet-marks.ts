import { type Drawing, figureRuns, type LineKind, type Mark, PIXEL } from "../../drawings/index.ts";
import type { Point, Size } from "../../geometry/index.ts";
import { fromReal, type Length, type Ruler } from "../../lengths/index.ts";

const at = (x: number, y: number): Point => ({ x: fromReal(x, "nearest"), y: fromReal(y, "nearest") });
const px = (count: number): number => count * PIXEL;

/** Round the sheet, in pixels: figures above it and at its right, the centre lines' ends all round. */
const LEFT = 16;
const ABOVE = 44;
const RIGHT = 44;
const BELOW = 16;
const ROW = 22;
const FIGURE = 14;
const ARROW = 9;

const box = (x: number, y: number, w: number, h: number): Point[] => [
  at(x, y),
  at(x + w, y),
  at(x + w, y + h),
  at(x, y + h),
];

const line = (x1: number, y1: number, x2: number, y2: number, kind: LineKind): Mark => ({
  kind: "line",
  from: at(x1, y1),
  to: at(x2, y2),
  line: kind,
});

const arrow = (x: number, y: number, degrees: number): Mark => ({
  kind: "arrowhead",
  at: at(x, y),
  degrees,
  size: fromReal(px(ARROW), "nearest"),
});

/**
 * A sheet with its image in the middle, to scale in a room of so many pixels, dimensioned after
 * ISO 129-1: the sheet outside, the image inside.
 */
export function sheetMarks(
  sheet: Size,
  image: Size,
  ruler: Ruler,
  room: { readonly width: number; readonly height: number },
): Drawing {
  const scale = Math.max(
    Math.min(
      px(room.width - LEFT - RIGHT) / Math.max(1, sheet.width, image.width),
      px(room.height - ABOVE - BELOW) / Math.max(1, sheet.height, image.height),
    ),
    1e-6,
  );
  const [width, height] = [sheet.width * scale, sheet.height * scale];
  const [left, top] = [px(LEFT), px(ABOVE)];
  const [imageWidth, imageHeight] = [image.width * scale, image.height * scale];
  const [imageLeft, imageTop] = [left + (width - imageWidth) / 2, top + (height - imageHeight) / 2];
  const [middleX, middleY] = [left + width / 2, top + height / 2];
  const figure = (length: Length, x: number, y: number, turned: boolean): Mark => ({
    kind: "text",
    at: at(x, y),
    runs: figureRuns(length, { ruler, pixel: PIXEL }),
    size: fromReal(px(FIGURE), "nearest"),
    weight: "regular",
    anchor: "middle",
    halo: true,
    ...(turned ? { degrees: -90 } : {}),
  });
  const across = (name: string, from: number, to: number, y: number, length: Length): Mark => ({
    kind: "group",
    name,
    marks: [
      line(from, y, to, y, "thin"),
      arrow(from, y, 180),
      arrow(to, y, 0),
      figure(length, (from + to) / 2, y - px(5), false),
    ],
  });
  const down = (name: string, from: number, to: number, x: number, length: Length): Mark => ({
    kind: "group",
    name,
    marks: [
      line(x, from, x, to, "thin"),
      arrow(x, from, -90),
      arrow(x, to, 90),
      figure(length, x - px(5), (from + to) / 2, true),
    ],
  });
  const [row, column] = [top - px(ROW), left + width + px(ROW)];
  return {
    width: fromReal(left + Math.max(width, imageWidth) + px(RIGHT), "up"),
    height: fromReal(top + Math.max(height, imageHeight) + px(BELOW), "up"),
    marks: [
      { kind: "area", points: box(left, top, width, height), fill: "paper", line: "edge" },
      {
        kind: "area",
        points: box(imageLeft, imageTop, imageWidth, imageHeight),
        fill: "none",
        line: "hidden",
      },
      line(middleX, top - px(6), middleX, top + height + px(6), "centre"),
      line(left - px(6), middleY, left + width + px(6), middleY, "centre"),
      line(left, top - px(3), left, row - px(4), "thin"),
      line(left + width, top - px(3), left + width, row - px(4), "thin"),
      line(left + width + px(3), top, column + px(4), top, "thin"),
      line(left + width + px(3), top + height, column + px(4), top + height, "thin"),
      across("sheet-width", left, left + width, row, sheet.width),
      down("sheet-height", top, top + height, column, sheet.height),
      across("image-width", imageLeft, imageLeft + imageWidth, imageTop + imageHeight - px(22), image.width),
      down("image-height", imageTop, imageTop + imageHeight, imageLeft + px(26), image.height),
    ],
  };
}
