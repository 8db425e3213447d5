import { at } from "../at.ts";
import type { Chance } from "../chance.ts";

/** Where every block lies, from the lower left corner of the whole, and how large that is. */
export interface Laid {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly width: number;
  readonly height: number;
}

/** How two parts are joined: side by side or one on the other, and which edges of theirs meet. */
const JOINS = 6;
const isBeside = (join: number): boolean => join < 3;

/**
 * Blocks joined two by two into one rectangle, as a postfix expression: a number from nought up is a
 * block, one below nought (`~join`) joins the two parts before it. Sizes and places are whole ticks.
 */
export class LayingTree {
  private expression: Int32Array;
  private readonly widths: readonly number[];
  private readonly heights: readonly number[];
  private readonly x: Float64Array;
  private readonly y: Float64Array;
  /** By place in the expression: the part's size, and for a join where its first part ends. */
  private readonly width: Float64Array;
  private readonly height: Float64Array;
  private readonly first: Int32Array;

  /** Begins with rows as long as the group is meant to be wide. At least one block. */
  constructor(widths: readonly number[], heights: readonly number[]) {
    this.widths = widths;
    this.heights = heights;
    const count = widths.length;
    const long = 2 * count - 1;
    this.x = new Float64Array(count);
    this.y = new Float64Array(count);
    this.width = new Float64Array(long);
    this.height = new Float64Array(long);
    this.first = new Int32Array(long);
    this.expression = Int32Array.from(rows(count, Math.ceil(Math.sqrt(count * 1.6))));
  }

  state(): Int32Array {
    return this.expression.slice();
  }

  restore(state: Int32Array): void {
    this.expression = state;
  }

  /** One change by chance; false where it would make no tree, and nothing is changed. */
  change(chance: Chance): boolean {
    const { expression } = this;
    const place = chance.below(expression.length);
    const value = at(expression, place);
    if (value < 0) {
      if (chance.next() < 0.5) {
        expression[place] = ~chance.below(JOINS);
        return true;
      }
      return this.exchange(place, place + 1);
    }
    if (chance.next() < 0.3) return this.exchange(place, place + 1);
    const other = chance.below(expression.length);
    if (other === place || at(expression, other) < 0) return false;
    return this.exchange(place, other);
  }

  /** Sizes from the blocks up, places from the whole down. */
  laid(): Laid {
    const { expression, width, height, first } = this;
    const open: number[] = [];
    for (let place = 0; place < expression.length; place++) {
      const value = at(expression, place);
      if (value >= 0) {
        width[place] = at(this.widths, value);
        height[place] = at(this.heights, value);
      } else {
        const second = open.pop() ?? 0;
        const one = open.pop() ?? 0;
        first[place] = one;
        const beside = isBeside(~value);
        const [w1, w2, h1, h2] = [at(width, one), at(width, second), at(height, one), at(height, second)];
        width[place] = beside ? w1 + w2 : Math.max(w1, w2);
        height[place] = beside ? Math.max(h1, h2) : h1 + h2;
      }
      open.push(place);
    }
    const root = expression.length - 1;
    this.lay(root, 0, 0);
    return { x: this.x, y: this.y, width: at(width, root), height: at(height, root) };
  }

  private lay(place: number, x: number, y: number): void {
    const value = at(this.expression, place);
    if (value >= 0) {
      this.x[value] = x;
      this.y[value] = y;
      return;
    }
    const [one, second] = [at(this.first, place), place - 1];
    const join = ~value;
    const beside = isBeside(join);
    const edge = join % 3;
    const size = beside ? this.height : this.width;
    const room = at(size, place);
    const inset = (part: number): number => Math.floor(((room - at(size, part)) * edge) / 2);
    if (beside) {
      this.lay(one, x, y + inset(one));
      this.lay(second, x + at(this.width, one), y + inset(second));
    } else {
      this.lay(one, x + inset(one), y);
      this.lay(second, x + inset(second), y + at(this.height, one));
    }
  }

  private exchange(a: number, b: number): boolean {
    const { expression } = this;
    if (b >= expression.length) return false;
    const [one, other] = [at(expression, a), at(expression, b)];
    expression[a] = other;
    expression[b] = one;
    if (one >= 0 === other >= 0 || isTree(expression)) return true;
    expression[a] = one;
    expression[b] = other;
    return false;
  }
}

/** Whether every join has two parts before it. */
function isTree(expression: Int32Array): boolean {
  let parts = 0;
  for (const value of expression) {
    parts += value >= 0 ? 1 : -1;
    if (parts < 1) return false;
  }
  return parts === 1;
}

/** Blocks in rows, middles in line. */
function rows(count: number, long: number): readonly number[] {
  const [beside, above] = [~1, ~4];
  return Array.from({ length: count }, (_, index) => {
    const column = index % long;
    const ends = column === long - 1 || index === count - 1;
    const row = column === 0 ? [index] : [index, beside];
    return ends && index >= long ? [...row, above] : row;
  }).flat();
}
