import { at } from "../at.ts";
import { type Box, boxesOf, Choices, partOf } from "./boxes.ts";
import type { RoughPlan } from "./first.ts";
import { type Layout, type Part, resized, tidied } from "./layout.ts";
import { largestRest, type Least } from "./rough.ts";
import { mayLieIn, type Stock, type WholeJob } from "./whole.ts";

/** The most pieces that are tried in every way, and the most pairs of a choice and a part of it. */
const MOST_PIECES = 14;
const MOST_PAIRS = 700_000;
/** The most sheets that can run out: each asks for one more look at all pairs. */
const MOST_LIMITED = 40;

/**
 * The cheapest plan of a few pieces, of the fewest sheets among those, by trying everything: each choice
 * of pieces in each way to cut it from one rectangle, and each way to share the pieces out among the
 * stocks. Null where there are too many pieces, where the bench's longest cut matters, where no plan
 * makes them all, or where the time is up.
 */
export function cheapestOfFew(job: WholeJob, least: Least, timeIsUp: () => boolean): RoughPlan | null {
  const counts = job.kinds.map(({ count }) => count);
  const pieces = counts.reduce((sum, count) => sum + count, 0);
  const pairs = counts.reduce((product, count) => (product * (count + 1) * (count + 2)) / 2, 1);
  const limited = job.stocks.reduce((sum, { copies }) => sum + copiesOf(copies, pieces), 0);
  const bounded = job.stocks.some(({ longestCut }) => longestCut !== Number.POSITIVE_INFINITY);
  if (pieces > MOST_PIECES || pairs > MOST_PAIRS || limited > MOST_LIMITED || bounded) return null;
  const stocks = job.stocks.filter(({ copies }) => copies > 0);
  const fits = (width: number, height: number): boolean =>
    stocks.some((stock) => width <= stock.width && height <= stock.height);
  const choices = new Choices(counts);
  const boxes = boxesOf(job.kinds, choices, fits, timeIsUp);
  if (boxes === null) return null;
  const shared = new Sharing(job, choices, boxes).layouts(timeIsUp);
  if (shared === null) return null;
  const layouts = shared.map((one) => best(job, one, least));
  return { layouts, placed: Int32Array.from(counts) };
}

/** The pieces of a layout laid so that the largest rest stays that is worth keeping, and something to spare both ways. */
function best(job: WholeJob, { stock, boxes }: Share, least: Least): Layout {
  const { width, height } = at(job.stocks, stock);
  const ways = boxes.flatMap((box) => {
    const spare = Math.min(width - box.width, height - box.height);
    return (["x", "y"] as const).map((axis) => {
      const part = partOf(box);
      const rest = axis === "x" ? width - box.width : height - box.height;
      const whole: Part = { is: "split", axis, width: box.width, height: box.height, parts: [part], rest };
      const root = tidied(resized(whole, width, height));
      return { root, spare, rest: largestRest(root, least) };
    });
  });
  const [way] = ways.toSorted((a, b) => b.rest - a.rest || b.spare - a.spare);
  if (way === undefined) throw new RangeError("a layout without a box");
  return { stock, root: way.root };
}

/** How many copies matter; nought for a stock that never runs out. */
const copiesOf = (copies: number, pieces: number): number =>
  copies === Number.POSITIVE_INFINITY ? 0 : Math.min(copies, pieces);

/** A stock, or one copy of it, and whether it can take each choice. */
interface Ground {
  readonly stock: number;
  /** Whether it can be used again and again. */
  readonly endless: boolean;
  readonly takes: Uint8Array;
}

/** A sheet, and the boxes that the pieces on it can be cut out of. */
interface Share {
  readonly stock: number;
  readonly boxes: readonly Box[];
}

/** The cheapest way to make each choice of pieces: out of the grounds that came before, or with one more. */
class Sharing {
  private readonly job: WholeJob;
  private readonly choices: Choices;
  private readonly boxes: readonly (readonly Box[])[];
  private readonly grounds: readonly Ground[];
  /** The parts of each choice. */
  private readonly parts: readonly (readonly number[])[];

  constructor(job: WholeJob, choices: Choices, boxes: readonly (readonly Box[])[]) {
    this.job = job;
    this.choices = choices;
    this.boxes = boxes;
    this.parts = boxes.map((_, choice) => choices.parts(choice));
    const pieces = job.kinds.reduce((sum, { count }) => sum + count, 0);
    this.grounds = job.stocks.flatMap((stock, index) => {
      const takes = Uint8Array.from(boxes, (list, choice) =>
        Number(this.mayLie(choice, stock) && list.some((box) => liesIn(box, stock))),
      );
      const endless = stock.copies === Number.POSITIVE_INFINITY;
      const ground = { stock: index, endless, takes };
      return Array.from({ length: endless ? 1 : copiesOf(stock.copies, pieces) }, () => ground);
    });
  }

  /** The layouts of the cheapest way to make all; null where there is none, or the time is up. */
  layouts(timeIsUp: () => boolean): Share[] | null {
    const { size } = this.choices;
    let costs = new Float64Array(size).fill(Number.POSITIVE_INFINITY);
    let sheets = new Int32Array(size);
    costs[0] = 0;
    const chosen: Int32Array[] = [];
    for (const { stock, endless, takes } of this.grounds) {
      if (timeIsUp()) return null;
      const { cost, hosts } = at(this.job.stocks, stock);
      const one = hosts === null ? 1 : 0;
      const [nextCosts, nextSheets, parts] = [costs.slice(), sheets.slice(), new Int32Array(size)];
      // An endless stock may be used again on top of itself.
      const [baseCosts, baseSheets] = endless ? [nextCosts, nextSheets] : [costs, sheets];
      for (let choice = 1; choice < size; choice++) {
        for (const part of at(this.parts, choice)) {
          if (takes[part] === 0) continue;
          const sum = at(baseCosts, choice - part) + cost;
          const used = at(baseSheets, choice - part) + one;
          const now = at(nextCosts, choice);
          // Sums of prices differ in their last digits by the order in which they were added.
          const even = Math.abs(sum - now) <= 1e-12 * Math.min(sum, now);
          if (even ? used >= at(nextSheets, choice) : sum >= now) continue;
          nextCosts[choice] = sum;
          nextSheets[choice] = used;
          parts[choice] = part;
        }
      }
      [costs, sheets] = [nextCosts, nextSheets];
      chosen.push(parts);
    }
    return Number.isFinite(at(costs, size - 1)) ? this.traced(chosen) : null;
  }

  private traced(chosen: readonly Int32Array[]): Share[] {
    const shares: Share[] = [];
    let rest = this.choices.size - 1;
    for (let index = chosen.length - 1; index >= 0; ) {
      const { stock, endless } = at(this.grounds, index);
      const part = at(at(chosen, index), rest);
      const size = at(this.job.stocks, stock);
      if (part > 0) shares.push({ stock, boxes: at(this.boxes, part).filter((box) => liesIn(box, size)) });
      rest -= part;
      if (part === 0 || !endless) index--;
    }
    return shares;
  }

  private mayLie(choice: number, stock: Stock): boolean {
    return this.choices
      .digits(choice)
      .every((count, kind) => count === 0 || mayLieIn(at(this.job.kinds, kind), stock));
  }
}

const liesIn = (box: Box, stock: Stock): boolean => box.width <= stock.width && box.height <= stock.height;
