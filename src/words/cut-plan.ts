import type { Size } from "../geometry/index.ts";
import type { Length, Ruler } from "../lengths/index.ts";
import { andList, wholeWords } from "./figures.ts";
import {
  bare,
  flat,
  NBSP,
  type Phrase,
  runs,
  sentence,
  sizeRuns,
  strong,
  weighted,
  withUnit,
} from "./runs.ts";

/** Words that stand on every cut plan. */
export const CUT_PLAN = {
  paper: "CUT PLAN",
  sheet: "sheet",
  needs: "this plan needs",
  longest: "longest cut",
  unit: "unit",
  first: "FIRST",
  measure: "measure this sheet:",
  measureOut: "measure this OUT:",
  longSide: "long side",
  shortSide: "short side",
  less: "less: stop, ask for a new plan",
  outLess: "less: stop, cut it from board",
  fence: "fence",
  cuts: "cuts, in this order",
  goesIn: "goes in",
  comesOff: "comes off",
  legendCut: "cut",
  legendStrip: "strip it is cut in",
  legendBlank: "blank",
  legendKeep: "keep",
  legendWaste: "waste",
  legendWindow: "window, cut later",
  keep: "KEEP: to the rack",
  keepShort: "KEEP",
  waste: "waste",
  toRack: "OUT to the rack",
  noCut: "No cut: the board is the blank.",
  layoutTells: "the layout",
  fenceTells: "the fence",
  fenceLine: "Set the fence once for each row. The cuts are on the layout’s page.",
  // Common practice, no source.
  handle: {
    glass: "Gloves, eyes: glass. Score once; snap it away from you.",
    acrylic: "Eyes. Leave its film on both faces until it is framed.",
  },
  outsTells: "windows that fall out",
  small: "Sizes that the drawing has no room for",
  missingTells: "not in this plan",
  notInPlan: (board: string): string => `${board === "" ? "Board" : sentence(board)}: not in this plan`,
  notInPlanLine: "These blanks cannot be cut from the sheets that there are. The rest is planned.",
  moreMissing: (count: number): string => `And ${count} more.`,
} as const;

export const sheetTitle = (board: string, number: number, of: number): string =>
  `${board === "" ? "Board" : sentence(board)}: sheet ${number} of ${of}`;

export const outsTitle = (board: string): string =>
  `${board === "" ? "Board" : sentence(board)}: windows that fall out`;

/** "Eight blanks: six from the sheet, two from windows that fall out. No plan costs less." */
export function sheetLine(fromSheet: number, fromOuts: number, proven: boolean): string {
  const all = fromSheet + fromOuts;
  const how =
    fromOuts === 0
      ? ""
      : `: ${wholeWords(fromSheet)} from the sheet, ${wholeWords(fromOuts)} from ${fromOuts === 1 ? "a window that falls" : "windows that fall"} out`;
  return `${sentence(wholeWords(all))} blank${all === 1 ? "" : "s"}${how}.${proven ? " No plan for the whole list costs less." : ""}`;
}

export const outsLine = (blanks: number): string =>
  `${sentence(wholeWords(blanks))} blank${blanks === 1 ? "" : "s"}, each from an OUT. Cut them when their windows are cut.`;

/** What the sheet is: a bought one by its nominal size, an offcut by its name. */
export const sheetFact = (size: Size, nominal: boolean, ruler: Ruler): Phrase =>
  nominal
    ? runs`${sizeRuns(size, ruler, "nearest", false)}, nominal`
    : runs`${sizeRuns(size, ruler, "nearest", false)}, from the rack`;

export const needsFact = (size: Size, ruler: Ruler): Phrase =>
  runs`${sizeRuns(size, ruler, "up", false)} at least`;

export const lengthFact = (length: Length, ruler: Ruler): Phrase => withUnit(length, ruler, "up");

export const orMore = (size: Size, ruler: Ruler): Phrase =>
  runs`${sizeRuns(size, ruler, "up", false)} or more: go on`;

/** Where the layout uses the whole sheet: what is cut last lies at a raw edge. */
export const larger = "larger than nominal: cut the last of each row to size too";

/** The sheet's edges of which nearly all is used, each with what is left of it. */
export function justFits(
  tight: readonly { readonly edge: Length; readonly spare: Length }[],
  trimmed: boolean,
  ruler: Ruler,
): Phrase {
  const said = tight.map(({ edge, spare }): Phrase => {
    const left = spare === 0 ? "nothing" : withUnit(spare, ruler, "down");
    return runs`${left} to spare of the ${bare(edge, ruler)}`;
  });
  return runs`Just fits: ${joined(said, ", ")}. ${trimmed ? "Trim no more" : "Trim nothing off"}; look for damaged edges first.`;
}

/** How to trim a sheet that is not quite its nominal size. */
export const trimLine = (trim: Length, ruler: Ruler): Phrase =>
  runs`Cuts that only take off an edge trim it by ${withUnit(trim, ruler)}. Sheet not nominal? Set the fence by that.`;

/** What goes in first. */
export const theSheet = (edge: Length, ruler: Ruler): Phrase =>
  runs`the sheet, a ${bare(edge, ruler)} edge against the fence`;
export const theOut = (edge: Length, ruler: Ruler): Phrase =>
  runs`the OUT, a ${bare(edge, ruler)} edge against the fence`;

/** Boards by their letters and size, and how often they are cut or come off where that is more than once each. */
export function boardsWords(
  boards: { readonly letters: readonly string[]; readonly size: Size; readonly times: number },
  ruler: Ruler,
): Phrase {
  const { letters, size, times } = boards;
  const called = letters.length === 0 ? "" : flat([weighted("bold", letters.join(`,${NBSP}`)), NBSP]);
  const often = times > Math.max(1, letters.length) ? `${NBSP}${timesWord(times)}` : "";
  return runs`${called}${sizeRuns(size, ruler, "nearest", false)}${often}`;
}

const timesWord = (times: number): string => (times === 2 ? "twice" : `${times}${NBSP}times`);

export const blanksOff = (numbers: readonly number[]): string =>
  `blank${numbers.length === 1 ? "" : "s"} ${numbers.join(", ")}`;

export const keepOff = (all: Phrase): Phrase => runs`to keep: ${all}`;

export const wasteOff = (parts: number): string =>
  parts === 1 ? "a strip of waste" : `${wholeWords(parts)} strips of waste`;

/** Several phrases parted by a mark. */
export const joined = (all: readonly Phrase[], mark: string): Phrase =>
  flat(all.map((phrase, index) => [index === 0 ? "" : mark, phrase]));

export const fromOutOf = (blank: number): string => `from the OUT of ${blank}`;

/** The caution that saves a blank from the bin. */
export function outsAreBlanks(
  outs: readonly { readonly host: number; readonly blanks: readonly number[] }[],
): string {
  const said = outs.map(({ host, blanks }, index) => {
    const what = `${blanks.length === 1 ? "blank" : "blanks"} ${andList(blanks.map(String))}`;
    return `${index === 0 ? "The OUT" : "that"} of ${host} is ${what}`;
  });
  return `${said.join(", ")}. Do not throw ${outs.length === 1 ? "it" : "them"} away.`;
}

/** `strips`: whether some boards are cut again. */
export const pencilMarks = (strips: boolean, material: "board" | "glass" | "acrylic"): string =>
  `${material === "board" ? "Pencil" : material === "glass" ? "On tape, write" : "On its film, write"} the number on each blank as it comes off, a bar under it${strips ? "; on each strip its letter" : ""}.`;

/** What the other drop-outs give the rack. */
export const outSquares = (hosts: readonly number[], size: Size, ruler: Ruler): Phrase =>
  runs`The OUT of ${andList(hosts.map(String))} squares up to ${sizeRuns(size, ruler, "down")}: to the rack.`;

export const wasteStrip = (width: Length, ruler: Ruler): Phrase => runs`waste, ${withUnit(width, ruler)}`;

export const outOfTitle = (host: number, name: string): Phrase =>
  runs`The OUT of ${strong(`${host}`)}${name === "" ? "" : `, ${name}`}`;

export const needsLine = (size: Size, ruler: Ruler): Phrase =>
  runs`It must square up to ${sizeRuns(size, ruler, "up")} at least; if less, cut from board.`;

export const atScale = (over: number): string => `1${NBSP}:${NBSP}${over}`;
