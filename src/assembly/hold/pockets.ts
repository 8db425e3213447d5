import { type Corner, CORNERS, type Side, type Sides } from "../../geometry/index.ts";
import {
  larger,
  type Length,
  scale,
  smaller,
  subtract,
  times,
  toGraduation,
  ZERO,
} from "../../lengths/index.ts";
import type { PlacedPrint } from "../composition.ts";
import type { Design } from "../design.ts";
import { HOLD_FIGURES } from "./facts.ts";
import { cornerMovesBy, type Movement } from "./movement.ts";

export interface HeldPocket {
  readonly corner: Corner;
  /** The largest leg that stays hidden with the play that is left, on every sheet. */
  readonly hidden: Length;
  /** What is left before it would show. */
  readonly spare: Length;
}

/** Four pockets, folded alike. */
export interface HeldPockets {
  /** From the corner along each edge. */
  readonly leg: Length;
  /** Slack across each corner, taken once: the asked one, or what the paper's movement needs. */
  readonly play: Length;
  readonly each: readonly HeldPocket[];
  /** The corner that hides the least. */
  readonly least: HeldPocket;
}

/** The pockets of a sheet under a mat; their leg is what can be folded, even where it is too small to hold. */
export function pocketsOf(design: Design, print: PlacedPrint, movement: Movement): HeldPockets {
  const { graduation, unit } = design.ruler;
  const play = larger(design.play, toGraduation(cornerMovesBy(movement), graduation, "up"));
  const lost = subtract(play, design.play);
  const hidden = (corner: Corner): Length => larger(subtract(print.pockets[corner], lost), ZERO);
  const most = CORNERS.map(hidden).reduce(smaller);
  const { legStep, largestLeg } = HOLD_FIGURES[unit];
  const round = toGraduation(smaller(most, largestLeg), legStep, "down");
  const leg =
    round >= design.leastPocket ? round : toGraduation(smaller(most, largestLeg), graduation, "down");
  const each = CORNERS.map((corner) => ({
    corner,
    hidden: hidden(corner),
    spare: subtract(hidden(corner), leg),
  }));
  return { leg, play, each, least: each.reduce((a, b) => (b.hidden < a.hidden ? b : a)) };
}

export interface HeldStrip {
  readonly side: Side;
  /** Along the sheet's edge. */
  readonly length: Length;
  /** From the sheet's corner (its head, or its left) to the strip. */
  readonly from: Length;
  /** How far it reaches over the sheet: hidden with its play, and no farther than a pocket's least leg, since more only hides paper (common practice, no source). */
  readonly reach: Length;
  /** Between the sheet's edge and the strip's fold. */
  readonly gap: Length;
}

/** Strips along both sides and the foot; the head stays open, so that the sheet can be slid out. */
export interface HeldStrips {
  readonly each: readonly HeldStrip[];
  /** The strip with the least hold, and what that is: its reach less the gap. */
  readonly least: { readonly side: Side; readonly hold: Length };
}

/** What a strip must still hold: half of the least pocket's leg (common practice, no source). */
export const leastStrip = (design: Design): Length => scale(design.leastPocket, 1n, 2n, "up");

export function stripsOf(
  design: Design,
  print: PlacedPrint,
  sheet: { readonly width: Length; readonly height: Length },
  moves: Sides,
): HeldStrips {
  const { graduation, unit } = design.ruler;
  const { stripInset } = HOLD_FIGURES[unit];
  const cover = leastCover(print);
  const each = (["left", "right", "foot"] as const).map((side): HeldStrip => {
    const long = side === "foot" ? sheet.width : sheet.height;
    const inset =
      times(stripInset, 4) <= long
        ? stripInset
        : toGraduation(scale(long, 1n, 5n, "down"), graduation, "down");
    return {
      side,
      from: inset,
      length: subtract(long, times(inset, 2)),
      reach: toGraduation(
        larger(smaller(subtract(cover[side], design.play), design.leastPocket), ZERO),
        graduation,
        "down",
      ),
      gap: toGraduation(moves[side], graduation, "up"),
    };
  });
  const least = each
    .map(({ side, reach, gap }) => ({ side, hold: subtract(reach, gap) }))
    .reduce((a, b) => (b.hold < a.hold ? b : a));
  return { each, least };
}

/** How far the paper reaches under the mat on each side, of an edition on every sheet. */
export function leastCover({ cover, edition }: PlacedPrint): Sides {
  return [cover, ...edition.map((sheet) => sheet.cover)].reduce((a, b) => ({
    head: smaller(a.head, b.head),
    left: smaller(a.left, b.left),
    right: smaller(a.right, b.right),
    foot: smaller(a.foot, b.foot),
  }));
}
