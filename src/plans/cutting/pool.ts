import { at } from "../at.ts";
import { countKinds, type Layout, layoutKey } from "./layout.ts";

/** A layout with what it gives, reckoned once. */
export interface Pattern extends Layout {
  /** The same for two layouts exactly when they are cut alike from the same stock. */
  readonly key: string;
  /** The kinds that lie in it, and how often. */
  readonly kinds: readonly number[];
  readonly counts: readonly number[];
}

/** The pattern of a layout in a job of so many kinds. */
export function patternOf({ stock, root }: Layout, kinds: number): Pattern {
  const all = new Int32Array(kinds);
  countKinds(root, all);
  const own = Array.from(all.keys()).filter((kind) => at(all, kind) > 0);
  const key = layoutKey({ stock, root });
  return { stock, root, key, kinds: own, counts: own.map((kind) => at(all, kind)) };
}
