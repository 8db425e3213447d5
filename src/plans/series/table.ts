import { at } from "../at.ts";
import type { Choice } from "./choice.ts";

/** A choice as bare lists, for the innermost loops: what each row costs by each size that serves it. */
export class Table {
  readonly sizes: number;
  readonly rows: number;
  /** Where the entries of each row begin, the cheapest first, and where the last ends. */
  readonly begins: Int32Array;
  readonly size: Int32Array;
  readonly price: Float64Array;
  /** The same by sizes: where the rows of each begin, and which entry each is. */
  readonly sizeBegins: Int32Array;
  readonly row: Int32Array;
  readonly entry: Int32Array;

  constructor({ prices, rows }: Choice) {
    this.sizes = prices.length;
    this.rows = rows.length;
    this.begins = new Int32Array(rows.length + 1);
    rows.forEach(({ servedBy }, row) => {
      this.begins[row + 1] = at(this.begins, row) + servedBy.length;
    });
    this.size = Int32Array.from(rows.flatMap(({ servedBy }) => servedBy));
    this.price = Float64Array.from(
      rows.flatMap(({ servedBy, weight }) => servedBy.map((size) => weight * at(prices, size))),
    );
    this.sizeBegins = new Int32Array(prices.length + 1);
    for (const size of this.size) this.sizeBegins[size + 1] = at(this.sizeBegins, size + 1) + 1;
    for (let size = 0; size < prices.length; size++)
      this.sizeBegins[size + 1] = at(this.sizeBegins, size + 1) + at(this.sizeBegins, size);
    const next = this.sizeBegins.slice();
    this.row = new Int32Array(this.size.length);
    this.entry = new Int32Array(this.size.length);
    for (let row = 0; row < this.rows; row++) {
      for (let entry = at(this.begins, row); entry < at(this.begins, row + 1); entry++) {
        const size = at(this.size, entry);
        const place = at(next, size);
        next[size] = place + 1;
        this.row[place] = row;
        this.entry[place] = entry;
      }
    }
  }
}
