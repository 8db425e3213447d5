import type { Fill, LineKind } from "./marks.ts";

/** How a line kind is drawn on paper, in millimetres: after ISO 128-2, two widths in the ratio 2 : 1, and the house's rules between bands. */
export interface LineStyle {
  readonly width: number;
  /** Dash, gap, dash, gap …; empty for a continuous line. */
  readonly dashes: readonly number[];
}

export const LINE_STYLES: Readonly<Record<LineKind, LineStyle>> = {
  outline: { width: 0.7, dashes: [] },
  edge: { width: 0.5, dashes: [] },
  thin: { width: 0.25, dashes: [] },
  hatch: { width: 0.18, dashes: [] },
  hidden: { width: 0.25, dashes: [3, 0.75] },
  centre: { width: 0.25, dashes: [6, 0.75, 0.25, 0.75] },
  phantom: { width: 0.25, dashes: [6, 0.75, 0.25, 0.75, 0.25, 0.75] },
  "rule-strong": { width: 0.9, dashes: [] },
  rule: { width: 0.5, dashes: [] },
  "rule-thin": { width: 0.25, dashes: [] },
  heavy: { width: 1.2, dashes: [] },
};

/** The distance between hatch lines in millimetres, and whether a second set crosses the first (waste). */
export interface Hatch {
  readonly spacing: number;
  readonly crossed: boolean;
}

export const HATCHES: Readonly<Partial<Record<Fill, Hatch>>> = {
  "hatch-out": { spacing: 2.8, crossed: false },
  "hatch-section": { spacing: 2.2, crossed: false },
  "hatch-waste": { spacing: 1.7, crossed: true },
  "hatch-floor": { spacing: 1.5, crossed: false },
};
