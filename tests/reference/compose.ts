import type { Design, Lift, Outer } from "./document.ts";
import { Fraction } from "./fraction.ts";
import { layPrint, type Laid } from "./lay-print.ts";
import { readMillimetres } from "./read-length.ts";
import { bestSize, eitherWayUp, type Pair } from "./size-lists.ts";

/**
 * A second way to the figures of a composed work, from the rules of `docs/rules` alone and with
 * nothing from `src`: exact fractions of a millimetre all through, doubles only where a tangent or a
 * rotation makes them. The agreement test holds the engine against it.
 */
export interface Borders {
  readonly head: Fraction;
  readonly left: Fraction;
  readonly right: Fraction;
  readonly foot: Fraction;
}

/** One border and the sides that it is set for. */
export interface Setting {
  readonly at: Fraction;
  readonly sides: readonly string[];
}

export interface ReferenceMat {
  readonly borders: Borders;
  readonly back: Pair;
  readonly face: Pair;
  readonly plan: Fraction;
  readonly slope: Fraction;
  /** The strip of the mat below that shows beside this one; null for the lowest. */
  readonly revealAsCut: Fraction | null;
  readonly stops: readonly Setting[];
}

export interface Reference {
  readonly window: Pair;
  /** Null when no listed size is large enough; then nothing that hangs on it is there either. */
  readonly outer: Pair | null;
  readonly mats: readonly ReferenceMat[];
  readonly laid: Laid | null;
  readonly diagonal: number | null;
  /** What cannot be made as asked: each with the figure it is about. */
  readonly stopped: readonly string[];
  /** What can be made and will be regretted, in the same form. */
  readonly warned: readonly string[];
  /** How far this answer hangs on an order of steps that the rules leave open. */
  readonly open: boolean;
}

const SIDES = ["head", "left", "right", "foot"] as const;

/** `leastBorder`, in millimetres, is the practice's own. */
export function composeReference(design: Design, leastBorder: number): Reference {
  const read = (said: string | number): Fraction => readMillimetres(said, design.unit);
  const mark = read(design.graduation);
  const laying = layPrint(design, read, mark);
  const window = laying.window;
  const stopped: string[] = [];
  const warned: string[] = [];
  if (window[0].sign() <= 0) stopped.push("window-gone window.width");
  if (window[1].sign() <= 0) stopped.push("window-gone window.height");

  // The cover hangs on the window alone, so it is known even where no outer size serves.
  const loose = laying.at([Fraction.zero, Fraction.zero]);
  if (loose !== null && design.window.show !== "sheet") {
    const hold = read(design.hold).plus(read(design.print?.sure ?? 0));
    for (const side of SIDES) {
      if (loose.cover[side].sign() < 0) stopped.push(`paper-ends cover.${side}`);
      else if (loose.cover[side].below(hold)) stopped.push(`hold-short cover.${side}`);
    }
  }
  const { open } = laying;
  const chosen = outerAndBorders(design.outer, design.lift ?? { rule: "none" }, window, design.unit, mark);
  if (chosen === null) {
    stopped.push("no-size outer");
    return { window, outer: null, mats: [], laid: null, diagonal: null, stopped, warned, open };
  }
  const mats = matsFrom(design, chosen.outer, chosen.borders, read, mark);
  for (const [number, mat] of mats.entries()) {
    for (const side of SIDES) {
      const about = `mats.${number}.borders.${side}`;
      if (mat.borders[side].sign() < 0) stopped.push(`border-negative ${about}`);
      else if (mat.borders[side].below(Fraction.of(leastBorder))) warned.push(`border-small ${about}`);
    }
    if (mat.revealAsCut === null) continue;
    const asked = read(design.mats[number]?.reveal ?? 0);
    const off = mat.revealAsCut.minus(asked);
    if (mat.revealAsCut.sign() < 0) stopped.push(`reveal-gone mats.${number}.reveal`);
    else if (offByAThird(off, asked)) warned.push(`reveal-off mats.${number}.reveal`);
  }
  const laid = laying.at([chosen.borders.left, chosen.borders.head]);
  const [width, height] = chosen.outer;
  const diagonal = Math.sqrt(width.times(width).plus(height.times(height)).toNumber());
  return { window, outer: chosen.outer, mats, laid, diagonal, stopped, warned, open };
}

const offByAThird = (off: Fraction, asked: Fraction): boolean =>
  asked.below((off.sign() < 0 ? Fraction.zero.minus(off) : off).times(Fraction.of(3)));

interface Chosen {
  readonly outer: Pair;
  readonly borders: Borders;
}

function outerAndBorders(
  outer: Outer,
  lift: Lift,
  window: Pair,
  unit: string,
  mark: Fraction,
): Chosen | null {
  const read = (said: string | number): Fraction => readMillimetres(said, unit);
  if ("width" in outer) {
    const size: Pair = [read(outer.width), read(outer.height)];
    return { outer: size, borders: bordersIn(size, window, lift, read, mark) };
  }
  if ("borders" in outer) {
    const [head, side, foot] = [outer.borders.head, outer.borders.side, outer.borders.foot].map(read) as [
      Fraction,
      Fraction,
      Fraction,
    ];
    const own: Pair = [window[0].plus(side.twice()), window[1].plus(head).plus(foot)];
    if (outer.standard === undefined) return { outer: own, borders: { head, left: side, right: side, foot } };
    const raise = foot.minus(head).halved();
    const lay = (size: Pair): Borders => around(size, window, mark, (rest) => rest.halved().minus(raise));
    const serving = eitherWayUp(outer.standard, unit).filter(
      (size) => !size[0].below(own[0]) && !size[1].below(own[1]),
    );
    const best = bestSize(serving, (size) => leastOf(lay(size)));
    return best === null ? null : { outer: best, borders: lay(best) };
  }
  const lay = (size: Pair): Borders => bordersIn(size, window, lift, read, mark);
  const wanted = read(outer.border);
  const serving = eitherWayUp(outer.smallest, unit).filter((size) => !leastOf(lay(size)).below(wanted));
  const best = bestSize(serving, (size) => leastOf(lay(size)));
  return best === null ? null : { outer: best, borders: lay(best) };
}

const leastOf = (borders: Borders): Fraction => Fraction.least(SIDES.map((side) => borders[side]));

function bordersIn(
  size: Pair,
  window: Pair,
  lift: Lift,
  read: (said: string | number) => Fraction,
  mark: Fraction,
): Borders {
  return around(size, window, mark, (rest) => {
    switch (lift.rule) {
      case "none":
        return rest.halved();
      case "fixed":
        return rest.halved().minus(read(lift.by));
      case "ratio":
        return rest.over(Fraction.one.plus(Fraction.decimal(String(lift.foot))));
      case "optical":
        return size[0]
          .plus(window[0])
          .times(rest)
          .over(size[0].times(Fraction.of(4)));
    }
  });
}

/** What is left of a size round its window; the head by its rule, the odd graduation to the right and the foot. */
function around(size: Pair, window: Pair, mark: Fraction, headOf: (rest: Fraction) => Fraction): Borders {
  const across = size[0].minus(window[0]);
  const down = size[1].minus(window[1]);
  const left = across.halved().floorTo(mark);
  const head = headOf(down).floorTo(mark);
  return { head, left, right: across.minus(left), foot: down.minus(head) };
}

function matsFrom(
  design: Design,
  outer: Pair,
  lowest: Borders,
  read: (said: string | number) => Fraction,
  mark: Fraction,
): ReferenceMat[] {
  const made: ReferenceMat[] = [];
  let borders = lowest;
  let below: Fraction | null = null;
  for (const mat of design.mats) {
    const thickness = read(mat.thickness);
    const plan = insetOf(thickness, mat.bevel);
    let revealAsCut: Fraction | null = null;
    if (below !== null) {
      const step: Fraction = below.plus(read(mat.reveal ?? 0)).nearTo(mark);
      revealAsCut = step.minus(below);
      borders = {
        head: borders.head.minus(step),
        left: borders.left.minus(step),
        right: borders.right.minus(step),
        foot: borders.foot.minus(step),
      };
    }
    const back: Pair = [
      outer[0].minus(borders.left).minus(borders.right),
      outer[1].minus(borders.head).minus(borders.foot),
    ];
    const face: Pair = [back[0].plus(plan.twice()), back[1].plus(plan.twice())];
    const slope = Fraction.near(thickness.toNumber() / Math.sin((mat.bevel * Math.PI) / 180));
    made.push({ borders, back, face, plan, slope, revealAsCut, stops: settings(borders) });
    below = plan;
  }
  return made;
}

/** How far a bevel reaches inward, square-on: nought when cut upright, the thickness at half a right angle. */
function insetOf(thickness: Fraction, bevel: number): Fraction {
  if (bevel === 90) return Fraction.zero;
  if (bevel === 45) return thickness;
  return Fraction.near(thickness.toNumber() / Math.tan((bevel * Math.PI) / 180));
}

function settings(borders: Borders): Setting[] {
  const first = SIDES.filter(
    (side, index) => !SIDES.slice(0, index).some((other) => borders[other].same(borders[side])),
  );
  return first.map((side) => ({
    at: borders[side],
    sides: SIDES.filter((other) => borders[other].same(borders[side])),
  }));
}
