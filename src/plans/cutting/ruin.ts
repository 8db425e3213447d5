import { at } from "../at.ts";
import type { Chance } from "../chance.ts";
import type { RoughPlan } from "./first.ts";
import { Forest } from "./forest.ts";
import { FIRST, KIND, NEXT, STOCK } from "./memory.ts";
import { Seeker } from "./places.ts";
import { Weighing } from "./weighing.ts";
import { fitsAtAll, type WholeJob } from "./whole.ts";

/** How many steps back the accepted plans are compared with: few at first, which is quick, and twice as many after each kick. */
const LATE = 30;
const LATEST = 500;
/** A kick follows after so many times as many steps without a better forest; it clears so many sheets. */
const PATIENCE = 15;
const KICKED = 3;
/** Chance that a place is passed over, so that the same ruins are not always rebuilt alike: for few pieces at most, and for more. */
const MOST_SKIPS = 0.3;
const SKIPS = 0.1;
/** Chance that a step clears a whole sheet, so that one of another size can take its place. */
const CLEAR = 0.04;
/** Chance that a ruin goes one level deeper. */
const DEEPER = 0.6;

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
  private readonly seeker: Seeker;
  /** Chance that a place is passed over. */
  private readonly skips: number;
  private readonly late = new Float64Array(LATEST);
  /** The stocks that take a kind, for each kind. */
  private readonly takes: readonly (readonly number[])[];
  /** What the cheapest stock costs. */
  private readonly cheapest: number;
  private readonly pieces: number;
  private readonly weighing: Weighing;
  /** For each kind how many are wanted; the kinds that are to be laid; and how many places each has, by kind. */
  private readonly wanted: Int32Array;
  private readonly waiting: Int32Array;
  private readonly places: Float64Array;
  // The sheet on which a piece was laid last, and whether it was opened for it.
  private touched = -1;
  private opened = false;
  private limit = Number.POSITIVE_INFINITY;
  private open = 0;
  /** The area that the last `recreate` found no place for; in parts of the largest sheet. */
  private outside = 0;
  private value = 0;
  private steps = 0;
  /** Since the last beginning: the best value, and the steps that have brought no better one. */
  private lowest = Number.POSITIVE_INFINITY;
  private stuck = 0;
  /** Steps between a plan and the one that it is compared with. */
  private length = LATE;

  constructor(job: WholeJob, plan: RoughPlan, chance: Chance) {
    this.job = job;
    this.chance = chance;
    const pieces = job.kinds.reduce((sum, kind) => sum + kind.count, 0);
    this.pieces = pieces;
    // Layouts of other planners may hold more nodes for a piece than the forest's own.
    this.forest = new Forest(job, 2 * pieces);
    this.seeker = new Seeker(job, this.forest.memory, "squares", false);
    this.skips = pieces <= FEW ? Math.min(MOST_SKIPS, 2 / (pieces + 1)) : SKIPS;
    this.takes = job.kinds.map((kind) =>
      job.stocks.flatMap((stock, index) => (stock.copies > 0 && fitsAtAll(kind, stock) ? [index] : [])),
    );
    this.cheapest = Math.min(
      ...job.stocks.map(({ cost, copies }) => (copies > 0 ? cost : Number.POSITIVE_INFINITY)),
    );
    this.weighing = new Weighing(job, this.forest.memory);
    this.wanted = Int32Array.from(job.kinds, ({ count }) => count);
    this.waiting = new Int32Array(job.kinds.length);
    this.places = new Float64Array(job.kinds.length);
    for (const layout of plan.layouts) this.forest.plant(layout);
    this.open = plan.layouts.reduce((sum, { stock }) => sum + at(job.stocks, stock).cost, 0);
    this.weighing.weigh();
  }

  /** Sets the limit, and closes the emptiest sheets until the cost is below it. */
  aimBelow(limit: number): void {
    this.limit = limit - 1e-6 * Math.max(1e-3, Math.min(1, limit));
    const { memory } = this.forest;
    this.value = this.weighing.weigh();
    while (this.open > this.limit && memory.rootCount > 0) {
      let emptiest = -1;
      let most = -1;
      for (let index = 0; index < memory.rootCount; index++) {
        const root = memory.root(index);
        const stock = at(this.job.stocks, memory.get(root + STOCK));
        const share = stock.cost === 0 ? -1 : this.weighing.wasteOf(index) / (stock.width * stock.height);
        if (share <= most) continue;
        most = share;
        emptiest = root;
      }
      if (emptiest < 0) break;
      this.closeRoot(emptiest);
      this.value = this.weighing.weigh();
    }
    this.length = LATE;
    this.compareAnew();
  }

  /** One step. True when nothing is left outside. */
  step(): boolean {
    const { memory } = this.forest;
    this.stuck++;
    if (this.pieces <= FEW) {
      if (this.stuck > ANEW * this.pieces) this.beginAnew();
    } else if (this.stuck > PATIENCE * this.length) this.kick();
    memory.begin();
    const { open } = this;
    this.ruin();
    this.recreate();
    const value = this.weighing.weigh(this.outside);
    const slot = this.steps++ % this.length;
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
    return memory.allPlaced === this.pieces;
  }

  /** Clears a few sheets and goes on from there, comparing further back than before. */
  private kick(): void {
    const { memory } = this.forest;
    this.length = Math.min(LATEST, 2 * this.length);
    for (let count = 0; count < KICKED && memory.rootCount > 0; count++) this.closeRoot(this.emptierRoot());
    this.refill();
  }

  private beginAnew(): void {
    const { memory } = this.forest;
    while (memory.rootCount > 0) this.closeRoot(memory.root(0));
    this.refill();
  }

  /** Lays what is outside, and compares with nothing that was before. */
  private refill(): void {
    this.recreate();
    this.value = this.weighing.weigh();
    this.compareAnew();
  }

  private compareAnew(): void {
    this.lowest = this.value;
    this.late.fill(this.value);
    this.stuck = 0;
  }

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
      while (node >= 0 && memory.get(node + KIND) < 0 && chance.next() < DEEPER) node = this.childOf(node);
      if (node >= 0) this.forest.remove(node);
      if (memory.get(root + FIRST) < 0) this.closeRoot(root);
    }
  }

  /** The one with the most waste of two sheets picked by chance. */
  private emptierRoot(): number {
    const { memory } = this.forest;
    const one = this.chance.below(memory.rootCount);
    const two = this.chance.below(memory.rootCount);
    return memory.root(this.weighing.wasteOf(one) >= this.weighing.wasteOf(two) ? one : two);
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
    this.forest.close(root);
  }

  /** Lays what is outside again, always the kind that has the fewest places left, of those the largest. */
  private recreate(): void {
    const { memory } = this.forest;
    const { waiting, places, wanted, seeker } = this;
    let count = 0;
    this.outside = 0;
    for (let kind = 0; kind < wanted.length; kind++) {
      if (memory.placed(kind) < (wanted[kind] as number)) waiting[count++] = kind;
    }
    for (let index = 0; index < count; index++) {
      const kind = waiting[index] as number;
      this.counted(kind, seeker.seek(kind));
    }
    while (count > 0) {
      let next = 0;
      let fewest = Number.POSITIVE_INFINITY;
      // Kinds stand in falling order of area.
      for (let index = 0; index < count; index++) {
        const has = places[waiting[index] as number] as number;
        if (has >= fewest) continue;
        fewest = has;
        next = index;
      }
      const kind = waiting[next] as number;
      const laid = this.lay(kind);
      if (!laid || memory.placed(kind) === wanted[kind]) {
        count--;
        waiting.copyWithin(next, next + 1, count + 1);
      }
      if (!laid) {
        this.outside += this.weighing.outsideOf(kind);
        continue;
      }
      const { opened, touched } = this;
      for (let index = 0; index < count; index++) {
        const other = waiting[index] as number;
        this.counted(other, opened ? seeker.seek(other) : seeker.seekAgain(other, touched));
      }
    }
  }

  private counted(kind: number, found: boolean): void {
    this.places[kind] = found ? this.seeker.count * this.blur(0.3) : 0;
  }

  /** About one, where few pieces leave few orders to be tried; one itself for more. */
  private blur(share: number): number {
    return this.pieces <= FEW ? 1 + share * (2 * this.chance.next() - 1) : 1;
  }

  /** Lays one piece in the waste that there is, or on a sheet opened for it. */
  private lay(kind: number): boolean {
    const { seeker, chance, skips } = this;
    const found = chance.next() < skips ? seeker.seekPast(kind, chance, skips) : seeker.found(kind);
    this.opened = false;
    if (!found && !this.openFor(kind)) return false;
    this.touched = this.forest.insert(kind, seeker);
    return true;
  }

  private openFor(kind: number): boolean {
    const { memory } = this.forest;
    if (this.open + this.cheapest > this.limit) return false;
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
    if (!this.seeker.seekIn(kind, root)) {
      this.forest.close(root);
      return false;
    }
    this.open += at(this.job.stocks, best).cost;
    this.opened = true;
    return true;
  }
}
