import type { Design, MatRule, OuterRule, Print, WindowRule } from "../../assembly/index.ts";
import type { Box } from "../../geometry/index.ts";
import { type Length, ZERO } from "../../lengths/index.ts";
import type { ComposeDocument } from "../../show/index.ts";
import {
  type BlankName,
  HOLDING_OPTIONS,
  IMAGE_OPTIONS,
  isWholeSheet,
  LEVEL_OPTIONS,
  LIE_OPTIONS,
  liftOptions,
  matOptions,
  type Options,
  rulerOptions,
  SHOW_OPTIONS,
  unitOptions,
} from "../../words/page.ts";
import type { Language } from "../../words/index.ts";
import { documentOf, Speller } from "./document-of.ts";
import { firstImage, liftUnder, windowUnder, withMats } from "./writing.ts";

/**
 * What stands behind each blank: how its value is read from the design, and how a new one is written
 * into the document. A design has every choice made, so that a blank also shows what the practice
 * says; a document keeps only what somebody said, as text with its unit.
 */
export type Field =
  | {
      readonly kind: "length";
      readonly read: (design: Design) => Length;
      readonly write: (document: ComposeDocument, design: Design, length: Length) => ComposeDocument;
    }
  | {
      readonly kind: "number";
      readonly unit: string;
      readonly step: number;
      readonly read: (design: Design) => number;
      readonly write: (document: ComposeDocument, design: Design, value: number) => ComposeDocument;
    }
  | {
      readonly kind: "choice";
      readonly options: (design: Design, language: Language) => Options<string>;
      readonly read: (design: Design) => string;
      readonly write: (document: ComposeDocument, design: Design, key: string) => ComposeDocument;
    }
  | { readonly kind: "dialog" };

type LengthField = Extract<Field, { kind: "length" }>;
type ChoiceField = Extract<Field, { kind: "choice" }>;

const spellerOf = (design: Design): Speller => new Speller(design.ruler.unit);

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

type WindowOf<Show> = Extract<WindowRule, { show: Show }>;

function windowLength<Show extends WindowRule["show"]>(
  show: Show,
  key: Exclude<keyof WindowOf<Show>, "show"> & string,
  read: (window: WindowOf<Show>) => Length,
): LengthField {
  const isShown = (window: WindowRule): window is WindowOf<Show> => window.show === show;
  return {
    kind: "length",
    read: ({ window }) => (isShown(window) ? read(window) : ZERO),
    write: (document, design, length) => {
      const spell = spellerOf(design);
      return { ...document, window: { ...spell.window(design.window), [key]: spell.length(length) } };
    },
  };
}

function outerLength(
  read: (outer: OuterRule) => Length,
  write: (outer: OuterRule, length: Length) => OuterRule,
): LengthField {
  return {
    kind: "length",
    read: ({ outer }) => read(outer),
    write: (document, design, length) => ({
      ...document,
      outer: spellerOf(design).outer(write(design.outer, length)),
    }),
  };
}

const border = (side: "head" | "side" | "foot"): LengthField =>
  outerLength(
    (outer) => (outer.kind === "borders" ? outer.borders[side] : ZERO),
    (outer, length) =>
      outer.kind === "borders" ? { ...outer, borders: { ...outer.borders, [side]: length } } : outer,
  );

/** The option that a control's value names. A control offers no other. */
function keyIn<Key extends string>(options: Options<Key>, value: string): Key {
  const option = options.find(({ key }) => key === value);
  if (option === undefined) throw new RangeError(`${value} is none of the choices`);
  return option.key;
}

const choice = (
  options: ChoiceField["options"],
  read: ChoiceField["read"],
  write: ChoiceField["write"],
): ChoiceField => ({ kind: "choice", options, read, write });

const reveal = (mat: number): LengthField => ({
  kind: "length",
  read: ({ mats }) => mats[mat]?.reveal ?? ZERO,
  write: (document, design, length) => withMat(document, design, mat, { reveal: length }),
});

/** One mat's own figures; the other mats stay as they are. */
const withMat = (document: ComposeDocument, design: Design, mat: number, words: Partial<MatRule>): ComposeDocument => ({
  ...document,
  mats: spellerOf(design).mats(design.mats.map((rule, index) => (index === mat ? { ...rule, ...words } : rule))),
});

const boardThickness = (mat: number): LengthField => ({
  kind: "length",
  read: ({ mats }) => mats[mat]?.thickness ?? ZERO,
  write: (document, design, thickness) => withMat(document, design, mat, { thickness }),
});

const bevel = (mat: number): Field => ({
  kind: "number",
  unit: "°",
  step: 1,
  read: ({ mats }) => mats[mat]?.bevel ?? 45,
  write: (document, design, degrees) => withMat(document, design, mat, { bevel: degrees }),
});

/** A named size; found sizes become named ones. */
const outerSide = (side: "width" | "height"): LengthField => ({
  kind: "length",
  read: ({ outer }) => (outer.kind === "size" ? outer[side] : ZERO),
  write: (document, design, length) => {
    const size = design.outer.kind === "size" ? design.outer : { width: length, height: length };
    return { ...document, outer: spellerOf(design).size({ ...size, [side]: length }) };
  },
});

const FIELDS: Readonly<Partial<Record<BlankName, Field>>> = {
  sheetWidth: printLength(({ sheet }) => sheet.width, (text) => ({ width: text })),
  sheetHeight: printLength(({ sheet }) => sheet.height, (text) => ({ height: text })),
  thickness: printLength(({ thickness }) => thickness, (text) => ({ thickness: text })),
  sure: printLength(({ sure }) => sure, (text) => ({ sure: text })),
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
      const image = key === "whole" ? { left: ZERO, top: ZERO, ...sheet } : firstImage(sheet, design.ruler.graduation);
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
  show: choice(
    () => SHOW_OPTIONS,
    ({ window }) => window.show,
    (document, design, key) => ({ ...document, window: windowUnder(keyIn(SHOW_OPTIONS, key), design) }),
  ),
  overlap: windowLength("overlap", "overlap", ({ overlap }) => overlap),
  marginTop: windowLength("margins", "top", ({ top }) => top),
  marginSide: windowLength("margins", "side", ({ side }) => side),
  marginFoot: windowLength("margins", "foot", ({ foot }) => foot),
  gap: windowLength("sheet", "gap", ({ gap }) => gap),
  windowWidth: windowLength("typed", "width", ({ width }) => width),
  windowHeight: windowLength("typed", "height", ({ height }) => height),
  matCount: choice(
    ({ mats }, language) => matOptions(mats.length, language),
    ({ mats }) => String(mats.length),
    (document, design, key) => ({
      ...document,
      mats: spellerOf(design).mats(withMats(design, Number(key))),
    }),
  ),
  outer: { kind: "dialog" },
  outerWidth: outerSide("width"),
  outerHeight: outerSide("height"),
  borderHead: border("head"),
  borderSide: border("side"),
  borderFoot: border("foot"),
  leastBorder: outerLength(
    (outer) => (outer.kind === "smallest" ? outer.border : ZERO),
    (outer, length) => (outer.kind === "smallest" ? { ...outer, border: length } : outer),
  ),
  lift: choice(
    (_, language) => liftOptions(language),
    ({ lift }) => lift.rule,
    (document, _, key) => ({ ...document, lift: liftUnder(keyIn(liftOptions("en-US"), key)) }),
  ),
  liftBy: {
    kind: "length",
    read: ({ lift }) => (lift.rule === "fixed" ? lift.by : ZERO),
    write: (document, design, length) => ({
      ...document,
      lift: { rule: "fixed", by: spellerOf(design).length(length) },
    }),
  },
  liftRatio: {
    kind: "number",
    unit: "",
    step: 0.05,
    read: ({ lift }) => (lift.rule === "ratio" ? Number(lift.foot.over) / Number(lift.foot.under) : 1),
    write: (document, _, foot) => ({ ...document, lift: { rule: "ratio", foot } }),
  },
  holding: choice(
    () => HOLDING_OPTIONS,
    ({ holding }) => holding,
    (document, _, key) => ({ ...document, holding: keyIn(HOLDING_OPTIONS, key) }),
  ),
  hold: {
    kind: "length",
    read: ({ hold }) => hold,
    write: (document, design, length) => ({ ...document, hold: spellerOf(design).length(length) }),
  },
  play: {
    kind: "length",
    read: ({ play }) => play,
    write: (document, design, length) => ({ ...document, play: spellerOf(design).length(length) }),
  },
};

/** What stands behind a blank. */
export function fieldOf(blank: BlankName): Field {
  if (blank.startsWith("board.")) return { kind: "dialog" };
  if (blank.startsWith("boardThickness.")) return boardThickness(Number(blank.slice(15)));
  if (blank.startsWith("bevel.")) return bevel(Number(blank.slice(6)));
  if (blank.startsWith("reveal.")) return reveal(Number(blank.slice(7)));
  const field = FIELDS[blank];
  if (field === undefined) throw new Error(`nothing stands behind the blank ${blank}`);
  return field;
}
