import type { Check, ComposedMat, Composition, MadeStep, PlacedPrint, Stop } from "../assembly/index.ts";
import type { Corners, Sides, Size } from "../geometry/index.ts";
import { inBytes, type Length, type Pen } from "../lengths/index.ts";
import { aboutOf, sayCheck, writeStepSum } from "../words/index.ts";
import type { Writing } from "./composition-writing.ts";

/** The members of an object that are lengths: each name in bytes, with what parts it from the one before. */
type Members<Of> = readonly (readonly [name: Uint8Array, of: keyof Of])[];

const members = <Of>(...names: readonly (keyof Of & string)[]): Members<Of> =>
  names.map((name, index) => [inBytes(`${index === 0 ? "{" : ","}"${name}":`), name]);

const SIZE = members<Size>("width", "height");
const SIDES = members<Sides>("head", "left", "right", "foot");
const CORNERS = members<Corners>("topLeft", "topRight", "bottomLeft", "bottomRight");

const OUTER = inBytes('{"outer":');
const MATS = inBytes(',"mats":[');
const BORDERS = inBytes('{"borders":');
const BACK = inBytes(',"back":');
const FACE = inBytes(',"face":');
const PLAN = inBytes(',"bevel":{"plan":');
const SLOPE = inBytes(',"slope":');
const REVEAL = inBytes(',"revealAsCut":');
const PRINT = inBytes(',"print":{"left":');
const TOP = inBytes(',"top":');
const COVER = inBytes('},"cover":');
const POCKETS = inBytes(',"pockets":');
const EDITION = inBytes(',"edition":[');
const STOPS = inBytes(',"stops":[');
const STOP = inBytes('{"mat":');
const SET = inBytes(',"set":');
const SCALE = inBytes(',"scale":');
const EDGES = inBytes(',"edges":[');
const HAND = inBytes('],"hand":[');
const CODE = inBytes('{"code":"');
const LEVEL = inBytes('","level":"');
const SAYS = inBytes('","text":');
const ABOUT = inBytes(',"about":');
const DIAGONAL = inBytes(',"diagonal":');
const CHECKS = inBytes(',"checks":[');
const RECKONING = inBytes(',"reckoning":[');
const IS = inBytes('","is":');

/**
 * Writes a composition in the open format, as JSON text. The text is made directly: a run of thousands
 * of works would spend more on building objects and turning them into text than on composing. A maximum
 * is printed rounded down, a minimum up, a place to the nearest. `held`: how it is held, in the open format.
 */
export function writeComposition(to: Writing, composition: Composition, held: object | null = null): void {
  const { pen } = to;
  const { mats, print, reckoning } = composition;
  pen.piece(OUTER);
  writeSize(to, composition.outer);
  writeList(to, MATS, mats, writeMat);
  if (print !== null) writePrint(to, print);
  writeList(to, STOPS, composition.stops, writeStop);
  pen.piece(DIAGONAL);
  to.at(composition.diagonal);
  writeList(to, CHECKS, composition.checks, writeCheck);
  writeList(to, RECKONING, reckoning, (_, step) => writeStep(to, step, mats.length));
  pen.text(held === null ? "}" : `,"held":${JSON.stringify(held)}}`);
}

function writeList<Item>(
  to: Writing,
  opening: Uint8Array,
  items: readonly Item[],
  write: (to: Writing, item: Item) => void,
): void {
  const { pen } = to;
  pen.piece(opening);
  let between = false;
  for (const item of items) {
    if (between) pen.text(",");
    write(to, item);
    between = true;
  }
  pen.text("]");
}

function writeLengths<Of extends Readonly<Record<keyof Of, Length>>>(
  to: Writing,
  named: Members<Of>,
  of: Of,
  write = to.at,
): void {
  const { pen } = to;
  for (const member of named) {
    pen.piece(member[0]);
    write(of[member[1]]);
  }
  pen.text("}");
}

const writeSize = (to: Writing, size: Size): void => writeLengths(to, SIZE, size);

function writeMat(to: Writing, { borders, back, face, bevel, revealAsCut }: ComposedMat): void {
  const { pen } = to;
  pen.piece(BORDERS);
  writeLengths(to, SIDES, borders);
  pen.piece(BACK);
  writeSize(to, back);
  pen.piece(FACE);
  writeSize(to, face);
  pen.piece(PLAN);
  to.at(bevel.plan);
  pen.piece(SLOPE);
  to.at(bevel.slope);
  pen.text("}");
  if (revealAsCut !== null) {
    pen.piece(REVEAL);
    to.at(revealAsCut);
  }
  pen.text("}");
}

function writePrint(to: Writing, { left, top, angle, cover, pockets, edition }: PlacedPrint): void {
  const { pen } = to;
  writePlace(to, left, top);
  pen.text(`,"angle":${angle}`);
  pen.piece(COVER);
  writeLengths(to, SIDES, cover, to.most);
  pen.piece(POCKETS);
  writeLengths(to, CORNERS, pockets, to.most);
  if (edition.length > 0) writeList(to, EDITION, edition, writeSheet);
}

function writeSheet(to: Writing, { name, left, top, cover }: PlacedPrint["edition"][number]): void {
  const { pen } = to;
  pen.text(`{"name":${JSON.stringify(name)}`);
  writePlace(to, left, top);
  pen.piece(COVER);
  writeLengths(to, SIDES, cover, to.most);
  pen.text("}");
}

function writePlace(to: Writing, left: Length, top: Length): void {
  to.pen.piece(PRINT);
  to.at(left);
  to.pen.piece(TOP);
  to.at(top);
}

function writeStop(to: Writing, { mat, set, scale, edges, hand }: Stop): void {
  const { pen } = to;
  pen.piece(STOP);
  pen.whole(mat);
  pen.piece(SET);
  to.at(set);
  pen.piece(SCALE);
  to.at(scale);
  pen.piece(EDGES);
  writeNames(pen, edges);
  pen.piece(HAND);
  writeNames(pen, hand);
  pen.text("]}");
}

/** Names of ours, in which JSON writes every sign as it is. */
function writeNames(pen: Pen, names: readonly string[]): void {
  let before = '"';
  for (const name of names) {
    pen.text(before);
    pen.text(name);
    before = '","';
  }
  pen.text('"');
}

function writeCheck({ pen, speech }: Writing, check: Check): void {
  pen.piece(CODE);
  pen.text(check.code);
  pen.piece(LEVEL);
  pen.text(check.level);
  pen.piece(SAYS);
  pen.quoted(sayCheck(check, speech));
  pen.piece(ABOUT);
  pen.quoted(aboutOf(check));
  pen.text("}");
}

function writeStep(to: Writing, step: MadeStep, mats: number): void {
  const { pen } = to;
  to.stepBegins(step.name, mats);
  writeStepSum(to.ink, step, to.speech.ruler.unit);
  pen.piece(IS);
  // What paper and pockets reach is a maximum here too, as where it stands by itself.
  if (step.name.of === "cover" || step.name.of === "pocket") to.most(step.is);
  else to.at(step.is);
  pen.text("}");
}
