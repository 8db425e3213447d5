import type { Length } from "./length.ts";
import type { Pen } from "./pen.ts";

/** Slots of the table: a power of two, enough for the lengths of some dozens of works. */
const SLOTS = 1 << 10;

/**
 * Lengths written one way with one pen. Most lengths of a work are said several times, and those of a
 * show again in other works: one that the pen still keeps is copied from there, and only the others are
 * worked out. The table holds as many lengths as it has slots, each in the one that its digits fall to.
 */
export class Repeated {
  private readonly pen: Pen;
  private readonly work: (length: Length) => void;
  private readonly lengths = new Float64Array(SLOTS).fill(Number.NaN);
  private readonly begins = new Float64Array(SLOTS);
  private readonly ends = new Float64Array(SLOTS);

  /** `work` works a length out and writes it with this very pen. */
  constructor(pen: Pen, work: (length: Length) => void) {
    this.pen = pen;
    this.work = work;
  }

  write(length: Length): void {
    const { pen } = this;
    const slot = (Math.imul(length, SPREAD) >>> 7) & (SLOTS - 1);
    const begins = this.begins[slot] ?? 0;
    if (this.lengths[slot] === length && pen.keeps(begins)) {
      pen.again(begins, this.ends[slot] ?? begins);
      return;
    }
    this.lengths[slot] = length;
    this.begins[slot] = pen.place;
    this.work(length);
    this.ends[slot] = pen.place;
  }
}

/** An odd number near 2^32 divided by the golden ratio, so that neighbours fall into slots far apart. */
const SPREAD = 0x9e3779b1;
