import type { Length } from "../../lengths/index.ts";
import type { MadeStep } from "../reckoning.ts";
import type { Level } from "../check.ts";
import type { FittingUse } from "./hardware.ts";
import type { Loads } from "./statics.ts";

/** What a wall is made of: plasterboard on studs, plaster on laths, boards, masonry. */
export const WALL_KINDS = ["plasterboard", "lath", "boards", "masonry"] as const;
export type WallKind = (typeof WALL_KINDS)[number];

/** What the wall and its hooks are like, for every work on it. */
export interface HangingHabits {
  /** From where a hook bears up to its nail. */
  readonly hookDrop: Length;
  /** People pass close by: what stands out is held against the rule for public ways. */
  readonly publicWay: boolean;
  /** The floor's height in the coordinates of the wall, for that rule. */
  readonly floor: Length;
  /** What the wall is made of; null: not said. */
  readonly wall: WallKind | null;
  /** The ground shakes where it stands. */
  readonly shakes: boolean;
  /** Where people sit or lie at the wall, from its left corner. */
  readonly seats: readonly { readonly name: string; readonly x: Length; readonly width: Length }[];
}

/** What is fixed to the back of a frame; `below` is counted from the top of the frame down. */
export type Hanging =
  | {
      /** A wire from ring to ring, over one hook or two. */
      readonly kind: "wire";
      readonly below: Length;
      readonly apart: Length;
      /** Its length from ring to ring, or how far it rises above the rings when taut. */
      readonly wire: { readonly length: Length } | { readonly drop: Length };
      readonly hooks: 1 | 2;
      /** Nought for one hook. */
      readonly hooksApart: Length;
    }
  /** Two rings straight on two hooks. */
  | { readonly kind: "rings"; readonly below: Length; readonly apart: Length }
  /** Two screws through plates fixed to the frame; the screw is what bears. */
  | { readonly kind: "plates"; readonly below: Length; readonly apart: Length }
  /** A bevelled rail on the back over its fellow on the wall; `below` is where they bear, `down` from there to the wall rail's screws. */
  | {
      readonly kind: "cleat";
      readonly below: Length;
      readonly apart: Length;
      readonly screws: number;
      readonly down: Length;
    };

/** A framed work as the wall knows it. */
export interface FramedWork {
  readonly title: string;
  readonly width: Length;
  readonly height: Length;
  /** Kilograms; null where it was not weighed. */
  readonly mass: number | null;
  /** From the wall to the front of the frame; null where it is not known. */
  readonly depth: Length | null;
  readonly hanging: Hanging;
}

/** A frame on the wall: x from the wall's left corner, y up from the floor or the level line, both to its lower left corner. */
export interface FramePlace {
  readonly x: Length;
  readonly y: Length;
}

/** Where one hook goes: `bear` is where wire, ring or plate bears on it, `nail` where its nail or screw goes in. */
export interface HookPlace {
  readonly x: Length;
  readonly bear: Length;
  readonly nail: Length;
}

/** One sum behind a hook's place. */
export interface HangStep extends Omit<MadeStep, "name"> {
  readonly name: "rise" | "wire" | "bear" | "nail";
}

/** How one work hangs. */
export interface HungWork {
  readonly frame: FramePlace;
  readonly hooks: readonly HookPlace[];
  /** The taut wire: its rise above the rings, its length, its angle from the level; null where there is none, or none that is ever taut. */
  readonly wire: { readonly rise: Length; readonly length: Length; readonly angle: number } | null;
  /** Null where the weight is not known, or a wire is never taut. */
  readonly loads: Loads | null;
  readonly checks: readonly HangCheck[];
  readonly reckoning: readonly HangStep[];
}

/** A problem of one hanging work, as a record. */
export type HangCheck = { readonly level: Level } & HangCheckBody;

type HangCheckBody =
  /** The wire is no longer than the way between its rings. */
  | { readonly code: "wire-short"; readonly length: Length; readonly apart: Length }
  /** The taut wire reaches the top of the frame or passes it. */
  | { readonly code: "wire-shows"; readonly rise: Length; readonly below: Length }
  /** So flat that the pull is many times the weight. */
  | { readonly code: "wire-flat"; readonly angle: number; readonly times: number }
  /** Hooks farther apart than the rings pull the frame's sides outwards. */
  | { readonly code: "hooks-past-rings"; readonly hooksApart: Length; readonly apart: Length }
  /** A hook's nail is not hidden: it stands `above` the top of the frame, or level with it. */
  | { readonly code: "nail-shows"; readonly above: Length }
  /** What bears lies outside the frame. */
  | {
      readonly code: "fitting-past-frame";
      readonly direction: "width" | "height";
      readonly at: Length;
      readonly size: Length;
    }
  /** Fixed below the middle: the top leans out from the wall. */
  | { readonly code: "leans-out"; readonly below: Length; readonly half: Length }
  | { readonly code: "weight-unknown" }
  /** Heavy enough that a licensed hand is to hang it. */
  | { readonly code: "heavy"; readonly mass: number }
  /** Too heavy for plaster and board alone: its hooks go into what stands behind them. */
  | { readonly code: "into-frame"; readonly mass: number }
  /** Where the ground shakes; `light`: known to be less than what a nail and hook may hold there. */
  | { readonly code: "shakes"; readonly light: boolean; readonly oneHook: boolean }
  /** No listed fitting of this use is rated for what it must hold, in kilograms. */
  | { readonly code: "no-hardware"; readonly use: FittingUse; readonly needs: number }
  /** It hangs over where people sit or lie. */
  | { readonly code: "over-people"; readonly name: string }
  /** In a public way: it stands out from the wall by `depth` where a stick does not find it. */
  | { readonly code: "projects"; readonly depth: Length; readonly most: Length };
