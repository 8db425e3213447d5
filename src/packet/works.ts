import { type Composition, compose, isStopped } from "../assembly/index.ts";
import { type PracticeDocument, type Problem, type Read, readDesign, type RowWork } from "../show/index.ts";

export interface ComposedWork extends RowWork {
  readonly composition: Composition;
  /** It cannot be made as asked: it is listed, but gets no board. */
  readonly stopped: boolean;
  readonly quantity: number;
}

export interface RowProblem {
  readonly row: number;
  readonly problem: Problem;
}

/** Composes every work of a list; what cannot be read is listed by its row and left out, the rest goes on. */
export function composeWorks(
  listed: readonly RowWork[],
  practice: PracticeDocument,
): { readonly works: readonly ComposedWork[]; readonly problems: readonly RowProblem[] } {
  const works: ComposedWork[] = [];
  const problems: RowProblem[] = [];
  for (const { row, work } of listed) {
    const design = readDesign(work.design, practice);
    if (!design.ok) {
      problems.push(...design.problems.map((problem) => ({ row, problem })));
      continue;
    }
    const quantity = work.quantity ?? 1;
    if (!(Number.isInteger(quantity) && quantity >= 1 && quantity <= MOST_ALIKE)) {
      const wanted = { kind: "number", above: 0, to: MOST_ALIKE, what: "count" } as const;
      problems.push({ row, problem: { field: "quantity", found: String(quantity), wanted } });
      continue;
    }
    const composition = compose(design.value);
    works.push({ row, work, composition, stopped: isStopped(composition), quantity });
  }
  return { works, problems };
}

/** Of one work, as many as anyone cuts in one go. */
const MOST_ALIKE = 1000;

/** What something comes to for each work, in their order; null where it does not, and where what it needs cannot be read, which is told by row. */
export function ofEachWork<Plan>(
  works: readonly ComposedWork[],
  plan: (work: ComposedWork) => Read<Plan | null>,
): { readonly plans: readonly (Plan | null)[]; readonly problems: readonly RowProblem[] } {
  const problems: RowProblem[] = [];
  const plans = works.map((work) => {
    const read = plan(work);
    if (read.ok) return read.value;
    problems.push(...read.problems.map((problem) => ({ row: work.row, problem })));
    return null;
  });
  return { plans, problems };
}
