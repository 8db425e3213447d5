import { foundText } from "./problem.ts";
import type { HangProblem } from "./hang-request.ts";
import type { WallDocument } from "./hang-schema.ts";

/** What decides on which wall a work hangs. */
export interface Hangable {
  readonly title: string;
  /** The wall that the work itself names. */
  readonly wall: string | undefined;
  /** Whether it can be made and has a frame. */
  readonly free: boolean;
}

/** Which works hang on which wall. */
export interface WallWorks {
  /** For each wall, its works in the order in which they are laid out. */
  readonly ofWall: readonly (readonly number[])[];
  /** Works that could hang, and are on no wall. */
  readonly unhung: readonly number[];
  /** `work` null: the fault is a wall's. */
  readonly problems: readonly { readonly work: number | null; readonly problem: HangProblem }[];
}

/** What a wall is called; a number stands in for a name. */
export const wallName = (walls: readonly WallDocument[], index: number): string =>
  walls[index]?.name ?? `Wall ${index + 1}`;

/**
 * Shares a show's works out over its walls: titles that a wall lists in their order, then works that name
 * it, then for `"rest"` all that are left. A show's only wall takes the rest where nothing says otherwise.
 * A work that two walls want hangs on the first that lists it, and the second is told.
 */
export function worksOfWalls(walls: readonly WallDocument[], works: readonly Hangable[]): WallWorks {
  const problems: { work: number | null; problem: HangProblem }[] = [];
  const taken = new Map<number, number>();
  const ofWall: number[][] = walls.map(() => []);
  const hang = (work: number, wall: number): void => {
    taken.set(work, wall);
    ofWall[wall]?.push(work);
  };
  walls.forEach((wall, index) => {
    if (!Array.isArray(wall.works)) return;
    wall.works.forEach((title, place) => {
      const named = works.flatMap((work, at) => (work.title === title && !taken.has(at) ? [at] : []));
      for (const work of named) hang(work, index);
      // What cannot be made is known by its title all the same; it is told where it is left out.
      if (named.length === 0)
        problems.push({
          work: null,
          problem: {
            field: `walls.${index}.works.${place}`,
            found: foundText(title),
            wanted: { kind: "free-title" },
          },
        });
    });
  });
  const names = walls.map((_, index) => wallName(walls, index));
  works.forEach(({ wall }, work) => {
    if (wall === undefined) return;
    const index = names.indexOf(wall);
    const other = taken.get(work);
    if (index < 0 || (other !== undefined && other !== index))
      problems.push({
        work,
        problem: { field: "wall", found: foundText(wall), wanted: { kind: "wall" } },
      });
    else if (other === undefined) hang(work, index);
  });
  const rest = walls.findIndex((wall) => wall.works === "rest");
  const only = walls.length === 1 && walls[0]?.works === undefined && taken.size === 0 ? 0 : -1;
  const last = rest >= 0 ? rest : only;
  if (last >= 0) works.forEach((_, work) => taken.has(work) || hang(work, last));
  return {
    ofWall: ofWall.map((all) => all.filter((work) => works[work]?.free === true)),
    unhung: works.flatMap(({ free }, work) => (free && !taken.has(work) ? [work] : [])),
    problems,
  };
}
