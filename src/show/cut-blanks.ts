import type { Size } from "../geometry/index.ts";
import type { Length, Unit } from "../lengths/index.ts";
import { Reader } from "./reader.ts";
import type { CutBlankDocument, WorkDocument } from "./schema.ts";
import type { Read } from "./validate.ts";

/** Blanks of one size that are cut already for one work. */
export interface CutBlank extends Size {
  /** As `nameOfWork` has it. */
  readonly work: string;
  readonly board: string;
  readonly count: number;
}

/** More of one work than anyone cuts. */
const MOST = 10_000;

/** What a work is called where blanks are cut for it: its id, or its title where it has none. */
export const nameOfWork = ({ id, title }: Pick<WorkDocument, "id" | "title">): string => id ?? title;

/** Reads what a show says is cut already; a bare number is in the practice's unit. */
export function readCutBlanks(documents: readonly CutBlankDocument[], unit: Unit): Read<readonly CutBlank[]> {
  const reader = new Reader(unit);
  const value = documents.map(({ work, board, width, height, count = 1 }, index) => ({
    work,
    board,
    width: reader.size(`${index}.width`, width),
    height: reader.size(`${index}.height`, height),
    count: reader.count(`${index}.count`, count, MOST),
  }));
  return reader.problems.length === 0 ? { ok: true, value } : { ok: false, problems: reader.problems };
}

/** Blanks that are there, each of which is taken once: for its work, its board and its size, whichever way up. */
export class CutAlready {
  private readonly left = new Map<string, number>();

  constructor(blanks: readonly CutBlank[]) {
    for (const { count, ...blank } of blanks) {
      const key = keyOf(blank);
      this.left.set(key, (this.left.get(key) ?? 0) + count);
    }
  }

  /** How many of `wanted` are there; they are taken with that. */
  take(blank: Omit<CutBlank, "count">, wanted: number): number {
    const key = keyOf(blank);
    const there = this.left.get(key) ?? 0;
    const taken = Math.min(there, wanted);
    if (taken > 0) this.left.set(key, there - taken);
    return taken;
  }
}

function keyOf({ work, board, width, height }: Omit<CutBlank, "count">): string {
  const [short, long]: readonly Length[] = width < height ? [width, height] : [height, width];
  return JSON.stringify([work, board, short, long]);
}
