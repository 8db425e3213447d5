import type { Size } from "../geometry/index.ts";
import { inch, mm } from "../lengths/index.ts";

const inches = (pairs: readonly (readonly [number, number])[]): readonly Size[] =>
  pairs.map(([width, height]) => ({ width: inch(width), height: inch(height) }));
const millimetres = (pairs: readonly (readonly [number, number])[]): readonly Size[] =>
  pairs.map(([width, height]) => ({ width: mm(width), height: mm(height) }));

/**
 * Sizes that can be had ready made, upright. `inch` and `metric` are common practice, no source;
 * `iso` are the A and B series of ISO 216:2007, A6 to A0 and B6 to B0.
 */
export const SIZE_LISTS: Readonly<Record<"inch" | "metric" | "iso", readonly Size[]>> = {
  inch: inches([
    [5, 7],
    [8, 10],
    [11, 14],
    [12, 16],
    [14, 18],
    [16, 20],
    [18, 24],
    [20, 24],
    [22, 28],
    [24, 30],
    [24, 36],
    [30, 40],
  ]),
  metric: millimetres([
    [130, 180],
    [180, 240],
    [240, 300],
    [300, 400],
    [400, 500],
    [500, 600],
    [500, 700],
    [600, 800],
    [700, 1000],
  ]),
  iso: millimetres([
    [105, 148],
    [148, 210],
    [210, 297],
    [297, 420],
    [420, 594],
    [594, 841],
    [841, 1189],
    [125, 176],
    [176, 250],
    [250, 353],
    [353, 500],
    [500, 707],
    [707, 1000],
    [1000, 1414],
  ]),
};
