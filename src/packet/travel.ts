import { type FramePlan, framedSize, type HoldPlan, paneMass, USUAL_FRAMING } from "../assembly/index.ts";
import type { Typeface } from "../drawings/index.ts";
import type { Size } from "../geometry/index.ts";
import { type Length, sum, ZERO } from "../lengths/index.ts";
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
import { type Packeted, workWords, inventoryMark } from "./bench-sheets.ts";
import type { Prepared } from "./order.ts";
import type { ComposedWork } from "./works.ts";

/** How thick a closed mat is: mats, print, mount, and the bed that the print lies in. */
function closedThickness({ composition }: ComposedWork, held: HoldPlan | null): Length {
  const { mats, print } = composition.design;
  const bed = held?.bed;
  return sum([
    ...mats.map(({ thickness }) => thickness),
    print?.thickness ?? ZERO,
    // The mount is as thick as the lowest mat, where nothing else is told.
    mats[0]?.thickness ?? ZERO,
    bed?.kind === "sink" ? bed.depth : bed?.kind === "raised" ? bed.height : ZERO,
  ]);
}

/** A work as it travels: in its frame, or its closed mat alone, boards without their windows. */
function travelling(one: ComposedWork, held: HoldPlan | null, framed: FramePlan | null): Travelling {
  const { work, composition, quantity: count } = one;
  if (framed !== null) return { title: work.title, ...framedSize(framed), count };
  const { outer, design } = composition;
  const depth = closedThickness(one, held);
  const mass = paneMass(outer.width * outer.height, depth, USUAL_FRAMING[design.ruler.unit].boardDensity);
  return { title: work.title, ...outer, depth, mass, count };
}

interface Going {
  readonly one: ComposedWork;
  readonly held: HoldPlan | null;
  readonly travels: Travelling;
}

/** Every work that is made, as it leaves. */
const goingOf = ({ works, holds, framed }: Prepared): readonly Going[] =>
  works.flatMap((one, index) => {
    if (one.stopped) return [];
    const held = holds[index] ?? null;
    return [{ one, held, travels: travelling(one, held, framed[index] ?? null) }];
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
      boxed: boxMats(storedOf(going), box),
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

/** Closed mats by their outer size, the largest first. */
function storedOf(going: readonly Going[]): readonly Stored[] {
  const sizes = new Map<string, Size & { readonly titles: string[]; readonly thicknesses: Length[] }>();
  for (const { one, held } of going) {
    const { width, height } = one.composition.outer;
    const key = `${width} ${height}`;
    const own = sizes.get(key) ?? { width, height, titles: [], thicknesses: [] };
    sizes.set(key, own);
    for (let copy = 0; copy < one.quantity; copy++) {
      own.titles.push(one.work.title);
      own.thicknesses.push(closedThickness(one, held));
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
