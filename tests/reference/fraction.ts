/** An exact rational number. The reference computes with these alone, so that no rounding hides in it. */
export class Fraction {
  static readonly zero = new Fraction(0n, 1n);
  static readonly one = new Fraction(1n, 1n);
  private readonly top: bigint;
  private readonly bottom: bigint;

  private constructor(top: bigint, bottom: bigint) {
    this.top = top;
    this.bottom = bottom;
  }

  static of(top: bigint | number, bottom: bigint | number = 1n): Fraction {
    let n = BigInt(top);
    let d = BigInt(bottom);
    if (d === 0n) throw new RangeError("a fraction over nought");
    if (d < 0n) [n, d] = [-n, -d];
    let [a, b] = [n < 0n ? -n : n, d];
    while (b !== 0n) [a, b] = [b, a % b];
    return new Fraction(n / a, d / a);
  }

  /** The exact value of a decimal text such as `-12.375`. */
  static decimal(text: string): Fraction {
    const minus = text.startsWith("-");
    const [whole = "", decimals = ""] = text.replace("-", "").split(".");
    const size = Fraction.of(BigInt(`${whole}${decimals}` || "0"), 10n ** BigInt(decimals.length));
    return minus ? Fraction.zero.minus(size) : size;
  }

  /** A double to the nearest 10^-12: for what a tangent or a rotation makes, which no fraction holds. */
  static near(value: number): Fraction {
    const whole = Math.trunc(value);
    return Fraction.of(BigInt(whole)).plus(
      Fraction.of(BigInt(Math.round((value - whole) * 1e12)), 10n ** 12n),
    );
  }

  plus(other: Fraction): Fraction {
    return Fraction.of(this.top * other.bottom + other.top * this.bottom, this.bottom * other.bottom);
  }
  minus(other: Fraction): Fraction {
    return Fraction.of(this.top * other.bottom - other.top * this.bottom, this.bottom * other.bottom);
  }
  times(other: Fraction): Fraction {
    return Fraction.of(this.top * other.top, this.bottom * other.bottom);
  }
  over(other: Fraction): Fraction {
    return Fraction.of(this.top * other.bottom, this.bottom * other.top);
  }
  twice(): Fraction {
    return this.plus(this);
  }
  halved(): Fraction {
    return Fraction.of(this.top, this.bottom * 2n);
  }

  /** The square root where it is a fraction itself, else null. */
  root(): Fraction | null {
    const [top, bottom] = [wholeRoot(this.top), wholeRoot(this.bottom)];
    return top === null || bottom === null ? null : Fraction.of(top, bottom);
  }

  /** Below nought, nought, above nought as -1, 0, 1. */
  sign(): number {
    return this.top < 0n ? -1 : this.top > 0n ? 1 : 0;
  }
  /** Like a sort's comparison. */
  against(other: Fraction): number {
    return this.minus(other).sign();
  }
  below(other: Fraction): boolean {
    return this.against(other) < 0;
  }
  same(other: Fraction): boolean {
    return this.against(other) === 0;
  }

  /** The largest multiple of `mark` not above. */
  floorTo(mark: Fraction): Fraction {
    const ratio = this.over(mark);
    const cut = ratio.top / ratio.bottom;
    const floor = cut * ratio.bottom > ratio.top ? cut - 1n : cut;
    return mark.times(Fraction.of(floor));
  }
  /** The smallest multiple of `mark` not below. */
  ceilTo(mark: Fraction): Fraction {
    return Fraction.zero.minus(Fraction.zero.minus(this).floorTo(mark));
  }
  /** The nearest multiple of `mark`; half way goes away from nought. */
  nearTo(mark: Fraction): Fraction {
    if (this.sign() < 0) return Fraction.zero.minus(Fraction.zero.minus(this).nearTo(mark));
    return this.plus(mark.halved()).floorTo(mark);
  }

  toNumber(): number {
    const whole = this.top / this.bottom;
    return Number(whole) + Number(this.top - whole * this.bottom) / Number(this.bottom);
  }

  static least(all: readonly Fraction[]): Fraction {
    return all.reduce((least, one) => (one.below(least) ? one : least));
  }
}

/** The root of a whole number that is a square, by Newton's steps from above; else null. */
function wholeRoot(square: bigint): bigint | null {
  if (square < 0n) return null;
  let root = square + 1n;
  for (let next = (root + 1n) / 2n; next < root; next = (root + square / root) / 2n) root = next;
  return root * root === square ? root : null;
}
