import type { FramePlan, StackLayer } from "../../assembly/index.ts";
import type { Point } from "../../geometry/index.ts";
import { add, fromReal, larger, type Length, mm, smaller, subtract, ZERO } from "../../lengths/index.ts";
import type { Drawing, Fill, Mark } from "../marks.ts";
import { broken, ragged } from "./framed-breaks.ts";
import { type FramedSectionJob, placesOf, stripOf } from "./framed-places.ts";

/** How a section is drawn: so many times as large, over so many. */
export interface SectionScale {
  readonly by: number;
  readonly over: number;
}

/** A section with the places that dimensions and numbers are set to. */
export interface FramedSection extends Drawing {
  /** Beside the stack's layers: a point within each. */
  readonly targets: readonly Point[];
  readonly at: {
    /** Of the opening next to the print, the lip, the package's edge, the rabbet's wall and the frame's edge. */
    readonly window: Length;
    readonly sight: Length;
    readonly edge: Length;
    readonly outer: Length;
    /** The lip's underside, the stack's back, the rabbet's back; null: its depth is not known. */
    readonly face: Length;
    readonly stack: Length;
    readonly rabbet: Length | null;
  };
  readonly broken: boolean;
}

/** On the drawing: where a border is broken, and how far what is broken off shows its ragged edge. */
const BREAK = mm(4);
/** A print drawn thinner than this would be lost beside the boards' outlines; thin sections are drawn solid (ISO 128-3). */
const THINNEST = mm(0.5);

interface Shown {
  readonly from: Length;
  readonly to: Length;
}

/**
 * A framed package cut through its foot, face up, the frame at the right: moulding, glazing, mats with their bevels, print,
 * bed, mount and backing, true to scale but for a print too thin to be seen and a border that is broken. All lengths but the
 * break's are those of the thing, drawn at `scale`. Throws RangeError for a scale that is not above nought.
 */
export function framedSection(job: FramedSectionJob, { by, over }: SectionScale): FramedSection {
  if (!(by > 0 && over > 0)) throw new RangeError(`a section is not drawn at ${by} : ${over}`);
  const { plan } = job;
  const { profile } = plan.frame;
  const scaled = (length: number): Length => fromReal((length * by) / over, "nearest");
  const sight = subtract(job.foot, plan.stands.hidden.foot);
  const outer = add(sight, profile.overall);
  const real = (drawn: Length): Length => fromReal((drawn * over) / by, "nearest");
  const shown = shownOf(job, sight, outer, real);
  const [first, second] = shown;
  const left = first?.from ?? ZERO;
  const x = (along: Length): Length =>
    second === undefined || along <= (first?.to ?? ZERO)
      ? scaled(along - left)
      : add(add(scaled((first?.to ?? ZERO) - left), BREAK), scaled(along - second.from));
  const top = profile.lip;
  const y = (down: Length): Length => scaled(down + top);
  const placed = placesOf(job);
  const high = larger(plan.stack.depth, depthDrawn(plan));
  const area = (from: Length, to: Length, up: Length, down: Length, fill: Fill): Mark[] =>
    shown.flatMap((part): Mark[] => {
      const [a, b] = [larger(from, part.from), smaller(to, part.to)];
      return a >= b ? [] : [polygon([x(a), y(up)], [x(b), y(up)], [x(b), y(down)], [x(a), y(down)], fill)];
    });
  const layers = placed.flatMap(({ layer, from, to, up, down, mat }): Mark[] => {
    const fill = FILLS[layer.kind];
    if (mat === null || first === undefined) {
      if (layer.kind !== "print") return area(from, to, up, down, fill);
      const thick = larger(scaled(subtract(down, up)), THINNEST);
      return area(from, to, up, down, fill).map((mark) => atLeast(mark, thick));
    }
    const end = smaller(first.to, to);
    return [
      polygon([x(add(from, mat)), y(up)], [x(end), y(up)], [x(end), y(down)], [x(from), y(down)], fill),
      ...(second === undefined ? [] : area(second.from, to, up, down, fill)),
    ];
  });
  const width = x(outer);
  const height = y(high);
  return {
    width,
    height,
    marks: [
      ...layers,
      mouldingArea(x, y, plan, sight, outer),
      ...ragged(height),
      ...(second === undefined || first === undefined ? [] : broken(x(first.to), BREAK, height)),
    ],
    targets: placed.map(({ layer, from, to, up, down }): Point => {
      const part = shown.find((one) => larger(from, one.from) < smaller(to, one.to));
      const start = larger(from, part?.from ?? left);
      const inside = smaller(scaled(subtract(smaller(to, part?.to ?? to), start)), mm(3));
      return {
        x: add(x(start), fromReal(inside / 2, "nearest")),
        y: y(fromReal(layer.kind === "sink" ? up + (down - up) / 4 : (up + down) / 2, "nearest")),
      };
    }),
    at: {
      window: x(ZERO),
      sight: x(sight),
      edge: x(job.foot),
      outer: width,
      face: y(ZERO),
      stack: y(plan.stack.depth),
      rabbet: profile.depth === null ? null : y(profile.depth),
    },
    broken: second !== undefined,
  };
}

/** Nothing of a frame is told by its fill alone: each layer has its number. */
const FILLS: Readonly<Record<StackLayer["kind"], Fill>> = {
  glazing: "none",
  spacer: "hatch-section",
  mat: "none",
  "float-spacer": "hatch-section",
  print: "ink",
  riser: "hatch-section",
  sink: "hatch-section",
  mount: "none",
  backing: "none",
};

/** A rabbet whose depth is not known is drawn as deep as what lies in it. */
const depthDrawn = ({ frame: { profile }, stack }: FramePlan): Length => profile.depth ?? stack.depth;

/** What stays of the drawing beside the last thing in it: in the window, before a break, and after it. */
const BESIDE = { window: mm(6), before: mm(4), after: mm(6), cover: mm(9) } as const;

/** What of the border is drawn: both its ends, or all of it where nothing is gained by a break. */
function shownOf(
  { foot, mats, cover, bed, plan }: FramedSectionJob,
  sight: Length,
  outer: Length,
  real: (drawn: Length) => Length,
): readonly Shown[] {
  const reach = cover ?? ZERO;
  const faces = mats.map((mat) => add(subtract(foot, mat.foot), mat.bevel));
  const inset = bed?.kind === "raised" ? bed.inset : ZERO;
  const from = subtract(smaller(ZERO, subtract(reach, inset)), real(BESIDE.window));
  const seen = [...faces, smaller(reach, real(BESIDE.cover))].reduce(larger, ZERO);
  const to = add(seen, real(BESIDE.before));
  const again = subtract(smaller(sight, subtract(foot, stripOf(plan))), real(BESIDE.after));
  return to >= subtract(again, real(BREAK))
    ? [{ from, to: outer }]
    : [
        { from, to },
        { from: again, to: outer },
      ];
}

type Pair = readonly [x: Length, y: Length];

const polygon = (a: Pair, b: Pair, c: Pair, d: Pair, fill: Fill): Mark => ({
  kind: "area",
  points: [a, b, c, d].map(([x, y]) => ({ x, y })),
  fill,
  line: fill === "ink" ? null : "edge",
});

/** A solid mark made at least so thick, from its lower edge up. */
function atLeast(mark: Mark, thick: Length): Mark {
  if (mark.kind !== "area") return mark;
  const [a, b, c, d] = mark.points;
  if (a === undefined || b === undefined || c === undefined || d === undefined) return mark;
  const up = subtract(c.y, thick);
  return { ...mark, points: [{ ...a, y: up }, { ...b, y: up }, c, d] };
}

/** The moulding: its lip over the package, its body beside it. */
function mouldingArea(
  x: (along: Length) => Length,
  y: (down: Length) => Length,
  plan: FramePlan,
  sight: Length,
  outer: Length,
): Mark {
  const { profile } = plan.frame;
  const wall = add(sight, profile.rabbet);
  const back = depthDrawn(plan);
  const lip = subtract(ZERO, profile.lip);
  const corners: readonly Pair[] = [
    [sight, lip],
    [outer, lip],
    [outer, back],
    [wall, back],
    [wall, ZERO],
    [sight, ZERO],
  ];
  return {
    kind: "area",
    points: corners.map(([along, down]) => ({ x: x(along), y: y(down) })),
    fill: "hatch-section",
    line: "outline",
  };
}
