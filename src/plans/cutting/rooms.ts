import { AXIS, FIRST_WASTE, FREE, H, type Memory, NEXT_WASTE, SLOT, STAMP, W } from "./memory.ts";

/** How large the waste rectangles of each sheet are at most, so that a piece is not held to every one of a full sheet. */
export class Rooms {
  private readonly memory: Memory;
  /** For each slot the sheet's stamp when it was looked at, and the largest short and long side of its waste. */
  private readonly stamps: Int32Array;
  private readonly short: Int32Array;
  private readonly long: Int32Array;

  constructor(memory: Memory) {
    this.memory = memory;
    this.stamps = new Int32Array(memory.slots);
    this.short = new Int32Array(memory.slots);
    this.long = new Int32Array(memory.slots);
  }

  /** False where no waste rectangle of a sheet takes a piece with these sides. */
  mayTake(root: number, short: number, long: number): boolean {
    const { m } = this.memory;
    const slot = m[root + SLOT] as number;
    if (this.stamps[slot] !== m[root + STAMP]) this.look(root, slot);
    return short <= (this.short[slot] as number) && long <= (this.long[slot] as number);
  }

  private look(root: number, slot: number): void {
    const { m } = this.memory;
    let [mostShort, mostLong] = [0, 0];
    for (let node = m[root + FIRST_WASTE] as number; node >= 0; node = m[node + NEXT_WASTE] as number) {
      const free = m[node + FREE] as number;
      const cross = m[node + (m[node + AXIS] === 1 ? W : H)] as number;
      const [short, long] = free < cross ? [free, cross] : [cross, free];
      if (short > mostShort) mostShort = short;
      if (long > mostLong) mostLong = long;
    }
    this.short[slot] = mostShort;
    this.long[slot] = mostLong;
    this.stamps[slot] = m[root + STAMP] as number;
  }
}
