import { type Box, extentOf, reach, type RealSides, type Sides, type Size } from "../geometry/index.ts";
import { add, fromReal, type Length, type Rounding, toGraduation } from "../lengths/index.ts";
import type { Design, WindowRule } from "./design.ts";
import type { LevelSheet } from "./level.ts";
import { minus, operand, plus, type Step, twice } from "./reckoning.ts";
import { WINDOW } from "./step-names.ts";

type Direction = "width" | "height";

/** What one sheet asks its window to be, before the ruler: a box in the sheet's level frame. */
interface Asked {
  /** Twice the centre, so that half ticks stay whole. */
  readonly centreX2: number;
  readonly centreY2: number;
  readonly width: Length;
  readonly height: Length;
}

export interface FoundWindow {
  /** The opening at the back of the lowest mat. */
  readonly size: Size;
  /** For each sheet of the edition the window's left and top edge in its own level frame, real ticks. */
  readonly at: readonly { readonly x: number; readonly y: number }[];
  readonly steps: readonly Step[];
}

/**
 * The window of a design over all its sheets: it covers the smallest image (or clears the largest
 * sheet, when the whole sheet is shown). Rounded to the graduation by its rule, each way by itself:
 * overlap down, sheet up, typed not at all, margins to the nearest, but down where the nearest would
 * break the hold and down does not.
 */
export function findWindow(design: Design, sheets: readonly LevelSheet[]): FoundWindow {
  const { window } = design;
  if (window.show === "typed") {
    const size = { width: window.width, height: window.height };
    return {
      size,
      at: sheets.map((sheet) => placed(askedBox(sheet, window), size)),
      steps: (["width", "height"] as const).map((direction) => ({
        name: WINDOW[direction],
        sum: operand(size[direction]),
        rounded: null,
        is: size[direction],
      })),
    };
  }
  const asked = sheets.map((sheet) => askedBox(sheet, window));
  const pick = window.show === "sheet" ? Math.max : Math.min;
  const governing = (direction: Direction): number => {
    const sizes = asked.map((box) => box[direction]);
    return sizes.indexOf(pick(...sizes) as Length);
  };
  const of = { width: governing("width"), height: governing("height") };
  const rounding = windowRounding(design, sheets, asked, {
    width: (asked[of.width] as Asked).width,
    height: (asked[of.height] as Asked).height,
  });
  const size = {
    width: toGraduation((asked[of.width] as Asked).width, design.ruler.graduation, rounding.width),
    height: toGraduation((asked[of.height] as Asked).height, design.ruler.graduation, rounding.height),
  };
  return {
    size,
    at: asked.map((box) => placed(box, size)),
    steps: (["width", "height"] as const).map((direction) =>
      windowStep(
        sheets[of[direction]] as LevelSheet,
        window,
        direction,
        rounding[direction],
        size[direction],
      ),
    ),
  };
}

/** What shows, as a box: the image drawn in or let out, or the sheet let out. */
function askedBox(sheet: LevelSheet, window: WindowRule): Asked {
  switch (window.show) {
    case "overlap": {
      const shown = sheet.inner ?? { ...sheet.around, width: 0 as Length, height: 0 as Length };
      return letOut(shown, -window.overlap, -window.overlap, -window.overlap);
    }
    case "margins":
      return letOut(sheet.around, window.top, window.side, window.foot);
    case "sheet":
      return letOut(sheet.sheetAround, window.gap, window.gap, window.gap);
    case "typed":
      return { ...letOut(sheet.around, 0, 0, 0), width: window.width, height: window.height };
  }
}

function letOut(box: Box, top: number, side: number, foot: number): Asked {
  return {
    centreX2: 2 * box.left + box.width,
    centreY2: 2 * box.top + box.height + foot - top,
    width: (box.width + 2 * side) as Length,
    height: (box.height + top + foot) as Length,
  };
}

const placed = (asked: Asked, size: Size): { x: number; y: number } => ({
  x: (asked.centreX2 - size.width) / 2,
  y: (asked.centreY2 - size.height) / 2,
});

function windowRounding(
  design: Design,
  sheets: readonly LevelSheet[],
  asked: readonly Asked[],
  exact: Size,
): Record<Direction, Rounding> {
  const { show } = design.window;
  if (show !== "margins") {
    const way: Rounding = show === "sheet" ? "up" : "down";
    return { width: way, height: way };
  }
  const { graduation } = design.ruler;
  const hold = holdAsked(design);
  const rounded = (way: Record<Direction, Rounding>): Size => ({
    width: toGraduation(exact.width, graduation, way.width),
    height: toGraduation(exact.height, graduation, way.height),
  });
  const holds = (size: Size, direction: Direction): boolean =>
    sheets.every((sheet, index) => {
      const cover = coverAt(sheet, placed(asked[index] as Asked, size), size);
      return direction === "width"
        ? Math.min(cover.left, cover.right) >= hold
        : Math.min(cover.head, cover.foot) >= hold;
    });
  const way: Record<Direction, Rounding> = { width: "nearest", height: "nearest" };
  for (const direction of ["width", "height"] as const) {
    if (holds(rounded(way), direction)) continue;
    const down = { ...way, [direction]: "down" };
    if (holds(rounded(down), direction)) way[direction] = "down";
  }
  return way;
}

/** How far the sheets reach past the window on each side, up to whole ticks; nought without a print. */
export function beyondWindow(sheets: readonly LevelSheet[], window: FoundWindow): Sides {
  const { width, height } = window.size;
  let head = 0;
  let left = 0;
  let right = 0;
  let foot = 0;
  for (let index = 0; index < sheets.length; index++) {
    const { sheet, sheetOutline } = sheets[index] as LevelSheet;
    const at = window.at[index] ?? { x: 0, y: 0 };
    const edge = extentOf(sheetOutline ?? sheet);
    head = Math.max(head, at.y - edge.top);
    left = Math.max(left, at.x - edge.left);
    right = Math.max(right, edge.right - at.x - width);
    foot = Math.max(foot, edge.bottom - at.y - height);
  }
  return {
    head: fromReal(head, "up"),
    left: fromReal(left, "up"),
    right: fromReal(right, "up"),
    foot: fromReal(foot, "up"),
  };
}

/** The mat must reach this far over the paper: the hold, and how unsure the measures are. */
export const holdAsked = (design: Design): Length => add(design.hold, design.print?.sure ?? (0 as Length));

/** How far the paper reaches under each edge of a window placed in its level frame; real ticks. */
const coverAt = (sheet: LevelSheet, at: { x: number; y: number }, size: Size): RealSides =>
  reach({ left: at.x, top: at.y, width: size.width, height: size.height }, sheet.paper);

function windowStep(
  sheet: LevelSheet,
  window: Exclude<WindowRule, { show: "typed" }>,
  direction: Direction,
  rounded: Rounding,
  is: Length,
): Step {
  const name = WINDOW[direction];
  switch (window.show) {
    case "overlap": {
      const image = operand(sheet.inner?.[direction] ?? (0 as Length));
      return { name, sum: minus(image, twice(window.overlap)), rounded, is };
    }
    case "margins": {
      const image = operand(sheet.around[direction]);
      const sum =
        direction === "width"
          ? plus(image, twice(window.side))
          : plus(plus(image, operand(window.top)), operand(window.foot));
      return { name, sum, rounded, is };
    }
    case "sheet":
      return { name, sum: plus(operand(sheet.sheetAround[direction]), twice(window.gap)), rounded, is };
  }
}
