import type { ChosenHardware, FramedWork, Hanging, WallKind } from "../assembly/index.ts";
import { absolute, add, type Length, type Ruler, toGraduation } from "../lengths/index.ts";
import type { WallRule } from "../plans/index.ts";
import { bare, count, flat, NBSP, type Phrase, runs, strong, withUnit } from "./runs.ts";
import { kilograms, sayMass } from "./weights.ts";

/** What stands on a hanging sheet. */
export const HANGING_SHEET = {
  paper: "HANGING SHEET",
  wall: "Wall",
  unit: "unit",
  wallSize: "wall",
  level: "level line",
  drop: "hook’s own drop",
  eyeLine: "eye line",
  levelLine: "LEVEL LINE",
  floor: "floor",
  floorsFall:
    "floors fall: measure from the line, not from the floor. Every nail first; then hang, while the tape still lies on the bare wall",
  markLine:
    "floors fall: mark one level line, and measure up from it. Every nail first; then hang, while the tape still lies on the bare wall",
  hook: "hook",
  across: "ACROSS from left corner",
  check: "check from right corner",
  work: "work; it carries, rated",
  nailNotWire: "NAIL, not wire",
  notMeasured: "not measured",
  dropUnknown: "Measure the hook from where it bears up to its nail. Nail that much higher.",
  nailHole: "nail hole",
  bears: "wire or ring bears here",
  trueSize: "true size; other hook, other drop",
  shakes:
    "Where the ground shakes: closed hangers into studs, two for a large work, putty at the corners of a light one; none over beds, chairs, couches.",
  wiresListed: "Each wire’s length is in the list of works.",
  down: "DOWN from the top, on its back",
  apart: "APART",
  wire: "WIRE, ring to ring",
  pulls: "it pulls, rated",
  balance: "weight’s centre",
  tape: "tape",
  falls: "floor",
  licensed: `Over a seat or bed, in a public place, above 22${NBSP}kg (50${NBSP}lb), where the ground shakes: a licensed hand. Local codes come first.`,
  notHung: "NOT ON THIS SHEET",
  hooksTells: "hooks",
  worksTells: "backs of the frames",
  stopTells: "not on this sheet",
  wallTells: "wall and hooks",
} as const;

/** The heading of the column that a nail is set by. */
export const upFrom = (level: boolean): Phrase =>
  level ? "UP from level line, to NAIL" : "UP from floor, to NAIL";

export const wallSeen = (over: number): string => `wall, seen from the room, 1${NBSP}:${NBSP}${over}`;

/** A part of a wall, by where it lies. */
export const partSeen = (left: Length, right: Length, over: number, ruler: Ruler): Phrase =>
  runs`from ${bare(toGraduation(left, ruler.graduation, "nearest"), ruler)} to ${withUnit(toGraduation(right, ruler.graduation, "nearest"), ruler)} across, seen from the room, 1${NBSP}:${NBSP}${count(over)}`;

/** A wall and how many works hang on it. */
export const wallTitle = (name: string, works: number): string =>
  `${name === "" ? HANGING_SHEET.wall : name}: ${works} ${works === 1 ? "work" : "works"}`;

/** The rule as one would say it, and the eye line. */
export function ruleLine(
  rule: WallRule,
  parted: boolean,
  eyeLine: Length,
  level: Length | null,
  ruler: Ruler,
): Phrase {
  const height = level === null ? eyeLine : add(eyeLine, level);
  return flat([
    ruleWords(rule, parted, ruler),
    runs` Eye line ${strong(withUnit(height, ruler))} above the floor.`,
  ]);
}

function ruleWords(rule: WallRule, parted: boolean, ruler: Ruler): Phrase {
  switch (rule.kind) {
    case "gap":
      return runs`Gap ${strong(withUnit(rule.gap, ruler))} between frames, the row ${parted ? "parted at what must stay free" : rule.centre === null ? "centred on the wall" : "about its own middle"}.`;
    case "spread":
      return parted
        ? "Equal gaps that fill the wall on each side of what must stay free."
        : "Equal gaps that fill the wall, the ends included.";
    case "rows":
      return runs`${count(rule.count)} rows, ${strong(withUnit(rule.gap, ruler))} between frames, ${strong(withUnit(rule.rowGap, ruler))} between rows.`;
    case "grid":
      return runs`${count(rule.columns)} columns, ${strong(withUnit(rule.gap, ruler))} between them, ${strong(withUnit(rule.rowGap, ruler))} between rows.`;
    case "cluster":
      return runs`A group, neighbours ${strong(withUnit(rule.gap, ruler))} apart.`;
  }
}

export const levelFact = (level: Length, ruler: Ruler): Phrase =>
  runs`${withUnit(level, ruler)} above the floor at the left corner`;

export const sizeOfWall = (width: Length, height: Length, ruler: Ruler): Phrase =>
  runs`${bare(width, ruler)} wide, ${withUnit(height, ruler)} high`;

/** What goes into a wall. How each is fixed is common practice, no source; from 20 lb into a stud, Earthquake Country Alliance. */
export function wallKindWords(kind: WallKind | null): string {
  switch (kind) {
    case null:
      return "Plaster alone holds no screw: find what is behind it.";
    case "plasterboard":
      return `Plasterboard: nail hooks for light works only. From 9${NBSP}kg (20${NBSP}lb) screw into the stud.`;
    case "lath":
      return `Plaster on laths: drill first, never hammer. From 9${NBSP}kg (20${NBSP}lb) screw into the stud.`;
    case "boards":
      return "Boards: screw into the board, drilled first; a thin panel only into what carries it.";
    case "masonry":
      return "Masonry: drill, plug and screw, into the brick and not into the joint. Eyes, dust.";
  }
}

/** How far the weight's centre lies from the middle, and how far it would in one plain row. */
export const balanceFact = (share: number, row: number): string =>
  `${percent(share)} off; in one row ${percent(row)}`;

const percent = (share: number): string => `${(100 * share).toFixed(1)}${NBSP}%`;

export const tapeFact = (over: Length, span: Length, ruler: Ruler): Phrase =>
  runs`figures are what it reads: ${withUnit(over, ruler)} too much over ${withUnit(span, ruler)}`;

export const fallFact = (fall: Length, ruler: Ruler): Phrase =>
  runs`${withUnit(absolute(fall), ruler)} ${fall > 0 ? "lower" : "higher"} at the right corner`;

/** A work's frame and its weight. */
export const workWords = ({ width, height, mass }: FramedWork, ruler: Ruler): Phrase =>
  flat([
    runs`${bare(width, ruler)} × ${withUnit(height, ruler)}`,
    mass === null ? ", not weighed" : `, ${sayMass(mass)}`,
  ]);

/** What is on the back of a frame without a wire. */
export function fittingWords(kind: Hanging["kind"]): string {
  switch (kind) {
    case "wire":
      return "";
    case "rings":
      return "rings, no wire";
    case "plates":
      return "plates, no wire";
    case "cleat":
      return "cleat";
  }
}

/** What each fitting on the frame pulls, and must be rated for. */
export const pullWords = (newtons: number, safety: number): Phrase =>
  runs`${strong(kilograms(newtons))}, rated ${strong(kilograms(newtons * safety))}`;

/** The fittings that were chosen from those listed; empty where none was. */
export const hardwareWords = (chosen: ChosenHardware | undefined): string =>
  (["hook", "ring", "wire"] as const)
    .flatMap((use) => {
      const one = chosen?.[use] ?? null;
      return one === null ? [] : [`${use}: ${one.name}`];
    })
    .join("; ");

export const notHungCount = (missing: number, works: number): string =>
  `NOT ON THIS SHEET: ${missing} of ${works} works, with why on its last page.`;

/** What the hook must be rated for. */
export const ratedWords = (newtons: number, safety: number): string => `rated ${kilograms(newtons * safety)}`;

/** The wire of some works: how long, how far it rises, and what it pulls. */
export const wireLine = (
  length: Length,
  rise: Length,
  pull: { readonly wire: number; readonly half: number } | null,
  ruler: Ruler,
): Phrase =>
  flat([
    runs`Wire ${strong(withUnit(length, ruler))} from ring to ring, taut drop ${strong(withUnit(rise, ruler))}.`,
    pull === null
      ? ""
      : runs` Each ring and the wire pull ${strong(kilograms(pull.wire))}, not ${kilograms(pull.half)}.`,
  ]);

export const wireHead = (hooks: number): string => (hooks === 1 ? "Wire, one hook" : "Wire, two hooks");

/** Further wires of the same wall. */
export const otherWire = (numbers: readonly number[], words: Phrase): Phrase =>
  flat([strong(`${numbers.join(", ")}: `), words]);

export const apartWords = (apart: Length, ruler: Ruler): Phrase =>
  runs`rings ${withUnit(apart, ruler)} apart`;

/** How much more than its load a hook must be rated for. */
export const ratedTimes = (safety: number): string =>
  `Hook, screw and wire rated ${safety} times their load, for this wall.`;

/** Why a work's hooks are not on the sheet. */
export const notHung = (number: number, title: string, why: string): string =>
  `${number}${title === "" ? "" : `, ${title}`}: ${why}`;
