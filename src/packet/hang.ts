import type { Typeface } from "../drawings/index.ts";
import { type FramePlan, framedSize } from "../assembly/index.ts";
import { negate } from "../lengths/index.ts";
import {
  type HangingSheetJob,
  hangingSheet,
  type House,
  type Page,
  type PaperSize,
  type PlanWords,
} from "../papers/index.ts";
import {
  framedOnWall,
  type HangProblem,
  type HangRequest,
  hangWall,
  type HungWall,
  hungWallJson,
  type Practice,
  type PracticeDocument,
  readHangingHabits,
  readShowWall,
  readStatedFrame,
  type ShowHabits,
  type ShowRead,
  wallName,
  type WallWork,
  worksOfWalls,
} from "../show/index.ts";
import { isFramed } from "./framed.ts";
import { PACKET } from "../words/packet.ts";
import { houseOf, type Packeted } from "./bench-sheets.ts";
import type { ComposedWork } from "./works.ts";

/** What a wall's hanging sheet is drawn from. */
export const wallSheetJob = (
  { request, plan, works, hardware }: HungWall,
  house: House,
  planWords: PlanWords,
): HangingSheetJob => {
  const { floor, hookDrop, wall, shakes } = request.habits;
  return {
    wall: request.wall,
    job: request.job,
    plan,
    works: request.works,
    hung: works,
    hardware,
    kind: wall,
    shakes,
    level: floor === 0 ? null : negate(floor),
    measuring: request.measuring,
    hookDrop: request.hookKnown ? hookDrop : null,
    safety: request.safety,
    house,
    planWords,
    ruler: request.ruler,
  };
};

/** The hanging sheets of all walls, one after the other. */
export function* hangingPages(
  { walls }: PlannedWalls,
  { house, plan }: Packeted,
  size: PaperSize,
  typeface: Typeface,
): Generator<Page> {
  for (const { hung } of walls) yield* hangingSheet(wallSheetJob(hung, house, plan), size, typeface);
}

/** Every wall in the open format by its name, with its works' rows in their order, `{"hang": …}`; nothing where there is none. */
export function wallsJson(
  { walls }: PlannedWalls,
  works: readonly ComposedWork[],
): { readonly hang?: object } {
  if (walls.length === 0) return {};
  const rows = (of: PlannedWall): readonly number[] => of.works.flatMap((work) => works[work]?.row ?? []);
  return {
    hang: Object.fromEntries(
      walls.map((wall) => [wall.name, { ...hungWallJson(wall.hung), rows: rows(wall) }]),
    ),
  };
}

/** One wall with the works that are to hang on it. */
export interface ReadWall {
  readonly name: string;
  /** Place among the show's walls. */
  readonly index: number;
  readonly request: HangRequest;
  /** Which of the packet's works hang on it, as the wall counts them. */
  readonly works: readonly number[];
}

/** One wall of a packet, laid out. */
export interface PlannedWall extends Omit<ReadWall, "request"> {
  readonly hung: HungWall;
}

/** The walls of a show before any is laid out, and what of them could not be read or hung. */
export interface ReadWalls {
  readonly walls: readonly ReadWall[];
  /** `row` 1: the fault is a wall's, not a work's. */
  readonly problems: readonly { readonly row: number; readonly problem: HangProblem }[];
  /** Works that could hang, and are on no wall. */
  readonly unhung: readonly ComposedWork[];
  /** Works that are made more than once: one of them hangs. */
  readonly several: readonly ComposedWork[];
}

/** The same, every wall laid out. */
export interface PlannedWalls extends Omit<ReadWalls, "walls"> {
  readonly walls: readonly PlannedWall[];
}

const titles = (works: readonly ComposedWork[]): readonly string[] => works.map(({ work }) => work.title);

/** What must be said of works and walls that hanging sheets do not show. */
export function leftOffWalls({ walls, unhung, several }: PlannedWalls): readonly string[] {
  if (walls.length === 0) return [PACKET.leftOut.wall];
  return [
    ...(unhung.length === 0 ? [] : [PACKET.unhung(titles(unhung))]),
    ...(several.length === 0 ? [] : [PACKET.severalMade(titles(several))]),
  ];
}

const WHOLE_SHOW = 1;

/** Lays out every wall of a show. */
export function planWalls(...read: Parameters<typeof readWalls>): PlannedWalls {
  const { walls, ...rest } = readWalls(...read);
  return { ...rest, walls: walls.map(({ request, ...wall }) => ({ ...wall, hung: hangWall(request) })) };
}

/** Reads every wall of a show with the works in their frames: those that they state, else those that are planned for them. */
export function readWalls(
  show: ShowRead,
  works: readonly ComposedWork[],
  plans: readonly (FramePlan | null)[],
  practice: Practice,
  document: PracticeDocument,
): ReadWalls {
  const none: ReadWalls = { walls: [], problems: [], unhung: [], several: [] };
  if (show.walls.length === 0) return none;
  const habits = readHangingHabits(document, practice);
  if (!habits.ok) return { ...none, problems: habits.problems.map(inPractice) };
  const problems: { row: number; problem: HangProblem }[] = [];
  const framed = works.map((one, index) => {
    const read = framedWork(one, plans[index] ?? null, practice, habits.value);
    if (read.ok) return read.value;
    problems.push(...read.problems.map((problem) => ({ row: one.row, problem })));
    return null;
  });
  const shared = worksOfWalls(
    show.walls,
    works.map(({ work }, index) => ({
      title: work.title,
      wall: work.wall,
      free: (framed[index] ?? null) !== null,
    })),
  );
  for (const { work, problem } of shared.problems)
    problems.push({ row: works[work ?? -1]?.row ?? WHOLE_SHOW, problem });
  const named = houseOf(show, practice);
  const names = show.walls.map((_, index) => wallName(show.walls, index));
  const walls = show.walls.flatMap((wall, index): ReadWall[] => {
    const name = names[index] ?? "";
    const field = `walls.${index}`;
    if (names.indexOf(name) < index) {
      const problem: HangProblem = { field: `${field}.name`, found: name, wanted: { kind: "own-name" } };
      problems.push({ row: WHOLE_SHOW, problem });
      return [];
    }
    const own = shared.ofWall[index] ?? [];
    const hangs = own.flatMap((work) => framed[work] ?? []);
    const read = readShowWall(wall, name, hangs, named, practice, habits.value);
    if (read.ok) return [{ name, index, request: read.value, works: own }];
    problems.push(
      ...read.problems.map((problem) => ({
        row: WHOLE_SHOW,
        problem: { ...problem, field: `${field}.${problem.field}` },
      })),
    );
    return [];
  });
  const hung = new Set(walls.flatMap((wall) => wall.works));
  return {
    walls,
    problems,
    unhung: shared.unhung.flatMap((index) => works[index] ?? []),
    several: works.filter(({ quantity }, index) => quantity > 1 && hung.has(index)),
  };
}

const inPractice = (problem: HangProblem): { readonly row: number; readonly problem: HangProblem } => ({
  row: WHOLE_SHOW,
  problem: { ...problem, field: `practice.${problem.field}` },
});

type FramedRead =
  | { readonly ok: true; readonly value: WallWork | null }
  | { readonly ok: false; readonly problems: readonly HangProblem[] };

/** A work in its frame; null where it cannot be made and states no frame that is there already, or is meant to have none. */
function framedWork(
  one: ComposedWork,
  plan: FramePlan | null,
  practice: Practice,
  habits: ShowHabits,
): FramedRead {
  const { work, frame } = one;
  const stated = readStatedFrame(work, practice);
  if (!stated.ok) return stated;
  const onWall = stated.value ?? (isFramed(one, plan) ? framedSize(plan) : null);
  if (onWall !== null) {
    const overall = frame?.kind.moulding.overall ?? practice.moulding?.overall ?? null;
    return framedOnWall(work, onWall, overall, practice, habits);
  }
  const meant = plan !== null || one.stopped || (work.frame === null && work.wall === undefined);
  return meant
    ? { ok: true, value: null }
    : { ok: false, problems: [{ field: "framed", found: "nothing", wanted: { kind: "frame" } }] };
}
