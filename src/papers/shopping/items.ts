import type { Size } from "../../geometry/index.ts";
import { larger, type Length, type Ruler } from "../../lengths/index.ts";
import type { ChoppingJob, ChoppingPlan, CuttingJob, CuttingPlan } from "../../plans/index.ts";
import { boardWhat, money, plainLength, SHOPPING } from "../../words/shopping.ts";

/** So many sheets together for one price. */
export interface Pack {
  readonly of: number;
  readonly cost: number;
}

/** What was saved against the same job from bought sheets alone: "needed" where those would not do. */
export type Saved =
  | { readonly kind: "needed" }
  | { readonly kind: "money"; readonly atLeast: number; readonly atMost: number; readonly sheets: number };

/** Moulding to get: its plan, and what its lengths are called. */
export interface MouldingToBuy {
  readonly moulding: string;
  readonly job: ChoppingJob;
  readonly plan: ChoppingPlan;
}

/** The cheapest way to get so many sheets: packs, and the rest singly. */
export interface Buying {
  readonly packs: number;
  readonly singles: number;
  readonly cost: number;
}

export function buying(count: number, each: number, singly: boolean, pack: Pack | null): Buying {
  const alone = { packs: 0, singles: count, cost: count * each };
  if (pack === null) return alone;
  const whole = Math.ceil(count / pack.of);
  const ways: Buying[] = [{ packs: whole, singles: 0, cost: whole * pack.cost }];
  const some = Math.floor(count / pack.of);
  const rest = count - some * pack.of;
  if (singly) ways.push(alone, { packs: some, singles: rest, cost: some * pack.cost + rest * each });
  return ways.reduce((least, way) => (way.cost < least.cost ? way : least));
}

/** One board's job and plan, as far as shopping needs them. */
export interface BoardToBuy {
  readonly board: string;
  /** Glazing has a group of its own. */
  readonly material: "board" | "glass" | "acrylic";
  /** Beside the job's sheets: how they are sold. */
  readonly stock: readonly { readonly pack: Pack | null; readonly singly: boolean }[];
  /** What the rack and the windows saved; null: there was nothing to save by. */
  readonly saved: Saved | null;
  readonly job: CuttingJob;
  readonly plan: CuttingPlan;
  /** What its sheets are measured on. */
  readonly ruler: Ruler;
}

/** Sheets of one size of one board. */
export interface SheetsToGet {
  readonly board: string;
  readonly ruler: Ruler;
  readonly name: string;
  readonly count: number;
  readonly size: Size;
  /** The least that serves for every one of them, the longer side first as the size has it. */
  readonly needs: Size;
  readonly material: BoardToBuy["material"];
  /** What one costs; nought from the rack. */
  readonly each: number;
  readonly pack: Pack | null;
  readonly buying: Buying;
  /** There already: an offcut or a sheet that costs nothing. */
  readonly fromRack: boolean;
}

/** What the plans use, board by board in their order, the stock's own order within. */
export function sheetsToGet(boards: readonly BoardToBuy[]): readonly SheetsToGet[] {
  return boards.flatMap(({ board, material, stock, job, plan, ruler }) =>
    job.sheets.flatMap((sheet, index): SheetsToGet[] => {
      const used = plan.sheets.filter(({ from }) => from.kind === "stock" && from.sheet === index);
      const [first] = used;
      if (first === undefined) return [];
      const needs = used.reduce<Size>(
        (most, one) => ({
          width: larger(most.width, one.needs.width),
          height: larger(most.height, one.needs.height),
        }),
        first.needs,
      );
      return [
        {
          board,
          material,
          ruler,
          name: sheet.name,
          count: used.length,
          size: { width: sheet.width, height: sheet.height },
          needs,
          each: sheet.cost,
          pack: stock[index]?.pack ?? null,
          buying: buying(used.length, sheet.cost, stock[index]?.singly ?? true, stock[index]?.pack ?? null),
          fromRack: sheet.copies !== null && sheet.cost === 0,
        },
      ];
    }),
  );
}

export const costOf = (all: readonly { readonly buying: Buying }[]): number =>
  Math.round(all.reduce((sum, { buying: { cost } }) => sum + cost, 0) * 100) / 100;

/** Lengths of one kind of moulding. */
export interface LengthsToGet {
  readonly name: string;
  readonly moulding: string;
  readonly length: Length;
  readonly count: number;
  readonly each: number;
  readonly fromRack: boolean;
  readonly buying: Buying;
}

/** What the chop plans use, moulding by moulding in the stock's own order. */
export const lengthsToGet = (all: readonly MouldingToBuy[]): readonly LengthsToGet[] =>
  all.flatMap(lengthsOf);

function lengthsOf({ moulding, job, plan }: MouldingToBuy): readonly LengthsToGet[] {
  return job.lengths.flatMap((one, index) => {
    const count = plan.sticks.filter(({ length }) => length === index).length;
    if (count === 0) return [];
    const fromRack = one.copies !== null && one.cost === 0;
    const { name, length, cost: each } = one;
    return [{ name, moulding, length, count, each, fromRack, buying: buying(count, each, true, null) }];
  });
}

const size = ({ width, height }: Size, on: Ruler): string[] => [
  plainLength(width, on),
  plainLength(height, on),
];

/** The list as rows of a table for the machine, head first; without prices the money columns stay empty. */
export function shoppingRows(
  boards: readonly BoardToBuy[],
  mouldings: readonly MouldingToBuy[],
  ruler: Ruler,
  priced: boolean,
  tape: Length | null,
): readonly (readonly string[])[] {
  const sheets = sheetsToGet(boards);
  return [
    SHOPPING.csv,
    ...sheets.map((one) => [
      one.fromRack ? SHOPPING.rack : one.material === "board" ? SHOPPING.board : SHOPPING.glazing,
      String(one.count),
      one.name,
      boardWhat(one.board),
      ...size(one.size, one.ruler),
      ...size(one.needs, one.ruler),
      ...(priced && !one.fromRack ? [money(one.each), money(one.buying.cost)] : ["", ""]),
    ]),
    ...lengthsToGet(mouldings).map((one) => [
      one.fromRack ? SHOPPING.rack : SHOPPING.moulding,
      String(one.count),
      one.name,
      one.moulding,
      plainLength(one.length, ruler),
      "",
      "",
      "",
      ...(priced && !one.fromRack ? [money(one.each), money(one.buying.cost)] : ["", ""]),
    ]),
    ...(tape === null
      ? []
      : [[SHOPPING.small, "1", SHOPPING.roll, SHOPPING.tape, plainLength(tape, ruler), "", "", "", "", ""]]),
    [SHOPPING.small, "1", SHOPPING.pack, SHOPPING.blades, "", "", "", "", "", ""],
  ];
}
