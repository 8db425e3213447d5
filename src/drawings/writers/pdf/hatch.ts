import { HATCHES } from "../../conventions.ts";
import type { Fill } from "../../marks.ts";
import { millimetresInPoints, operand } from "./numbers.ts";

interface Bounds {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The lines of a hatch over a box in points, at 45 degrees rising to the right; crossed ones also fall. Empty where the fill is no hatch. */
export function hatchLines(fill: Fill, { left, top, right, bottom }: Bounds): string {
  const hatch = HATCHES[fill];
  if (hatch === undefined) return "";
  const step = millimetresInPoints(hatch.spacing) * Math.SQRT2;
  let lines = "";
  const rising = (sum: number): void => {
    // x + y = sum, from the lower left to the upper right
    const [x1, x2] = [Math.max(left, sum - bottom), Math.min(right, sum - top)];
    if (x2 > x1) lines += `${operand(x1)} ${operand(sum - x1)} m ${operand(x2)} ${operand(sum - x2)} l\n`;
  };
  const falling = (difference: number): void => {
    // x - y = difference
    const [x1, x2] = [Math.max(left, difference + top), Math.min(right, difference + bottom)];
    if (x2 > x1) {
      lines += `${operand(x1)} ${operand(x1 - difference)} m ${operand(x2)} ${operand(x2 - difference)} l\n`;
    }
  };
  for (let sum = left + top + step / 2; sum < right + bottom; sum += step) rising(sum);
  if (hatch.crossed) {
    for (let difference = left - bottom + step / 2; difference < right - top; difference += step)
      falling(difference);
  }
  return lines;
}
