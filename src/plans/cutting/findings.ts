import { larger, type Length, smaller, subtract } from "../../lengths/index.ts";
import { at } from "../at.ts";
import type { CuttingCheck } from "./checks.ts";
import { type CuttingJob, usableOf } from "./job.ts";
import type { PlannedSheet } from "./plan.ts";
import type { WholeJob } from "./whole.ts";

/** What a plan has to say: pieces it could not make first, then sheets that only just serve, then drop-outs. */
export function checksOf(
  job: CuttingJob,
  whole: WholeJob,
  sheets: readonly PlannedSheet[],
  missing: readonly number[],
): CuttingCheck[] {
  const dropOuts = sheets.filter(({ from }) => from.kind === "drop-out");
  const count = dropOuts.reduce((sum, sheet) => sum + sheet.placements.length, 0);
  return [
    ...job.pieces.flatMap((_, piece) => missingCheck(job, whole, piece, at(missing, piece))),
    ...job.sheets.flatMap((_, sheet) => tightChecks(job, sheets, sheet)),
    ...(count > 0 ? [{ level: "note", code: "drop-outs-used", count } as const] : []),
  ];
}

function missingCheck(job: CuttingJob, whole: WholeJob, piece: number, missing: number): CuttingCheck[] {
  if (missing === 0) return [];
  const why = whole.impossible.find((one) => one.piece === piece)?.why;
  if (why === "cut-too-long" && job.longestCut !== null) {
    return [{ level: "stop", code: "cut-too-long", piece, longest: job.longestCut }];
  }
  if (why === "too-large") return [{ level: "stop", code: "piece-too-large", piece, largest: largest(job) }];
  return [{ level: "stop", code: "stock-short", piece, missing, wanted: at(job.pieces, piece).count }];
}

/** The usable part of the sheet with the largest area. */
function largest(job: CuttingJob): { readonly width: Length; readonly height: Length } | null {
  const sizes = job.sheets.filter((sheet) => sheet.copies !== 0).map(usableOf);
  return sizes.reduce<(typeof sizes)[number] | null>(
    (most, one) => (most === null || one.width * one.height > most.width * most.height ? one : most),
    null,
  );
}

/** One warning for each direction in which sheets of a stock have hardly anything to spare. */
function tightChecks(job: CuttingJob, sheets: readonly PlannedSheet[], stock: number): CuttingCheck[] {
  const used = sheets.filter(({ from }) => from.kind === "stock" && from.sheet === stock);
  return (["width", "height"] as const).flatMap((direction) => {
    const tight = used
      .map((sheet) => ({
        needs: sheet.needs[direction],
        spare: subtract(sheet.size[direction], sheet.needs[direction]),
      }))
      .filter(({ spare }) => spare <= job.tight);
    const [first] = tight;
    if (first === undefined) return [];
    const needs = tight.reduce((most, one) => larger(most, one.needs), first.needs);
    const spare = tight.reduce((least, one) => smaller(least, one.spare), first.spare);
    return [
      {
        level: "warn",
        code: "just-fits",
        sheet: stock,
        direction,
        needs,
        spare,
        sheets: tight.length,
      } as const,
    ];
  });
}
