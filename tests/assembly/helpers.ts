import type { Composition } from "../../src/assembly/index.ts";
import { printExact } from "../../src/lengths/index.ts";
import { type ComposeDocument, composeFrom, type PracticeDocument } from "../../src/show/index.ts";

/** A document composed; a test that gives one that cannot be read fails with its problems. */
export function composed(document: ComposeDocument, practice: PracticeDocument = {}): Composition {
  const result = composeFrom(document, practice);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

/** Borders of one mat as texts: head, left, right, foot. */
export function borders(composition: Composition, mat = 0): string[] {
  const of = composition.mats[mat]?.borders;
  if (of === undefined) throw new Error(`no mat ${mat}`);
  const { unit } = composition.design.ruler;
  return [of.head, of.left, of.right, of.foot].map((length) =>
    printExact(length, unit).replace(/ (in|mm)$/, ""),
  );
}

export const codes = (composition: Composition): string[] => composition.checks.map(({ code }) => code);

/** "W x H" of the lowest opening, in the document's unit. */
export function opening(composition: Composition): string {
  const back = composition.mats[0]?.back;
  if (back === undefined) throw new Error("no mat");
  const { unit } = composition.design.ruler;
  return `${printExact(back.width, unit)} x ${printExact(back.height, unit)}`;
}
