import type { Composition, OuterRule } from "../../assembly/index.ts";
import { grips } from "../../drawings/index.ts";
import type { Point } from "../../geometry/index.ts";
import {
  half,
  larger,
  type Length,
  smaller,
  subtract,
  times,
  toGraduation,
  ZERO,
} from "../../lengths/index.ts";
import type { ComposeDocument } from "../../show/index.ts";
import { GRIPS } from "../../words/page.ts";
import type { BlankName } from "../../words/page.ts";
import { strideLength } from "../blanks/step.ts";
import { Speller } from "./document-of.ts";

/** An edge that can be dragged, and the blank that it writes: every drag can be typed instead. */
export interface GripEdit {
  readonly key: keyof typeof GRIPS;
  readonly blank: BlankName;
  /** In the package frame. */
  readonly at: Point;
  readonly slides: "x" | "y";
  readonly way: 1 | -1;
  readonly value: Length;
  readonly least: Length;
  readonly most: Length;
  readonly write: (document: ComposeDocument, value: Length, free: boolean) => ComposeDocument;
}

/**
 * The edges of a work that can be dragged. The window's head and foot move the window, and the border
 * opposite yields; the outer edges set a named size, round a window that stays as it is.
 */
export function gripEdits(composition: Composition): readonly GripEdit[] {
  const { design } = composition;
  switch (design.outer.kind) {
    case "borders":
      return borderGrips(composition);
    case "smallest":
      return liftGrips(composition);
    case "size":
      return [...liftGrips(composition), ...sizeGrips(composition)];
  }
}

/** Head or foot as dragged, said as the lift that makes it: the window is never below the middle. */
function liftGrips(composition: Composition): GripEdit[] {
  const { design } = composition;
  const spell = new Speller(design.ruler.unit);
  return upright(composition).map(({ side, at, border, most: both }) => {
    const middle = half(both, "down");
    const write: GripEdit["write"] = (document, value, free) => {
      const head = side === "head" ? value : subtract(both, value);
      const step = free ? strideLength("finest", design.ruler) : design.ruler.graduation;
      const by = larger(ZERO, toGraduation(subtract(middle, head), step, "down"));
      return { ...document, lift: { rule: "fixed", by: spell.length(by) } };
    };
    const [least, most] = side === "head" ? [ZERO, middle] : [subtract(both, middle), both];
    return {
      key: side,
      blank: "liftBy",
      at,
      slides: "y",
      way: side === "head" ? 1 : -1,
      value: border,
      least,
      most,
      write,
    };
  });
}

/** Left and right are one figure: the board grows or shrinks round a window that stays as it is. */
function sideGrips(composition: Composition, outer: Extract<OuterRule, { kind: "borders" }>): GripEdit[] {
  const { design } = composition;
  const spell = new Speller(design.ruler.unit);
  return grips(composition).flatMap(({ side, at }): GripEdit[] =>
    side === "head" || side === "foot"
      ? []
      : [
          {
            key: side,
            blank: "borderSide",
            at,
            slides: "x",
            way: side === "left" ? 1 : -1,
            value: outer.borders.side,
            least: ZERO,
            most: larger(composition.outer.width, outer.borders.side),
            write: (document, value) => ({
              ...document,
              outer: spell.outer({ ...outer, borders: { ...outer.borders, side: value } }),
            }),
          },
        ],
  );
}

function borderGrips(composition: Composition): GripEdit[] {
  const { design } = composition;
  const { outer } = design;
  if (outer.kind !== "borders") return [];
  const spell = new Speller(design.ruler.unit);
  const { head, foot } = outer.borders;
  const both = (head + foot) as Length;
  const ends = upright(composition).map(({ side, at }): GripEdit => {
    const write: GripEdit["write"] = (document, value) => {
      const opposite = subtract(both, value);
      const borders = side === "head" ? { head: value, foot: opposite } : { head: opposite, foot: value };
      return { ...document, outer: spell.outer({ ...outer, borders: { ...outer.borders, ...borders } }) };
    };
    const blank = side === "head" ? "borderHead" : "borderFoot";
    const value = outer.borders[side];
    return {
      key: side,
      blank,
      at,
      slides: "y",
      way: side === "head" ? 1 : -1,
      value,
      least: ZERO,
      most: both,
      write,
    };
  });
  return [...ends, ...sideGrips(composition, outer)];
}

/** The head and foot edges of the window. */
const upright = (composition: Composition) =>
  grips(composition).flatMap((grip) =>
    grip.side === "head" || grip.side === "foot" ? [{ ...grip, side: grip.side }] : [],
  );

function sizeGrips({ design, outer, mats }: Composition): GripEdit[] {
  const spell = new Speller(design.ruler.unit);
  const back = mats[0]?.back ?? { width: ZERO, height: ZERO };
  const edit = (key: "width" | "height", at: Point, slides: "x" | "y"): GripEdit => ({
    key,
    blank: "outer",
    at,
    slides,
    way: 1,
    value: outer[key],
    least: larger(smaller(back[key], outer[key]), design.ruler.graduation),
    most: larger(times(back[key], 4), outer[key]),
    write: (document, value) => ({ ...document, outer: spell.size({ ...outer, [key]: value }) }),
  });
  return [
    edit("width", { x: outer.width, y: half(outer.height, "down") }, "x"),
    edit("height", { x: half(outer.width, "down"), y: outer.height }, "y"),
  ];
}
