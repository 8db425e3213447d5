import type { Print } from "../../assembly/index.ts";
import type { Box } from "../../geometry/index.ts";
import { type Length, ZERO } from "../../lengths/index.ts";
import type { ComposeDocument } from "../../show/index.ts";
import {
  type BlankName,
  IMAGE_OPTIONS,
  isWholeSheet,
  LEVEL_OPTIONS,
  LIE_OPTIONS,
  rulerOptions,
  unitOptions,
} from "../../words/page.ts";
import { documentOf, Speller } from "./document-of.ts";
import { choice, type Field, keyIn, type LengthField, spellerOf } from "./field.ts";
import { firstImage } from "./writing.ts";

type PrintDocument = NonNullable<ComposeDocument["print"]>;

/** The print with other words for some of it; an outline stays the very array it was, and is not read again. */
const withPrint = (document: ComposeDocument, words: Partial<PrintDocument>): ComposeDocument => ({
  ...document,
  print: { ...document.print, ...words },
});

/** A length of the print: the rest of what the document says of it stays. */
function printLength(
  read: (print: Print) => Length,
  write: (text: string, print: Print, spell: Speller, document: ComposeDocument) => Partial<PrintDocument>,
): LengthField {
  return {
    kind: "length",
    read: ({ print }) => (print === null ? ZERO : read(print)),
    write: (document, design, length) => {
      if (design.print === null) return document;
      const spell = spellerOf(design);
      return withPrint(document, write(spell.length(length), design.print, spell, document));
    },
  };
}

const imageLength = (key: keyof Box): LengthField =>
  printLength(
    ({ image }) => image[key],
    (text, { image }, spell, document) => ({
      image: { ...(document.print?.image ?? spell.box(image)), [key]: text },
    }),
  );

/** What is said of the print itself, and how it was measured. */
export const PRINT_FIELDS: Readonly<Partial<Record<BlankName, Field>>> = {
  sheetWidth: printLength(
    ({ sheet }) => sheet.width,
    (text) => ({ width: text }),
  ),
  sheetHeight: printLength(
    ({ sheet }) => sheet.height,
    (text) => ({ height: text }),
  ),
  thickness: printLength(
    ({ thickness }) => thickness,
    (text) => ({ thickness: text }),
  ),
  sure: printLength(
    ({ sure }) => sure,
    (text) => ({ sure: text }),
  ),
  imageWidth: imageLength("width"),
  imageHeight: imageLength("height"),
  imageLeft: imageLength("left"),
  imageTop: imageLength("top"),
  imageKind: choice(
    () => IMAGE_OPTIONS,
    (design) => (isWholeSheet(design) ? "whole" : "image"),
    (document, design, key) => {
      if (design.print === null) return document;
      const { sheet } = design.print;
      const image =
        key === "whole" ? { left: ZERO, top: ZERO, ...sheet } : firstImage(sheet, design.ruler.graduation);
      return withPrint(document, { image: spellerOf(design).box(image) });
    },
  ),
  lie: choice(
    () => LIE_OPTIONS,
    ({ print }) => (print === null || print.angle === 0 ? "straight" : "skew"),
    (document, _, key) => withPrint(document, { angle: key === "skew" ? 0.5 : 0 }),
  ),
  angle: {
    kind: "number",
    unit: "°",
    step: 0.1,
    read: ({ print }) => print?.angle ?? 0,
    write: (document, _, angle) => withPrint(document, { angle }),
  },
  level: choice(
    () => LEVEL_OPTIONS,
    ({ print }) => print?.level ?? "image",
    (document, _, key) => withPrint(document, { level: key === "sheet" ? "sheet" : "image" }),
  ),
  unit: choice(
    (_, language) => unitOptions(language),
    ({ ruler }) => ruler.unit,
    (_, design, key) => documentOf(design, keyIn(unitOptions("en-US"), key)),
  ),
  graduation: choice(
    ({ ruler }, language) => rulerOptions(ruler, language),
    ({ ruler }) => new Speller(ruler.unit).length(ruler.graduation),
    (document, _, key) => ({ ...document, graduation: key }),
  ),
};
