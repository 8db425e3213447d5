import type { Length, Ruler } from "../lengths/index.ts";
import { wholeWords } from "./figures.ts";
import { bare, flat, NBSP, type Phrase, runs, sentence, withUnit } from "./runs.ts";
import { sayMass } from "./weights.ts";

/** Words of the packing list. */
export const PACKING = {
  paper: "PACKING LIST",
  line: "Upright, head up, face to back, never flat. Foam all round; nothing may shift.",
  unit: "unit",
  works: "works",
  load: "in all",
  makesVoid: "makes void",
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
  `${sentence(wholeWords(works))} work${works === 1 ? "" : "s"} in ${wholeWords(crates)} crate${crates === 1 ? "" : "s"}`;

/** A crate's letter: A to Z, then AA. */
const crateLetter = (index: number): string =>
  (index < 26 ? "" : crateLetter(Math.floor(index / 26) - 1)) + String.fromCharCode(65 + (index % 26));

export const crateName = (index: number): string => `Crate ${crateLetter(index)}`;

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

export const massWords = (kilograms: number): string => sayMass(kilograms).replaceAll(" ", NBSP);

/** What a box is, and how deep. */
export const boxLine = (name: string, depth: Length, room: Length, ruler: Ruler): Phrase =>
  runs`${sentence(name)}: ${withUnit(depth, ruler)} inside, ${withUnit(room, ruler)} left free. One size a box; the thickest mat counts.`;

/** Words of the loan list. */
export const LOAN = {
  paper: "LOAN LIST",
  line: "Both sign when it goes and when it comes back. Look at each work first: its condition note travels with it.",
  money: "values in",
  notTold: "not told",
  makesVoid: "makes void",
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

export const loanTitle = (works: number): string =>
  `${sentence(wholeWords(works))} work${works === 1 ? "" : "s"} on loan`;

/** Words of the condition notes. */
export const CONDITION = {
  paper: "CONDITION NOTES",
  title: "Condition notes",
  line: "Look in slant light, front and back. Mark each fault on the drawing with its letter; say where by the grid.",
  known: "Known",
  nothing: "nothing is written down",
  looked: "Looked at",
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
  front: "out",
  back: "back",
} as const;

export const conditionTitle = (works: number): string =>
  `${sentence(wholeWords(works))} condition note${works === 1 ? "" : "s"}`;
