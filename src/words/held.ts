import type {
  HoldCheck,
  Holding,
  HoldPlan,
  Known,
  MaterialTopic,
  Refused,
  Way,
  Why,
} from "../assembly/index.ts";
import type { Corner } from "../geometry/index.ts";
import { figureOf, figureText, type Length } from "../lengths/index.ts";
import { sideName, type Speech } from "./checks.ts";
import { sentence } from "./plain.ts";
import { VOCABULARY } from "./vocabulary.ts";

const WAYS: Readonly<Record<Way, string>> = {
  pockets: "corner pockets",
  strips: "edge strips",
  T: "T-hinges",
  V: "V-hinges",
  "pass-through": "hinges through slits",
};
export const wayName = (way: Way): string => WAYS[way];

/** What was asked for, of whatever kind its hinges are. */
export const holdingName = (holding: Holding): string => (holding === "hinges" ? "hinges" : WAYS[holding]);

const CORNERS: Readonly<Record<Corner, string>> = {
  topLeft: "the top left corner",
  topRight: "the top right corner",
  bottomLeft: "the bottom left corner",
  bottomRight: "the bottom right corner",
};
/** Why a way does not serve: the side and the figure. */
export function sayWhy(why: Why, { ruler, set = figureText }: Speech): string {
  const most = (length: Length): string => set(figureOf(length, ruler, "down"));
  const least = (length: Length): string => set(figureOf(length, ruler, "up"));
  switch (why.kind) {
    case "never":
      return `never ${why.never}`;
    case "shows":
      return "the whole sheet is in sight";
    case "pocket":
      return `${CORNERS[why.corner]} hides ${most(why.hidden)} of ${least(why.least)}`;
    case "strip":
      return why.hold > 0
        ? `at ${sideName(why.side)} a strip would hold ${most(why.hold)} of ${least(why.least)}`
        : `at ${sideName(why.side)} a strip would not reach the paper when it moves`;
    case "no-room":
      return `above the sheet there is ${most(why.room)} of ${least(why.needs)}`;
    case "too-heavy":
      return "the sheet is too large or heavy";
    case "too-small":
      return "the sheet is too low";
  }
}

export const sayRefused = ({ way, why }: Refused, speech: Speech): string =>
  `${WAYS[way]}: ${sayWhy(why, speech)}`;

const ADVICE = {
  buffered: "wants a buffered board",
  unbuffered: "wants a board without a buffer",
  either: "bears either board",
  disputed: "has no consensus, and a board without a buffer is the safe side",
  unknown: "is not in the sources",
} as const;

/** A problem of how a work is held: the side, the figure, and a way out. */
export function sayHoldCheck(check: HoldCheck, speech: Speech): string {
  const { ruler, language, set = figureText } = speech;
  const word = VOCABULARY[language];
  const most = (length: Length): string => set(figureOf(length, ruler, "down"));
  const least = (length: Length): string => set(figureOf(length, ruler, "up"));
  switch (check.code) {
    case "no-holding":
      return `Nothing that is allowed holds it: ${check.refused.map((one) => sayRefused(one, speech)).join("; ")}. Show less of the sheet, so that pockets or strips have paper to hold, or lift a never.`;
    case "holding-changed":
      return `${sentence(holdingName(check.asked))} do not serve: ${sayWhy(check.why, speech)}. Held with ${WAYS[check.way]} instead.`;
    case "cover-moves":
      return `${sentence(sideName(check.side))}: the paper reaches under by ${most(check.cover)} and may draw back by ${least(check.needs)}. Cover more there, or narrow the range of humidity.`;
    case "play-widened":
      return `The paper moves more than a play of ${most(check.asked)} takes: ${least(check.play)} is left across each corner.`;
    case "sink-tight":
      return `Round it is ${most(check.room)} of room and the paper may move by ${least(check.needs)}. Narrow the range of humidity, or hold it from one edge.`;
    case "sink-wall":
      return `${sentence(sideName(check.side))}: the sink's wall is ${most(check.wall)} wide and needs ${least(check.least)}. Take a larger board.`;
    case "float-tight":
      return `Round the sheet is ${most(check.gap)} and the paper may grow by ${least(check.needs)} to a side. Widen the gap.`;
    case "riser-gone":
      return `Nothing is left of the riser's ${check.direction}. Make its inset smaller.`;
    case "buffer":
      return `${sentence(check.process)} ${ADVICE[check.advice]}, and this board is buffered. Take an unbuffered board that has passed the photographic activity test.`;
    case "buffer-never":
      return "A buffered board must never touch it, and this board is buffered. Take an unbuffered one.";
    case "board-unknown":
      return `Whether the board has a buffer is not known; the work ${ADVICE[check.advice]}. Ask its maker before it touches the work.`;
    case "glazing-never":
      return `It must never be behind ${check.glazing}. Take ${check.glazing === "glass" ? "acrylic" : "glass"}, or none.`;
    case "process-unknown":
      return check.process === ""
        ? "The process is not told, so nothing is said of a buffer. Enter it."
        : `No source here names ${check.process}: ask a conservator what may touch it.`;
    case "weight-unknown":
      return "The paper's weight is not known: hinges are counted by the size alone. Enter it, such as 300 gsm.";
    case "window-thin":
      return `The ${word.mat} is ${most(check.thickness)} thick; ${least(check.least)} is the least (Fine Art Trade Guild framing standards). Take a thicker board, or two.`;
  }
}

/** What a check is about: the field of the document that mends it. */
export function aboutHoldCheck(check: HoldCheck): string {
  switch (check.code) {
    case "no-holding":
    case "holding-changed":
      return "holding";
    case "cover-moves":
      return `cover.${check.side}`;
    case "play-widened":
      return "play";
    case "sink-tight":
    case "sink-wall":
      return "held.bed";
    case "float-tight":
      return "window.gap";
    case "riser-gone":
      return "practice.held.riser";
    case "buffer":
    case "buffer-never":
    case "board-unknown":
      return "held.board";
    case "glazing-never":
      return "practice.glazing";
    case "process-unknown":
      return "print.process";
    case "weight-unknown":
      return "held.grammage";
    case "window-thin":
      return "mats.0.thickness";
  }
}

/** A rule of materials in a sentence. */
export function sayMaterial(topic: MaterialTopic): string {
  switch (topic) {
    case "board":
      return "Board of cotton rag or purified pulp, free of lignin, pH 7 to about 8.5.";
    case "buffered":
      return "A buffered board, pH 7.5 to 8.5, is the usual safe choice.";
    case "unbuffered":
      return "A neutral board without a buffer.";
    case "buffered-or-not":
      return "A buffered board or a neutral one.";
    case "neutral-fades-too":
      return "In the one experiment neutral board faded it too, not alkaline board alone.";
    case "omitted-no-consensus":
      return "ISO 18902:2013 leaves it out; some read that as: no buffer. There is no consensus.";
    case "activity-test":
      return "What touches it has passed the photographic activity test.";
    case "activity-test-conditions":
      return "The test keeps material and film 15 days at 70 °C and 86 % humidity.";
    case "standard":
      return "ISO 18902 covers mounts, frames and boxes of photographs.";
    case "lightfast":
      return "Facing papers lightfast to Blue Wool 5, without optical brighteners.";
    case "window-thickness":
      return "A window board of at least 1100 micrometres; at museum level all cotton.";
    case "paper-not-board":
      return "ISO 9706 (pH 7.5 to 10, 20 g/kg of carbonate) is for paper; it says nothing of board.";
    case "never-behind":
      return "Never behind it: ordinary foam board, kraft paper, self-adhesive tape.";
    case "paste":
      return "Japanese tissue and starch paste, so that it can expand and contract.";
    case "no-adhesive":
      return "Corner supports and edge strips hold without any adhesive.";
    case "boxes":
      return "Boxes of cellulosic board have a standard of their own, ISO 16245.";
    case "store-inkjet":
      return "Stored at 2 °C or less and 30 to 50 % humidity, or 5 °C and 30 to 40 %.";
    case "store-electrophotographic":
      return "Stored at 16 °C or less and 30 to 50 % humidity.";
  }
}

const KNOWN: Readonly<Record<Known, string>> = {
  read: "",
  "read in a copy": ", read in a copy",
  "second-hand": ", second-hand",
  "from memory": ", from memory",
};

/** A source, and how sure that is where it was not read itself. */
export const saySource = (source: string, known: Known): string => `${source}${KNOWN[known]}`;

/** What the paper's movement was reckoned from. */
export const sayMovement = ({ movement }: HoldPlan): string =>
  movement.swing === null
    ? "ordinary indoor air, at most 0.4 % (C. Green, Dimensional Stability, second-hand)"
    : `${movement.swing} % of humidity, at 3 % from dry to wet (Conservation Science, p. 38, read in a copy)`;

/** How a work is held, for a terminal: what holds it, then what must be said of that. */
export function sayHeld(plan: HoldPlan, speech: Speech): string[] {
  const { ruler, set = figureText } = speech;
  const place = (length: Length): string => set(figureOf(length, ruler));
  const most = (length: Length): string => set(figureOf(length, ruler, "down"));
  const { way, pockets, strips, hinges } = plan;
  const held = (): string => {
    if (way === null) return "Nothing holds it.";
    if (way === "pockets" && pockets !== null)
      return `Held with four ${WAYS[way]}, leg ${most(pockets.leg)}.`;
    if (way === "strips" && strips !== null)
      return `Held with ${WAYS[way]}: ${strips.each.map(({ side, reach }) => `${side} ${most(reach)}`).join(", ")}.`;
    return `Held with ${hinges.at.length} ${WAYS[way]} at the head: ${hinges.at.map(place).join(", ")} from the sheet's left corner.`;
  };
  return [
    "",
    held(),
    ...plan.checks.map(
      (check) => `${check.level === "stop" ? "STOP" : check.level}  ${sayHoldCheck(check, speech)}`,
    ),
  ];
}
