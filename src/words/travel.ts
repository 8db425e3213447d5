import type { Length, Ruler } from "../lengths/index.ts";
import { wholeWords, countedTitle, letterOf } from "./figures.ts";
import { bare, flat, NBSP, type Phrase, runs, sentence, withUnit } from "./runs.ts";

/** Words of the packing list. */
export const PACKING = {
  paper: "PACKING LIST",
  line: "Upright, head up, face to back, never flat. Foam all round; nothing may shift.",
  unit: "unit",
  load: "in all",
  inside: "inside",
  outside: "outside",
  packed: "packed",
  order: "order",
  work: "work",
  size: "wide, high, deep",
  weight: "weight",
  going: "in",
  back: "out",
  glass: "Glass: tape it corner to corner before it travels.",
  heavy: "Heavy: two people lift it.",
  alone: "Deeper or heavier than a crate here may be: it travels alone.",
  assumed: "Weights are reckoned from the boards, rather too much than too little. Weigh the crate.",
  boxes: "In the store: boxes",
  boxSize: "mats of",
  count: "mats",
  thick: "each, with interleaf",
  fit: "a box takes",
  needed: "boxes",
  tooThick: "thicker than the box",
} as const;

export const packingTitle = (crates: number, works: number): string =>
  `${countedTitle(works, "work")} in ${wholeWords(crates)} crate${crates === 1 ? "" : "s"}`;

export const crateName = (index: number): string => `Crate ${letterOf(index)}`;

/** Three lengths with one unit; a crate must be no smaller, so they round up. */
export const roomRuns = (
  { width, height, depth }: { readonly width: Length; readonly height: Length; readonly depth: Length },
  ruler: Ruler,
): Phrase =>
  flat([
    bare(width, ruler, "up"),
    `${NBSP}×${NBSP}`,
    bare(height, ruler, "up"),
    `${NBSP}×${NBSP}`,
    bare(depth, ruler, "up"),
    `${NBSP}${ruler.unit}`,
  ]);

/** What a box is, and how deep. */
export const boxLine = (name: string, depth: Length, room: Length, ruler: Ruler): Phrase =>
  runs`${sentence(name)}: ${withUnit(depth, ruler)} inside, ${withUnit(room, ruler)} left free. One size a box; the thickest mat counts.`;

/** Words of the loan list. */
export const LOAN = {
  paper: "LOAN LIST",
  line: "Both sign when it goes and when it comes back. Look at each work first: its condition note travels with it.",
  money: "values in",
  notTold: "not told",
  number: "number",
  work: "work",
  size: "wide, high",
  value: "value",
  going: "out",
  back: "back",
  own: "The room’s own",
  lentBy: "Lent by ",
  inAll: "In all",
  asFarAsKnown: "In all, as far as told",
  borrower: "borrower",
  from: "from",
  until: "until",
  out: "handed over: name, day",
  returned: "came back: name, day",
} as const;

export const loanTitle = (works: number): string => `${countedTitle(works, "work")} on loan`;

/** Words of the condition notes. */
export const CONDITION = {
  paper: "CONDITION NOTES",
  line: "Look in slant light, front and back. Mark each fault on the drawing with its letter; say where by the grid.",
  known: "Known",
  nothing: "nothing is written down",
  by: "by",
  day: "day",
  where: "where: on the bench, framed",
  notes: "Notes",
  fromFront: "from the FRONT",
  faults: [
    ["T", "tear"],
    ["C", "crease"],
    ["L", "loss"],
    ["F", "foxing, spots"],
    ["S", "stain"],
    ["W", "waves, cockling"],
    ["A", "abrasion"],
    ["D", "fading"],
    ["I", "insects, damp"],
    ["H", "hold is loose"],
  ],
} as const;

export const conditionTitle = (works: number): string => countedTitle(works, "condition note");
