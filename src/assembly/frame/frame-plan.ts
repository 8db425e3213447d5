import type { Side, Sides, Size } from "../../geometry/index.ts";
import type { Length } from "../../lengths/index.ts";
import type { Level } from "../check.ts";
import type { MadeStep } from "../reckoning.ts";
import type { FrameFacts } from "./facts.ts";
import type { GlazingKind } from "./glazings.ts";
import type { FrameSizes } from "./opening.ts";
import type { Stack, Strips } from "./stack.ts";
import type { FrameMass } from "./weight.ts";

/** What the lip hides and what is seen of each border, as the package stands. */
export interface Seen {
  readonly hidden: Sides;
  readonly seen: Sides;
  /** Half of the foot less the head, as seen. */
  readonly lift: Length;
}

/** A sheet of glazing that is cut, and how it behaves in the rabbet. */
export interface FramedGlazing extends Size {
  readonly kind: GlazingKind;
  readonly board: string;
  readonly thickness: Length;
  /** How much each way may change between the coldest, driest air and the warmest, dampest. */
  readonly grows: Size;
  /** The opening's room for that, each way. */
  readonly room: Size;
}

/** What the wood of a frame does between the driest and the dampest air. */
export interface WoodMovement {
  /** Percent of moisture content. */
  readonly moisture: { readonly from: number; readonly to: number };
  /** Across a flat-sawn rail, the more it moves; up to the next tick. */
  readonly across: Length;
  /** How far a mitre opens at its wide end. */
  readonly mitre: Length;
  /** Whether the handbook's coefficients hold for all of that moisture. */
  readonly sure: boolean;
}

/** One framed work: everything that can be reckoned, also where it cannot be made. */
export interface FramePlan {
  readonly frame: FrameFacts;
  readonly sizes: FrameSizes;
  /** As it stands on the foot rail, and shimmed; `stands` is the one that is made. */
  readonly onFoot: Seen;
  readonly shimmed: Seen;
  readonly stands: Seen;
  readonly stack: Stack;
  /** What is left of the rabbet's depth behind the package, below nought where it stands out; null: the depth is not known. */
  readonly left: Length | null;
  readonly glazing: FramedGlazing | null;
  readonly spacers: Strips | null;
  readonly backing: Size | null;
  readonly dustCover: Size;
  readonly mass: FrameMass;
  /** From the wall to the frame's face: bumpers, and what is higher, the moulding or a package that stands out behind it. */
  readonly depth: Length;
  /** Null: of no wood whose movement is known here. */
  readonly wood: WoodMovement | null;
  readonly checks: readonly FrameCheck[];
  readonly reckoning: readonly FrameStep[];
}

/** One sum of a frame. */
export interface FrameStep extends Omit<MadeStep, "name"> {
  readonly name:
    | { readonly of: "opening" | "rail" | "sight"; readonly direction: "width" | "height" }
    | { readonly of: "seen"; readonly side: Side }
    | { readonly of: "stack" | "left" };
}

export type Direction = "width" | "height";

/** A problem of a frame, as a record; `words` says it. */
export type FrameCheck = {
  readonly level: Level;
} /** The package does not go into a frame that exists. */ & (
  | {
      readonly code: "package-large";
      readonly direction: Direction;
      readonly size: Length;
      readonly opening: Length;
    }
  /** The lip does not reach over the edge of the package, or of its glazing, as it stands. */
  | {
      readonly code: "edge-shows";
      readonly side: Side;
      readonly by: Length;
      readonly layer: "package" | "glazing";
    }
  /** It would, if the package slid to the other side. */
  | { readonly code: "edge-may-show"; readonly side: Side; readonly by: Length }
  /** The lip reaches over the window. */
  | { readonly code: "lip-covers"; readonly side: Side; readonly by: Length }
  | { readonly code: "seen-small"; readonly side: Side; readonly seen: Length; readonly least: Length }
  /** Less is seen of the lift than was asked, or more. */
  | { readonly code: "lift-changed"; readonly asked: Length; readonly seen: Length; readonly shim: Length }
  /** Less room in the rabbet than the Fine Art Trade Guild's 1 mm. */
  | {
      readonly code: "rabbet-tight";
      readonly direction: Direction;
      readonly room: Length;
      readonly least: Length;
    }
  | {
      readonly code: "glazing-tight";
      readonly direction: Direction;
      readonly kind: GlazingKind;
      readonly grows: Length;
      readonly room: Length;
    }
  /** Mat and mount may grow past the rabbet, and would buckle. */
  | {
      readonly code: "package-tight";
      readonly direction: Direction;
      readonly grows: Length;
      readonly room: Length;
    }
  /** The package stands out behind the rabbet: "stop" where no offset fitting reaches so far. */
  | {
      readonly code: "stack-over";
      readonly stack: Length;
      readonly rabbet: Length;
      readonly by: Length;
      readonly most: Length;
    }
  | { readonly code: "fittings-short"; readonly left: Length; readonly needs: Length }
  | { readonly code: "depth-unknown"; readonly stack: Length }
  /** The glazing touches the print, or may. */
  | { readonly code: "glazing-near"; readonly clear: Length; readonly least: Length }
  /** Nothing holds the glazing off but the mat's own thickness at the lip: a sheet of acrylic this large may bow. */
  | { readonly code: "glazing-bows"; readonly size: Length; readonly most: Length }
  /** Acrylic draws loose pigment. */
  | { readonly code: "draws-pigment"; readonly process: string }
  | { readonly code: "mitre-opens"; readonly by: Length; readonly from: number; readonly to: number }
  /** Some parts' weights are taken from a density on the heavy side. */
  | { readonly code: "mass-assumed"; readonly parts: FrameMass["parts"] }
);
