/** Chance with a seed: the same seed gives the same numbers. A Weyl sequence, its bits mixed (after Steele, Lea and Flood 2014). */
export class Chance {
  private state: number;

  constructor(seed: number) {
    this.state = seed | 0;
  }

  /** From nought up to but not including one. */
  next(): number {
    this.state = (this.state + 0x9e3779b9) | 0;
    let z = this.state;
    z = Math.imul(z ^ (z >>> 16), 0x21f0aaad);
    z = Math.imul(z ^ (z >>> 15), 0x735a2d97);
    return ((z ^ (z >>> 15)) >>> 0) / 4294967296;
  }

  /** A whole number from nought up to but not including `most`. */
  below(most: number): number {
    return Math.floor(this.next() * most);
  }
}
