import { quarterTurned, type Size } from "../../geometry/index.ts";
import { half, type Length, scale, subtract, sum, toGraduation } from "../../lengths/index.ts";
import { compose } from "../compose.ts";
import type { Composition } from "../composition.ts";
import type { Design, LiftRule } from "../design.ts";
import type { FrameFacts } from "./facts.ts";
import { frameSizes, lipHides } from "./opening.ts";

/** A mat that is cut already: its outer size, and the opening at its back. */
export interface ReadyMat extends Size {
  readonly window: Size;
  /** From its head edge to the opening; null: the opening lies in the middle. */
  readonly head: Length | null;
  /** Null: as the design's lowest mat. */
  readonly thickness: Length | null;
  readonly board: string | null;
}

/** A design with what exists taken as it is, for a frame that hangs as its opening says: the mat's window and size, else the package that the opening takes. */
export function designAround(design: Design, { profile, opening }: FrameFacts, mat: ReadyMat | null): Design {
  if (mat !== null) return aroundMat(design, mat);
  if (opening === null) return design;
  const { graduation } = design.ruler;
  const fits = (side: Length): Length => toGraduation(subtract(side, profile.allowance), graduation, "down");
  return {
    ...design,
    outer: { kind: "size", width: fits(opening.width), height: fits(opening.height) },
  };
}

/** What is cut is kept to the tick, on whatever ruler. */
function aroundMat(design: Design, { width, height, window, head, thickness, board }: ReadyMat): Design {
  const [lowest] = design.mats;
  const rest = subtract(height, window.height);
  const above = head ?? half(rest, "down");
  const borders = {
    head: above,
    side: half(subtract(width, window.width), "down"),
    foot: subtract(rest, above),
  };
  return {
    ...design,
    window: { show: "typed", ...window },
    outer: { kind: "borders", borders, standard: null },
    mats:
      lowest === undefined
        ? []
        : [{ ...lowest, thickness: thickness ?? lowest.thickness, board: board ?? lowest.board }],
  };
}

/**
 * The design whose borders are shared by its own lift rule within what is seen: the lip hides more of one side than of
 * another, and a lift that is judged by the package looks less, or more, than it was asked. Borders that were asked are
 * then what is seen of them. Unchanged where no listed size serves.
 */
export function balancedSeen(composition: Composition, frame: FrameFacts): Design {
  const { design, outer, mats } = composition;
  const [lowest] = mats;
  if (lowest === undefined || composition.checks.some(({ code }) => code === "no-size")) return design;
  const hidden = lipHides(frame, frameSizes(frame, outer).slack, frame.seat);
  if (design.outer.kind === "borders") {
    const { head, side, foot } = design.outer.borders;
    const borders = {
      head: sum([head, hidden.head]),
      side: sum([side, hidden.left]),
      foot: sum([foot, hidden.foot]),
    };
    return { ...design, outer: { ...design.outer, borders } };
  }
  const rest = subtract(outer.height, lowest.back.height);
  const seen = subtract(rest, sum([hidden.head, hidden.foot]));
  const sight = subtract(outer.width, sum([hidden.left, hidden.right]));
  const head = sum([seenHead(design.lift, seen, sight, lowest.back.width), hidden.head]);
  return {
    ...design,
    outer: { kind: "size", ...outer },
    lift: { rule: "fixed", by: subtract(half(rest, "nearest"), head) },
  };
}

/** The head's share of what is seen of head and foot together, by a lift rule. `sight`: how wide the opening within the lip is. */
function seenHead(lift: LiftRule, seen: Length, sight: Length, window: Length): Length {
  switch (lift.rule) {
    case "none":
      return half(seen, "down");
    case "fixed":
      return subtract(half(seen, "down"), lift.by);
    case "ratio":
      return scale(seen, lift.foot.under, lift.foot.over + lift.foot.under, "down");
    case "optical":
      return sight <= 0
        ? half(seen, "down")
        : scale(seen, BigInt(sight) + BigInt(window), 4n * BigInt(sight), "down");
  }
}

/** How a work is put into its frame. */
export interface InFrame {
  readonly frame: FrameFacts;
  readonly mat: ReadyMat | null;
  readonly balance: "package" | "seen";
  /** Whether the package goes by what exists; false: it has a size of its own. */
  readonly around: boolean;
}

/** A design composed for its frame. A frame that exists keeps the way up that it is given in, and a window that is cut its place. */
export function composeInFrame(design: Design, { frame, mat, balance, around }: InFrame): Composition {
  const composition = compose(around ? designAround(design, frame, mat) : design);
  const movable = !(around && mat !== null);
  return balance === "seen" && movable ? compose(balancedSeen(composition, frame)) : composition;
}

const square = (size: Size | null): boolean => size === null || size.width === size.height;

/** What exists hangs either way up: as it is given, then turned, where that is another. A mat whose opening is not in its middle hangs as it is given. */
export function waysUp(one: InFrame): readonly InFrame[] {
  const { frame, mat } = one;
  const { opening } = frame;
  if (opening === null && mat === null) return [one];
  if (mat !== null && mat.head !== null) return [one];
  if (square(opening) && square(mat) && square(mat?.window ?? null)) return [one];
  return [
    one,
    {
      ...one,
      frame: { ...frame, opening: opening === null ? null : quarterTurned(opening) },
      mat: mat === null ? null : { ...mat, ...quarterTurned(mat), window: quarterTurned(mat.window) },
    },
  ];
}
