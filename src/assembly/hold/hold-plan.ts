import type { Corner, Side } from "../../geometry/index.ts";
import type { Length } from "../../lengths/index.ts";
import type { Level } from "../check.ts";
import type { Holding } from "../design.ts";
import type { BoardHinge, HeldBed } from "./beds.ts";
import type { Never } from "./facts.ts";
import type { HeldHinges } from "./hinges.ts";
import type { BufferAdvice, MaterialRule, ProcessKind } from "./materials.ts";
import type { Movement } from "./movement.ts";
import type { HeldPockets, HeldStrips } from "./pockets.ts";

/** Every way of holding that there is. */
export type Way = "pockets" | "strips" | "T" | "V" | "pass-through";

/** Why a way does not serve. */
export type Why =
  | { readonly kind: "never"; readonly never: Never }
  /** The whole sheet is in sight. */
  | { readonly kind: "shows" }
  /** A pocket would show before it holds. */
  | { readonly kind: "pocket"; readonly corner: Corner; readonly hidden: Length; readonly least: Length }
  | { readonly kind: "strip"; readonly side: Side; readonly hold: Length; readonly least: Length }
  /** The mount ends before the cross-piece does. */
  | { readonly kind: "no-room"; readonly room: Length; readonly needs: Length }
  | { readonly kind: "too-heavy" }
  /** A sheet so narrow or low that no hinge keeps behind it. */
  | { readonly kind: "too-small" };

export interface Refused {
  readonly way: Way;
  readonly why: Why;
}

/** How one work is held: everything that can be reckoned, also where nothing holds it. */
export interface HoldPlan {
  readonly asked: Holding;
  /** Null: nothing that is allowed holds it. */
  readonly way: Way | null;
  /** The ways that were tried before it, with why they do not serve. */
  readonly refused: readonly Refused[];
  readonly never: readonly Never[];
  /** Null: the whole sheet is in sight, and there is nothing for them to hide under. */
  readonly pockets: HeldPockets | null;
  readonly strips: HeldStrips | null;
  /** What hinges would be, also where it is held otherwise: of the kind that was taken, else the first that serves. */
  readonly hinges: HeldHinges;
  readonly bed: HeldBed;
  readonly boards: BoardHinge;
  readonly movement: Movement;
  /** Grams; null: the paper's weight is not known. */
  readonly grams: number | null;
  readonly process: ProcessKind | null;
  readonly buffer: BufferAdvice;
  readonly materials: readonly MaterialRule[];
  readonly checks: readonly HoldCheck[];
}

/** A problem of how a work is held, as a record; `words` says it. */
export type HoldCheck = { readonly level: Level } & (
  | { readonly code: "no-holding"; readonly refused: readonly Refused[] }
  | { readonly code: "holding-changed"; readonly asked: Holding; readonly way: Way; readonly why: Why }
  /** The paper may draw back from under the mat by more than it reaches there. */
  | { readonly code: "cover-moves"; readonly side: Side; readonly cover: Length; readonly needs: Length }
  /** More slack than was asked is left across the corners, for the paper's movement. */
  | { readonly code: "play-widened"; readonly asked: Length; readonly play: Length }
  | { readonly code: "sink-tight"; readonly room: Length; readonly needs: Length }
  | { readonly code: "sink-wall"; readonly side: Side; readonly wall: Length; readonly least: Length }
  /** The paper may grow until it touches the mat. */
  | { readonly code: "float-tight"; readonly gap: Length; readonly needs: Length }
  | { readonly code: "riser-gone"; readonly direction: "width" | "height"; readonly size: Length }
  | { readonly code: "buffer"; readonly process: string; readonly advice: BufferAdvice }
  | { readonly code: "buffer-never" }
  | { readonly code: "board-unknown"; readonly advice: BufferAdvice }
  | { readonly code: "glazing-never"; readonly glazing: "glass" | "acrylic" }
  /** No source here names the process. */
  | { readonly code: "process-unknown"; readonly process: string }
  | { readonly code: "weight-unknown" }
  /** The Fine Art Trade Guild asks for a window board of 1100 micrometres at least. */
  | { readonly code: "window-thin"; readonly thickness: Length; readonly least: Length }
);
