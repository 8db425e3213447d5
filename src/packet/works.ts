import {
  type Composition,
  compose,
  composeInFrame,
  type Design,
  fitInto,
  type FrameCheck,
  isStopped,
} from "../assembly/index.ts";
import {
  type Framed,
  type PracticeDocument,
  type Problem,
  type Read,
  readDesign,
  readWorkFrame,
  type RowWork,
} from "../show/index.ts";

/** A work as it is read and composed, before its frame is planned. */
export interface ReadWork extends RowWork, Framed {
  readonly composition: Composition;
  /** It cannot be made as asked: it is listed, but gets no board. */
  readonly stopped: boolean;
  /** Its mat is there already: it is not cut again. */
  readonly ready: boolean;
  readonly quantity: number;
}

export interface ComposedWork extends ReadWork {
  /** What in its frame makes its mats useless: the package does not go in, or its edge or the lip would be seen where they must not. */
  readonly frameStops: readonly FrameCheck[];
}

export interface RowProblem {
  readonly row: number;
  readonly problem: Problem;
}

/** Composes every work of a list; what cannot be read is listed by its row and left out, the rest goes on. */
export function composeWorks(
  listed: readonly RowWork[],
  practice: PracticeDocument,
): { readonly works: readonly ReadWork[]; readonly problems: readonly RowProblem[] } {
  const works: ReadWork[] = [];
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
    const framed = readWorkFrame(work, practice, design.value.ruler.unit);
    if (!framed.ok) {
      problems.push(...framed.problems.map((problem) => ({ row, problem })));
      continue;
    }
    const { composition, frame } = composedIn(design.value, framed.value);
    works.push({
      row,
      work,
      ...framed.value,
      frame,
      composition,
      stopped: isStopped(composition),
      ready: frame !== null && frame.around && frame.mat !== null,
      quantity,
    });
  }
  return { works, problems };
}

/** A design in its frame; one that exists hangs the way up in which the work goes into it best. */
function composedIn(design: Design, { frame }: Framed): Pick<ReadWork, "composition" | "frame"> {
  if (frame === null) return { composition: compose(design), frame };
  if (frame.frame.opening === null && frame.mat === null)
    return { composition: composeInFrame(design, frame), frame };
  const { composition, inFrame } = fitInto(design, frame);
  return { composition, frame: { ...inFrame, kind: frame.kind } };
}

/** Of one work, as many as anyone cuts in one go. */
const MOST_ALIKE = 1000;

/** What something comes to for each work, in their order; null where it does not, and where what it needs cannot be read, which is told by row. */
export function ofEachWork<Plan>(
  works: readonly ReadWork[],
  plan: (work: ReadWork) => Read<Plan | null>,
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
