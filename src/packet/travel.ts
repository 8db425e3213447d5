import { closedPackage, type FramePlan, framedSize, type HoldPlan } from "../assembly/index.ts";
import type { Typeface } from "../drawings/index.ts";
import type { Size } from "../geometry/index.ts";
import type { Length } from "../lengths/index.ts";
import {
  conditionNotes,
  loanList,
  type LentWork,
  packingList,
  type Page,
  type PaperSize,
} from "../papers/index.ts";
import {
  boxMats,
  type Money,
  minorDigits,
  packCrates,
  type PackingJob,
  priced,
  readPrice,
  type Stored,
  type Travelling,
} from "../plans/index.ts";
import type { Practice } from "../show/index.ts";
import { type Packeted, workWords, inventoryMark } from "./bench-sheets.ts";
import type { Prepared } from "./order.ts";
import type { ComposedWork } from "./works.ts";

/** A work as it travels: in its frame, or its closed package alone. */
function travelling(
  one: ComposedWork,
  held: HoldPlan | null,
  framed: FramePlan | null,
  { framing: habits }: Practice,
): Travelling {
  const { work, composition, glazing, backing, quantity: count } = one;
  const { title } = work;
  if (framed !== null) return { title, ...framedSize(framed), count };
  const closed = closedPackage(composition, { glazing, backing, habits }, held);
  return { title, ...composition.outer, ...closed, count };
}

interface Going {
  readonly one: ComposedWork;
  readonly held: HoldPlan | null;
  readonly travels: Travelling;
}

/** Every work that is made, as it leaves. */
const goingOf = ({ works, holds, framed, practice }: Prepared): readonly Going[] =>
  works.flatMap((one, index) => {
    if (one.stopped) return [];
    const held = holds[index] ?? null;
    return [{ one, held, travels: travelling(one, held, framed[index] ?? null, practice) }];
  });

/** Crates for the road, and boxes for the store. */
export function packingPages(
  prepared: Prepared,
  { practice, house, plan: planWords }: Packeted,
  size: PaperSize,
  typeface: Typeface,
): readonly Page[] {
  const going = goingOf(prepared);
  if (going.length === 0) return [];
  const { box, ...habits } = practice.packing;
  const job: PackingJob = { works: going.map(({ travels }) => travels), habits };
  return packingList(
    {
      job,
      plan: packCrates(job),
      works: going.map(({ one }) => ({ mark: inventoryMark(one), glass: one.glazing?.kind === "glass" })),
      boxed: boxMats(storedOf(going, practice), box),
      box,
      house,
      planWords,
      ruler: practice.ruler,
      language: practice.language,
    },
    size,
    typeface,
  );
}

/** Closed mats by their outer size, the largest first: without glazing and backing, as they lie in a box. */
function storedOf(going: readonly Going[], { framing: habits }: Practice): readonly Stored[] {
  const sizes = new Map<string, Size & { readonly titles: string[]; readonly thicknesses: Length[] }>();
  for (const { one, held } of going) {
    const { width, height } = one.composition.outer;
    const key = `${width} ${height}`;
    const own = sizes.get(key) ?? { width, height, titles: [], thicknesses: [] };
    sizes.set(key, own);
    const { depth } = closedPackage(one.composition, { glazing: null, backing: null, habits }, held);
    for (let copy = 0; copy < one.quantity; copy++) {
      own.titles.push(one.work.title);
      own.thicknesses.push(depth);
    }
  }
  return [...sizes.values()].toSorted((a, b) => b.width * b.height - a.width * a.height);
}

/** Every work that leaves, by whose it is. */
export function loanPages(
  prepared: Prepared,
  { practice, house, plan: planWords }: Packeted,
  size: PaperSize,
  typeface: Typeface,
): readonly Page[] {
  const currency = prepared.stock.currency ?? practice.money.currency;
  const digits = minorDigits(currency);
  const works = goingOf(prepared).map(({ one, travels }): LentWork => {
    const { record = {} } = one.work;
    return {
      work: workWords(one),
      mark: inventoryMark(one),
      size: { width: travels.width, height: travels.height },
      ruler: one.composition.design.ruler,
      lender: record.lender ?? "",
      value: valueOf(record.value, one.quantity, digits),
    };
  });
  return works.length === 0
    ? []
    : loanList(
        { works, currency, digits, house, planWords, ruler: practice.ruler, language: practice.language },
        size,
        typeface,
      );
}

/** What all copies of a work are worth; null where that is not told. */
function valueOf(value: string | number | undefined, copies: number, digits: number): Money | null {
  const price = value === undefined ? null : readPrice(value);
  return price === null ? null : priced(price, BigInt(copies), digits);
}

/** A note for every work that is made. */
export function conditionPages(
  prepared: Prepared,
  { practice, house, plan: planWords }: Packeted,
  size: PaperSize,
  typeface: Typeface,
): readonly Page[] {
  const works = goingOf(prepared).map(({ one }) => ({
    work: workWords(one),
    mark: inventoryMark(one),
    composition: one.composition,
    condition: one.work.record?.condition ?? "",
  }));
  return works.length === 0
    ? []
    : conditionNotes(
        { works, house, planWords, ruler: practice.ruler, language: practice.language },
        size,
        typeface,
      );
}
