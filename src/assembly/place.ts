import {
  type Corners,
  cornerInSheetAxes,
  type Extent,
  extentOf,
  type FourCorners,
  reach,
  type RealPoint,
  type Side,
  type Sides,
  type Size,
  SIDES,
} from "../geometry/index.ts";
import {
  add,
  fromReal,
  larger,
  type Length,
  smaller,
  subtract,
  toGraduation,
  ZERO,
} from "../lengths/index.ts";
import type { Check } from "./check.ts";
import type { PlacedPrint } from "./composition.ts";
import type { Design } from "./design.ts";
import type { LevelSheet } from "./level.ts";
import { minus, operand, plus, type Step } from "./reckoning.ts";
import { COVER, POCKET } from "./step-names.ts";
import { type FoundWindow, holdAsked } from "./window.ts";

interface PlacedSheet {
  readonly left: Length;
  readonly top: Length;
  /** From the level frame to the package frame. */
  readonly shift: RealPoint;
  readonly cover: Sides;
  readonly paper: FourCorners;
}

/** Lays every sheet under the window and reckons what the mat holds of it. */
export function placePrint(
  design: Design,
  sheets: readonly LevelSheet[],
  window: FoundWindow,
  borders: Sides,
): PlacedPrint | null {
  const first = sheets[0];
  if (first === undefined) return null;
  const placed = sheets.map((sheet, index) =>
    placeSheet(sheet, window.at[index] ?? { x: 0, y: 0 }, window.size, borders),
  );
  const [own] = placed as [PlacedSheet, ...PlacedSheet[]];
  const moved = (points: readonly RealPoint[]): RealPoint[] =>
    points.map((point) => shifted(point, own.shift));
  return {
    left: own.left,
    top: own.top,
    angle: first.angle,
    sheetCorners: shiftedCorners(first.sheet, own.shift),
    sheetOutline: first.sheetOutline === null ? null : moved(first.sheetOutline),
    imageOutline: moved(first.imageOutline),
    cover: own.cover,
    pockets: placed.map((sheet) => pocketsOf(design, sheet, window.size, borders)).reduce(eachSmaller),
    edition:
      sheets.length === 1
        ? []
        : placed.map(({ left, top, cover, shift }, index) => ({
            name: sheets[index]?.name ?? "",
            left,
            top,
            cover,
            sheetCorners: shiftedCorners((sheets[index] ?? first).sheet, shift),
          })),
  };
}

function placeSheet(sheet: LevelSheet, at: RealPoint, size: Size, borders: Sides): PlacedSheet {
  const corner = sheet.sheet[0];
  const left = fromReal(borders.left - at.x + corner.x, "nearest");
  const top = fromReal(borders.head - at.y + corner.y, "nearest");
  // The place as printed decides, so that place, cover and window add up to the tick.
  const shift = { x: left - corner.x, y: top - corner.y };
  const paper = shiftedCorners(sheet.paper, shift);
  const found = reach({ left: borders.left, top: borders.head, ...size }, paper);
  return {
    left,
    top,
    shift,
    paper,
    cover: {
      head: fromReal(found.head, "down"),
      left: fromReal(found.left, "down"),
      right: fromReal(found.right, "down"),
      foot: fromReal(found.foot, "down"),
    },
  };
}

const shifted = (point: RealPoint, by: RealPoint): RealPoint => ({ x: point.x + by.x, y: point.y + by.y });

const shiftedCorners = (corners: FourCorners, by: RealPoint): FourCorners => [
  shifted(corners[0], by),
  shifted(corners[1], by),
  shifted(corners[2], by),
  shifted(corners[3], by),
];

/**
 * The largest hidden pocket on each corner: a pocket of leg L ends on the line x + y = L from its
 * corner, so with the window's corner at (u, v) in the sheet's own axes it stays hidden while
 * L <= u + v - play. Rounded down to the tick, never below nought.
 */
function pocketsOf(design: Design, placed: PlacedSheet, size: Size, borders: Sides): Corners {
  const right = borders.left + size.width;
  const bottom = borders.head + size.height;
  const leg = (corner: keyof Corners, x: number, y: number): Length => {
    const { u, v } = cornerInSheetAxes({ x, y }, placed.paper, corner);
    return larger(fromReal(u + v - design.play, "down"), ZERO);
  };
  return {
    topLeft: leg("topLeft", borders.left, borders.head),
    topRight: leg("topRight", right, borders.head),
    bottomLeft: leg("bottomLeft", borders.left, bottom),
    bottomRight: leg("bottomRight", right, bottom),
  };
}

const eachSmaller = (a: Corners, b: Corners): Corners => ({
  topLeft: smaller(a.topLeft, b.topLeft),
  topRight: smaller(a.topRight, b.topRight),
  bottomLeft: smaller(a.bottomLeft, b.bottomLeft),
  bottomRight: smaller(a.bottomRight, b.bottomRight),
});

/** Whether the mat holds the paper on every side, sheet by sheet. Not asked where the whole sheet is shown. */
export function holdChecks(design: Design, print: PlacedPrint, window: Size): Check[] {
  if (design.window.show === "sheet") return [];
  const hold = holdAsked(design);
  const carrier = carrierFor(design, window, hold);
  const sheets = print.edition.length === 0 ? [{ name: null, cover: print.cover }] : print.edition;
  return sheets.flatMap(({ name, cover }, index) => {
    const sheet = index === 0 ? null : name;
    return SIDES.flatMap((side): Check[] => {
      const reached = cover[side];
      if (reached < 0) {
        return [{ level: "stop", code: "paper-ends", side, by: (0 - reached) as Length, sheet, carrier }];
      }
      return reached < hold
        ? [{ level: "stop", code: "hold-short", side, cover: reached, hold, sheet, carrier }]
        : [];
    });
  });
}

/** A sheet to hinge the print to that the mat can hold all round; up to the graduation. */
function carrierFor(design: Design, window: Size, hold: Length): Size {
  const wide = (opening: Length): Length =>
    toGraduation(add(opening, add(hold, hold)), design.ruler.graduation, "up");
  return { width: wide(window.width), height: wide(window.height) };
}

/** A sheet larger than its package would have to be trimmed. Of an edition the sheet that goes furthest past each side. */
export function boardChecks(print: PlacedPrint, outer: Size): Check[] {
  const edges = [
    { name: null, edge: extentOf(print.sheetOutline ?? print.sheetCorners) },
    ...print.edition.slice(1).map(({ name, sheetCorners }) => ({ name, edge: extentOf(sheetCorners) })),
  ];
  const past: Record<Side, (edge: Extent) => number> = {
    head: ({ top }) => -top,
    left: ({ left }) => -left,
    right: ({ right }) => right - outer.width,
    foot: ({ bottom }) => bottom - outer.height,
  };
  return SIDES.flatMap((side): Check[] => {
    let by = ZERO;
    let sheet: string | null = null;
    for (const { name, edge } of edges) {
      const passes = fromReal(past[side](edge), "up");
      if (passes > by) [by, sheet] = [passes, name];
    }
    return by > 0 ? [{ level: "stop", code: "sheet-past-board", side, by, sheet }] : [];
  });
}

/** The sums behind cover and pockets; only an unturned, straight-edged sheet has sums that a pencil can do. */
export function placeSteps(design: Design, print: PlacedPrint, window: Size, borders: Sides): Step[] {
  if (
    design.print === null ||
    print.angle !== 0 ||
    print.sheetOutline !== null ||
    design.window.show === "sheet"
  )
    return [];
  const { cover } = print;
  const sheet = design.print.sheet;
  const step = (side: Side, sum: Step["sum"]): Step => ({
    name: COVER[side],
    sum,
    rounded: null,
    is: cover[side],
  });
  const covers = print.edition.length === 0 ? [cover] : print.edition.map((one) => one.cover);
  // Of an edition the sheet that leaves the corner least.
  const corner = (name: keyof Corners, across: Side, down: Side): Step[] => {
    const least = covers.reduce((low, one) =>
      one[across] + one[down] < low[across] + low[down] ? one : low,
    );
    const a = least[across];
    const b = least[down];
    const leg = subtract(add(a, b), design.play);
    return leg < 0
      ? []
      : [
          {
            name: POCKET[name],
            sum: minus(plus(operand(a), operand(b)), operand(design.play)),
            rounded: null,
            is: leg,
          },
        ];
  };
  return [
    step("head", minus(operand(borders.head), operand(print.top))),
    step("left", minus(operand(borders.left), operand(print.left))),
    step(
      "right",
      minus(
        minus(plus(operand(print.left), operand(sheet.width)), operand(borders.left)),
        operand(window.width),
      ),
    ),
    step(
      "foot",
      minus(
        minus(plus(operand(print.top), operand(sheet.height)), operand(borders.head)),
        operand(window.height),
      ),
    ),
    ...corner("topLeft", "left", "head"),
    ...corner("topRight", "right", "head"),
    ...corner("bottomLeft", "left", "foot"),
    ...corner("bottomRight", "right", "foot"),
  ];
}
