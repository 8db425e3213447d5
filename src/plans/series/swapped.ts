import { at } from "../at.ts";
import type { Table } from "./table.ts";

/**
 * A choice of at most `most` sizes made better by adding sizes while there is room and by putting one in
 * another's place, the place where it saves most, as long as either saves.
 */
export function swapped(table: Table, most: number, start: readonly number[]): readonly number[] {
  let best = [...new Set(start)].slice(0, most);
  let served = new Served(table, best);
  for (let changed = true; changed; ) {
    changed = false;
    for (let size = 0; size < table.sizes; size++) {
      if (best.includes(size)) continue;
      const { saves, out } = served.with(size, best.length < most ? [] : best);
      if (!(saves > 0)) continue;
      best = [...best.filter((one) => one !== out), size];
      served = new Served(table, best);
      changed = true;
    }
  }
  return best;
}

/** The two cheapest chosen sizes of every row, and what comes of changing one. */
class Served {
  private readonly table: Table;
  /** For each row what it costs by the cheapest and by the next; what no size serves is beyond all. */
  private readonly one: Float64Array;
  private readonly two: Float64Array;
  /** The cheapest size of each row; -1: none. */
  private readonly by: Int32Array;
  /** What taking each size away costs. */
  private readonly loss: Float64Array;
  private readonly beyond: number;

  constructor(table: Table, sizes: readonly number[]) {
    this.table = table;
    const { begins, size, price, rows } = table;
    // More than all rows together at their dearest: a row less served is never made up for.
    this.beyond = 1 + price.reduce((sum, one) => sum + one, 0);
    this.one = new Float64Array(rows).fill(this.beyond);
    this.two = new Float64Array(rows).fill(this.beyond);
    this.by = new Int32Array(rows).fill(-1);
    this.loss = new Float64Array(table.sizes);
    const chosen = new Uint8Array(table.sizes);
    for (const own of sizes) chosen[own] = 1;
    for (let row = 0; row < rows; row++) {
      let found = 0;
      for (let entry = at(begins, row); entry < at(begins, row + 1) && found < 2; entry++) {
        if (chosen[size[entry] as number] !== 1) continue;
        if (found === 0) {
          this.one[row] = price[entry] as number;
          this.by[row] = size[entry] as number;
        } else this.two[row] = price[entry] as number;
        found++;
      }
      const by = at(this.by, row);
      if (by >= 0) this.loss[by] = at(this.loss, by) + at(this.two, row) - at(this.one, row);
    }
  }

  /** What a further size saves, in the place of that of `outs` where it saves most; where there are none, beside all. */
  with(size: number, outs: readonly number[]): { readonly saves: number; readonly out: number } {
    const { sizeBegins, row, entry, price } = this.table;
    const loss = this.loss.slice();
    let saves = 0;
    for (let place = at(sizeBegins, size); place < at(sizeBegins, size + 1); place++) {
      const own = row[place] as number;
      const cost = price[entry[place] as number] as number;
      const [one, two, by] = [this.one[own] as number, this.two[own] as number, this.by[own] as number];
      if (cost < one) saves += one - cost;
      // Where its cheapest is taken away the row falls back on the new size instead of its next.
      if (by >= 0 && cost < two) loss[by] = (loss[by] as number) - (two - Math.max(one, cost));
    }
    if (outs.length === 0) return { saves, out: -1 };
    const out = outs.reduce((least, other) => (at(loss, other) < at(loss, least) ? other : least));
    return { saves: saves - at(loss, out), out };
  }
}
