import type { FrameCheck, FramePlan } from "../assembly/index.ts";
import type { Side, Size } from "../geometry/index.ts";
import { figureOf, fineRuler, type Length, negate, type Ruler } from "../lengths/index.ts";
import type { Speech } from "./checks.ts";
import { articleOf } from "./figures.ts";
import { sayFrameCheck } from "./frame.ts";
import { bare, flat, NBSP, type Phrase, runs, sizeRuns, strong, withUnit } from "./runs.ts";
import { VOCABULARY } from "./vocabulary.ts";
import { roundedUp } from "./weights.ts";

/** What stands on a frame sheet. */
export const FRAME_SHEET = {
  paper: "FRAME SHEET",
  unit: "unit",
  outer: "frame, outside",
  sight: "inside the lip",
  weight: "whole weight",
  depth: "from wall to face",
  inSection: "THROUGH THE FOOT",
  faceUp: "face up, frame at the right",
  asSeen: "SEEN INSIDE THE LIP",
  fromFront: "from the FRONT",
  seen: "seen",
  underLip: "under the lip",
  stack: "stack",
  layers: "The package, layer by layer from the face",
  headNumber: "no.",
  headLayer: "layer",
  headBoard: "of",
  headThick: "thick",
  headCut: "cut to, wide × high",
  headWeight: "weight",
  within: "within",
  inAll: "stack, and whole weight",
  closeTells: "steps",
  drawTells: "package",
  gloves: "Gloves, eyes: glass. Carry it upright, by two edges.",
  seam: "Dull the edges of the glass before it is lifted in.",
  acrylic: "Saw acrylic with its film on: eyes, ears, dust. Peel it last.",
  dust: "Look for dust in slant light. Brush it off, do not blow.",
  doNotPress: "Do not press the back in: glass breaks, or touches the print.",
  square: "Lay the frame face down on felt. Both diagonals must agree.",
  lay: "Lay in glazing, package, backing. Turn it over: look along all four sides.",
  doNotFrame: "DO NOT FRAME",
  stays: "The rest of this sheet is left out until that is mended.",
  weightNote: "≤: taken on the heavy side, not weighed",
} as const;

/** What it is framed in, as one would say it. */
export function frameLine({ frame, glazing }: FramePlan, { ruler, language }: Speech): Phrase {
  const { profile, opening } = frame;
  const under = glazing === null ? "without glazing" : runs`under ${strong(glazing.board)}`;
  if (opening !== null)
    return runs`Put it into ${strong(frame.name)}, a frame that is there: ${VOCABULARY[language].rabbet} ${sizeRuns(opening, ruler)}, ${under}.`;
  const face = runs`${articleOf(figureOf(profile.overall, ruler))} ${withUnit(profile.overall, ruler)} face`;
  return runs`Frame it in ${strong(profile.name)}, ${face}, ${under}.`;
}

/** How thick a layer is; what is less than a mark says so. */
export const thickWords = (thickness: Length, within: boolean, ruler: Ruler): Phrase => [
  thickness > 0 && thickness * 2 < ruler.graduation
    ? [`<${NBSP}`, bare(ruler.graduation, ruler)]
    : bare(thickness, ruler),
  within ? ` ${FRAME_SHEET.within}` : "",
];

/** A column's name with the unit of what stands in it. */
export const inUnit = (name: string, { unit }: Ruler): string => `${name}, ${unit}`;

/** Grams of a part, up; on the heavy side where it is not weighed. */
export const gramsOfPart = (kilograms: number, assumed: boolean): string =>
  `${assumed ? "≤ " : ""}${roundedUp(kilograms * 1000, 0)}${NBSP}g`;

export const sectionScale = (by: number, over: number): string => `${by}${NBSP}:${NBSP}${over}`;

export const rabbetWord = ({ language }: Speech): string => VOCABULARY[language].rabbet;

/** Seen borders of one side, with its name. */
export const seenAt = (side: Side, seen: Length, ruler: Ruler): Phrase => [
  side === "head" || side === "foot" ? `${side} ` : "",
  strong(bare(seen, ruler)),
];

/** How the lift comes out as seen, and what a shim makes of it. */
export function standsWords({ frame, stands, onFoot, shimmed }: FramePlan, { ruler }: Speech): Phrase {
  const fine = fineRuler(ruler);
  const lift = (length: Length): Phrase =>
    length < 0
      ? runs`lowered by ${withUnit(negate(length), fine)}`
      : runs`raised by ${withUnit(length, fine)}`;
  if (frame.seat === "shimmed") return runs`Shimmed at the foot the window is seen ${lift(stands.lift)}.`;
  if (onFoot.lift === shimmed.lift) return runs`On the foot rail the window is seen ${lift(stands.lift)}.`;
  return runs`On the foot rail the window is seen ${lift(onFoot.lift)}; shimmed, ${lift(shimmed.lift)}.`;
}

export const openingStep = ({ sizes, frame }: FramePlan, { ruler, language }: Speech): Phrase =>
  runs`${frame.opening === null ? "The frame is joined. " : ""}Measure the ${VOCABULARY[language].rabbet}: ${sizeRuns(sizes.opening, ruler)}, both ways, at both ends.`;

export const glazingStep = (glazing: NonNullable<FramePlan["glazing"]>, { ruler }: Speech): Phrase => {
  const fine = fineRuler(ruler);
  const grows = glazing.grows.width > glazing.grows.height ? "width" : "height";
  return runs`Glazing: ${sizeRuns(glazing, fine, "down")}. It may grow ${withUnit(glazing.grows[grows], fine, "up")}; it has ${withUnit(glazing.room[grows], fine, "down")} of room.`;
};

export const spacerStep = (
  { high, wide, long, between }: NonNullable<FramePlan["spacers"]>,
  { ruler }: Speech,
): Phrase =>
  runs`Spacers ${withUnit(high, fineRuler(ruler))} high, ${withUnit(wide, ruler, "down")} wide: two of ${withUnit(long, ruler)}, two of ${withUnit(between, ruler)}. Stick them to the glazing’s edge.`;

export const backingStep = (backing: Size, { ruler, language }: Speech): Phrase =>
  runs`${VOCABULARY[language].backing === "backing" ? "Backing" : "Outer backing"}: ${sizeRuns(backing, ruler, "down")}.`;

export const shimStep = (shim: Length, { ruler }: Speech): Phrase =>
  runs`Shim the foot ${withUnit(shim, fineRuler(ruler))}, along its whole length.`;

/** Stack against rabbet, and what is left for fittings. */
export function depthStep({ stack, left, frame }: FramePlan, { ruler, language }: Speech): Phrase {
  const fine = fineRuler(ruler);
  const word = VOCABULARY[language].rabbet;
  const said = runs`Stack ${withUnit(stack.depth, fine, "up")}`;
  if (left === null || frame.profile.depth === null)
    return flat([said, `. Measure the ${word}’s depth; write it here: `]);
  const against = runs`${said}, ${word} ${withUnit(frame.profile.depth, fine, "down")}: `;
  return left < 0
    ? flat([against, strong("over"), runs` by ${withUnit(negate(left), fine, "up")}.`])
    : flat([against, strong("under"), runs` by ${withUnit(left, fine, "down")}.`]);
}

export const fittingsStep = ({ left, frame }: FramePlan): Phrase =>
  left !== null && left >= frame.habits.fittings
    ? "Fix it with points or turn buttons, one a hand’s width."
    : "Fix it with offset fittings, one a hand’s width, two at least on each side.";

export const coverStep = ({ dustCover }: FramePlan, { ruler }: Speech): Phrase =>
  runs`Dust cover: paper ${sizeRuns(dustCover, ruler, "down")} over the back, glued to the wood alone.`;

export const bumperStep = ({ frame }: FramePlan, { ruler }: Speech): Phrase =>
  runs`Bumpers ${withUnit(frame.habits.bumper, ruler)} thick at both foot corners: air must pass behind.`;

/** A check as a caution on the sheet: the act first, at most twelve words a sentence. */
export function frameCaution(check: FrameCheck, speech: Speech): Phrase {
  const { ruler, language } = speech;
  const fine = fineRuler(ruler);
  const least = (length: Length): Phrase => withUnit(length, fine, "up");
  const most = (length: Length): Phrase => withUnit(length, fine, "down");
  switch (check.code) {
    case "edge-may-show":
      return runs`Shim the sides too: a slide shows ${least(check.by)} at the front’s ${check.side}.`;
    case "seen-small":
      return runs`The ${check.side} shows only ${most(check.seen)} of its border.`;
    case "rabbet-tight":
      return runs`Only ${most(check.room)} of room: do not force it in.`;
    case "glazing-tight":
      return runs`Cut the ${check.kind} smaller: it grows ${least(check.grows)}, has ${most(check.room)}.`;
    case "stack-over":
      return `Take offset fittings, a deeper ${VOCABULARY[language].moulding}, or a shallower package.`;
    case "fittings-short":
      return runs`Only ${most(check.left)} of the ${VOCABULARY[language].rabbet} is left: take offset fittings.`;
    case "glazing-near":
      return runs`Add a spacer: glazing is ${most(check.clear)} from the print, ${least(check.least)} is the least.`;
    case "draws-pigment":
      return "No rubbed acrylic over loose pigment: it lifts it (from memory).";
    default:
      return sayFrameCheck(check, speech);
  }
}
