import type { ComposedMat, Composition, MadeStep, PlacedPrint, Stop } from "../assembly/index.ts";
import type { Corners, Sides, Size } from "../geometry/index.ts";
import { type Length, printExact, printLength, type Rounding, toMillimetres } from "../lengths/index.ts";
import { aboutOf, sayCheck, sayStepName, saySum, type Speech } from "../words/index.ts";

/** How the lengths of one composition are written. Many are said several times; each is printed once. */
interface Writer {
  /** A place, to the nearest. */
  readonly at: (length: Length) => string;
  /** A maximum, rounded down. */
  readonly most: (length: Length) => string;
  /** The exact length, for a sum. */
  readonly exact: (length: Length) => string;
}

/**
 * A composition in the open format, as JSON text. The text is made directly: a run of thousands of works
 * spends more on building objects and turning them into text than on composing. A maximum is printed
 * rounded down, a minimum up, a place to the nearest.
 */
export function compositionText(composition: Composition, language: Speech["language"]): string {
  const { design, mats, print } = composition;
  const { ruler } = design;
  const lengthText = (rounding: Rounding) =>
    once((length) => `{"mm":${toMillimetres(length)},"text":"${printLength(length, ruler, rounding)}"}`);
  const write: Writer = {
    at: lengthText("nearest"),
    most: lengthText("down"),
    exact: once((length) => printExact(length, ruler.unit)),
  };
  const speech: Speech = { ruler, language };
  const checks = composition.checks.map(
    (check) =>
      `{"code":"${check.code}","level":"${check.level}","text":${quoted(sayCheck(check, speech))},"about":${quoted(aboutOf(check))}}`,
  );
  const steps = composition.reckoning.map((step) => stepText(write, step, mats.length, speech));
  return (
    `{"outer":${sizeText(write, composition.outer)},"mats":[${mats.map((mat) => matText(write, mat)).join()}],` +
    `${print === null ? "" : printText(write, print)}"stops":[${composition.stops.map((stop) => stopText(write, stop)).join()}],` +
    `"diagonal":${write.at(composition.diagonal)},"checks":[${checks.join()}],"reckoning":[${steps.join()}]}`
  );
}

function once(print: (length: Length) => string): (length: Length) => string {
  const printed = new Map<Length, string>();
  return (length) => {
    const known = printed.get(length);
    if (known !== undefined) return known;
    const text = print(length);
    printed.set(length, text);
    return text;
  };
}

const quoted = (text: string): string => JSON.stringify(text);

const sizeText = ({ at }: Writer, { width, height }: Size): string =>
  `{"width":${at(width)},"height":${at(height)}}`;

const sidesText = (of: Writer["at"], { head, left, right, foot }: Sides): string =>
  `{"head":${of(head)},"left":${of(left)},"right":${of(right)},"foot":${of(foot)}}`;

const cornersText = (of: Writer["at"], { topLeft, topRight, bottomLeft, bottomRight }: Corners): string =>
  `{"topLeft":${of(topLeft)},"topRight":${of(topRight)},"bottomLeft":${of(bottomLeft)},"bottomRight":${of(bottomRight)}}`;

function matText(write: Writer, { borders, back, face, bevel, revealAsCut }: ComposedMat): string {
  const { at } = write;
  const reveal = revealAsCut === null ? "" : `,"revealAsCut":${at(revealAsCut)}`;
  return `{"borders":${sidesText(at, borders)},"back":${sizeText(write, back)},"face":${sizeText(write, face)},"bevel":{"plan":${at(bevel.plan)},"slope":${at(bevel.slope)}}${reveal}}`;
}

function printText({ at, most }: Writer, { left, top, angle, cover, pockets, edition }: PlacedPrint): string {
  const sheets = edition.map(
    (sheet) =>
      `{"name":${quoted(sheet.name)},"print":{"left":${at(sheet.left)},"top":${at(sheet.top)}},"cover":${sidesText(most, sheet.cover)}}`,
  );
  const shared = sheets.length === 0 ? "" : `"edition":[${sheets.join()}],`;
  return `"print":{"left":${at(left)},"top":${at(top)},"angle":${angle}},"cover":${sidesText(most, cover)},"pockets":${cornersText(most, pockets)},${shared}`;
}

const stopText = ({ at }: Writer, { mat, set, scale, edges, hand }: Stop): string =>
  `{"mat":${mat},"set":${at(set)},"scale":${at(scale)},"edges":["${edges.join('","')}"],"hand":["${hand.join('","')}"]}`;

function stepText(
  { at, most, exact }: Writer,
  step: MadeStep,
  mats: number,
  { ruler, language }: Speech,
): string {
  // What paper and pockets reach is a maximum here too, as where it stands by itself.
  const is = step.name.of === "cover" || step.name.of === "pocket" ? most(step.is) : at(step.is);
  // Names of steps and sums hold words of ours, figures and signs, none that JSON would write otherwise.
  return `{"name":"${sayStepName(step.name, mats, language)}","sum":"${saySum(step, ruler.unit, exact)}","is":${is}}`;
}
