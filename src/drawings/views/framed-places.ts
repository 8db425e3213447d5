import type { FramePlan, HeldBed, StackLayer } from "../../assembly/index.ts";
import { add, fromReal, type Length, mm, subtract, ZERO } from "../../lengths/index.ts";

/** What a framed package is drawn from. */
export interface FramedSectionJob {
  readonly plan: FramePlan;
  /** Of the lowest mat. */
  readonly foot: Length;
  /** For each mat from the lowest up: its foot border, and its bevel seen square-on. */
  readonly mats: readonly { readonly foot: Length; readonly bevel: Length }[];
  /** How far the paper reaches under the foot, below nought where it ends within the window; null: no print. */
  readonly cover: Length | null;
  readonly bed: HeldBed | null;
}

/** One layer of the stack where it lies in the section. */
export interface PlacedLayer {
  readonly layer: StackLayer;
  readonly from: Length;
  readonly to: Length;
  readonly up: Length;
  readonly down: Length;
  /** The bevel of a mat; null: no mat. */
  readonly mat: Length | null;
}

/** Everything that is drawn as though it went on to the left. */
const FAR = mm(-5000);

/** Where every layer lies: along from the window's edge outwards, down from the lip's underside. */
export function placesOf({ plan, foot, mats, cover, bed }: FramedSectionJob): readonly PlacedLayer[] {
  const places: PlacedLayer[] = [];
  const strip = subtract(foot, stripOf(plan));
  let down = ZERO;
  for (const layer of plan.stack.layers) {
    const up = down;
    if (!layer.within) down = add(down, layer.thickness);
    const whole = { layer, from: FAR, to: foot, up, down, mat: null };
    switch (layer.kind) {
      case "mat": {
        const mat = mats[layer.mat ?? 0];
        places.push({ ...whole, from: subtract(foot, mat?.foot ?? foot), mat: mat?.bevel ?? ZERO });
        break;
      }
      case "spacer":
      case "float-spacer":
        places.push({ ...whole, from: strip });
        break;
      case "sink":
        places.push({ ...whole, from: bed?.kind === "sink" ? subtract(foot, bed.walls.foot) : FAR });
        break;
      default:
        places.push({ ...whole, to: layer.kind === "print" ? (cover ?? ZERO) : foot });
    }
  }
  return places.map((place) => withinBed(place, places, bed, cover ?? ZERO));
}

/** A print in its sink, and a float on its riser, lie on the mount. */
function withinBed(
  place: PlacedLayer,
  all: readonly PlacedLayer[],
  bed: HeldBed | null,
  cover: Length,
): PlacedLayer {
  const { layer } = place;
  if (!layer.within || bed === null) return place;
  const mount = all.find((one) => one.layer.kind === "mount")?.up ?? place.up;
  const height = bed.kind === "raised" ? bed.height : ZERO;
  if (layer.kind === "riser" && bed.kind === "raised")
    return { ...place, to: subtract(cover, bed.inset), up: subtract(mount, height), down: mount };
  const bottom = subtract(mount, height);
  return { ...place, up: subtract(bottom, layer.thickness), down: bottom };
}

/** How wide spacers are. */
export const stripOf = ({ stack }: FramePlan): Length => {
  const strip = stack.layers.find(({ kind }) => kind === "spacer" || kind === "float-spacer");
  return strip === undefined || strip.window === null
    ? ZERO
    : fromReal((strip.size.width - strip.window.width) / 2, "nearest");
};
