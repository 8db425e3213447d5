import { sayHangCheck, sayHangWanted, sayWallCheck } from "../../words/hanging.ts";
import type { HangProblem, WallDocument } from "../../show/index.ts";
import { type BlankName, keptSays } from "../../words/page.ts";
import { type KeptShow, showChange } from "../state/change.ts";
import { putAside, setUnread } from "../state/draft.ts";
import { make, show as openShow, told } from "../state/session.ts";
import { onPage, wallsOf } from "./hung.ts";
import { shownWall, wallDraft } from "./state.ts";

/** What stands against a wall's document by itself; null where it can be read. */
export function problemOf(show: KeptShow, walls: readonly WallDocument[], index: number): HangProblem | null {
  const read = wallsOf(show, walls);
  if (read === null || read.walls.some((wall) => wall.index === index)) return null;
  const own = read.problems.find(({ problem }) => problem.field.startsWith(`walls.${index}.`));
  return own?.problem ?? null;
}

/** The drawing follows walls that are not kept yet; null while their text cannot be read. */
export function followWalls(show: KeptShow, walls: readonly WallDocument[] | null, index: number): void {
  wallDraft.value = walls !== null && problemOf(show, walls, index) === null ? walls : null;
}

export function putBackWalls(blank: BlankName): void {
  wallDraft.value = null;
  setUnread(blank, null);
}

/** Keeps a show's walls as a blank or an act has made them. False where they cannot be; then the blank says why. */
export function keepWalls(
  show: KeptShow,
  walls: readonly WallDocument[],
  said: string,
  blank: BlankName | null = null,
): boolean {
  const problem = problemOf(show, walls, shownWall.value);
  if (problem !== null) {
    if (blank !== null) setUnread(blank, { code: "wanted", wanted: sayHangWanted(problem.wanted) });
    return false;
  }
  const change = showChange(show, { walls: [...walls] }, said);
  wallDraft.value = null;
  if (blank !== null) setUnread(blank, null);
  if (change === null) return true;
  if (!make(change)) return false;
  if (blank === null) putAside.value++;
  told.value = keptSays(said, heaviest());
  return true;
}

/** The heaviest check of the wall that is looked at, as a sentence; null where there is none but notes. */
function heaviest(): string | null {
  const show = openShow.value;
  const read = show === null ? null : wallsOf(show);
  const wall = read?.walls.find(({ index }) => index === shownWall.value);
  if (read === null || read === undefined || wall === undefined) return null;
  const { hung, waiting } = onPage(wall, read.composed);
  if (waiting) return null;
  const speech = { ruler: hung.request.ruler, job: hung.request.job };
  const all = [
    ...hung.plan.checks.map((check) => ({ level: check.level, says: sayWallCheck(check, speech) })),
    ...hung.works.flatMap(({ checks }) =>
      checks.map((check) => ({ level: check.level, says: sayHangCheck(check, speech) })),
    ),
  ];
  return (
    (all.find(({ level }) => level === "stop") ?? all.find(({ level }) => level === "warn"))?.says ?? null
  );
}
