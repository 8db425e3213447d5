import { at } from "../at.ts";
import { AXIS, FIRST_WASTE, FREE, H, type Memory, NEXT_WASTE, SLOT, STAMP, W } from "./memory.ts";
import type { WholeJob } from "./whole.ts";

/** A unit of area outside weighs this much against the square of a unit of waste; areas in parts of the largest sheet. */
const OUTSIDE = 100;

/** How good a forest is. Each root is weighed anew only after it has changed. */
export class Weighing {
  private readonly memory: Memory;
  private readonly unitArea: number;
  /** For each kind how many are wanted, and the area of one in parts of the largest sheet. */
  private readonly wanted: Int32Array;
  private readonly areas: Float64Array;
  /** Waste of each slot's root, and its squares, at its last weighing; and the root's stamp then. */
  private readonly waste: Float64Array;
  private readonly squares: Float64Array;
  private readonly weighed: Int32Array;

  constructor(job: WholeJob, memory: Memory) {
    this.memory = memory;
    this.unitArea = Math.max(...job.stocks.map((stock) => stock.width * stock.height));
    this.wanted = Int32Array.from(job.kinds, ({ count }) => count);
    this.areas = Float64Array.from(job.kinds, ({ width, height }) => (width * height) / this.unitArea);
    this.waste = new Float64Array(memory.slots);
    this.squares = new Float64Array(memory.slots);
    this.weighed = new Int32Array(memory.slots);
  }

  /** The waste on a root at the last weighing, by its place among the roots; in parts of the largest sheet. */
  wasteOf(index: number): number {
    return at(this.waste, this.memory.slot(index));
  }

  /** The area outside, less the sum of squared waste; lower is better. `outside`: that area, where it is known. */
  weigh(outside = this.outside()): number {
    const { memory } = this;
    const { m } = memory;
    let squares = 0;
    for (let index = 0; index < memory.rootCount; index++) {
      const root = memory.root(index);
      const slot = m[root + SLOT] as number;
      if (this.weighed[slot] !== m[root + STAMP]) this.weighRoot(root, slot);
      squares += this.squares[slot] as number;
    }
    return outside * OUTSIDE - squares;
  }

  /** What is outside of a kind; in parts of the largest sheet. */
  outsideOf(kind: number): number {
    const left = (this.wanted[kind] as number) - this.memory.placed(kind);
    return left > 0 ? left * (this.areas[kind] as number) : 0;
  }

  private outside(): number {
    let outside = 0;
    for (let kind = 0; kind < this.wanted.length; kind++) outside += this.outsideOf(kind);
    return outside;
  }

  private weighRoot(root: number, slot: number): void {
    const { m } = this.memory;
    let waste = 0;
    let squares = 0;
    for (let node = m[root + FIRST_WASTE] as number; node >= 0; node = m[node + NEXT_WASTE] as number) {
      const cross = m[node + (m[node + AXIS] === 0 ? H : W)] as number;
      const area = ((m[node + FREE] as number) * cross) / this.unitArea;
      waste += area;
      squares += area * area;
    }
    this.waste[slot] = waste;
    this.squares[slot] = squares;
    this.weighed[slot] = m[root + STAMP] as number;
  }
}
