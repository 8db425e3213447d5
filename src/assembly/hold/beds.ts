import { extentOf, type Side, type Sides, type Size } from "../../geometry/index.ts";
import {
  add,
  fromReal,
  larger,
  mm,
  type Length,
  smaller,
  subtract,
  sum,
  times,
  toGraduation,
} from "../../lengths/index.ts";
import type { Composition, PlacedPrint } from "../composition.ts";
import { HOLD_FIGURES, type HoldFacts, type HoldHabits } from "./facts.ts";

/**
 * Fluted board for a large, light sink (Library of Congress Research Guide, Basic Sink Mat); how thick its flutes
 * are: from memory.
 */
export const FLUTES = { B: mm(3), E: mm(1.5) } as const;

/** More layers than this are better made of fluted board. Common practice, no source. */
export const MANY_LAYERS = 6;

/** Layers of a board so thick that put a ruler clear of the object: strictly more than it. */
export const layersFor = (object: Length, layer: Length): number => Math.floor(object / layer) + 1;

/** One strip of a sink's wall. */
export interface WallPiece {
  readonly side: Side;
  readonly width: Length;
  readonly length: Length;
}

/** What the sheet lies on. */
export type HeldBed =
  | { readonly kind: "flat" }
  | {
      /** Let into a wall of board, so that the mat lies level over a thick object. */
      readonly kind: "sink";
      readonly room: Length;
      readonly opening: Size;
      readonly walls: Sides;
      readonly layers: number;
      readonly layer: Length;
      readonly board: string;
      readonly depth: Length;
      /** How far a ruler laid over it clears the object. */
      readonly clears: Length;
      /** Of the first layer and every other, then of those between: joints never lie over each other. */
      readonly odd: readonly WallPiece[];
      readonly even: readonly WallPiece[];
    }
  | {
      /** On a riser smaller than itself, the whole sheet in sight. */
      readonly kind: "raised";
      readonly riser: Size;
      readonly inset: Length;
      readonly height: Length;
      /** Where the riser's corner lies on the mount. */
      readonly left: Length;
      readonly top: Length;
      /** The least height of what keeps mat or glazing off: riser, sheet and the room before it. */
      readonly spacer: Length;
    };

/** `moves`: how far each of its edges may move. */
export function bedOf(
  { design, outer }: Composition,
  print: PlacedPrint,
  facts: HoldFacts,
  habits: HoldHabits,
  moves: Sides,
): HeldBed {
  if (design.print === null) return { kind: "flat" };
  const { sheet, thickness } = design.print;
  const { graduation, unit } = design.ruler;
  if (design.window.show === "sheet") {
    return {
      kind: "raised",
      riser: {
        width: subtract(sheet.width, times(habits.riserInset, 2)),
        height: subtract(sheet.height, times(habits.riserInset, 2)),
      },
      inset: habits.riserInset,
      height: habits.riser,
      left: add(print.left, habits.riserInset),
      top: add(print.top, habits.riserInset),
      spacer: toGraduation(sum([habits.riser, thickness, habits.clear]), graduation, "up"),
    };
  }
  if (!(facts.bed === "sink" || (facts.bed === null && thickness > habits.sinkFrom))) return { kind: "flat" };
  const needs = toGraduation(
    [moves.head, moves.left, moves.right, moves.foot].reduce(larger),
    graduation,
    "up",
  );
  const room = larger(habits.room, smaller(needs, HOLD_FIGURES[unit].mostRoom));
  const layers = layersFor(thickness, habits.layer);
  const object = extentOf([print.sheetCorners, ...print.edition.map((one) => one.sheetCorners)].flat());
  const walls: Sides = {
    head: subtract(fromReal(object.top, "down"), room),
    left: subtract(fromReal(object.left, "down"), room),
    right: subtract(subtract(outer.width, fromReal(object.right, "up")), room),
    foot: subtract(subtract(outer.height, fromReal(object.bottom, "up")), room),
  };
  const opening = {
    width: subtract(outer.width, add(walls.left, walls.right)),
    height: subtract(outer.height, add(walls.head, walls.foot)),
  };
  const piece = (side: Side, long: boolean): WallPiece => {
    const across = side === "head" || side === "foot";
    const [whole, between] = across ? [outer.width, opening.width] : [outer.height, opening.height];
    return { side, width: walls[side], length: long ? whole : between };
  };
  return {
    kind: "sink",
    room,
    opening,
    walls,
    layers,
    layer: habits.layer,
    board: habits.layerBoard === "" ? design.mount : habits.layerBoard,
    depth: times(habits.layer, layers),
    clears: subtract(times(habits.layer, layers), thickness),
    odd: [piece("head", true), piece("foot", true), piece("left", false), piece("right", false)],
    even: [piece("left", true), piece("right", true), piece("head", false), piece("foot", false)],
  };
}

/** How mat and mount are joined. */
export interface BoardHinge {
  readonly side: "head" | "left";
  readonly length: Length;
  /** Of gummed linen tape. */
  readonly tape: Length;
  /** What the boards stand apart. */
  readonly between: Length;
}

/**
 * Along the head for a frame; for storage along the long side, left of an upright one and the head of a wide
 * one (Library of Congress Research Guide, Basic Storage Mat). An inch of tape serves most
 * (exhibit-preparation handbook); from what length on it is doubled is common practice, no source.
 */
export function boardHingeOf({ outer, design }: Composition, use: HoldFacts["use"]): BoardHinge {
  const { tape, wideTape, wideFrom, betweenBoards } = HOLD_FIGURES[design.ruler.unit];
  const side = use === "storage" && outer.height > outer.width ? "left" : "head";
  const length = side === "left" ? outer.height : outer.width;
  return { side, length, tape: length > wideFrom ? wideTape : tape, between: betweenBoards };
}
