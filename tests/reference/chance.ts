/** Seeded chance: a 32-bit counter whose bits are stirred by multiplying and shifting. The same seed gives the same run anywhere. */
export class Chance {
  private state: number;

  constructor(seed: number) {
    this.state = seed >>> 0;
  }

  /** From nought up to, never at, one. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let bits = Math.imul(this.state ^ (this.state >>> 15), this.state | 1);
    bits ^= bits + Math.imul(bits ^ (bits >>> 7), bits | 61);
    return ((bits ^ (bits >>> 14)) >>> 0) / 0x1_0000_0000;
  }

  /** A whole number from `least` to `most`, both ends in. */
  whole(least: number, most: number): number {
    return least + Math.floor(this.next() * (most - least + 1));
  }

  happens(share: number): boolean {
    return this.next() < share;
  }

  pick<const T>(all: readonly [T, ...T[]]): T {
    return all[this.whole(0, all.length - 1)] ?? all[0];
  }
}
