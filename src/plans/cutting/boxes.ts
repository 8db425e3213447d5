import { at } from "../at.ts";
import type { Axis, Part } from "./layout.ts";
import type { Kind } from "./whole.ts";

/** So many choices are made between two looks at the time. */
const BETWEEN = 100;

/** The outer size of some pieces laid together so that straight cuts part them, and how they lie. */
export interface Box {
  readonly width: number;
  readonly height: number;
  readonly lies: Lies;
}

type Lies = { readonly is: "piece"; readonly kind: number } | Pair;

interface Pair {
  readonly is: "pair";
  readonly axis: Axis;
  readonly one: Box;
  readonly two: Box;
}

/**
 * Numbers for every choice of some pieces out of a demand: a digit for each kind, from nought to its
 * count. The numbers of two choices add up to that of both together.
 */
export class Choices {
  /** How many choices there are; the last is the whole demand. */
  readonly size: number;
  private readonly counts: readonly number[];
  private readonly places: readonly number[];

  constructor(counts: readonly number[]) {
    this.counts = counts;
    const places: number[] = [];
    this.size = counts.reduce((place, count) => {
      places.push(place);
      return place * (count + 1);
    }, 1);
    this.places = places;
  }

  /** How many of each kind are in a choice. */
  digits(choice: number): number[] {
    return this.counts.map((count, kind) => Math.floor(choice / at(this.places, kind)) % (count + 1));
  }

  /** The choice of one piece of a kind. */
  one(kind: number): number {
    return at(this.places, kind);
  }

  /** Every choice that is part of one, from nothing to itself. */
  parts(choice: number): number[] {
    let parts = [0];
    this.digits(choice).forEach((digit, kind) => {
      const place = at(this.places, kind);
      const before = parts;
      for (let count = 1; count <= digit; count++)
        parts = [...parts, ...before.map((part) => part + count * place)];
    });
    return parts;
  }
}

/**
 * For each choice of pieces the boxes that it can be cut out of, none larger both ways than another,
 * the narrowest first: each in every way to put two parts of it side by side or one above the other.
 * Only boxes that `fits` lets pass: where a box does not fit, none that holds it does. Null when the
 * time is up.
 */
export function boxesOf(
  kinds: readonly Kind[],
  choices: Choices,
  fits: (width: number, height: number) => boolean,
  timeIsUp: () => boolean,
): (readonly Box[])[] | null {
  const boxes: (readonly Box[])[] = [[]];
  const alone = new Map(kinds.map((kind, index) => [choices.one(index), { kind, index }]));
  for (let choice = 1; choice < choices.size; choice++) {
    if (choice % BETWEEN === 0 && timeIsUp()) return null;
    const found = new Boxes(fits);
    const single = alone.get(choice);
    if (single !== undefined) {
      const { kind, index } = single;
      found.offer(kind.width, kind.height, { is: "piece", kind: index });
      if (kind.turns) found.offer(kind.height, kind.width, { is: "piece", kind: index });
    }
    for (const part of choices.parts(choice)) {
      // Each pair of parts once.
      if (part === 0 || 2 * part > choice) continue;
      const [ones, twos] = [at(boxes, part), at(boxes, choice - part)];
      found.pair(ones, twos);
      found.pair(twos, ones);
    }
    boxes.push(found.list);
  }
  return boxes;
}

/** The boxes of one choice as they are found. */
class Boxes {
  readonly list: Box[] = [];
  private readonly fits: (width: number, height: number) => boolean;

  constructor(fits: (width: number, height: number) => boolean) {
    this.fits = fits;
  }

  /** Every box of two others in which none of the `ones` is lower, beside one another, or narrower, one above the other. */
  pair(ones: readonly Box[], twos: readonly Box[]): void {
    let narrowest = 0;
    let widest = -1;
    for (const one of ones) {
      while (narrowest < twos.length && at(twos, narrowest).height > one.height) narrowest++;
      const beside = twos[narrowest];
      if (beside !== undefined)
        this.offer(one.width + beside.width, one.height, { is: "pair", axis: "x", one, two: beside });
      while (widest + 1 < twos.length && at(twos, widest + 1).width <= one.width) widest++;
      const above = twos[widest];
      if (above !== undefined)
        this.offer(one.width, one.height + above.height, { is: "pair", axis: "y", one, two: above });
    }
  }

  offer(width: number, height: number, lies: Lies): void {
    const { list } = this;
    const place = placeOf(list, width);
    const before = list[place - 1];
    if ((before !== undefined && before.height <= height) || !this.fits(width, height)) return;
    const begin = before?.width === width ? place - 1 : place;
    let end = place;
    while (end < list.length && at(list, end).height >= height) end++;
    list.splice(begin, end - begin, { width, height, lies });
  }
}

/** The place of the first box that is wider. */
function placeOf(boxes: readonly Box[], width: number): number {
  let low = 0;
  let high = boxes.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (at(boxes, middle).width <= width) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** How the pieces of a box lie; the rests are wrong until it is resized. */
export function partOf({ width, height, lies }: Box): Part {
  if (lies.is === "piece") return { is: "piece", kind: lies.kind, width, height };
  const { axis, one, two } = lies;
  return { is: "split", axis, width, height, parts: [partOf(one), partOf(two)], rest: 0 };
}
