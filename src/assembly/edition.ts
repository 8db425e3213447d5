import { type Length, subtract } from "../lengths/index.ts";
import type { Check } from "./check.ts";
import type { Design } from "./design.ts";

/**
 * The sheets of an edition that stand out: a side of sheet or image that differs from the median of
 * the edition by more than the practice's spread. One window serves them all the same; these are
 * worth a second measure before the board is cut.
 */
export function editionChecks(design: Design): Check[] {
  if (design.print === null || design.print.edition.length === 0) return [];
  const sheets = [
    { name: null, sheet: design.print.sheet, image: design.print.image },
    ...design.print.edition,
  ];
  return (["sheet", "image"] as const).flatMap((part) =>
    (["width", "height"] as const).flatMap((direction) => {
      const median = medianOf(sheets.map((sheet) => sheet[part][direction]));
      return sheets.flatMap((sheet): Check[] => {
        const size = sheet[part][direction];
        return Math.abs(subtract(size, median)) > design.editionSpread
          ? [{ level: "warn", code: "edition-outlier", sheet: sheet.name, part, direction, size, median }]
          : [];
      });
    }),
  );
}

/** The middle one; of an even number the lower of the two, so that it is a size that was measured. */
function medianOf(lengths: readonly Length[]): Length {
  const sorted = lengths.toSorted((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)] as Length;
}
