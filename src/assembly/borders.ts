import { type Sides, SIDES, type Size } from "../geometry/index.ts";
import { add, larger, type Length, scale, subtract, times, toGraduation, ZERO } from "../lengths/index.ts";
import type { Check } from "./check.ts";
import type { Design, LiftRule } from "./design.ts";
import { minus, number, operand, plus, product, quotient, type Step, type Sum, twice } from "./reckoning.ts";
import { ofMat, OUTER, REST } from "./step-names.ts";

export interface Bordered {
  readonly outer: Size;
  readonly borders: Sides;
  readonly checks: readonly Check[];
  readonly steps: readonly Step[];
}

/**
 * The outer size and the borders of the lowest mat's back opening. They add up to the outer size
 * exactly, always. `beyond` is how far the sheet reaches past the window on each side.
 */
export function findBorders(design: Design, window: Size, beyond: Sides): Bordered {
  const rule = design.outer;
  switch (rule.kind) {
    case "size":
      return within(design, window, { width: rule.width, height: rule.height }, design.lift);
    case "borders": {
      const { head, side, foot } = rule.borders;
      const outer = {
        width: add(window.width, times(side, 2)),
        height: add(window.height, add(head, foot)),
      };
      const kept: Bordered = {
        outer,
        borders: { head, left: side, right: side, foot },
        checks: [],
        steps: [
          {
            name: OUTER.width,
            sum: plus(operand(window.width), twice(side)),
            rounded: null,
            is: outer.width,
          },
          {
            name: OUTER.height,
            sum: plus(plus(operand(head), operand(window.height)), operand(foot)),
            rounded: null,
            is: outer.height,
          },
        ],
      };
      if (rule.standard === null) return kept;
      // What the standard size adds is shared out again by the same rule: the lift that was asked.
      const lift: Sharing = { rule: "difference", head, foot };
      const standard = smallestOf(
        design,
        window,
        rule.standard,
        lift,
        (size) => size.width >= outer.width && size.height >= outer.height,
      );
      if (standard === null) return { ...kept, checks: [{ level: "stop", code: "no-size", ...outer }] };
      return { ...standard, steps: [...kept.steps, ...standard.steps] };
    }
    case "smallest": {
      const least = rule.holdsSheet ? eachLarger(beyond, rule.border) : allround(rule.border);
      const wide = (_: Size, borders: Sides): boolean => SIDES.every((side) => borders[side] >= least[side]);
      const found = smallestOf(design, window, rule.sizes, design.lift, wide);
      if (found !== null) return found;
      const wholeMarks = (border: Length): Length =>
        rule.holdsSheet ? toGraduation(border, design.ruler.graduation, "up") : border;
      const wanted = {
        width: add(window.width, times(wholeMarks(larger(least.left, least.right)), 2)),
        height: add(window.height, times(wholeMarks(larger(least.head, least.foot)), 2)),
      };
      const asked = within(design, window, wanted, { rule: "none" });
      return { ...asked, checks: [...asked.checks, { level: "stop", code: "no-size", ...wanted }] };
    }
  }
}

/** How the rest of the height is shared: by a rule of the design, or so that foot and head differ as two given borders do. */
type Sharing = LiftRule | { readonly rule: "difference"; readonly head: Length; readonly foot: Length };

const allround = (length: Length): Sides => ({ head: length, left: length, right: length, foot: length });

const eachLarger = (sides: Sides, least: Length): Sides => ({
  head: larger(sides.head, least),
  left: larger(sides.left, least),
  right: larger(sides.right, least),
  foot: larger(sides.foot, least),
});

const leastOf = (sides: Sides): Length => Math.min(sides.head, sides.left, sides.right, sides.foot) as Length;

/**
 * The smallest listed size by area, either way up, that serves. Of equal areas the one with the
 * larger least border, then the upright one, then the earlier listed.
 */
function smallestOf(
  design: Design,
  window: Size,
  sizes: readonly Size[],
  lift: Sharing,
  serves: (size: Size, borders: Sides) => boolean,
): Bordered | null {
  let best: { area: bigint; least: Length; upright: boolean; size: Size } | null = null;
  for (const listed of sizes) {
    const area = BigInt(listed.width) * BigInt(listed.height);
    if (best !== null && area > best.area) continue;
    for (const size of [listed, { width: listed.height, height: listed.width }]) {
      const { left, right, head, foot } = share(design, window, size, lift);
      const borders = { left, right, head, foot };
      if (!serves(size, borders)) continue;
      const least = leastOf(borders);
      const upright = size.height >= size.width;
      const better =
        best === null ||
        area < best.area ||
        least > best.least ||
        (least === best.least && upright && !best.upright);
      if (better) best = { area, least, upright, size };
    }
  }
  return best === null ? null : within(design, window, best.size, lift);
}

interface Shared extends Sides {
  readonly restWidth: Length;
  readonly restHeight: Length;
  readonly headSum: Sum;
}

/** What is left of the outer size, shared out by the lift rule; left and head in whole graduations, downwards. */
function share(design: Design, window: Size, outer: Size, lift: Sharing): Shared {
  const { graduation } = design.ruler;
  const restWidth = subtract(outer.width, window.width);
  const restHeight = subtract(outer.height, window.height);
  const left = halfDown(restWidth, graduation);
  const halfRest = quotient(operand(restHeight), number("2"));
  const head = ((): { is: Length; sum: Sum } => {
    switch (lift.rule) {
      case "none":
        return { is: halfDown(restHeight, graduation), sum: halfRest };
      case "fixed": {
        const lowered = subtract(restHeight, times(lift.by, 2));
        return { is: halfDown(lowered, graduation), sum: minus(halfRest, operand(lift.by)) };
      }
      case "difference": {
        const lowered = subtract(restHeight, subtract(lift.foot, lift.head));
        const differ = minus(operand(lift.foot), operand(lift.head));
        return {
          is: halfDown(lowered, graduation),
          sum: quotient(minus(operand(restHeight), differ), number("2")),
        };
      }
      case "ratio": {
        const { over, under } = lift.foot;
        return {
          is: marksDown(restHeight, under, over + under, graduation),
          sum: quotient(operand(restHeight), plus(number("1"), number(decimal(over, under)))),
        };
      }
      case "optical":
        return {
          is: opticalHead(outer, window, graduation),
          sum: quotient(
            product(
              plus(operand(outer.width), operand(window.width)),
              minus(operand(outer.height), operand(window.height)),
            ),
            product(number("4"), operand(outer.width)),
          ),
        };
    }
  })();
  return {
    left,
    right: subtract(restWidth, left),
    head: head.is,
    foot: subtract(restHeight, head.is),
    restWidth,
    restHeight,
    headSum: head.sum,
  };
}

/** Half of a length, down to the graduation, never halving a tick on the way. */
const halfDown = (length: Length, graduation: Length): Length =>
  times(graduation, Math.floor(length / (2 * graduation)));

/** length x over / under, down to the graduation, rounded once. */
const marksDown = (length: Length, over: bigint, under: bigint, graduation: Length): Length =>
  times(graduation, scale(length, over, under * BigInt(graduation), "down"));

/**
 * The optical-centre construction in closed form: head = (W + w)(H - h) / (4 W). The construction:
 * lay the print in the board's upper-left corner; join its lower-left corner to where the mid-line of
 * the strip below meets the board's right edge; where this crosses the mid-line of the strip at its
 * right is the print's lower-right corner. (Rand & Litschel, Black & White Photography; the closed
 * form is derived from it.)
 */
function opticalHead(outer: Size, window: Size, graduation: Length): Length {
  if (outer.width <= 0) return ZERO;
  const rest = subtract(outer.height, window.height);
  return marksDown(rest, BigInt(outer.width) + BigInt(window.width), 4n * BigInt(outer.width), graduation);
}

/** A ratio as a decimal, as it was typed. */
function decimal(over: bigint, under: bigint): string {
  return String(Number(over) / Number(under));
}

const BORDER = ofMat(0).border;

function within(design: Design, window: Size, outer: Size, lift: Sharing): Bordered {
  const shared = share(design, window, outer, lift);
  const { left, right, head, foot, restWidth, restHeight } = shared;
  const checks: Check[] = left === right ? [] : [{ level: "note", code: "border-uneven", left, right }];
  const steps: Step[] = [
    {
      name: REST.width,
      sum: minus(operand(outer.width), operand(window.width)),
      rounded: null,
      is: restWidth,
    },
    { name: BORDER.left, sum: quotient(operand(restWidth), number("2")), rounded: "down", is: left },
    { name: BORDER.right, sum: minus(operand(restWidth), operand(left)), rounded: null, is: right },
    {
      name: REST.height,
      sum: minus(operand(outer.height), operand(window.height)),
      rounded: null,
      is: restHeight,
    },
    { name: BORDER.head, sum: shared.headSum, rounded: "down", is: head },
    { name: BORDER.foot, sum: minus(operand(restHeight), operand(head)), rounded: null, is: foot },
  ];
  return { outer, borders: { head, left, right, foot }, checks, steps };
}
