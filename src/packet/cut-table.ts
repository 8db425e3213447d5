import { type Length, printExact } from "../lengths/index.ts";
import { CUT_TABLE } from "../words/packet.ts";
import type { TableOut } from "./file.ts";
import type { Blank } from "./blanks.ts";

/** Every blank of every plan as a row: its number, what it is for, its size, and where it lies on which sheet. */
export const cutTable = (blanks: readonly Blank[]): TableOut => ({
  header: CUT_TABLE.header,
  rows: blanks.map(({ number, use, work, board, sheet, lies, host }) => {
    const text = (length: Length): string => printExact(length, board.ruler.unit);
    return [
      String(number),
      work.work.title,
      CUT_TABLE.part(use.layer, use.mat, work.composition.mats.length),
      board.board,
      text(lies.width),
      text(lies.height),
      String(sheet + 1),
      host === null ? sheetName(board, sheet) : CUT_TABLE.outOf(host),
      text(lies.left),
      text(lies.top),
    ];
  }),
});

function sheetName({ job, plan }: Blank["board"], sheet: number): string {
  const from = plan.sheets[sheet]?.from;
  return from?.kind === "stock" ? (job.sheets[from.sheet]?.name ?? "") : "";
}
