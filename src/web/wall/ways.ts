import { add, type Length, printExact, subtract, sum, toGraduation } from "../../lengths/index.ts";
import { hangWall, type HangRequest, type WallDocument } from "../../show/index.ts";
import type { HangCheck, Level } from "../../assembly/index.ts";
import type { WallCheck } from "../../plans/index.ts";
import { WALL_WAYS } from "../../words/page.ts";
import { saidLength } from "../blanks/set-length.ts";
import type { KeptShow } from "../state/change.ts";
import { inRule, withTitles, withWall } from "./edits.ts";
import { wallsOf } from "./hung.ts";

/** A way out of something that stands against a wall: all walls as they would be. */
export interface WallWay {
  readonly label: string;
  readonly walls: readonly WallDocument[];
}

type Found = WallCheck | HangCheck;

const WEIGHTS: Readonly<Record<Level, number>> = { stop: 2, warn: 1, note: 0 };

/**
 * The ways out of one check that hold: each wall was laid out, the check is gone from it and nothing as
 * heavy stands there instead. A group is not laid out for this: it takes too long.
 */
export function waysOfWall(
  check: Found,
  whose: number | null,
  show: KeptShow,
  index: number,
  request: HangRequest,
): readonly WallWay[] {
  const before = weightsOf(request);
  const walls = show.walls ?? [];
  return [...tries(check, whose, walls, index, request)].flatMap(([label, wall]) => {
    const next = withWall(walls, index, () => wall);
    const read = wallsOf(show, next)?.walls.find((one) => one.index === index);
    if (read === undefined || read.request.job.rule.kind === "cluster") return [];
    const after = weightsOf(read.request);
    const lighter = (level: Level): boolean =>
      (after.get(level) ?? 0) < (before.get(level) ?? 0) &&
      (["stop", "warn"] as const).every(
        (other) => WEIGHTS[other] <= WEIGHTS[level] || (after.get(other) ?? 0) <= (before.get(other) ?? 0),
      );
    return lighter(check.level) ? [{ label, walls: next }] : [];
  });
}

function weightsOf(request: HangRequest): ReadonlyMap<Level, number> {
  const counts = new Map<Level, number>();
  if (request.job.rule.kind === "cluster") return new Map([["stop", 99]]);
  const { plan, works } = hangWall(request);
  for (const { level } of [...plan.checks, ...works.flatMap(({ checks }) => checks)])
    counts.set(level, (counts.get(level) ?? 0) + 1);
  return counts;
}

function* tries(
  check: Found,
  whose: number | null,
  walls: readonly WallDocument[],
  index: number,
  { job, ruler, works }: HangRequest,
): Generator<readonly [string, WallDocument]> {
  const wall = walls[index];
  if (wall === undefined) return;
  const { unit, graduation } = ruler;
  const said = (length: Length): string => saidLength(length, unit);
  const spell = (length: Length): string => printExact(length, unit);
  const down = (length: number): Length => toGraduation(Math.floor(length) as Length, graduation, "down");
  switch (check.code) {
    case "wall-too-narrow":
    case "touches":
    case "frames-overlap":
    case "off-wall": {
      if (check.code === "off-wall" && (check.side === "top" || check.side === "foot")) {
        const by = toGraduation(check.by, graduation, "up");
        const eye = check.side === "top" ? subtract(job.eyeLine, by) : add(job.eyeLine, by);
        if (eye >= 0) yield [WALL_WAYS.eye(said(eye)), { ...wall, eyeLine: spell(eye) }];
      }
      if (job.rule.kind !== "spread" && job.rule.centre !== null)
        yield [WALL_WAYS.onWall, { ...wall, rule: inRule(wall.rule, { centre: undefined }) }];
      const widths = sum(job.frames.map(({ width }) => width));
      const count = job.frames.length;
      if (job.rule.kind === "gap" && count > 1) {
        const gap = down((job.wall.width - widths) / (count + 1));
        if (gap > 0 && gap < job.rule.gap)
          yield [WALL_WAYS.gap(said(gap)), { ...wall, rule: inRule(wall.rule, { gap: spell(gap) }) }];
        if (check.code === "wall-too-narrow") yield [WALL_WAYS.fill, { ...wall, rule: { row: "spread" } }];
      }
      if (job.rule.kind === "gap" || job.rule.kind === "spread") {
        const gap = job.rule.kind === "gap" ? spell(job.rule.gap) : unit === "in" ? "2 in" : "50 mm";
        yield [WALL_WAYS.rows(2), { ...wall, rule: { rows: { count: 2, gap } } }];
      }
      break;
    }
    default:
      break;
  }
  const title = whose === null ? undefined : works[whose]?.title;
  if (title === undefined || check.level === "note") return;
  const titles = works.flatMap((work, other) => (other === whose ? [] : [work.title]));
  yield [WALL_WAYS.off(title), withTitles(wall, titles)];
}
