import type { Composition } from "../../assembly/index.ts";
import type { Length } from "../../lengths/index.ts";

/** One layer of the package, numbered from the face down, as the section's leaders are. `words` names it. */
export interface Layer {
  readonly number: number;
  readonly kind: "mat" | "print" | "mount";
  /** Which mat, counted from the lowest; null for what is no mat. */
  readonly mat: number | null;
  /** What it is cut from, where that is known. */
  readonly board: string | null;
  readonly thickness: Length;
}

/** The mount board, where the work says nothing of it: cut from the same board as the lowest mat. */
export interface Mount {
  readonly thickness: Length;
  readonly board: string | null;
}

/** The layers from the face down: mats from the top one, the print, the mount. */
export function layersOf(composition: Composition, mount?: Mount): Layer[] {
  const { design, mats } = composition;
  const layers: Omit<Layer, "number">[] = mats.map((mat, index) => ({
    kind: "mat" as const,
    mat: index,
    board: design.mats[index]?.board ?? null,
    thickness: mat.thickness,
  }));
  layers.reverse();
  if (design.print) layers.push({ kind: "print", mat: null, board: null, thickness: design.print.thickness });
  const lowest = mats[0];
  const under = mount ?? (lowest && { thickness: lowest.thickness, board: design.mats[0]?.board ?? null });
  if (under) layers.push({ kind: "mount", mat: null, board: under.board, thickness: under.thickness });
  return layers.map((layer, index) => ({ number: index + 1, ...layer }));
}
