import { railLongPoint, railShortPoint, type Sides, type Size } from "../../geometry/index.ts";
import { add, half, type Length, subtract, times } from "../../lengths/index.ts";
import type { Composition } from "../composition.ts";
import type { FrameFacts, Seat } from "./facts.ts";

/** A frame round one package, all seen from the front. */
export interface FrameSizes {
  /** The rabbet's opening: what the package lies in. */
  readonly opening: Size;
  /** Opening less package. */
  readonly slack: Size;
  /** Within the lip: what is seen; also a rail from short point to short point. */
  readonly sight: Size;
  /** Of the frame; also a rail from long point to long point. */
  readonly outer: Size;
}

/** The sizes of a frame round a package: made to it, or as it is. A package may be larger than a frame that exists; the slack is then below nought. */
export function frameSizes(frame: Pick<FrameFacts, "profile" | "opening">, pack: Size): FrameSizes {
  const { profile } = frame;
  const each = (side: "width" | "height") => {
    const opening = frame.opening?.[side] ?? add(pack[side], profile.allowance);
    // Of an opening that is there the allowance is in it already.
    const measures = { ...profile, allowance: subtract(opening, pack[side]) };
    return {
      opening,
      slack: measures.allowance,
      outer: railLongPoint(pack[side], measures),
      sight: railShortPoint(pack[side], measures),
    };
  };
  const [wide, high] = [each("width"), each("height")];
  const both = (key: keyof typeof wide): Size => ({ width: wide[key], height: high[key] });
  return {
    opening: both("opening"),
    slack: both("slack"),
    sight: both("sight"),
    outer: both("outer"),
  };
}

/**
 * How far the lip lies over the package on each side. Shimmed, the slack is the same all round; on the foot rail the whole
 * of it is at the head. Sideways the package is taken to stand in the middle. Both ways together it is twice the rabbet
 * less the slack, exactly.
 */
export function lipHides({ profile }: Pick<FrameFacts, "profile">, slack: Size, seat: Seat): Sides {
  const across = subtract(times(profile.rabbet, 2), slack.width);
  const upright = subtract(times(profile.rabbet, 2), slack.height);
  const left = half(across, "down");
  const head = seat === "shimmed" ? half(upright, "down") : subtract(profile.rabbet, slack.height);
  return { left, right: subtract(across, left), head, foot: subtract(upright, head) };
}

/** What is seen of each border, from the lip's sight edge to the opening next to the print: the border less what the lip hides. */
export function seenBorders({ mats }: Composition, hidden: Sides): Sides {
  const borders = mats[0]?.borders ?? hidden;
  return {
    head: subtract(borders.head, hidden.head),
    left: subtract(borders.left, hidden.left),
    right: subtract(borders.right, hidden.right),
    foot: subtract(borders.foot, hidden.foot),
  };
}

/** How far a window is raised above the middle of what its borders leave: half of foot less head, below nought where it is lowered. In ticks. */
export const liftOf = ({ head, foot }: Pick<Sides, "head" | "foot">): Length =>
  half(subtract(foot, head), "nearest");
