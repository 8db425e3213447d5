import type { FrameCheck, FramePlan, PartMass, StackLayer } from "../assembly/index.ts";
import type { Side } from "../geometry/index.ts";
import { absolute, figureOf, figureText, type Length } from "../lengths/index.ts";
import { sideName, type Speech } from "./checks.ts";
import { andList } from "./figures.ts";
import { sentence } from "./plain.ts";
import { VOCABULARY } from "./vocabulary.ts";

/** A layer of the package, as the trade calls it. Of several mats the lowest and the top one have names of their own. */
export function layerName(
  { kind, mat }: Pick<StackLayer, "kind" | "mat">,
  mats: number,
  { language }: Pick<Speech, "language">,
): string {
  const word = VOCABULARY[language];
  switch (kind) {
    case "glazing":
      return "glazing";
    case "spacer":
      return "spacer";
    case "mat":
      if (mats < 2 || mat === null) return word.mat;
      return mat === 0
        ? `lowest ${word.mat}`
        : mat === mats - 1
          ? `top ${word.mat}`
          : `${word.mat} ${mat + 1}`;
    case "float-spacer":
      return "spacer under it";
    case "print":
      return "print";
    case "riser":
      return "riser";
    case "sink":
      return "sink";
    case "mount":
      return word.mount;
    case "backing":
      return word.backing;
  }
}

/** A part that has a weight. */
export function partName({ part, mat }: PartMass, mats: number, speech: Pick<Speech, "language">): string {
  if (part === "moulding") return VOCABULARY[speech.language].moulding;
  return part === "hardware" ? "fittings" : layerName({ kind: part, mat }, mats, speech);
}

const WAY = { width: "wide", height: "high" } as const;
const ACROSS = { width: "across", height: "upright" } as const;

/** A problem of a frame: the side, the figure and a way out. One case for every code. */
export function sayFrameCheck(check: FrameCheck, speech: Speech): string {
  const { ruler, language, set = figureText } = speech;
  const word = VOCABULARY[language];
  const most = (length: Length): string => set(figureOf(length, ruler, "down"));
  const least = (length: Length): string => set(figureOf(length, ruler, "up"));
  const place = (length: Length): string => set(figureOf(length, ruler));
  switch (check.code) {
    case "package-large":
      return `The package is ${least(check.size)} ${WAY[check.direction]} and the ${word.rabbet} takes ${most(check.opening)}. Take a smaller package, or another frame.`;
    case "edge-shows":
      return `${sentence(sideName(check.side))}: the edge of the ${check.layer} ${check.by === 0 ? "reaches just to the lip" : `ends ${least(check.by)} short of the lip`} and would show. Take a larger ${check.layer}${check.layer === "package" ? ", or shim it" : ""}.`;
    case "edge-may-show":
      return `${sentence(sideName(check.side))}: if the package slides, its edge shows by ${least(check.by)}. Shim it at both sides.`;
    case "lip-covers":
      return `${sentence(sideName(check.side))}: the lip reaches ${least(check.by)} over the window. Take wider borders, or a narrower lip.`;
    case "seen-small":
      return `${sentence(sideName(check.side))}: ${most(check.seen)} of the border is seen, less than your least of ${least(check.least)}. Take a larger package.`;
    case "lift-changed":
      return `Seen within the frame the window is ${check.seen < 0 ? "lowered" : "raised"} by ${place(absolute(check.seen))}, where ${place(check.asked)} above the middle is asked. Shim the foot by ${place(check.shim)}, or balance what is seen.`;
    case "rabbet-tight":
      return `The package has ${most(check.room)} of room ${ACROSS[check.direction]}; ${least(check.least)} is the least (Fine Art Trade Guild framing standards). Take a wider allowance.`;
    case "glazing-tight":
      return `The ${check.kind} may grow by ${least(check.grows)} ${ACROSS[check.direction]} and has ${most(check.room)} of room. Cut it smaller.`;
    case "package-tight":
      return `The boards, taken as paper, may grow by ${least(check.grows)} ${ACROSS[check.direction]} and have ${most(check.room)} of room. Take a wider allowance, or narrow the range of humidity.`;
    case "stack-over":
      return `The stack of ${least(check.stack)} is over the ${word.rabbet} of ${most(check.rabbet)} by ${least(check.by)}. Do not press. ${check.level === "stop" ? `Offset fittings reach ${most(check.most)}: take a deeper ${word.moulding}, or a shallower package.` : `Take offset fittings, a deeper ${word.moulding}, or a shallower package.`}`;
    case "fittings-short":
      return `Behind the package ${most(check.left)} of the ${word.rabbet} is left and fittings need ${least(check.needs)}. Take offset fittings, or a deeper ${word.moulding}.`;
    case "depth-unknown":
      return `How deep the ${word.rabbet} is, is not told; the stack is ${least(check.stack)}. Enter its depth.`;
    case "glazing-near":
      return `${check.clear <= 0 ? "The glazing touches the print" : `The glazing is ${most(check.clear)} from the print`}; ${least(check.least)} is the least. Put a spacer between glazing and ${word.mat}, or take a thicker ${word.mat}.`;
    case "glazing-bows":
      return `Acrylic ${place(check.size)} long may bow towards the print. Over ${place(check.most)} take a thicker sheet, or a spacer.`;
    case "draws-pigment":
      return `${sentence(check.process)}: acrylic draws loose pigment off the sheet (from memory). Take glass, or acrylic that holds no charge.`;
    case "mitre-opens":
      return `Between ${Math.round(check.from)} and ${Math.round(check.to)} % of moisture a mitre may open by ${least(check.by)} (Wood Handbook, table 13-5). Take a narrower ${word.moulding}, or narrow the range of humidity.`;
    case "mass-assumed": {
      const names = new Set(check.parts.map((part) => partName(part, 1, speech)));
      return `Not weighed, and taken on the heavy side: ${andList([...names])}. Enter what they weigh.`;
    }
  }
}

/** What a check is about: the field of the document that mends it. */
export function aboutFrameCheck(check: FrameCheck): string {
  switch (check.code) {
    case "package-large":
    case "seen-small":
      return "outer";
    case "edge-shows":
      return check.layer === "glazing" ? "glazing.less" : "outer";
    case "edge-may-show":
    case "lip-covers":
      return `frame.seen.${check.side satisfies Side}`;
    case "lift-changed":
      return "frame.seat";
    case "rabbet-tight":
    case "package-tight":
      return "moulding.allowance";
    case "glazing-tight":
      return "glazing.less";
    case "stack-over":
    case "fittings-short":
    case "depth-unknown":
      return "moulding.depth";
    case "glazing-near":
      return "frame.spacer";
    case "glazing-bows":
    case "draws-pigment":
      return "glazing";
    case "mitre-opens":
      return "moulding.wood";
    case "mass-assumed":
      return "frame.mass";
  }
}

/** What a step of a frame's reckoning finds. */
export function frameStepName(name: FramePlan["reckoning"][number]["name"], { language }: Speech): string {
  const word = VOCABULARY[language];
  switch (name.of) {
    case "opening":
      return `${word.rabbet} opening, ${name.direction}`;
    case "rail":
      return `long point, ${name.direction}`;
    case "sight":
      return `sight size, ${name.direction}`;
    case "seen":
      return `seen of ${sideName(name.side)}`;
    case "stack":
      return "stack";
    case "left":
      return `left of the ${word.rabbet}`;
  }
}
