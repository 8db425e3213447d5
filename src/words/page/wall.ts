import type { WallKind } from "../../assembly/index.ts";
import type { LargestAt, WallRule } from "../../plans/index.ts";
import { wholeWords } from "../figures.ts";
import type { BlankWords } from "./blanks.ts";
import { capital, inSentence } from "./capital.ts";
import type { Options } from "./options.ts";

/** What is said where works hang on walls. */

export const WALL = {
  which: "Which wall",
  facts: "The wall",
  hanging: "How it hangs",
  free: "What must stay free",
  nails: "The nails, by two tapes",
  adds: "Does it add up",
  checks: "What to look at",
  stem: "Wall",
  newWall: "Add a wall",
  removeWall: "Take this wall away",
  addObstacle: "Keep something free",
  addSeat: "Add a seat or bed",
  anew: "Lay the group anew",
  obstacle: "door",
  seat: "bench",
  eyeLine: "eye line",
  levelLine: "level line",
  floor: "floor",
  frames: "Frames",
  gaps: "Gaps",
  ends: "Clear at the ends",
  whole: "The wall",
  allAbove: "all of the above",
  noChecks: "Nothing stands against it: it can be hung as it is.",
  empty: "Nothing hangs here yet.",
  none: "No wall yet",
  noneLine:
    "Say how wide and how high a wall is, and its works are laid out with a place for every nail, read on two tapes.",
  first: "Begin a wall",
  unhung: "Works that hang on no wall",
  hangAll: "Hang them all here",
  takeOff: "Take it off the wall",
  takeAway: "Take it away",
  working: "The group is being solved; until it is, the last one stands here, thin and dashed.",
  unread: "This wall cannot be laid out",
  slides: "The wall, to scale",
  order: "Move works one by one",
  hint: "Take a frame up with the mouse or with Space to hang it elsewhere in the order.",
  caution:
    "Every nail first; then hang, while the tape still lies on the bare wall. Over a seat or bed, in a public place, above 22\u00a0kg (50\u00a0lb), where the ground shakes: a licensed hand. Local codes come first.",
} as const;

const LAID: Readonly<Record<WallRule["kind"], string>> = {
  gap: "in a row",
  spread: "in a row",
  rows: "in rows",
  grid: "in columns",
  cluster: "in a group",
};

/** "North wall, twelve works in a row" */
export const wallHead = (name: string, works: number, rule: WallRule["kind"]): string =>
  works === 0
    ? `${name}, nothing on it yet`
    : `${name}, ${works === 1 ? "one work" : `${wholeWords(works)} works ${LAID[rule]}`}`;

export const RULE_OPTIONS: Options<WallRule["kind"]> = [
  { key: "gap", words: "in a row" },
  { key: "spread", words: "in a row that fills it" },
  { key: "rows", words: "in rows" },
  { key: "grid", words: "in columns" },
  { key: "cluster", words: "in a group" },
];

export const CENTRE_OPTIONS: Options<"wall" | "place"> = [
  { key: "wall", words: "on the wall" },
  { key: "place", words: "about a place" },
];

export const LARGEST_OPTIONS: Options<LargestAt> = [
  { key: "middle", words: "in the middle" },
  { key: "left", words: "at the left" },
  { key: "right", words: "at the right" },
  { key: "top", words: "at the top" },
  { key: "foot", words: "at the foot" },
];

export const KIND_OPTIONS: Options<WallKind | "none"> = [
  { key: "none", words: "a make not known" },
  { key: "plasterboard", words: "plasterboard on studs" },
  { key: "lath", words: "plaster on laths" },
  { key: "boards", words: "boards" },
  { key: "masonry", words: "masonry" },
];

export const FROM_OPTIONS: Options<"floor" | "level"> = [
  { key: "floor", words: "the floor" },
  { key: "level", words: "a level line" },
];

export const LIES_OPTIONS: Options<"level" | "right" | "left"> = [
  { key: "level", words: "is level" },
  { key: "right", words: "falls to the right" },
  { key: "left", words: "falls to the left" },
];

export const PASS_OPTIONS: Options<"no" | "yes"> = [
  { key: "no", words: "Nobody passes close by" },
  { key: "yes", words: "People pass close by" },
];

export const SHAKES_OPTIONS: Options<"no" | "yes"> = [
  { key: "no", words: "is still" },
  { key: "yes", words: "may shake" },
];

/** Rows or columns: one to nine, and as many as there are already. */
export const countOptions = (count: number): Options<string> => {
  const numbers = [1, 2, 3, 4, 5, 6, 7, 8, 9, ...(count > 9 ? [count] : [])];
  return numbers.map((number) => ({ key: String(number), words: wholeWords(number) }));
};

/** The wall as it stands. `level`: heights are counted from a level line. */
export function wallFacts(level: boolean, falls: boolean): string {
  const from = level ? "[wall.from] that stands [wall.levelLine] above the floor" : "[wall.from]";
  const lies = `${level ? "the line" : "the floor"} [wall.lies]${falls ? ", by~[wall.fall]" : ""}`;
  return `[wall.name] is [wall.width] wide and [wall.height] high, of [wall.kind]. Heights are counted from ${from}; ${lies}. [wall.pass], and the ground [wall.shakes].`;
}

/** How its works hang. */
export function hangingSentence(rule: WallRule, level: boolean): string {
  const centred =
    rule.kind === "spread"
      ? ""
      : `, centred [wall.centre]${rule.centre === null ? "" : " [wall.centreAt] from the left"}`;
  const eye = `on an eye line [wall.eyeLine] above ${level ? "the level line" : "the floor"}`;
  const nails = "Each nail stands [wall.hookDrop] above where its hook bears.";
  switch (rule.kind) {
    case "gap":
      return `Hang them [wall.rule], [wall.gap] apart${centred}, middles ${eye}. ${nails}`;
    case "spread":
      return `Hang them [wall.rule] with equal gaps, middles ${eye}. ${nails}`;
    case "rows":
      return `Hang them [wall.rule], [wall.count] of them, [wall.gap] apart and [wall.rowGap] between rows${centred}, their middle ${eye}. ${nails}`;
    case "grid":
      return `Hang them [wall.rule], [wall.count] of them, [wall.gap] apart and [wall.rowGap] between rows${centred}, their middle ${eye}. ${nails}`;
    case "cluster":
      return `Hang them [wall.rule], neighbours [wall.gap] apart, the largest [wall.largest]${centred}, its middle ${eye}. ${nails}`;
  }
}

export const obstacleSentence = (index: number): string =>
  `[wall.avoid.${index}.name] stays free: [wall.avoid.${index}.x] from the left and [wall.avoid.${index}.y] above the floor, [wall.avoid.${index}.width] wide and [wall.avoid.${index}.height] high.`;
export const seatSentence = (index: number): string =>
  `People sit or lie at [wall.seats.${index}.name], [wall.seats.${index}.x] from the left, [wall.seats.${index}.width] wide.`;

const LABELS: Readonly<Record<string, string>> = {
  name: "Name of the wall",
  width: "Width of the wall",
  height: "Height of the wall",
  kind: "What the wall is made of",
  from: "Heights are counted from",
  levelLine: "Level line above the floor",
  lies: "How the floor or the level line lies",
  fall: "Lower at that corner by",
  pass: "Whether people pass close by",
  shakes: "Whether the ground shakes",
  rule: "How the works are laid out",
  gap: "Gap between frames",
  rowGap: "Gap between rows",
  count: "How many rows or columns",
  largest: "Where the largest hang",
  centre: "Where the middle is",
  centreAt: "Middle from the left corner",
  eyeLine: "Eye line above",
  hookDrop: "Nail above where its hook bears",
};

const OF_BOX: Readonly<Record<string, string>> = {
  name: "name",
  x: "from the left corner",
  y: "above the floor",
  width: "width",
  height: "height",
};

/** What a blank of the wall is called by itself. `name`: of what must stay free, or of a seat. */
export function wallBlankWords(blank: string, name: string): BlankWords {
  const [, of = "", , part = ""] = blank.split(".");
  const label =
    of === "avoid" || of === "seats"
      ? `${capital(name === "" ? "what must stay free" : name)}, ${OF_BOX[part] ?? part}`
      : (LABELS[of] ?? of);
  return { label, said: inSentence(label) };
}

/** Round the figures of one work's nails, for the ear as well as the eye: "Nails at … across, … up from the floor, on two rings." */
export const nailsSay = (
  nails: number,
  level: boolean,
  fitting: keyof typeof FITTINGS,
): { readonly before: string; readonly between: string; readonly after: string } => ({
  before: nails === 1 ? "Nail at" : "Nails at",
  between: "across,",
  after: `up from the ${level ? "level line" : "floor"}, ${FITTINGS[fitting]}.`,
});
/** "a", "a and b", "a, b and c": what stands before each of several figures. */
export const beforeEach = (index: number, count: number): string =>
  index === 0 ? "" : index === count - 1 ? " and " : ", ";
export const FITTINGS: Readonly<Record<"wire" | "rings" | "plates" | "cleat", string>> = {
  wire: "on its wire",
  rings: "on two rings",
  plates: "on two plates",
  cleat: "on a cleat",
};
export const NAILS = { frame: "Frame" } as const;
export const weighs = (mass: string | null): string => `${mass ?? "not weighed"}.`;
export const hookSays = (name: string, load: string): string =>
  name === "" ? `Each hook carries ${load}.` : `Each hook carries ${load}: ${name}.`;

/** What was done, as a change is called. */
export const WALL_SAID = {
  added: (name: string): string => `added ${name}`,
  removed: (name: string): string => `took ${name} away`,
  hung: (title: string, wall: string): string => `hung ${title} on ${wall}`,
  hungAll: (wall: string): string => `hung all that was left on ${wall}`,
  off: (title: string): string => `took ${title} off the wall`,
  moved: (title: string, place: number): string => `${title} to place ${place} on its wall`,
  anew: "laid the group anew",
} as const;

export const onWallPlace = (title: string, place: number, works: number): string =>
  `${title}, place ${place} of ${works} on the wall`;
export const hangIt = (title: string): string => `Hang ${title} here`;
export const takeOffWall = (title: string): string => `Take ${title} off the wall`;

/** Where a check stands: whose it is. */
export const ofWork = (title: string, sentence: string): string => `${title}: ${sentence}`;

/** Ways out of what stands against a wall. */
export const WALL_WAYS = {
  fill: "Let the row fill the wall",
  gap: (figure: string): string => `Hang them ${figure} apart`,
  rows: (count: number): string => `Hang them in ${wholeWords(count)} rows`,
  eye: (figure: string): string => `Set the eye line at ${figure}`,
  centre: (figure: string): string => `Centre them ${figure} from the left`,
  onWall: "Centre them on the wall",
  off: (title: string): string => `Take ${title} off the wall`,
} as const;

export const wallSeenSays = (name: string, works: number): string =>
  `${name} seen from the room, ${wholeWords(works)} ${works === 1 ? "frame" : "frames"}; what it shows is listed below`;
export const frameOnWallSays = (title: string, place: number, works: number): string =>
  `${title}, place ${place} of ${works}`;
