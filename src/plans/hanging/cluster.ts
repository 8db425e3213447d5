import type { Length } from "../../lengths/index.ts";
import { at } from "../at.ts";
import type { Chance } from "../chance.ts";
import { wider } from "./clear.ts";
import { groups } from "./sets.ts";
import type { LargestAt, WallBox, WallJob, WallRule } from "./job.ts";
import { type Laid, LayingTree } from "./laying-tree.ts";
import { framesOf, outlineOf, settle } from "./settle.ts";

/** A frame or a set of frames that is laid as one: what it covers, and what it counts in the balance. */
interface Block {
  readonly frames: readonly number[];
  readonly width: number;
  readonly height: number;
  readonly weight: number;
}

/** Lower left corners in the job's order, whole ticks, and the box round them all. */
export interface Cluster {
  readonly corners: readonly { readonly x: number; readonly y: number }[];
  readonly width: number;
  readonly height: number;
}

/** Steps of the search: with sixty frames about a second. */
const STEPS = 60_000;
/** A quiet group is wider than high, as the wall and the eye are. Common practice, no source. */
const WIDER = 1.6;

/** What a layout is judged by, in parts of one. */
const WEIGHTS = { waste: 1, balance: 2, shape: 0.15, outside: 10, touching: 10, largest: 0.2 };

/** Where the largest frames are drawn to, from the group's middle in parts of its width and height. */
const DRAWN_TO: Readonly<Record<LargestAt, { readonly x: number; readonly y: number }>> = {
  middle: { x: 0, y: 0 },
  left: { x: -0.5, y: 0 },
  right: { x: 0.5, y: 0 },
  top: { x: 0, y: 0.5 },
  foot: { x: 0, y: -0.5 },
};
/** Asked for at a side, the balance in that direction is given up and the side counts so many times as much. */
const ASKED = 5;

/**
 * A group in which neighbours stand exactly the rule's gap apart, by annealing over slicing trees
 * (after Wong and Liu 1986): every frame is taken larger by the gap and the frames are laid against each
 * other. Sought are little waste inside a quiet outline, weight in balance about the middle, large works
 * near it, no obstacle touched. The same chance gives the same group.
 */
export function clusterOf(
  job: WallJob,
  rule: Extract<WallRule, { readonly kind: "cluster" }>,
  chance: Chance,
): Cluster {
  const blocks = groups(job.frames).map((frames) => blockOf(job, frames, rule.gap));
  const judge = new Judge(job, blocks, rule);
  const tree = new LayingTree(
    blocks.map(({ width }) => width + rule.gap),
    blocks.map(({ height }) => height + rule.gap),
  );
  anneal(tree, (laid) => judge.cost(laid), chance);
  const frames = framesOf(blocks, job.frames, tree.laid(), rule.gap);
  settle(frames, rule.gap);
  const { left, foot, right, top } = outlineOf(frames);
  const corners = frames.map(({ x, y }) => ({ x: x - left, y: y - foot }));
  return { corners, width: right - left, height: top - foot };
}

/** A set hangs in a row at the gap, each frame in the middle of the row's height. */
function blockOf(job: WallJob, frames: readonly number[], gap: number): Block {
  const all = frames.map((index) => at(job.frames, index));
  return {
    frames,
    width: all.reduce((sum, { width }) => sum + width, gap * (all.length - 1)),
    height: Math.max(...all.map(({ height }) => height)),
    weight: all.reduce((sum, { weight }) => sum + weight, 0),
  };
}

/** Tries one change after another; takes the better, and now and then a worse one while it is hot. Leaves the best. */
function anneal(tree: LayingTree, cost: (laid: Laid) => number, chance: Chance): void {
  let now = cost(tree.laid());
  let best = now;
  let kept = tree.state();
  for (let step = 0; step < STEPS; step++) {
    const heat = 0.06 * (0.0005 / 0.06) ** (step / STEPS);
    const before = tree.state();
    if (!tree.change(chance)) continue;
    const next = cost(tree.laid());
    if (next <= now || chance.next() < Math.exp((now - next) / heat)) {
      now = next;
      if (now < best) {
        best = now;
        kept = tree.state();
      }
    } else {
      tree.restore(before);
    }
  }
  tree.restore(kept);
}

/** What a layout is worth; less is better. */
class Judge {
  private readonly area: number;
  private readonly weight: number;
  private readonly job: WallJob;
  private readonly avoid: readonly WallBox[];
  private readonly blocks: readonly Block[];
  private readonly gap: Length;
  private readonly centre: number;
  private readonly largest: LargestAt;
  /** How much larger than the mean each block is; nought for the smaller ones. */
  private readonly large: readonly number[];

  constructor(
    job: WallJob,
    blocks: readonly Block[],
    { gap, centre, largest }: Extract<WallRule, { readonly kind: "cluster" }>,
  ) {
    this.job = job;
    this.avoid = job.avoid.map((box) => wider(box, gap));
    this.blocks = blocks;
    this.gap = gap;
    this.centre = centre ?? job.wall.width / 2;
    this.largest = largest;
    const areas = blocks.map(({ width, height }) => width * height);
    const mean = areas.reduce((sum, area) => sum + area, 0) / areas.length;
    const over = areas.map((area) => Math.max(0, area - mean));
    const all = over.reduce((sum, area) => sum + area, 0);
    this.large = over.map((area) => (all === 0 ? 1 / over.length : area / all));
    this.area = blocks.reduce((sum, { width, height }) => sum + (width + gap) * (height + gap), 0);
    this.weight = blocks.reduce((sum, block) => sum + block.weight, 0);
  }

  cost(laid: Laid): number {
    const { wall } = this.job;
    const [width, height] = [laid.width - this.gap, laid.height - this.gap];
    const waste = (laid.width * laid.height) / this.area - 1;
    const shape = Math.abs(Math.log(width / height / WIDER));
    const outside = Math.max(0, width / wall.width - 1) + Math.max(0, height / wall.height - 1);
    const to = DRAWN_TO[this.largest];
    let [across, up, away] = [0, 0, 0];
    this.blocks.forEach((block, index) => {
      const x = at(laid.x, index) + block.width / 2 - width / 2;
      const y = at(laid.y, index) + block.height / 2 - height / 2;
      across += block.weight * x;
      up += block.weight * y;
      const [farX, farY] = [x / width - to.x, y / height - to.y];
      const far = to.x !== 0 ? Math.abs(farX) : to.y !== 0 ? Math.abs(farY) : Math.hypot(farX, farY);
      away += at(this.large, index) * far;
    });
    const beside = to.x === 0 ? Math.abs(across) / width : 0;
    const balance = (beside + (to.y === 0 ? Math.abs(up) / height : 0)) / this.weight;
    return (
      WEIGHTS.waste * waste +
      WEIGHTS.balance * balance +
      WEIGHTS.shape * shape +
      WEIGHTS.outside * outside +
      WEIGHTS.touching * this.touching(laid, width, height) +
      WEIGHTS.largest * (this.largest === "middle" ? 1 : ASKED) * away
    );
  }

  /** How much of the obstacles is covered, against the frames' own area. */
  private touching(laid: Laid, width: number, height: number): number {
    if (this.avoid.length === 0) return 0;
    const [left, foot] = [this.centre - width / 2, this.job.eyeLine - height / 2];
    let covered = 0;
    this.blocks.forEach((block, index) => {
      const [x, y] = [left + at(laid.x, index), foot + at(laid.y, index)];
      for (const box of this.avoid) covered += common(box, x, y, block.width, block.height);
    });
    return covered / this.area;
  }
}

const common = (box: WallBox, x: number, y: number, width: number, height: number): number =>
  Math.max(0, Math.min(box.x + box.width, x + width) - Math.max(box.x, x)) *
  Math.max(0, Math.min(box.y + box.height, y + height) - Math.max(box.y, y));
