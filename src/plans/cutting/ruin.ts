import { at } from "./at.ts";
import type { Chance } from "./chance.ts";
import type { RoughPlan } from "./first.ts";
import { Forest } from "./forest.ts";
import { AXIS, FIRST, FREE, H, KIND, NEXT, ROOT, ROOT_AT, STOCK, W } from "./memory.ts";
import { noPlace } from "./places.ts";
import { fitsAtAll, type WholeJob } from "./whole.ts";

/** How many steps back the accepted plans are compared with. */
const LATE = 500;
/** A unit of area outside weighs this much against the square of a unit of waste; areas in parts of the largest sheet. */
const OUTSIDE = 100;
/** Chance that a place is passed over, so that the same ruins are not always rebuilt alike: for few pieces at most, and for more. */
const MOST_SKIPS = 0.3;
const SKIPS = 0.01;
/** Chance that a step clears a whole sheet, so that one of another size can take its place. */
const CLEAR = 0.04;

/** Jobs of so few pieces are soon stuck: they begin anew after so many steps a piece without a better forest. */
const FEW = 24;
const ANEW = 15;

/**
 * Ruin and recreate with a goal, after Gardeyn and Wauters 2022: the cost of the open sheets is held
 * below a limit, and the search is for a forest in which nothing is left outside. A step takes some
 * nodes out of the emptier sheets and lays what is outside again, the piece with the fewest places
 * first. What counts is the area outside, then the sum of squared waste (the larger the better).
 * Whether a step stays is settled by late acceptance (Burke and Bykov 2017).
 */
export class Ruin {
  private readonly job: WholeJob;
  private readonly chance: Chance;
  private readonly forest: Forest;
  private readonly place = noPlace();
  private readonly late = new Float64Array(LATE);
  /** The stocks that take a kind, for each kind. */
  private readonly takes: readonly (readonly number[])[];
  private readonly pieces: number;
  private readonly unitArea: number;
  /** Waste of each root at the last weighing. */
  private readonly waste: Float64Array;
  private readonly freed: number[] = [];
  private limit = Number.POSITIVE_INFINITY;
  private open = 0;
  private value = 0;
  private steps = 0;
  /** Since the last beginning: the best value, and the steps that have brought no better one. */
  private lowest = Number.POSITIVE_INFINITY;
  private stuck = 0;

  constructor(job: WholeJob, plan: RoughPlan, chance: Chance) {
    this.job = job;
    this.chance = chance;
    const pieces = job.kinds.reduce((sum, kind) => sum + kind.count, 0);
    this.pieces = pieces;
    // Layouts of other planners may hold more nodes for a piece than the forest's own.
    this.forest = new Forest(job, 2 * pieces, {
      chance,
      share: Math.min(MOST_SKIPS, pieces <= FEW ? 2 / (pieces + 1) : SKIPS),
    });
    this.takes = job.kinds.map((kind) =>
      job.stocks.flatMap((stock, index) => (stock.copies > 0 && fitsAtAll(kind, stock) ? [index] : [])),
    );
    this.unitArea = Math.max(...job.stocks.map((stock) => stock.width * stock.height));
    this.waste = new Float64Array(pieces + 1);
    for (const layout of plan.layouts) this.forest.plant(layout);
    this.open = plan.layouts.reduce((sum, { stock }) => sum + at(job.stocks, stock).cost, 0);
    this.weigh();
  }

  /** Sets the limit, and closes the emptiest sheets until the cost is below it. */
  aimBelow(limit: number): void {
    this.limit = limit - 1e-6 * Math.max(1e-3, Math.min(1, limit));
    const { memory } = this.forest;
    this.value = this.weigh();
    while (this.open > this.limit && memory.rootCount > 0) {
      let emptiest = -1;
      let most = -1;
      for (let index = 0; index < memory.rootCount; index++) {
        const root = memory.root(index);
        const stock = at(this.job.stocks, memory.get(root + STOCK));
        const share = stock.cost === 0 ? -1 : at(this.waste, index) / (stock.width * stock.height);
        if (share <= most) continue;
        most = share;
        emptiest = root;
      }
      if (emptiest < 0) break;
      this.closeRoot(emptiest);
      this.value = this.weigh();
    }
    this.late.fill(this.value);
    this.lowest = this.value;
    this.stuck = 0;
  }

  /** One step. True when nothing is left outside. */
  step(): boolean {
    const { memory } = this.forest;
    if (this.pieces <= FEW && ++this.stuck > ANEW * this.pieces) this.beginAnew();
    memory.begin();
    const { open } = this;
    this.ruin();
    this.recreate();
    const value = this.weigh();
    const slot = this.steps++ % LATE;
    if (value <= this.value || value <= at(this.late, slot)) {
      memory.keep();
      if (value < this.lowest) {
        this.lowest = value;
        this.stuck = 0;
      }
      this.value = value;
    } else {
      memory.takeBack();
      this.open = open;
    }
    this.late[slot] = Math.min(at(this.late, slot), this.value);
    return this.job.kinds.every((kind, index) => memory.placed(index) === kind.count);
  }

  private beginAnew(): void {
    const { memory } = this.forest;
    while (memory.rootCount > 0) this.closeRoot(memory.root(0));
    this.freed.length = 0;
    this.recreate();
    this.value = this.weigh();
    this.lowest = this.value;
    this.late.fill(this.value);
    this.stuck = 0;
  }

  /** The forest as it stands. */
  plan(): RoughPlan {
    const { memory } = this.forest;
    const placed = Int32Array.from(this.job.kinds, (_, index) => memory.placed(index));
    return { layouts: this.forest.layouts(), placed };
  }

  private ruin(): void {
    const { memory } = this.forest;
    const { chance } = this;
    if (memory.rootCount === 0) return;
    if (chance.next() < CLEAR) this.closeRoot(this.emptierRoot());
    // Of a handful of pieces a part stays where it is.
    const nodes =
      this.pieces <= FEW ? 1 + chance.below(1 + Math.min(8, this.pieces / 2)) : 4 + chance.below(5);
    for (let count = 0; count < nodes && memory.rootCount > 0; count++) {
      const root = this.emptierRoot();
      let node = this.childOf(root);
      while (node >= 0 && memory.get(node + KIND) < 0 && chance.next() < 0.6) node = this.childOf(node);
      if (node >= 0) this.forest.remove(node, this.freed);
      if (memory.get(root + FIRST) < 0) this.closeRoot(root);
    }
    this.freed.length = 0;
  }

  /** The one with the most waste of two sheets picked by chance. */
  private emptierRoot(): number {
    const { memory } = this.forest;
    const one = this.chance.below(memory.rootCount);
    const two = this.chance.below(memory.rootCount);
    return memory.root(at(this.waste, one) >= at(this.waste, two) ? one : two);
  }

  private childOf(node: number): number {
    const { memory } = this.forest;
    let picked = -1;
    let count = 0;
    for (let child = memory.get(node + FIRST); child >= 0; child = memory.get(child + NEXT)) {
      if (this.chance.below(++count) === 0) picked = child;
    }
    return picked;
  }

  private closeRoot(root: number): void {
    this.open -= at(this.job.stocks, this.forest.memory.get(root + STOCK)).cost;
    this.forest.close(root, this.freed);
  }

  private recreate(): void {
    const { memory } = this.forest;
    const { kinds } = this.job;
    const waiting: { kind: number; places: number; area: number }[] = [];
    for (let kind = 0; kind < kinds.length; kind++) {
      const { count, width, height } = at(kinds, kind);
      if (memory.placed(kind) >= count) continue;
      const found = this.forest.seek(kind, "squares", this.place);
      const places = found ? this.place.count * this.blur(0.3) : 0;
      waiting.push({ kind, places, area: width * height * this.blur(0.5) });
    }
    waiting.sort((a, b) => a.places - b.places || b.area - a.area || a.kind - b.kind);
    for (const { kind } of waiting) {
      const { count } = at(kinds, kind);
      while (memory.placed(kind) < count && this.lay(kind)) continue;
    }
  }

  /** About one, where few pieces leave few orders to be tried; one itself for more. */
  private blur(share: number): number {
    return this.pieces <= FEW ? 1 + share * (2 * this.chance.next() - 1) : 1;
  }

  /** Lays one piece in the waste that there is, or on a sheet opened for it. */
  private lay(kind: number): boolean {
    if (!this.forest.seek(kind, "squares", this.place) && !this.openFor(kind)) return false;
    this.forest.insert(kind, this.place);
    return true;
  }

  private openFor(kind: number): boolean {
    const { memory } = this.forest;
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    for (const index of at(this.takes, kind)) {
      const { cost, copies, width, height } = at(this.job.stocks, index);
      if (memory.opened(index) >= copies || this.open + cost > this.limit) continue;
      const rank = ((cost + 1e-9) / (width * height)) * (0.7 + 0.6 * this.chance.next());
      if (rank >= least) continue;
      least = rank;
      best = index;
    }
    if (best < 0) return false;
    const root = this.forest.open(best);
    if (!this.forest.seek(kind, "squares", this.place, root)) {
      this.forest.close(root, this.freed);
      return false;
    }
    this.open += at(this.job.stocks, best).cost;
    return true;
  }

  /** How good the forest is; lower is better. Keeps each root's waste. */
  private weigh(): number {
    const { memory } = this.forest;
    const { m, wasteBase, wasteCount } = memory;
    this.waste.fill(0, 0, memory.rootCount);
    let squares = 0;
    for (let index = 0; index < wasteCount; index++) {
      const node = m[wasteBase + index] as number;
      const cross = m[node + (m[node + AXIS] === 0 ? H : W)] as number;
      const area = ((m[node + FREE] as number) * cross) / this.unitArea;
      squares += area * area;
      const root = m[(m[node + ROOT] as number) + ROOT_AT] as number;
      this.waste[root] = (this.waste[root] as number) + area;
    }
    let outside = 0;
    this.job.kinds.forEach((kind, index) => {
      outside += (kind.count - memory.placed(index)) * kind.width * kind.height;
    });
    return (outside / this.unitArea) * OUTSIDE - squares;
  }
}
