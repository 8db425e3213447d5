import type { Design } from "../assembly/index.ts";
import type { Typeface } from "../drawings/index.ts";

/** A title's most characters, and any other word's: what is longer is cut, since no paper could hold it. */
const MOST_OF_TITLE = 300;
const MOST = 120;

/** Stands for a sign that the type lacks: visible, and named on the paper. */
const STAND_IN = "□";

export interface Printable {
  readonly text: string;
  /** How many signs were replaced. */
  readonly missing: number;
}

/**
 * A text from outside as it can be printed: on one line, composed (NFC), without control signs, every
 * sign that the type lacks replaced by a square. The paper says how many were, so that a name in
 * another script is written in by hand and never lost in silence.
 */
export function printable(text: string, typeface: Typeface, most = MOST): Printable {
  const characters = [
    ...text
      .normalize("NFC")
      .replace(/[\s\p{Cc}]+/gu, " ")
      .trim(),
  ].filter((character) => !/^\p{Cf}$/u.test(character));
  const kept = characters.length > most ? [...characters.slice(0, most - 1), "…"] : characters;
  const printed = kept.map((character) => (typeface.has(character) ? character : STAND_IN));
  return {
    text: printed.join(""),
    missing: kept.filter((character) => !typeface.has(character)).length,
  };
}

/** Several texts at once, and the signs missing from all of them. */
export function printableAll<Name extends string>(
  texts: Readonly<Record<Name, string>>,
  typeface: Typeface,
): { readonly texts: Readonly<Record<Name, string>>; readonly missing: number } {
  let missing = 0;
  const entries = Object.entries<string>(texts).map(([name, text]) => {
    const printed = printable(text, typeface, name === "title" ? MOST_OF_TITLE : MOST);
    missing += printed.missing;
    return [name, printed.text] as const;
  });
  return { texts: { ...texts, ...Object.fromEntries(entries) }, missing };
}

/** A design whose boards' names can be printed, and the signs missing from them. */
export function printableDesign(
  design: Design,
  typeface: Typeface,
): { readonly design: Design; readonly missing: number } {
  const mount = printable(design.mount, typeface);
  const boards = design.mats.map(({ board }) => printable(board, typeface));
  return {
    design: {
      ...design,
      mount: mount.text,
      mats: design.mats.map((mat, index) => ({ ...mat, board: boards[index]?.text ?? "" })),
    },
    missing: boards.reduce((sum, { missing }) => sum + missing, mount.missing),
  };
}
