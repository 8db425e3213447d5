import type {
  BoardHinge,
  HeldBed,
  HeldHinges,
  HoldCheck,
  HoldPlan,
  MaterialRule,
  Never,
  Way,
} from "../assembly/index.ts";
import type { Side, Size } from "../geometry/index.ts";
import { fineRuler, type Length, type Ruler } from "../lengths/index.ts";
import type { Speech } from "./checks.ts";
import { wholeWords } from "./figures.ts";
import { holdingName, sayHoldCheck, sayMaterial, saySource, sayWhy, wayName } from "./held.ts";
import { bare, flat, NBSP, type Phrase, runs, sentence, sizeRuns, strong, withUnit } from "./runs.ts";
import { VOCABULARY } from "./vocabulary.ts";

/** What stands on a mounting and closing sheet. */
export const MOUNTING_SHEET = {
  paper: "MOUNTING SHEET",
  unit: "unit",
  weight: "paper",
  moves: "may move, wide and high",
  buffer: "board",
  holdTells: "hold",
  closeTells: "steps and closing",
  backOfSheet: "BACK OF THE SHEET",
  onItsMount: "ON ITS MOUNT",
  fromFront: "seen from the FRONT",
  headAway: "HEAD away from you",
  middles: "middle of each hinge, from the sheet’s left corner; the same from its right",
  window: "window",
  cornersLookedAt: "Close the mat. Look at each corner; tick it.",
  edgesLookedAt: "Look along each edge; tick it.",
  touches: "What may touch it",
  pocketLeg: "Pocket, leg: ",
  hiddenUpTo: "hidden up to",
  everyCorner: "on every corner",
  inset: "riser drawn in",
  notWeighed: "not told: hinges by size alone",
  play: "play left across each corner",
  fold: "fold",
  mountWord: "mount",
  sheetWord: "sheet",
  tabWord: "tab, dashed:",
  trueSize: "true size",
  strip: "strip",
  reach: "over",
  ruler: "ruler",
  object: "sheet",
  sinkInSection: "Sink, in section",
  riserInSection: "Riser, in section",
  oddLayers: "1st layer, 3rd …",
  evenLayers: "2nd layer, 4th …",
  free: "Hands clean and dry. Nothing wet near it but paste.",
  freePaste: "Hands clean and dry. Nothing wet near it.",
  pasteTabOnly: "Paste the tab, never the sheet. Never all round.",
  layEdition: "Lay each sheet of the edition in its own place, as its bench sheet lists them.",
  stickToMount: "Stick to the mount, never to the sheet.",
  lookForDust: "Look for dust in slant light. Brush it off, do not blow.",
  gloves: "Gloves, eyes: glass.",
  acrylic: "Peel acrylic last; do not rub it, it draws dust.",
  noContact: "Nothing in front may touch the sheet.",
  doNotPress: "Do not press; offset fittings, or a shallower package.",
  doNotMount: "DO NOT MOUNT",
  waysOut: "Show less of the sheet, so that pockets or strips have paper to hold. Or lift a never.",
  stays: "The rest of this sheet is left out until that is mended.",
} as const;

const NEVER: Readonly<Record<Never, string>> = {
  paste: "paste",
  hinges: "hinges",
  pockets: "pockets",
  strips: "edge strips",
  press: "press or weigh it down",
  cut: "cut or trim it",
  buffered: "a buffered board",
  glass: "glass",
  acrylic: "acrylic",
};

/** Each never in capitals where the eye falls first. */
export const neverWords = (never: readonly Never[]): Phrase => [
  strong("NEVER "),
  `${never.map((one) => NEVER[one]).join(". NEVER ")}.`,
];

/** A check as a caution on the sheet: the act first, at most twelve words a sentence. */
export function holdCaution(check: HoldCheck, speech: Speech): Phrase {
  const { ruler } = speech;
  switch (check.code) {
    case "holding-changed":
      return `No ${holdingName(check.asked)}: ${sayWhy(check.why, speech)}. Use ${wayName(check.way)}.`;
    case "board-unknown":
      return "Ask the board’s maker: it must have no buffer here.";
    case "buffer":
      return "This board is buffered. Sources differ: take one without a buffer.";
    case "cover-moves":
      return runs`The ${check.side} may draw back ${withUnit(check.needs, ruler, "up")}. It reaches under only ${withUnit(check.cover, ruler, "down")}.`;
    case "sink-tight":
      return runs`Room round it ${withUnit(check.room, ruler, "down")}: it may move ${withUnit(check.needs, ruler, "up")}.`;
    case "float-tight":
      return runs`Gap round it ${withUnit(check.gap, ruler, "down")}: it may grow ${withUnit(check.needs, ruler, "up")}.`;
    default:
      return sayHoldCheck(check, speech);
  }
}

/** What is done, as one would say it. */
export function holdLine(plan: HoldPlan, mount: string, { language }: Speech): Phrase {
  const { way, hinges, bed } = plan;
  if (way === null) return "Nothing that is allowed holds it.";
  const word = VOCABULARY[language];
  const means =
    way === "pockets"
      ? "four corner pockets"
      : way === "strips"
        ? "edge strips at both sides and the foot"
        : `${wholeWords(hinges.at.length)} ${wayName(way)} at the head`;
  const on = mount === "" ? `the ${word.mount}` : `a ${word.mount} of ${mount}`;
  const lies = bed.kind === "flat" ? "" : bed.kind === "sink" ? ", let into a sink" : ", raised on a riser";
  return runs`Hold it with ${strong(means)}, on ${strong(on)}${lies}.`;
}

/** What the sheet weighs, as far as hinges ask. */
export const gramsWords = (grams: number): string => `the sheet weighs ${Math.ceil(grams)}${NBSP}g`;

const BUFFER: Readonly<Record<HoldPlan["buffer"], string>> = {
  buffered: "buffered",
  unbuffered: "no buffer",
  either: "either",
  disputed: "no buffer: sources differ",
  unknown: "ask its maker",
};
export const bufferWords = (buffer: HoldPlan["buffer"]): string => BUFFER[buffer];

/** Board to board, before the sheet is near; the boards' grain as the Library of Congress Research Guide, Basic Storage Mat, has it. */
export function boardsStep({ side, length, tape, between }: BoardHinge, { ruler, language }: Speech): Phrase {
  const word = VOCABULARY[language];
  const where = side === "head" ? "HEAD" : "LEFT side";
  return runs`Tape ${word.mat} to ${word.mount} along the ${strong(where)}: ${withUnit(length, ruler)} of gummed linen, ${withUnit(tape, ruler)} wide, boards ${withUnit(between, { ...ruler, graduation: between })} apart. Grain along the hinge.`;
}

export const sinkStep = (bed: Extract<HeldBed, { kind: "sink" }>, { ruler, language }: Speech): Phrase =>
  runs`Paste ${sentence(wholeWords(bed.layers)).toLowerCase()} ${bed.layers === 1 ? "layer" : "layers"} of wall round an opening ${sizeRuns(bed.opening, ruler, "up")} on the ${VOCABULARY[language].mount}.${bed.layers > 1 ? " Stagger the joints." : ""} Lay a ruler over: it must clear the sheet.`;

export const riserStepOf = (bed: Extract<HeldBed, { kind: "raised" }>, { ruler, language }: Speech): Phrase =>
  runs`Fix the riser, ${sizeRuns(bed.riser, ruler, "down")}, ${withUnit(bed.height, ruler)} high, to the ${VOCABULARY[language].mount}: ${withUnit(bed.left, ruler)} from the left, ${withUnit(bed.top, ruler)} from the head.`;

export const spacerStep = (spacer: Length, { ruler }: Speech): Phrase =>
  runs`Spacers all round, ${withUnit(spacer, ruler, "up")} high at least, out of sight.`;

export const slitStep = (
  hinges: number,
  length: Length,
  down: Length,
  raised: boolean,
  { ruler, language }: Speech,
): Phrase =>
  runs`Before the sheet is near, cut ${wholeWords(hinges)} slits ${withUnit(length, ruler, "up")} long in the ${raised ? "riser and " : ""}${VOCABULARY[language].mount}, ${withUnit(down, ruler)} below the sheet’s head.`;

export const foldPocketsStep = (leg: Length, { ruler }: Speech): Phrase =>
  runs`Fold four pockets of thin neutral paper, leg ${withUnit(leg, ruler, "down")}.`;

export const pocketPlayStep = (play: Length, { ruler, language }: Speech): Phrase =>
  runs`Slip one on each corner, ${withUnit(play, ruler, "up")} of play across it. Tape it to the ${VOCABULARY[language].mount}.`;

export const stripsFoldStep = "Fold three strips of thin neutral paper, as long as figured.";

export const stripsTapeStep = ({ language }: Speech): string =>
  `Put each strip over its edge, the fold off the sheet as figured. Tape it to the ${VOCABULARY[language].mount}. The head stays open.`;

export const tabsStep = (count: number, tab: Size, { ruler }: Speech): Phrase =>
  runs`Tear ${wholeWords(count)} tabs of Japanese tissue, ${sizeRuns(tab, ruler)}, lighter than the sheet.`;

export const pasteStep = (pasted: Length, dry: boolean, { ruler }: Speech): Phrase =>
  runs`Starch paste on ${withUnit(pasted, ruler)} of each tab. Place it behind the head. ${dry ? "Blotter, then a weight; let it dry." : "Blotter alone: press nothing. Let it dry."}`;

export const layIt = (left: Length, head: Length, { ruler }: Speech): Phrase =>
  runs`Lay the sheet face up, its top left corner ${withUnit(left, ruler)} from the left, ${withUnit(head, ruler)} from the head.`;

export const crossStep = (
  kind: Way,
  cross: Size,
  above: Length,
  dry: boolean,
  { ruler, language }: Speech,
): Phrase => {
  const end = dry ? " Blotter, weight." : " Blotter alone.";
  if (kind === "V") return runs`Paste the free leg of each tab to what it lies on.${end}`;
  if (kind === "T")
    return runs`Paste a cross-piece ${sizeRuns(cross, ruler)} over each tab, ${withUnit(above, ruler)} above the sheet’s edge.${end}`;
  return runs`Draw each tab through its slit. Paste a cross-piece ${sizeRuns(cross, ruler)} over it on the ${VOCABULARY[language].mount}’s back.${end}`;
};

export const lowerMatStep = ({ language }: Speech): Phrase =>
  `Lower the ${VOCABULARY[language].mat}. Look at all four corners: nothing that holds may show.`;

/** Stack against rabbet, over or under by how much. */
export function stackStep(stack: Length, rabbet: Length, { ruler, language }: Speech): Phrase {
  const { rabbet: word } = VOCABULARY[language];
  const fine = fineRuler(ruler);
  const said = runs`Stack ${withUnit(stack, fine, "up")}, ${word} ${withUnit(rabbet, fine, "down")}: `;
  const by = Math.abs(stack - rabbet) as Length;
  if (stack > rabbet) return flat([said, strong("over"), runs` by ${withUnit(by, fine, "up")}.`]);
  return by === 0
    ? flat([said, strong("flush"), "."])
    : flat([said, strong("under"), runs` by ${withUnit(by, fine, "down")}.`]);
}

export const stackUnknown = ({ language }: Speech): string =>
  `Measure stack and ${VOCABULARY[language].rabbet}; write them here. Over: do not press.`;
export const stackBoxes = ({ language }: Speech): readonly [string, string] => [
  "stack",
  VOCABULARY[language].rabbet,
];

export const closeStep =
  "Close: glazing, package, backing. Seal the back against dust; stick on the back label.";

export const storeStep = "Interleave, close, box it flat; write the back label.";

/** A rule of materials, and whose it is in small. */
export const materialLine = ({
  topic,
  source,
  known,
}: MaterialRule): { readonly rule: string; readonly source: string } => ({
  rule: sayMaterial(topic),
  source: saySource(source, known),
});

/** What the figures beside a hinge leave to be said. */
export function hingeNote({ kind, bare: free }: HeldHinges, { ruler }: Speech): Phrase {
  switch (kind) {
    case "T":
      return runs`${withUnit(free, ruler)} without paste: this tears first`;
    case "V":
      return runs`${withUnit(free, ruler)} below the sheet’s head, fold upwards`;
    case "pass-through":
      return "black: the slit; the tab goes back through it";
  }
}

/** Places along one edge, with one unit. */
export const placesLine = (places: readonly Length[], ruler: Ruler): Phrase =>
  flat([places.map((place, index) => [index === 0 ? "" : ", ", bare(place, ruler)]), `${NBSP}${ruler.unit}`]);

/** A deep sink takes fewer layers of fluted board. */
export const fluteWords = (layers: number): string =>
  `or ${layers} of B-flute board (about 3${NBSP}mm, from memory)`;

export const wallPiece = (count: string, length: Length, width: Length, { ruler }: Speech): Phrase =>
  runs`${count} ${bare(length, ruler)}${NBSP}×${NBSP}${withUnit(width, ruler)}`;

/** How much room a sink leaves. */
export const roomRound = (room: Length, ruler: Ruler): Phrase => [
  withUnit(room, ruler),
  " of room round the sheet",
];

/** A sink's layers, each on a ruler that marks a board's thickness, and of what they are. */
export const layersLine = (layers: number, layer: Length, ruler: Ruler, board: string): Phrase => [
  `${layers} × `,
  withUnit(layer, ruler),
  board === "" ? "" : ` of ${board}`,
];

export const riserSize = (riser: Size, height: Length, ruler: Ruler): Phrase => [
  "Riser ",
  sizeRuns(riser, ruler, "down"),
  ", ",
  withUnit(height, ruler),
  " high",
];

export const spacerSize = (spacer: Length, ruler: Ruler): Phrase => [
  "Spacers ",
  withUnit(spacer, ruler, "up"),
  " high at least: riser, sheet, and the room before it",
];

/** A strip's two rows: over the sheet and off its fold, then along the edge. */
export const stripOver = (side: Side, reach: Length, gap: Length, ruler: Ruler): Phrase =>
  runs`${sentence(side)}: over ${withUnit(reach, ruler, "down")}, fold ${withUnit(gap, ruler, "up")} off.`;

export const stripAlong = (length: Length, from: Length, ruler: Ruler): Phrase =>
  runs`${withUnit(length, ruler, "down")} long, ${bare(from, ruler)} from corner.`;
