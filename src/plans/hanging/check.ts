import { lineFaults, type LinePiece } from "./check-parts.ts";
import type { WallFault } from "./fault.ts";
import type { WallJob, WallPlan } from "./job.ts";

/**
 * Holds a plan against its job with nothing of the planner's: frames apart, on the wall and clear of what
 * must stay free unless a check says so, gaps and widths that make the wall, sets side by side, a row's
 * middles on the eye line, neighbours of a group exactly its gap apart.
 */
export function wallFaults(job: WallJob, plan: WallPlan): readonly WallFault[] {
  const boxes = job.frames.flatMap((frame, index) => {
    const place = plan.places[index];
    return place === undefined
      ? []
      : [{ index, left: place.x, foot: place.y, right: place.x + frame.width, top: place.y + frame.height }];
  });
  if (boxes.length !== job.frames.length) return ["a frame has no place"];
  return [
    ...apart(job, plan, boxes),
    ...inOrder(job, plan),
    ...(job.rule.kind === "cluster" ? closeNeighbours(job.rule.gap, boxes) : rowSums(job, plan, boxes)),
  ];
}

interface Edges {
  readonly index: number;
  readonly left: number;
  readonly foot: number;
  readonly right: number;
  readonly top: number;
}

function* apart(job: WallJob, { checks }: WallPlan, boxes: readonly Edges[]): Generator<WallFault> {
  const said = (code: string, frame: number): boolean =>
    checks.some((check) => check.code === code && "frame" in check && check.frame === frame);
  for (const box of boxes) {
    for (const other of boxes)
      if (other.index > box.index && overlap(box, other) && !said("frames-overlap", box.index))
        yield `frames ${box.index} and ${other.index} overlap and no check says so`;
    const off =
      box.left < 0 ||
      box.foot < job.floor ||
      box.right > job.wall.width ||
      box.top > job.floor + job.wall.height;
    if (off !== said("off-wall", box.index))
      yield `frame ${box.index}: off the wall ${off}, checked otherwise`;
    const touched = job.avoid.some((one) =>
      overlap(box, {
        index: -1,
        left: one.x,
        foot: one.y,
        right: one.x + one.width,
        top: one.y + one.height,
      }),
    );
    if (touched !== said("touches", box.index))
      yield `frame ${box.index}: touches ${touched}, checked otherwise`;
  }
}

const overlap = (a: Edges, b: Edges): boolean =>
  Math.min(a.right, b.right) > Math.max(a.left, b.left) && Math.min(a.top, b.top) > Math.max(a.foot, b.foot);

function* inOrder({ frames }: WallJob, { order }: WallPlan): Generator<WallFault> {
  const sorted = order.toSorted((a, b) => a - b);
  if (sorted.length !== frames.length || sorted.some((frame, index) => frame !== index))
    yield "the order does not hold every frame once";
  const ended = new Set<number>();
  let current: number | null = null;
  for (const frame of order) {
    const set = frames[frame]?.set ?? null;
    if (set === current) continue;
    if (current !== null) ended.add(current);
    if (set !== null && ended.has(set)) yield `set ${set} is parted`;
    current = set;
  }
}

function* rowSums(job: WallJob, plan: WallPlan, boxes: readonly Edges[]): Generator<WallFault> {
  const { rule } = job;
  if (rule.kind === "rows") {
    yield* severalRows(rule, job, plan, boxes);
    return;
  }
  if (rule.kind === "cluster" || boxes.length === 0) return;
  const columns = rule.kind === "grid" ? Math.min(rule.columns, boxes.length) : boxes.length;
  const line = Array.from({ length: columns }, (_, column) =>
    aroundAll(plan.order.flatMap((frame, turn) => (turn % columns === column ? (boxes[frame] ?? []) : []))),
  );
  const centred = rule.kind !== "spread" && rule.centre === null;
  yield* lineFaults(line, rule.kind === "spread" ? null : rule.gap, centred, job, plan);
  let x = 0;
  line.forEach(({ left, right }, turn) => {
    x += plan.gaps[turn] ?? Number.NaN;
    x = left === x ? right : Number.NaN;
  });
  if (x + (plan.gaps.at(-1) ?? Number.NaN) !== job.wall.width) yield "gaps and widths do not make the wall";
  if (rule.kind === "grid") return;
  for (const { index, foot, top } of boxes)
    if (Math.abs(foot + top - 2 * job.eyeLine) > 1) yield `frame ${index}: its middle is off the eye line`;
}

const aroundAll = (boxes: readonly Edges[]): LinePiece => ({
  left: Math.min(...boxes.map(({ left }) => left)),
  right: Math.max(...boxes.map(({ right }) => right)),
  foot: Math.min(...boxes.map(({ foot }) => foot)),
  top: Math.max(...boxes.map(({ top }) => top)),
});

/** Along the order a frame's middle is level with the one before, or begins the next row below all of the last. */
function* severalRows(
  rule: Extract<WallJob["rule"], { readonly kind: "rows" }>,
  job: WallJob,
  plan: WallPlan,
  boxes: readonly Edges[],
): Generator<WallFault> {
  const { order, gaps } = plan;
  const rows: Edges[][] = [];
  for (const frame of order) {
    const box = boxes[frame];
    const before = rows.at(-1)?.at(-1);
    if (box === undefined) continue;
    const level = before !== undefined && Math.abs(before.foot + before.top - box.foot - box.top) <= 1;
    if (level && box.left >= before.right) rows.at(-1)?.push(box);
    else rows.push([box]);
  }
  const sets = new Set(job.frames.map(({ set }, index) => (set === null ? `frame ${index}` : `set ${set}`)));
  if (job.frames.length > 0 && rows.length !== Math.min(rule.count, sets.size))
    yield `${rows.length} rows where ${rule.count} are asked for`;
  for (const [index, row] of rows.entries()) {
    // Whether a row gave way stands in no check of its own: the middle of its parts is not asked of it here.
    yield* lineFaults(row, rule.gap, false, job, plan);
    const next = rows[index + 1];
    if (next === undefined) continue;
    const between = Math.min(...row.map(({ foot }) => foot)) - Math.max(...next.map(({ top }) => top));
    if (Math.abs(between - rule.rowGap) > 2) yield `rows ${index} and ${index + 1} are ${between} apart`;
  }
  if (boxes.length === 0) return;
  const group = aroundAll(boxes);
  if (gaps[0] !== group.left || gaps.at(-1) !== job.wall.width - group.right)
    yield "the gaps at the group's ends do not make the wall with it";
}

function* closeNeighbours(gap: number, boxes: readonly Edges[]): Generator<WallFault> {
  for (const box of boxes) {
    let nearest = Number.POSITIVE_INFINITY;
    for (const other of boxes) {
      if (other === box) continue;
      const across = Math.max(box.left, other.left) - Math.min(box.right, other.right);
      const up = Math.max(box.foot, other.foot) - Math.min(box.top, other.top);
      if (Math.max(across, up) < gap) yield `frames ${box.index} and ${other.index} are nearer than the gap`;
      // Neighbours face each other along a part of their sides.
      if (Math.min(across, up) < 0) nearest = Math.min(nearest, Math.max(across, up));
    }
    if (boxes.length > 1 && nearest !== gap)
      yield `frame ${box.index}: its nearest neighbour is not a gap away`;
  }
}
