import type { SizeList } from "./document.ts";
import { Fraction } from "./fraction.ts";
import { readMillimetres } from "./read-length.ts";

/** Width and height, in millimetres. */
export type Pair = readonly [Fraction, Fraction];

const INCH = "5x7 8x10 11x14 12x16 14x18 16x20 18x24 20x24 22x28 24x30 24x36 30x40";
const METRIC = "13x18 18x24 24x30 30x40 40x50 50x60 50x70 60x80 70x100";
// ISO 216:2007, millimetres; A6 to A0, then B6 to B0.
const ISO =
  "105x148 148x210 210x297 297x420 420x594 594x841 841x1189 125x176 176x250 250x353 353x500 500x707 707x1000 1000x1414";

function pairs(text: string, unit: string): Pair[] {
  return text.split(" ").map((size) => {
    const [width = "", height = ""] = size.split("x");
    return [readMillimetres(width, unit), readMillimetres(height, unit)];
  });
}

/** Every size of a list, both ways up. */
export function eitherWayUp(list: SizeList, unit: string): Pair[] {
  const one =
    list === "inch"
      ? pairs(INCH, "in")
      : list === "metric"
        ? pairs(METRIC, "cm")
        : list === "iso"
          ? pairs(ISO, "mm")
          : list.map((size): Pair => [readMillimetres(size.width, unit), readMillimetres(size.height, unit)]);
  return one.flatMap(([width, height]): Pair[] => [
    [width, height],
    [height, width],
  ]);
}

/**
 * The best of the sizes that serve: least area, then the largest least border, then the upright one.
 * `leastBorder` says how small the smallest border of a size is.
 */
export function bestSize(serving: readonly Pair[], leastBorder: (size: Pair) => Fraction): Pair | null {
  const ranked = serving.toSorted(
    (a, b) =>
      a[0].times(a[1]).against(b[0].times(b[1])) ||
      leastBorder(b).against(leastBorder(a)) ||
      Number(b[1].against(b[0]) >= 0) - Number(a[1].against(a[0]) >= 0),
  );
  return ranked[0] ?? null;
}
