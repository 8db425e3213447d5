/** The papers of a packet by name, in its order. */
export const PAPER_NAMES = [
  "bench-sheets",
  "mounting-sheets",
  "frame-sheets",
  "cut-plan",
  "chop-list",
  "shopping-list",
  "hanging",
  "light",
  "bench-order",
  "labels",
  "back-labels",
  "wall-labels",
  "packing-list",
  "loan-list",
  "condition-notes",
  "quote",
] as const;
export type PaperName = (typeof PAPER_NAMES)[number];
