import type { Size } from "../geometry/index.ts";
import type { Length, Ruler } from "../lengths/index.ts";
import type { ChoppingCheck } from "../plans/index.ts";
import type { Speech } from "./checks.ts";
import { choppingCheckPhrase } from "./chopping.ts";
import { wholeWords } from "./figures.ts";
import { bare, flat, NBSP, type Phrase, runs, sentence, sizeRuns, strong, withUnit } from "./runs.ts";
import { VOCABULARY } from "./vocabulary.ts";

/** Words that stand on every chop list. Cautions: the act first, at most twelve words a sentence. */
export const CHOP_LIST = {
  paper: "CHOP LIST",
  unit: "unit",
  overall: "moulding, overall",
  allowance: "package + allowance",
  loss: "saw loss a cut",
  fromItsFace: "A rail, from its face",
  longPoint: "LONG POINT",
  shortPoint: "SHORT POINT",
  lipSide: "LIP side: the sight edge",
  face: "face",
  lip: "lip",
  overallShort: "overall",
  stop: "saw stop",
  rails: "rails",
  ticks: "tick each rail: frame, side",
  continues: "further",
  clamp: "Clamp the stick. Hands off the saw line. Eyes, ears, dust.",
  sides: { head: "head", right: "right", foot: "foot", left: "left" },
  letters: { head: "H", right: "R", foot: "F", left: "L" },
  noSide: "rail",
  nextTells: "saw stops and sticks",
  notInPlanLine: "These rails cannot be chopped from the lengths that there are. The rest is planned.",
  fromRack: "from the rack",
} as const;

/** "Oak: four frames from two sticks". */
export const chopTitle = (moulding: string, frames: number, sticks: number): string =>
  `${moulding === "" ? "Frames" : sentence(moulding)}: ${wholeWords(frames)} frame${frames === 1 ? "" : "s"} from ${wholeWords(sticks)} stick${sticks === 1 ? "" : "s"}`;

/** "Sixteen rails. Three of four frames come from one stick each. No plan costs less." */
export function chopLine(
  rails: number,
  whole: { readonly onOneStick: number; readonly of: number },
  proven: boolean,
): string {
  const frames =
    whole.of === 0
      ? ""
      : whole.onOneStick === whole.of
        ? ` ${whole.of === 1 ? "The frame comes" : "Each frame comes"} from one stick.`
        : ` ${sentence(wholeWords(whole.onOneStick))} of ${wholeWords(whole.of)} frames come${whole.onOneStick === 1 ? "s" : ""} from one stick.`;
  return `${sentence(wholeWords(rails))} rail${rails === 1 ? "" : "s"}.${frames}${proven ? " No plan costs less." : ""}`;
}

export const rabbetName = ({ language }: Speech): string => VOCABULARY[language].rabbet;
export const rabbetBehind = (speech: Speech): string => `${rabbetName(speech)} behind`;

export const rabbetFact = (rabbet: Length, depth: Length | null, ruler: Ruler): Phrase =>
  depth === null
    ? runs`${bare(rabbet, ruler)} wide`
    : runs`${bare(rabbet, ruler)} wide, ${bare(depth, ruler)} deep`;

export const plusFact = (allowance: Length, ruler: Ruler): Phrase => runs`+ ${bare(allowance, ruler)}`;
export const lossFact = (kerf: Length, ruler: Ruler): Phrase => runs`${bare(kerf, ruler, "up")} along it`;

/** `Section, 2 : 1`; heights are not known well enough to be drawn true. */
export const sectionAt = (by: number): string => `Section, widths ${by}${NBSP}:${NBSP}1`;

export const scrapFirst = (moulding: string): string =>
  `Chop one small frame in scrap first. Square? Then the ${moulding === "" ? "moulding" : moulding}.`;

/** Over the sticks: how they lie, and at what scale. */
export const sticksLine = (over: number): string =>
  `The sticks, lip side down; lengths 1${NBSP}:${NBSP}${over}. Rails of one frame follow one another: head, right, foot, left.`;

export const stickName = (number: number): string => `Stick ${number}`;

export interface StickSum {
  readonly number: number;
  readonly length: Length;
  readonly fromRack: boolean;
  readonly rails: Length;
  readonly cuts: number;
  readonly kerf: Length;
  readonly waste: Length;
  readonly used: Length;
  readonly left: Length;
  /** Whether all of it lies on the ruler's marks. */
  readonly onMarks: boolean;
}

/** The stick's sum, as one would pencil it; where it falls between the marks only what it comes to, on the safe side. */
export function stickSum(sum: StickSum, ruler: Ruler): Phrase {
  const { kerf, cuts, waste } = sum;
  const name = runs`${strong(stickName(sum.number))}, ${withUnit(sum.length, ruler)}${sum.fromRack ? ` ${CHOP_LIST.fromRack}` : ""}: rails ${bare(sum.rails, ruler)}`;
  const keep = runs`keep ${withUnit(sum.left, ruler, "down")}`;
  const cutWord = `cut${cuts === 1 ? "" : "s"}`;
  if (!sum.onMarks) {
    return runs`${name}, ${String(cuts)} ${cutWord}, 2 ends of ${bare(waste, ruler, "up")}; in all at most ${bare(sum.used, ruler, "up")}; ${keep}`;
  }
  const loss = (cuts * kerf) as Length;
  const ends = (2 * waste) as Length;
  const lost =
    cuts === 0 ? "" : runs` + ${String(cuts)} ${cutWord} × ${bare(kerf, ruler)} = ${bare(loss, ruler)}`;
  const ended = waste === 0 ? "" : runs` + 2 ends × ${bare(waste, ruler)} = ${bare(ends, ruler)}`;
  return runs`${name}${lost}${ended}; in all ${bare(sum.used, ruler)}; ${keep}`;
}

/** What a ring's number is: the work and its package. */
export const frameWords = (title: string, size: Size, ruler: Ruler): Phrase =>
  runs`${title}${title === "" ? "" : ", "}${sizeRuns(size, ruler, "nearest", false)}`;

export const notInChop = (moulding: string): string =>
  `${moulding === "" ? "Frames" : sentence(moulding)}: not in this plan`;

/** What could not be planned, for the page that comes first. */
export function missingRail(
  check: ChoppingCheck,
  rail: { readonly name: string; readonly length: Length } | undefined,
  ruler: Ruler,
): Phrase {
  const name: Phrase =
    rail === undefined ? "A rail" : flat([rail.name, " (", withUnit(rail.length, ruler, "up"), ")"]);
  return flat(choppingCheckPhrase(check, name, (longest) => withUnit(longest, ruler, "down")));
}
