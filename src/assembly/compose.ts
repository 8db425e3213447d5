import { area, clippedArea, type Size } from "../geometry/index.ts";
import { fromReal, type Length } from "../lengths/index.ts";
import { findBorders } from "./borders.ts";
import { type Check, stopsFirst } from "./check.ts";
import type { Composition, PlacedPrint } from "./composition.ts";
import type { Design } from "./design.ts";
import { editionChecks } from "./edition.ts";
import { type LevelSheet, levelSheets } from "./level.ts";
import { findStops, stackMats } from "./mats.ts";
import { boardChecks, holdChecks, placePrint, placeSteps } from "./place.ts";
import { madeStep, plus, type Step } from "./reckoning.ts";
import { DIAGONAL } from "./step-names.ts";
import { beyondWindow, findWindow } from "./window.ts";

/**
 * Composes one work: from the print to window, borders, mats, cover, pockets and stops, with every
 * problem a record and every figure the sum that made it. Never throws for a design that could be
 * read: what cannot be made carries a check of level "stop" beside every figure that can be computed.
 */
export function compose(design: Design): Composition {
  const sheets = design.print === null ? [] : levelSheets(design.print, design.window);
  const window = findWindow(design, sheets);
  const bordered = findBorders(design, window.size, beyondWindow(sheets, window));
  const { outer } = bordered;
  const stacked = stackMats(design, outer, bordered.borders);
  const print = placePrint(design, sheets, window, bordered.borders);
  const diagonal = fromReal(Math.hypot(outer.width, outer.height), "nearest");

  const checks: Check[] = [
    ...goneChecks(window.size),
    ...bordered.checks,
    ...stacked.checks,
    ...(print === null
      ? []
      : [
          ...holdChecks(design, print, window.size),
          ...boardChecks(print, outer),
          ...imageChecks(design, sheets, window.size, window.at[0]),
          ...holdingChecks(design, print),
        ]),
    ...editionChecks(design),
  ];
  return {
    design,
    outer,
    mats: stacked.mats,
    print,
    stops: findStops(design, stacked.mats),
    diagonal,
    // A stable sort: stops first, then warnings, then notes, each in the order of the work.
    checks: stopsFirst(checks),
    reckoning: [
      ...window.steps,
      ...bordered.steps,
      ...stacked.steps,
      ...(print === null ? [] : placeSteps(design, print, window.size, bordered.borders)),
      diagonalStep(outer, diagonal),
    ].map(madeStep),
  };
}

/** Whether any check says that it cannot be made as asked. */
export const isStopped = (composition: Composition): boolean =>
  composition.checks.some(({ level }) => level === "stop");

function goneChecks(size: Size): Check[] {
  return (["width", "height"] as const).flatMap((direction): Check[] =>
    size[direction] > 0 ? [] : [{ level: "stop", code: "window-gone", direction, size: size[direction] }],
  );
}

function imageChecks(
  design: Design,
  [sheet]: readonly LevelSheet[],
  size: Size,
  at: { x: number; y: number } | undefined,
): Check[] {
  const checks: Check[] = [];
  const { print } = design;
  if (print === null || sheet === undefined || at === undefined) return checks;
  if (print.angle !== 0) {
    checks.push(
      sheet.angle === 0
        ? { level: "note", code: "image-skew", angle: print.angle }
        : { level: "note", code: "sheet-turned", angle: sheet.angle },
    );
  }
  if (sheet.rough && size.width > 0 && size.height > 0) {
    const whole = area(sheet.imageOutline);
    const shown = clippedArea(sheet.imageOutline, { left: at.x, top: at.y, ...size });
    const share = whole > 0 ? 1 - shown / whole : 0;
    // Below this it is no more than what areas of turned points are sure to.
    if (share > 1e-9) checks.push({ level: "note", code: "image-hidden", share });
  }
  return checks;
}

function holdingChecks(design: Design, print: PlacedPrint): Check[] {
  if (design.holding === "hinges") return [];
  if (design.window.show === "sheet")
    return [{ level: "warn", code: "holding-shows", holding: design.holding }];
  if (design.holding !== "pockets") return [];
  const { topLeft, topRight, bottomLeft, bottomRight } = print.pockets;
  const leg = Math.min(topLeft, topRight, bottomLeft, bottomRight) as Length;
  return leg < design.leastPocket
    ? [{ level: "warn", code: "pocket-small", leg, least: design.leastPocket }]
    : [];
}

const diagonalStep = (outer: Size, is: Length): Step => ({
  name: DIAGONAL,
  sum: {
    kind: "root",
    of: plus({ kind: "square", length: outer.width }, { kind: "square", length: outer.height }),
  },
  rounded: null,
  is,
});
