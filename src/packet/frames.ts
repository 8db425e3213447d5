import type { Typeface } from "../drawings/index.ts";
import { printExact, type Unit } from "../lengths/index.ts";
import { chopList, type FrameMade, markOf, type Page, type PaperSize } from "../papers/index.ts";
import {
  type ChoppingJob,
  type ChoppingPlan,
  planChopping,
  type PlanOptions,
  railsOfFrames,
} from "../plans/index.ts";
import type { Moulding, StockMoulding } from "../show/index.ts";
import { CHOP_TABLE } from "../words/packet.ts";
import type { Packeted } from "./bench-sheets.ts";
import type { TableOut } from "./file.ts";
import { isFramed } from "./framed.ts";
import type { Prepared } from "./order.ts";
import type { ComposedWork } from "./works.ts";

/** The frames of one moulding: its job with its plan, and what each frame is called. */
export interface PlannedFrames {
  readonly moulding: Moulding;
  readonly job: ChoppingJob;
  /** The stock's own entries, beside the job's lengths. */
  readonly stock: readonly StockMoulding[];
  readonly plan: ChoppingPlan;
  /** For each kind of frame of the job, the work that it is made for. */
  readonly works: readonly ComposedWork[];
  /** For each kind of frame of the job, its frames; numbered from 1 on. */
  readonly frames: readonly (readonly FrameMade[])[];
}

/** For each moulding all rails of the frames that are made of it, out of its lengths; the mouldings in the order in which works first need them. */
export function planFrames(
  { works, framed, stock, practice }: Pick<Prepared, "works" | "framed" | "stock" | "practice">,
  options: PlanOptions,
  told: (moulding: string) => void,
): readonly PlannedFrames[] {
  const own = practice.moulding?.name ?? null;
  const made = works.flatMap((one, index): readonly MadeWork[] => {
    const { frame } = one;
    return frame !== null && frame.kind.opening === null && isFramed(one, framed[index])
      ? [{ one, moulding: frame.kind.moulding }]
      : [];
  });
  let next = 1;
  const taken = new Map<StockMoulding, number>();
  return groupedBy(made, ({ moulding }) => profileKey(moulding)).flatMap((alike) => {
    const [first] = alike;
    if (first === undefined) return [];
    const { moulding } = first;
    told(moulding.name);
    const kinds = alike.map(({ one: { work, composition, quantity } }) => ({
      name: work.title,
      ...composition.outer,
      count: quantity,
    }));
    // Lengths that name no moulding are the practice's own; of two mouldings of one name the later has what the earlier leaves.
    const named = stock.lengths.filter((one) => (one.moulding ?? own) === moulding.name);
    const lengths = named.map((one) =>
      one.copies === null ? one : { ...one, copies: one.copies - (taken.get(one) ?? 0) },
    );
    const job: ChoppingJob = {
      lengths,
      ...railsOfFrames(kinds, moulding),
      kerf: moulding.kerf,
      waste: moulding.waste,
    };
    const frames = kinds.map(({ name: title, width, height, count }) =>
      Array.from({ length: count }, () => ({ number: next++, title, size: { width, height } })),
    );
    const plan = planChopping(job, options);
    for (const [index, one] of named.entries()) {
      const used = plan.sticks.filter(({ length }) => length === index).length;
      taken.set(one, (taken.get(one) ?? 0) + used);
    }
    return [{ moulding, job, stock: lengths, plan, works: alike.map(({ one }) => one), frames }];
  });
}

interface MadeWork {
  readonly one: ComposedWork;
  readonly moulding: Moulding;
}

/** In the order in which each key is first met. */
function groupedBy<Item>(
  items: readonly Item[],
  keyOf: (item: Item) => string,
): readonly (readonly Item[])[] {
  const groups = new Map<string, Item[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [item]);
    else group.push(item);
  }
  return [...groups.values()];
}

/** Mouldings of one name are one moulding, as long as they measure the same. */
const profileKey = ({ name, overall, rabbet, allowance, kerf, waste }: Moulding): string =>
  JSON.stringify([name, overall, rabbet, allowance, kerf, waste]);

/** The pages of the chop lists, one moulding after the other. */
export const chopListPages = (
  all: readonly PlannedFrames[],
  { house, plan: planWords, practice }: Packeted,
  size: PaperSize,
  typeface: Typeface,
): readonly Page[] =>
  all.flatMap(({ moulding, job, plan, frames }) =>
    chopList(
      { moulding, job, plan, frames, house, planWords, ruler: practice.ruler, language: practice.language },
      size,
      typeface,
    ),
  );

/** Every rail as a row, in the order of the sticks: what it is measured by, which frame and side, and where it lies. */
export const chopTable = (
  all: readonly PlannedFrames[],
  { practice }: Pick<Packeted, "practice">,
): TableOut => ({
  header: CHOP_TABLE.header,
  rows: all.flatMap((one) => railRows(one, practice.ruler.unit)),
});

const railRows = ({ moulding, job, plan, frames }: PlannedFrames, unit: Unit): readonly string[][] =>
  plan.sticks.flatMap((stick, index) =>
    stick.rails.map(({ rail, copy, at }) => {
      const wanted = job.rails[rail];
      const { frame, side } = markOf({ job, frames }, rail, copy);
      return [
        String(index + 1),
        job.lengths[stick.length]?.name ?? "",
        frame === null ? "" : String(frame),
        wanted?.name ?? "",
        side ?? "",
        wanted === undefined ? "" : printExact(wanted.length, unit),
        wanted === undefined || wanted.shortPoint === null ? "" : printExact(wanted.shortPoint, unit),
        printExact(at, unit),
        moulding.name,
      ];
    }),
  );
