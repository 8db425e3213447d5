import type { CuttingJob } from "../../src/plans/index.ts";

/** The most pieces that are tried in every way. */
const MOST_PIECES = 9;

/** The outer size of pieces laid together so that straight cuts part them. */
type Box = readonly [width: number, height: number];

/** A rectangle that some of the pieces may be cut from. */
interface Ground {
  readonly width: number;
  readonly height: number;
  readonly cost: number;
  /** null: as many as wanted. */
  readonly copies: number | null;
  /** Whether it may itself lie turned, as the window of a piece that turns. */
  readonly turns: boolean;
}

/**
 * The least that any plan by straight cuts from edge to edge can cost, by trying everything: each set
 * of pieces in each way to put two parts of it side by side or one above the other, and each way to
 * share the pieces out among sheets, offcuts and windows. null where the demand cannot be met.
 * For few pieces, no longest cut, and windows only where every piece may turn; throws RangeError
 * otherwise.
 */
export function leastCost(job: CuttingJob): number | null {
  const pieces = job.pieces.flatMap((piece) => Array.from({ length: piece.count }, () => piece));
  if (pieces.length > MOST_PIECES || job.longestCut !== null) throw new RangeError("too much to try it all");
  if (job.dropOuts && pieces.some((piece) => !piece.turns)) throw new RangeError("windows and grain");
  // Each piece takes a kerf with it; the last one's hangs over the edge of the sheet.
  const { kerf } = job;
  const grounds: Ground[] = job.sheets.map((sheet) => ({
    width: sheet.width - 2 * sheet.trim + kerf,
    height: sheet.height - 2 * sheet.trim + kerf,
    cost: sheet.cost,
    copies: sheet.copies,
    turns: false,
  }));
  // A window is smaller than its piece, so no sharing out can go in a circle.
  for (const { window } of job.dropOuts ? pieces : []) {
    if (window === null) continue;
    grounds.push({
      width: window.width + kerf,
      height: window.height + kerf,
      cost: 0,
      copies: 1,
      turns: true,
    });
  }
  const largest = Math.max(0, ...grounds.flatMap(({ width, height }) => [width, height]));
  const boxes = boxesOfSets(
    pieces.map((piece): Box[] => {
      const [width, height] = [piece.width + kerf, piece.height + kerf];
      return piece.turns && width !== height
        ? [
            [width, height],
            [height, width],
          ]
        : [[width, height]];
    }),
    largest,
  );
  return cheapestShare(grounds, boxes);
}

/** For each set of pieces (bit i: piece i) the boxes that it can be cut out of, none larger both ways than another. */
function boxesOfSets(pieces: readonly (readonly Box[])[], largest: number): readonly (readonly Box[])[] {
  const sets: (readonly Box[])[] = [[[0, 0]]];
  for (let set = 1; set < 2 ** pieces.length; set++) {
    const found: Box[] = [];
    const lone = pieces.findIndex((_, bit) => set === 1 << bit);
    if (lone >= 0) found.push(...(pieces[lone] ?? []));
    // Each pair of parts once: the half that holds the lowest piece comes first.
    const lowest = set & -set;
    for (let one = (set - 1) & set; one > 0; one = (one - 1) & set) {
      if ((one & lowest) === 0) continue;
      for (const [a, b] of sets[one] ?? []) {
        for (const [c, d] of sets[set ^ one] ?? []) {
          if (a + c <= largest) found.push([a + c, Math.max(b, d)]);
          if (b + d <= largest) found.push([Math.max(a, c), b + d]);
        }
      }
    }
    sets.push(undominated(found));
  }
  return sets;
}

/** The boxes without those that hold another. */
function undominated(boxes: readonly Box[]): Box[] {
  const kept: Box[] = [];
  let least = Number.POSITIVE_INFINITY;
  for (const box of boxes.toSorted((a, b) => a[0] - b[0] || a[1] - b[1])) {
    if (box[1] >= least) continue;
    least = box[1];
    kept.push(box);
  }
  return kept;
}

/** The least cost of sharing all pieces out. */
function cheapestShare(grounds: readonly Ground[], boxes: readonly (readonly Box[])[]): number | null {
  const holds = (ground: Ground, set: number): boolean =>
    (boxes[set] ?? []).some(
      ([w, h]) =>
        (w <= ground.width && h <= ground.height) ||
        (ground.turns && h <= ground.width && w <= ground.height),
    );
  const all = boxes.length - 1;
  let least = new Float64Array(boxes.length).fill(Number.POSITIVE_INFINITY);
  least[0] = 0;
  for (const ground of grounds) {
    if (ground.copies === null) continue;
    const sets = boxes.map((_, set) => set > 0 && holds(ground, set));
    // More copies than pieces serve nothing.
    for (let copy = 0; copy < Math.min(ground.copies, MOST_PIECES); copy++) {
      const next = Float64Array.from(least);
      for (let set = 1; set <= all; set++) {
        for (let here = set; here > 0; here = (here - 1) & set) {
          const cost = (least[set ^ here] ?? 0) + ground.cost;
          if (sets[here] === true && cost < (next[set] ?? 0)) next[set] = cost;
        }
      }
      least = next;
    }
  }
  const bought = Float64Array.from(boxes, (_, set) =>
    grounds.reduce(
      (cost, ground) =>
        ground.copies === null && ground.cost < cost && holds(ground, set) ? ground.cost : cost,
      Number.POSITIVE_INFINITY,
    ),
  );
  for (let set = 1; set <= all; set++) {
    for (let here = set; here > 0; here = (here - 1) & set) {
      const cost = (least[set ^ here] ?? 0) + (bought[here] ?? 0);
      if (cost < (least[set] ?? 0)) least[set] = cost;
    }
  }
  const cost = least[all] ?? Number.POSITIVE_INFINITY;
  return cost === Number.POSITIVE_INFINITY ? null : cost;
}
