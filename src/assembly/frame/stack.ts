import type { Sides, Size } from "../../geometry/index.ts";
import {
  add,
  larger,
  type Length,
  smaller,
  subtract,
  sum,
  times,
  toGraduation,
  ZERO,
} from "../../lengths/index.ts";
import type { Composition } from "../composition.ts";
import type { HeldBed } from "../hold/index.ts";
import type { FrameFacts } from "./facts.ts";

/** One layer of the package, from the face down. */
export interface StackLayer {
  readonly kind:
    | "glazing"
    | "spacer"
    | "mat"
    | "float-spacer"
    | "print"
    | "riser"
    | "sink"
    | "mount"
    | "backing";
  /** Which mat, counted from the lowest; null for what is no mat. */
  readonly mat: number | null;
  /** As it is called in the rack; empty: not told. */
  readonly board: string;
  readonly thickness: Length;
  /** Whether it lies within the height of another layer, and adds nothing to the stack. */
  readonly within: boolean;
  /** What it is cut to. */
  readonly size: Size;
  /** What falls out of it. */
  readonly window: Size | null;
}

/** The package's layers and what they come to. */
export interface Stack {
  readonly layers: readonly StackLayer[];
  readonly depth: Length;
  /** From the glazing down to the print's face; null: no print, or no glazing. */
  readonly clear: Length | null;
}

/** Strips all round a package, out of sight: two along its head and foot, two between them. */
export interface Strips {
  readonly high: Length;
  readonly wide: Length;
  readonly long: Length;
  readonly between: Length;
}

export const stripsRound = (outer: Size, high: Length, wide: Length): Strips => ({
  high,
  wide,
  long: outer.width,
  between: subtract(outer.height, times(wide, 2)),
});

/** As wide as what hides strips does everywhere, on the ruler's marks where that leaves one. */
export function stripWidth({ head, left, right, foot }: Sides, graduation: Length): Length {
  const most = larger([head, left, right, foot].reduce(smaller), ZERO);
  const marked = toGraduation(most, graduation, "down");
  return marked > 0 ? marked : most;
}

/** What of a frame lies in the package. */
export type PackageFacts = Pick<FrameFacts, "glazing" | "spacer" | "backing" | "habits">;

const FLAT: HeldBed = { kind: "flat" };

/**
 * The package of a composed work in its frame, layer by layer from the face. A sheet in a sink lies within its walls; a
 * float and its riser lie within the spacers that keep the mat off it. `strip`: how wide spacers are.
 */
export function stackOf(
  composition: Composition,
  { glazing, spacer, backing, habits }: PackageFacts,
  bed: HeldBed = FLAT,
  strip: Length = ZERO,
): Stack {
  const { design, mats, outer } = composition;
  const less = (by: Length): Size => ({
    width: subtract(outer.width, by),
    height: subtract(outer.height, by),
  });
  const layer = (
    kind: StackLayer["kind"],
    thickness: Length,
    more: Partial<StackLayer> = {},
  ): StackLayer => ({
    kind,
    mat: null,
    board: "",
    thickness,
    within: false,
    size: outer,
    window: null,
    ...more,
  });
  const print = design.print;
  const inside = (by: Length): Size => less(times(by, 2));
  const matsUp = mats.map((mat, index) =>
    layer("mat", mat.thickness, { mat: index, board: design.mats[index]?.board ?? "", window: mat.back }),
  );
  const mount = habits.mount ?? mats[0]?.thickness ?? ZERO;
  const layers = [
    ...(glazing === null
      ? []
      : [layer("glazing", glazing.thickness, { board: glazing.board, size: less(glazing.less) })]),
    ...(spacer === 0 ? [] : [layer("spacer", spacer, { window: inside(strip) })]),
    ...matsUp.toReversed(),
    ...(bed.kind === "raised" ? [layer("float-spacer", bed.spacer, { window: inside(strip) })] : []),
    ...(print === null
      ? []
      : [layer("print", print.thickness, { within: bed.kind !== "flat", size: print.sheet })]),
    ...(bed.kind === "raised" ? [layer("riser", bed.height, { within: true, size: bed.riser })] : []),
    ...(bed.kind === "sink" ? [layer("sink", bed.depth, { board: bed.board, window: bed.opening })] : []),
    layer("mount", mount, { board: design.mount }),
    ...(backing === null
      ? []
      : [layer("backing", backing.thickness, { board: backing.board, size: less(backing.less) })]),
  ];
  const over = sum([spacer, ...mats.map(({ thickness }) => thickness)]);
  return {
    layers,
    depth: sum(layers.filter(({ within }) => !within).map(({ thickness }) => thickness)),
    clear: print === null || glazing === null ? null : add(over, roomInBed(bed, print.thickness)),
  };
}

/** How far the print's face lies below the mat's back: below nought where it stands out past it. */
function roomInBed(bed: HeldBed, print: Length): Length {
  switch (bed.kind) {
    case "flat":
      return ZERO;
    case "sink":
      return subtract(bed.depth, print);
    case "raised":
      return subtract(bed.spacer, add(bed.height, print));
  }
}
