import type { Length } from "../../lengths/index.ts";

/** Something on the wall that no frame may touch; x from the wall's left corner, y up from the job's nought, to its lower left corner. */
export interface WallBox {
  readonly x: Length;
  readonly y: Length;
  readonly width: Length;
  readonly height: Length;
}

export interface Obstacle extends WallBox {
  readonly name: string;
}

/** One frame to be hung. */
export interface FrameWanted {
  readonly title: string;
  readonly width: Length;
  readonly height: Length;
  /** What it counts in the balance: kilograms, or any measure that all share. */
  readonly weight: number;
  /** Frames with one number hang beside each other, in their order; null: on its own. */
  readonly set: number | null;
}

/** Where in a group its largest frames can be asked for. */
export const LARGEST_AT = ["middle", "left", "right", "top", "foot"] as const;
export type LargestAt = (typeof LARGEST_AT)[number];

/** How the frames are laid out. */
export type WallRule =
  /** One row, this gap between frames, centred on the wall or on `centre`. */
  | { readonly kind: "gap"; readonly gap: Length; readonly centre: Length | null }
  /** One row, equal gaps that fill the wall, the ends included. */
  | { readonly kind: "spread" }
  /** So many rows as even in width as the frames' order allows, each about the group's middle, `rowGap` between them. */
  | {
      readonly kind: "rows";
      readonly count: number;
      readonly gap: Length;
      readonly rowGap: Length;
      readonly centre: Length | null;
    }
  /** So many columns; every frame in the middle of its cell, `gap` between columns, `rowGap` between rows. */
  | {
      readonly kind: "grid";
      readonly columns: number;
      readonly gap: Length;
      readonly rowGap: Length;
      readonly centre: Length | null;
    }
  /** A group that is solved: neighbours stand exactly `gap` apart, the outline is quiet, the weight is in balance about the eye line. */
  | {
      readonly kind: "cluster";
      readonly gap: Length;
      readonly centre: Length | null;
      readonly largest: LargestAt;
    };

/** One wall and what is to hang on it. */
export interface WallJob {
  readonly wall: { readonly width: Length; readonly height: Length };
  /** The floor's own height: nought, or below it where heights are counted from a level line. */
  readonly floor: Length;
  readonly avoid: readonly Obstacle[];
  /** Where the middle of a row hangs. */
  readonly eyeLine: Length;
  readonly rule: WallRule;
  readonly frames: readonly FrameWanted[];
}

/** From a group's own middle and the eye line to the centre of its weight, and from how far `share` of its half width and height that is. */
export interface Balance {
  readonly across: Length;
  readonly up: Length;
  /** Nought where the weight's centre is the group's own middle, one where it lies at its edge. */
  readonly share: number;
}

/** Where a wall's frames hang. */
export interface WallPlan {
  /** In the job's order; its lower left corner. */
  readonly places: readonly { readonly x: Length; readonly y: Length }[];
  /** The frames as the hand meets them: from the left, and in rows from the top. */
  readonly order: readonly number[];
  /** From the wall's left corner on, the ends included. Of one row, and of a grid's columns, they make the wall exactly with the widths; of several rows and of a group they are those at its ends. */
  readonly gaps: readonly Length[];
  /** The middle of the whole group across. */
  readonly centre: Length;
  readonly balance: Balance;
  /** What the same frames would come to in one plain row, in the job's order with the same gap; null where they hang in one. */
  readonly rowBalance: Balance | null;
  readonly checks: readonly WallCheck[];
}

/** What a way of laying out gives; `checks` only those that it alone can know. */
export type LaidWall = Pick<WallPlan, "places" | "order" | "gaps" | "centre" | "checks">;

/** A problem of a wall, as a record. */
export type WallCheck = { readonly level: "stop" | "warn" | "note" } & WallCheckBody;

type WallCheckBody =
  /** Frames and gaps together are wider than the wall. */
  | { readonly code: "wall-too-narrow"; readonly needs: Length; readonly has: Length }
  /** A frame passes an edge of the wall. */
  | {
      readonly code: "off-wall";
      readonly frame: number;
      readonly side: "left" | "right" | "top" | "foot";
      readonly by: Length;
    }
  /** A row is parted at what must stay free, its middles still on their line. */
  | { readonly code: "parted"; readonly obstacles: readonly number[] }
  /** A row does not go past what must stay free: what it takes with its gaps, and the stretches of wall beside that. */
  | {
      readonly code: "no-way-past";
      readonly obstacles: readonly number[];
      readonly needs: Length;
      readonly free: readonly Length[];
    }
  /** A frame lies over something that must stay free. */
  | { readonly code: "touches"; readonly frame: number; readonly obstacle: number }
  /** Two frames lie over each other. */
  | { readonly code: "frames-overlap"; readonly frame: number; readonly other: number };
