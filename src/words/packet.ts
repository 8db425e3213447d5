import type { Hand } from "../assembly/index.ts";
import type { Side } from "../geometry/index.ts";

const SIDES: Readonly<Record<Side, string>> = {
  head: "head",
  left: "front's left",
  right: "front's right",
  foot: "foot",
};
const HANDS: Readonly<Record<Hand, string>> = {
  left: "LEFT hand",
  right: "RIGHT hand",
  away: "away from you",
  near: "next to you",
};

/** The list that the batch is cut by. */
export const BENCH_ORDER = {
  header: [
    "order",
    "run",
    "set the stop to",
    "scale reads",
    "stop",
    "work",
    "part",
    "blanks",
    "sides (front)",
    "at hand (back)",
    "then",
  ],
  stays: "stays",
  moves: "set it",
  edge: (side: Side): string => SIDES[side],
  hand: (hand: Hand): string => HANDS[hand],
  part: (mat: number, mats: number): string => CUT_TABLE.part("mat", mat, mats),
  out: (host: number, blank: number): string => `the OUT of blank ${host} is blank ${blank}`,
} as const;

/** The list of all blanks. */
export const CUT_TABLE = {
  header: [
    "blank",
    "work",
    "part",
    "board",
    "width",
    "height",
    "sheet",
    "cut from",
    "from the left",
    "from the head",
  ],
  /** A mat by its place from the lowest up; `null` is another layer of the package. */
  part: (layer: "mat" | "mount" | "backing" | "glazing", mat: number | null, mats: number): string =>
    mat === null
      ? layer === "mount"
        ? "mount board"
        : layer
      : mats === 1
        ? "mat"
        : mat === 0
          ? "lowest mat"
          : mat === mats - 1
            ? "top mat"
            : `mat ${mat + 1}`,
  outOf: (blank: number): string => `the OUT of blank ${blank}`,
} as const;

/** The list of all rails. */
export const CHOP_TABLE = {
  header: [
    "stick",
    "length",
    "frame",
    "work",
    "side",
    "long point",
    "short point",
    "from the end",
    "moulding",
  ],
} as const;

/** The list of what exists and what goes into it. */
export const REUSE_TABLE = {
  header: [
    "frame or mat",
    "there are",
    "rank",
    "row",
    "work",
    "hangs",
    "package, wide",
    "package, high",
    "seen at the head",
    "seen at the left",
    "seen at the right",
    "seen at the foot",
    "image at the head",
    "image at the left",
    "image at the right",
    "image at the foot",
    "stops",
    "warnings",
  ],
  /** How the image lies in the window on one side: paper shows round it, or it is covered. */
  image: (by: string, sign: number): string =>
    sign > 0 ? `${by} of paper` : sign < 0 ? `covered ${by}` : "to the edge",
  hangs: (turned: boolean): string => (turned ? "the other way up" : "as given"),
} as const;

/** What a packet says of itself while it is made and when it is done. */
export const PACKET = {
  titles: {
    benchSheets: "Bench sheets",
    mountingSheets: "Mounting sheets",
    frameSheets: "Frame sheets",
    cutPlan: "Cut plan",
    chopList: "Chop list",
    shoppingList: "Shopping list",
    boardLabels: "Board labels",
    backLabels: "Back labels",
    wallLabels: "Wall labels",
    quote: "Quote",
    packingList: "Packing list",
    loanList: "Loan list",
    condition: "Condition notes",
    benchOrder: "Bench order",
    hanging: "Hanging sheets",
    light: "Light",
  },
  progress: (progress: PacketProgress): string => {
    switch (progress.doing) {
      case "composing":
        return "composing";
      case "cutting":
        return `planning ${progress.board}`;
      case "printing":
        return `bench sheet ${progress.done} of ${progress.of}`;
    }
  },
  stockUsed: (sheets: string): string => `No stock was given: boards are planned from sheets of ${sheets}.`,
  leftOut: {
    frames: "chop-list.pdf and chop-list.csv are left out: no frame is made.",
    framed: "frame-sheets.pdf is left out: no work is framed.",
    wall: "hanging.pdf is left out: the show has no wall.",
    light: "light.pdf is left out: the show does not say what light it hangs in.",
    quote: "quote.pdf and quote.csv are left out: no price is known.",
    boards: "cut-plan.pdf and shopping-list.pdf are left out: no work can be cut.",
  },
  unhung: (titles: readonly string[]): string => `On no wall: ${titles.join(", ")}.`,
  severalMade: (titles: readonly string[]): string =>
    `Made more than once, and one of them hangs: ${titles.join(", ")}.`,
  unknownColumns: (names: string): string => `Columns kept as they are and not read: ${names}.`,
  /** `what`: the work, or what it should be made of. */
  stopped: (row: number | null, what: string, text: string): string =>
    `${row === null ? "" : `row ${row}, `}${what}: STOP. ${text}`,
  counted: (works: number, stopped: number, bad: number): string =>
    [
      count(works, "work"),
      ...(stopped === 0 ? [] : [`${stopped} not to be cut as asked`]),
      ...(bad === 0 ? [] : [`${count(bad, "row")} left out`]),
    ].join(", "),
  /** `cost` and `bound` null: no prices are known, and sheets are counted by their area. */
  cost: (
    board: string,
    sheets: number,
    cost: string | null,
    proven: boolean,
    bound: string | null,
  ): string => {
    const spent = `${board}: ${count(sheets, "sheet")}${cost === null ? "" : `, ${cost}`}`;
    if (proven) return `${spent}; no plan costs less`;
    return bound === null ? spent : `${spent}; no plan costs less than ${bound}`;
  },
  wrote: (files: number, folder: string): string => `${count(files, "file")} in ${folder}`,
  notAPacket: (folder: string): string =>
    `--out: found ${folder}, which holds something else; wanted: a new or empty folder, or one that holds a packet`,
} as const;

const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? "" : "s"}`;

/** What is being done. */
export type PacketProgress =
  | { readonly doing: "composing" }
  | { readonly doing: "cutting"; readonly board: string }
  | { readonly doing: "printing"; readonly done: number; readonly of: number };

/** What lies in the rack after a sheet has been cut. */
export const RACK_NAMES = {
  left: (sheet: string): string => `left of ${sheet}`,
  window: (title: string): string => `window of ${title}`,
} as const;
