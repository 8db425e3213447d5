import { at } from "../at.ts";
import type { BenchState } from "./bench-state.ts";
import type { Kinds } from "./kinds.ts";

/**
 * Which figure has to be set before which: an arrow from a to b where some mat that still needs a must be
 * whole before another that needs b. Figures that are set only once must stand in an order that no arrow
 * goes against, so those set again meet every ring of arrows.
 */
export class Arrows {
  readonly size: number;
  /** For each figure a row of 32-bit words: the figures that it points to, and those that point to it. */
  private readonly to: Uint32Array;
  private readonly from: Uint32Array;
  private readonly words: number;

  constructor(size: number, to?: Uint32Array, from?: Uint32Array) {
    this.size = size;
    this.words = (size + 31) >>> 5;
    this.to = to ?? new Uint32Array(size * this.words);
    this.from = from ?? new Uint32Array(size * this.words);
  }

  copy(): Arrows {
    return new Arrows(this.size, this.to.slice(), this.from.slice());
  }

  add(a: number, b: number): void {
    set(this.to, a * this.words, b);
    set(this.from, b * this.words, a);
  }

  leadsTo(figure: number): number[] {
    return bitsOf(this.to, figure * this.words, this.words);
  }

  comesFrom(figure: number): number[] {
    return bitsOf(this.from, figure * this.words, this.words);
  }

  hasOwn(figure: number): boolean {
    return has(this.to, figure * this.words, figure);
  }

  /** How many it points to and how many point to it. */
  ways(figure: number): { readonly out: number; readonly into: number } {
    return {
      out: countOf(this.to, figure * this.words, this.words),
      into: countOf(this.from, figure * this.words, this.words),
    };
  }

  remove(figure: number): void {
    const { words } = this;
    for (const other of this.leadsTo(figure)) clear(this.from, other * words, figure);
    for (const other of this.comesFrom(figure)) clear(this.to, other * words, figure);
    this.to.fill(0, figure * words, (figure + 1) * words);
    this.from.fill(0, figure * words, (figure + 1) * words);
  }
}

const set = (row: Uint32Array, start: number, place: number): void => {
  row[start + (place >>> 5)] = at(row, start + (place >>> 5)) | (1 << (place & 31));
};
const clear = (row: Uint32Array, start: number, place: number): void => {
  row[start + (place >>> 5)] = at(row, start + (place >>> 5)) & ~(1 << (place & 31));
};
const has = (row: Uint32Array, start: number, place: number): boolean =>
  (at(row, start + (place >>> 5)) & (1 << (place & 31))) !== 0;

function bitsOf(row: Uint32Array, start: number, words: number): number[] {
  const all: number[] = [];
  for (let word = 0; word < words; word++) {
    for (let bits = at(row, start + word); bits !== 0; bits &= bits - 1) {
      all.push(word * 32 + 31 - Math.clz32(bits & -bits));
    }
  }
  return all;
}

function countOf(row: Uint32Array, start: number, words: number): number {
  let count = 0;
  for (let word = 0; word < words; word++) {
    for (let bits = at(row, start + word); bits !== 0; bits &= bits - 1) count++;
  }
  return count;
}

/** The arrows between the figures that a state still needs. */
export function arrowsOf(kinds: Kinds, state: BenchState): Arrows {
  const size = kinds.figures.length;
  const arrows = new Arrows(size);
  const words = (size + 31) >>> 5;
  /** The figures still needed before a kind's own, and those with them, a row for each kind. */
  const before = new Uint32Array(kinds.own.length * words);
  const upTo = new Uint32Array(kinds.own.length * words);
  const told = new Uint32Array(size * words);
  kinds.own.forEach((places, kind) => {
    const start = kind * words;
    for (const other of at(kinds.after, kind)) {
      for (let word = 0; word < words; word++)
        before[start + word] = at(before, start + word) | at(upTo, other * words + word);
    }
    for (let word = 0; word < words; word++) upTo[start + word] = at(before, start + word);
    places.forEach((figure, place) => {
      if (!state.stillNeeds(kind, place)) return;
      set(upTo, start, figure);
      for (let word = 0; word < words; word++)
        told[figure * words + word] = at(told, figure * words + word) | at(before, start + word);
    });
  });
  for (let figure = 0; figure < size; figure++) {
    for (const other of bitsOf(told, figure * words, words)) if (other !== figure) arrows.add(other, figure);
  }
  return arrows;
}
