import type { WallJob, WallPlan } from "./job.ts";
import type { WallFault } from "./fault.ts";

/** A frame, or a column, of one line: its own two edges, and how low and high the line's parts there reach. */
export interface LinePiece {
  readonly left: number;
  readonly right: number;
  readonly foot: number;
  readonly top: number;
}

/**
 * Holds one line from the left against its rule: its gap, or equal gaps, wherever nothing that must stay free stands
 * between two of it; a parted one stands in the middle of each stretch, or fills it. A line that lies over something
 * must say so, and be unparted.
 */
export function* lineFaults(
  line: readonly LinePiece[],
  gap: number | null,
  centred: boolean,
  job: WallJob,
  { checks }: WallPlan,
): Generator<WallFault> {
  const walls = job.avoid.filter((one) =>
    line.some(({ foot, top }) => Math.min(top, one.y + one.height) > Math.max(foot, one.y)),
  );
  const over = line.some(({ left, right, foot, top }) =>
    walls.some(
      (one) =>
        Math.min(right, one.x + one.width) > Math.max(left, one.x) &&
        Math.min(top, one.y + one.height) > Math.max(foot, one.y),
    ),
  );
  const stuck = checks.some(({ code }) => code === "no-way-past");
  const parted = checks.some(({ code }) => code === "parted");
  if (over && !stuck)
    yield "a line lies over what must stay free and no check says that it could not give way";
  if (over) return;
  for (const run of parted ? runsOf(line, walls) : [line]) {
    const gaps = run.slice(1).map(({ left }, index) => left - (run[index]?.right ?? Number.NaN));
    const [first, last] = [run[0]?.left ?? 0, run.at(-1)?.right ?? 0];
    const beside = parted ? walls : [];
    const start = Math.max(0, ...beside.map((one) => one.x + one.width).filter((end) => end <= first));
    const end = Math.min(job.wall.width, ...beside.map((one) => one.x).filter((from) => from >= last));
    const ends = [first - start, end - last];
    if (gap !== null && gaps.some((one) => one !== gap))
      yield `gaps of ${gaps.join(", ")} where ${gap} is asked`;
    const equal = gap === null ? [...gaps, ...ends] : parted && centred ? ends : [0];
    if (Math.max(...equal) - Math.min(...equal) > 1) yield `a part's gaps ${equal.join(", ")} are not equal`;
  }
}

/** A line's pieces with nothing that must stay free between them. */
function runsOf(line: readonly LinePiece[], walls: WallJob["avoid"]): readonly (readonly LinePiece[])[] {
  const runs: LinePiece[][] = [];
  for (const piece of line) {
    const last = runs.at(-1)?.at(-1);
    const free =
      last !== undefined && !walls.some((one) => one.x < piece.left && one.x + one.width > last.right);
    if (free) runs.at(-1)?.push(piece);
    else runs.push([piece]);
  }
  return runs;
}
