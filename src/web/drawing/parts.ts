import type { BlankName } from "../../words/page.ts";

const WINDOW = ["window", "window-width", "window-height", "mat-0"];

/** The parts of the drawings that a blank speaks of, by the names of their groups. */
export function partsOf(blank: BlankName): readonly string[] {
  if (blank.startsWith("board.")) return [`mat-${blank.slice(6)}`];
  if (blank.startsWith("reveal.")) return [`reveal-${blank.slice(7)}`, `mat-${blank.slice(7)}`];
  switch (blank) {
    case "sheetWidth":
    case "sheetHeight":
    case "thickness":
    case "sure":
      return ["paper"];
    case "imageWidth":
    case "imageHeight":
    case "imageLeft":
    case "imageTop":
    case "imageKind":
      return ["image"];
    case "show":
    case "overlap":
    case "gap":
    case "marginTop":
    case "marginSide":
    case "marginFoot":
    case "windowWidth":
    case "windowHeight":
      return WINDOW;
    case "outer":
      return ["board", "outer-width", "outer-height"];
    case "lift":
    case "liftBy":
    case "liftRatio":
      return ["border-head", "border-foot"];
    case "borderHead":
      return ["border-head"];
    case "borderFoot":
      return ["border-foot"];
    case "borderSide":
    case "leastBorder":
      return ["border-left", "border-right"];
    case "hold":
      return ["cover-foot", "paper"];
    default:
      return [];
  }
}

/** The ids of those parts in the three views, for `aria-controls`. */
export const controlsOf = (blank: BlankName): string =>
  partsOf(blank)
    .flatMap((part) => ["front", "back", "section"].map((view) => `${view}-${part}`))
    .join(" ");
