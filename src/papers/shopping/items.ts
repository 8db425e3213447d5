import type { Size } from "../../geometry/index.ts";
import { larger, type Length, type Ruler } from "../../lengths/index.ts";
import type { CuttingJob, CuttingPlan } from "../../plans/cutting/index.ts";
import { boardWhat, money, plainLength, SHOPPING } from "../../words/shopping.ts";

/** One board's job and plan, as far as shopping needs them. */
export interface BoardToBuy {
  readonly board: string;
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
  /** What one costs; nought from the rack. */
  readonly each: number;
  /** There already: an offcut or a sheet that costs nothing. */
  readonly fromRack: boolean;
}

/** What the plans use, board by board in their order, the stock's own order within. */
export function sheetsToGet(boards: readonly BoardToBuy[]): readonly SheetsToGet[] {
  return boards.flatMap(({ board, job, plan, ruler }) =>
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
          ruler,
          name: sheet.name,
          count: used.length,
          size: { width: sheet.width, height: sheet.height },
          needs,
          each: sheet.cost,
          fromRack: sheet.copies !== null && sheet.cost === 0,
        },
      ];
    }),
  );
}

export const costOf = (sheets: readonly SheetsToGet[]): number =>
  Math.round(sheets.reduce((sum, { count, each }) => sum + count * each, 0) * 100) / 100;

const size = ({ width, height }: Size, on: Ruler): string[] => [
  plainLength(width, on),
  plainLength(height, on),
];

/** The list as rows of a table for the machine, head first; without prices the money columns stay empty. */
export function shoppingRows(
  boards: readonly BoardToBuy[],
  ruler: Ruler,
  priced: boolean,
  tape: Length | null,
): readonly (readonly string[])[] {
  const sheets = sheetsToGet(boards);
  return [
    SHOPPING.csv,
    ...sheets.map((one) => [
      one.fromRack ? SHOPPING.rack : SHOPPING.board,
      String(one.count),
      one.name,
      boardWhat(one.board),
      ...size(one.size, one.ruler),
      ...size(one.needs, one.ruler),
      ...(priced && !one.fromRack ? [money(one.each), money(one.each * one.count)] : ["", ""]),
    ]),
    ...(tape === null
      ? []
      : [[SHOPPING.small, "1", SHOPPING.roll, SHOPPING.tape, plainLength(tape, ruler), "", "", "", "", ""]]),
    [SHOPPING.small, "1", SHOPPING.pack, SHOPPING.blades, "", "", "", "", "", ""],
  ];
}
