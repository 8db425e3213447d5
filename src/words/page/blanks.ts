import { type Language, VOCABULARY } from "../vocabulary.ts";
import { inSentence } from "./capital.ts";
import { unitOptions } from "./options.ts";
import type { BlankName } from "./sentences.ts";

export interface BlankWords {
  /** The clause that the blank completes; read out before its value. */
  readonly label: string;
  /** How a change of it is called, before the value: "raised" 1/4 in. */
  readonly said: string;
}

/** What a blank is called when it is spoken of by itself. */
export function blankWords(blank: BlankName, mats: number, language: Language): BlankWords {
  const { mat, mats: plural, centre } = VOCABULARY[language];
  if (blank.startsWith("board.")) return both(`Board of ${matNamed(Number(blank.slice(6)), mats, mat)}`);
  if (blank.startsWith("boardThickness.")) {
    return both(`Thickness of ${matNamed(Number(blank.slice(15)), mats, mat)}`);
  }
  if (blank.startsWith("bevel."))
    return both(`Cut of ${matNamed(Number(blank.slice(6)), mats, mat)} to its face`);
  if (blank.startsWith("reveal.")) {
    return both(`In sight of ${matNamed(Number(blank.slice(7)) - 1, mats, mat)}`);
  }
  switch (blank) {
    case "liftBy":
      return { label: `Raised above ${centre}`, said: "raised" };
    case "overlap":
      return { label: "Covered on each side", said: "covered" };
    case "gap":
      return { label: "Clear of the sheet on each side", said: "clear" };
    case "outer":
      return { label: "Outer size", said: "on" };
    case "holding":
      return { label: "Held with", said: "held with" };
    case "show":
      return { label: "What the window shows", said: "show the" };
    case "matCount":
      return { label: `How many ${plural}`, said: "in" };
    case "hold":
      return both(`The ${mat} lies on the paper by at least`);
    case "lift":
      return { label: "Where the window lies", said: "window" };
    default:
      return both(LABELS[blank as keyof typeof LABELS] ?? blank);
  }
}

const both = (label: string): BlankWords => ({
  label,
  said: inSentence(label),
});

const LABELS = {
  sheetWidth: "Sheet width",
  sheetHeight: "Sheet height",
  thickness: "Paper thickness",
  imageKind: "Image on the sheet",
  imageWidth: "Image width",
  imageHeight: "Image height",
  imageLeft: "Image from the left edge of the sheet",
  imageTop: "Image from the top edge of the sheet",
  lie: "How the image lies",
  angle: "Turned clockwise on its sheet",
  level: "Which hangs level",
  unit: "Unit",
  graduation: "Ruler marked in",
  sure: "Measured to within",
  outerWidth: "Board width",
  outerHeight: "Board height",
  marginTop: "Paper in sight at the head",
  marginSide: "Paper in sight at each side",
  marginFoot: "Paper in sight at the foot",
  windowWidth: "Window width",
  windowHeight: "Window height",
  borderHead: "Border at the head",
  borderSide: "Border at each side",
  borderFoot: "Border at the foot",
  leastBorder: "Least border",
  liftRatio: "Foot to head",
  mount: "Mounted on",
  play: "Room to move in a corner",
  title: "Title",
} as const;

/** "the mat" alone; of several "the lowest mat", "the top mat", "mat 2". */
export function matNamed(index: number, mats: number, mat: string): string {
  if (mats === 1) return `the ${mat}`;
  if (index === mats - 1) return `the top ${mat}`;
  return index === 0 ? `the lowest ${mat}` : `${mat} ${index + 1}`;
}

/** A length blank's accessible name: the clause and the unit. */
export const lengthLabel = (label: string, unit: "in" | "mm", language: Language): string =>
  `${label}, ${unitOptions(language).find(({ key }) => key === unit)?.words ?? unit}`;

/** The line over a ladder's rungs. */
export const ladderAsks = (label: string): string => `${label}, in steps of your ruler.`;
