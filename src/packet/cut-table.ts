import { type Length, printExact } from "../lengths/index.ts";
import { CUT_TABLE } from "../words/packet.ts";
import type { TableOut } from "./bench-order.ts";
import type { Blanks } from "./blanks.ts";
import type { PlannedBoard } from "./boards.ts";
import type { ComposedWork } from "./works.ts";

/** Every blank of every plan as a row: its number, what it is for, its size, and where it lies on which sheet. */
export function cutTable(
  works: readonly ComposedWork[],
  boards: readonly PlannedBoard[],
  blanks: Blanks,
): TableOut {
  const rows = boards.flatMap(({ board, job, uses, plan, ruler }, place) => {
    const text = (length: Length): string => printExact(length, ruler.unit);
    return plan.sheets.flatMap((sheet, at) =>
      sheet.placements.map((lies, index) => {
        const use = uses[lies.piece];
        const work = use === undefined ? undefined : works[use.work];
        const mats = work?.composition.mats.length ?? 1;
        const host =
          sheet.from.kind === "drop-out"
            ? blanks.numbers[place]?.[sheet.from.sheet]?.[sheet.from.placement]
            : undefined;
        return [
          String(blanks.numbers[place]?.[at]?.[index] ?? ""),
          work?.work.title ?? "",
          CUT_TABLE.part(use?.mat ?? null, mats),
          board,
          text(lies.width),
          text(lies.height),
          String(at + 1),
          sheet.from.kind === "stock"
            ? (job.sheets[sheet.from.sheet]?.name ?? "")
            : CUT_TABLE.outOf(host ?? 0),
          text(lies.left),
          text(lies.top),
        ];
      }),
    );
  });
  return { header: CUT_TABLE.header, rows };
}
