import type { Composition, Design, LiftRule, Ratio, WindowRule } from "../assembly/index.ts";
import type { Run } from "../drawings/index.ts";
import { figureOf, type Length, type Ruler } from "../lengths/index.ts";
import type { Speech } from "./checks.ts";
import { andList, articleOf, wholeWords } from "./figures.ts";
import { count, flat, plainText, type Phrase, runs, sizeRuns, strong, withUnit } from "./runs.ts";
import { VOCABULARY } from "./vocabulary.ts";

/**
 * What is to be made, as one would say it, with every choice in semibold: "Show the **image**,
 * covered 1/8 in all round, in **one mat** of **4-ply white rag**, on an 11 × 14 in board, raised
 * 1/4 in above centre; hold it with **corner pockets**." It says the result, so the outer size is the
 * one that was found.
 */
export function briefRuns(composition: Composition, speech: Speech): readonly Run[] {
  const { design, outer } = composition;
  const { ruler } = speech;
  const article = articleOf(figureOf(outer.width, ruler));
  const board = runs`on ${article} ${sizeRuns(outer, ruler)} board`;
  return runs`Show the ${windowOf(design, ruler)}, in ${matsOf(design, speech)}, ${board}${placeOf(design, speech)}${holdingOf(design)}.`;
}

/** The same as plain text: for a record, a list, a reader of screens. */
export const briefText = (composition: Composition, speech: Speech): string =>
  plainText(briefRuns(composition, speech));

function windowOf({ window, print }: Design, ruler: Ruler): Phrase {
  switch (window.show) {
    case "overlap":
      return runs`${strong("image")}, covered ${withUnit(window.overlap, ruler)} all round`;
    case "margins":
      return runs`${strong("image and its margins")}, ${marginsOf(window, ruler)}`;
    case "sheet":
      return runs`${strong("whole sheet")}, floated, ${withUnit(window.gap, ruler)} clear all round`;
    case "typed":
      return print === null
        ? runs`${strong("opening")}, ${sizeRuns(window, ruler)}`
        : runs`${strong("part")} in a window of ${sizeRuns(window, ruler)}`;
  }
}

function marginsOf({ top, side, foot }: Extract<WindowRule, { show: "margins" }>, ruler: Ruler): Phrase {
  if (top === side && side === foot) return runs`${withUnit(top, ruler)} of paper in sight all round`;
  if (top === side)
    return runs`${withUnit(top, ruler)} of paper in sight, ${withUnit(foot, ruler)} at the foot`;
  return runs`${withUnit(top, ruler)} of paper in sight at the head, ${withUnit(side, ruler)} at the sides, ${withUnit(foot, ruler)} at the foot`;
}

function matsOf({ mats }: Design, { ruler, language }: Speech): Phrase {
  const word = VOCABULARY[language];
  const [lowest, ...upper] = mats;
  const boards = [...new Set(mats.toReversed().map(({ board }) => board))];
  const of = strong(andList(boards));
  if (lowest === undefined || upper.length === 0) return runs`${strong(`one ${word.mat}`)} of ${of}`;
  const number = strong(`${wholeWords(mats.length)} ${word.mats}`);
  const strips = upper.map(({ reveal }) => reveal);
  const [first] = strips;
  if (first !== undefined && strips.every((strip) => strip === first)) {
    const which = strips.length === 1 ? "of the lower one" : "of each lower one";
    return runs`${number} of ${of}, ${stripOf(first, ruler)} ${which} showing`;
  }
  const each = strips
    .map((strip) => withUnit(strip, ruler))
    .flatMap((strip, index) => [
      ...(index === 0 ? [] : [index === strips.length - 1 ? " and " : ", "]),
      strip,
    ]);
  return runs`${number} of ${of}, strips of ${flat(each)} showing, from the lowest up`;
}

const stripOf = (strip: Length, ruler: Ruler): Phrase =>
  runs`${articleOf(figureOf(strip, ruler))} ${withUnit(strip, ruler)} strip`;

function placeOf({ outer, lift }: Design, speech: Speech): Phrase {
  if (outer.kind !== "borders") return liftOf(lift, speech);
  const { head, side, foot } = outer.borders;
  const { ruler } = speech;
  if (head === side && side === foot) return runs`, borders ${withUnit(head, ruler)} all round`;
  return runs`, borders ${withUnit(head, ruler)} at the head, ${withUnit(side, ruler)} at the sides, ${withUnit(foot, ruler)} at the foot`;
}

function liftOf(lift: LiftRule, { ruler, language }: Speech): Phrase {
  const { centre } = VOCABULARY[language];
  switch (lift.rule) {
    case "none":
      return ", kept in the middle";
    case "fixed":
      if (lift.by === 0) return ", kept in the middle";
      return lift.by < 0
        ? runs`, lowered ${withUnit((0 - lift.by) as Length, ruler)} below ${centre}`
        : runs`, raised ${withUnit(lift.by, ruler)} above ${centre}`;
    case "ratio":
      return runs`, the foot ${ratioOf(lift.foot)} times the head`;
    case "optical":
      return `, at the optical ${centre}`;
  }
}

/** A ratio as a decimal of at most three places. */
const ratioOf = ({ over, under }: Ratio): Run => count(Number((Number(over) / Number(under)).toFixed(3)));

const HOLDINGS = {
  pockets: "corner pockets",
  hinges: "hinges at the head",
  strips: "edge strips",
} as const;

function holdingOf({ print, holding }: Design): Phrase {
  return print === null ? "" : runs`; hold it with ${strong(HOLDINGS[holding])}`;
}
