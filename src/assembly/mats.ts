import type { Side, Sides, Size } from "../geometry/index.ts";
import { add, fromReal, type Length, subtract, times, toGraduation, ZERO } from "../lengths/index.ts";
import type { Check } from "./check.ts";
import type { ComposedMat, Hand, Stop } from "./composition.ts";
import type { Design, MatRule } from "./design.ts";
import { minus, operand, plus, quotient, type Step, twice } from "./reckoning.ts";
import { ofMat } from "./step-names.ts";

const SIDES: readonly Side[] = ["left", "right", "head", "foot"];

/**
 * Width of a bevel seen square-on, t / tan(a), to the nearest tick; at 90 degrees exactly nothing and
 * at 45 exactly the thickness.
 */
function bevelPlan(thickness: Length, degrees: number): Length {
  if (degrees === 90) return ZERO;
  if (degrees === 45) return thickness;
  return fromReal(thickness / Math.tan((degrees * Math.PI) / 180), "nearest");
}

/** Width along the cut, t / sin(a), to the nearest tick. */
const bevelSlope = (thickness: Length, degrees: number): Length =>
  degrees === 90 ? thickness : fromReal(thickness / Math.sin((degrees * Math.PI) / 180), "nearest");

export interface StackedMats {
  readonly mats: readonly ComposedMat[];
  readonly checks: readonly Check[];
  readonly steps: readonly Step[];
}

/** The mats from the lowest up: each upper mat's borders shrink by the bevel below it and the strip it leaves in sight. */
export function stackMats(design: Design, outer: Size, lowest: Sides): StackedMats {
  const mats: ComposedMat[] = [];
  const checks: Check[] = [];
  const steps: Step[] = [];
  let borders = lowest;
  let below: ComposedMat | null = null;
  for (let index = 0; index < design.mats.length; index++) {
    const rule = design.mats[index] as MatRule;
    let revealAsCut: Length | null = null;
    if (below !== null) {
      const names = ofMat(index);
      const asked = add(below.bevel.plan, rule.reveal);
      const step = toGraduation(asked, design.ruler.graduation, "nearest");
      revealAsCut = subtract(step, below.bevel.plan);
      checks.push(...revealChecks(index, rule, revealAsCut));
      steps.push(
        {
          name: names.step,
          sum: plus(operand(below.bevel.plan), operand(rule.reveal)),
          rounded: "nearest",
          is: step,
        },
        {
          name: names.reveal,
          sum: minus(operand(step), operand(below.bevel.plan)),
          rounded: null,
          is: revealAsCut,
        },
      );
      const narrowed = narrowBy(borders, step);
      for (const side of SIDES) {
        steps.push({
          name: names.border[side],
          sum: minus(operand(borders[side]), operand(step)),
          rounded: null,
          is: narrowed[side],
        });
      }
      borders = narrowed;
    }
    const mat = matOf(rule, outer, borders, revealAsCut);
    if (index > 0) steps.push(...backSteps(index, outer, mat));
    steps.push(...faceSteps(index, mat));
    checks.push(...borderChecks(design, index, mat));
    mats.push(mat);
    below = mat;
  }
  return { mats, checks, steps };
}

const narrowBy = (borders: Sides, step: Length): Sides => ({
  head: subtract(borders.head, step),
  left: subtract(borders.left, step),
  right: subtract(borders.right, step),
  foot: subtract(borders.foot, step),
});

function matOf(rule: MatRule, outer: Size, borders: Sides, revealAsCut: Length | null): ComposedMat {
  const plan = bevelPlan(rule.thickness, rule.bevel);
  const back = {
    width: subtract(outer.width, add(borders.left, borders.right)),
    height: subtract(outer.height, add(borders.head, borders.foot)),
  };
  return {
    borders,
    back,
    face: { width: add(back.width, times(plan, 2)), height: add(back.height, times(plan, 2)) },
    thickness: rule.thickness,
    bevel: { degrees: rule.bevel, plan, slope: bevelSlope(rule.thickness, rule.bevel) },
    revealAsCut,
  };
}

function revealChecks(mat: number, rule: MatRule, cut: Length): Check[] {
  if (cut < 0) return [{ level: "stop", code: "reveal-gone", mat, asked: rule.reveal, cut }];
  if (3 * Math.abs(cut - rule.reveal) > rule.reveal) {
    return [{ level: "warn", code: "reveal-off", mat, asked: rule.reveal, cut }];
  }
  return [];
}

/** Every border below nought is a stop; of the rest only the uppermost mat's narrowest is warned about, since that is what is seen. */
function borderChecks(design: Design, index: number, mat: ComposedMat): Check[] {
  const negative = SIDES.filter((side) => mat.borders[side] < 0);
  if (negative.length > 0) {
    return negative.map((side) => ({
      level: "stop",
      code: "border-negative",
      side,
      border: mat.borders[side],
      mat: index,
    }));
  }
  if (index !== design.mats.length - 1) return [];
  const narrowest = SIDES.reduce((least, side) => (mat.borders[side] < mat.borders[least] ? side : least));
  const border = mat.borders[narrowest];
  return border < design.leastBorder
    ? [
        {
          level: "warn",
          code: "border-small",
          side: narrowest,
          border,
          least: design.leastBorder,
          mat: index,
        },
      ]
    : [];
}

function backSteps(mat: number, outer: Size, { borders, back }: ComposedMat): Step[] {
  return [
    {
      name: ofMat(mat).back.width,
      sum: minus(minus(operand(outer.width), operand(borders.left)), operand(borders.right)),
      rounded: null,
      is: back.width,
    },
    {
      name: ofMat(mat).back.height,
      sum: minus(minus(operand(outer.height), operand(borders.head)), operand(borders.foot)),
      rounded: null,
      is: back.height,
    },
  ];
}

function faceSteps(mat: number, { thickness, bevel, back, face }: ComposedMat): Step[] {
  // A square cut has no bevel, and nobody pencils a division by an endless tangent.
  if (bevel.degrees === 90) return [];
  const names = ofMat(mat);
  return [
    {
      name: names.bevel,
      sum: quotient(operand(thickness), { kind: "tangent", degrees: bevel.degrees }),
      rounded: null,
      is: bevel.plan,
    },
    {
      name: names.face.width,
      sum: plus(operand(back.width), twice(bevel.plan)),
      rounded: null,
      is: face.width,
    },
    {
      name: names.face.height,
      sum: plus(operand(back.height), twice(bevel.plan)),
      rounded: null,
      is: face.height,
    },
  ];
}

/** Where a side named from the front lies for the hand that works on the back, the head away from it. */
const HAND_OF: Readonly<Record<Side, Hand>> = {
  left: "right",
  right: "left",
  head: "away",
  foot: "near",
};

/**
 * The settings of the cutter's stop in the order to cut: from the top mat down, narrow to wide, equal
 * borders sharing one setting; where a setting serves the next mat too it is left until last, so that
 * the stop need not be moved between them.
 */
export function findStops(design: Design, mats: readonly ComposedMat[]): readonly Stop[] {
  const stops: Stop[] = [];
  const settings = mats.map(settingsOf);
  let carried: Length | undefined;
  for (let mat = mats.length - 1; mat >= 0; mat--) {
    const { borders } = mats[mat] as ComposedMat;
    const own = settings[mat] ?? [];
    const next = settings[mat - 1] ?? [];
    const last = own.find((set) => next.includes(set) && (set !== carried || own.length === 1));
    const order = own.filter((set) => set !== carried && set !== last);
    if (carried !== undefined && own.includes(carried)) order.unshift(carried);
    if (last !== undefined && !order.includes(last)) order.push(last);
    for (const set of order) {
      const edges = SIDES.filter((side) => borders[side] === set);
      const hand = edges.map((side) => HAND_OF[side]);
      stops.push({ mat, set, scale: add(set, design.scaleOffset), edges, hand });
    }
    carried = last;
  }
  return stops;
}

/** The widths of a mat's borders, each once, narrow to wide. */
function settingsOf({ borders }: ComposedMat): readonly Length[] {
  const settings: Length[] = [];
  for (const side of SIDES) {
    const border = borders[side];
    let at = settings.length;
    while (at > 0 && (settings[at - 1] as Length) > border) at--;
    if (settings[at - 1] !== border) settings.splice(at, 0, border);
  }
  return settings;
}
