import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import PdfFile from "pdfkit";
import { fromReal, type Length } from "../../../lengths/index.ts";
import type { Typeface, Weight } from "../../marks.ts";

/** The parts of pdfkit's embedded font that its published types leave out. */
export interface EmbeddedFont {
  readonly id: string;
  readonly scale: number;
  readonly font: {
    readonly hasGlyphForCodePoint: (codePoint: number) => boolean;
    readonly layout: (text: string) => {
      readonly glyphs: readonly { readonly bbox: InkBox }[];
      readonly positions: readonly GlyphPosition[];
    };
  };
  readonly encode: (text: string) => [string[], GlyphPosition[]];
  readonly ref: () => PDFKit.PDFKitReference;
}

/** All in thousandths of the em. `advanceWidth` is the glyph's own, `xAdvance` the kerned one. */
interface GlyphPosition {
  readonly xAdvance: number;
  readonly xOffset: number;
  readonly yOffset: number;
  readonly advanceWidth: number;
}

interface InkBox {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Where pdfkit keeps the font that its last call of `font` chose. */
const CHOSEN_FONT = "_font";

declare global {
  namespace PDFKit {
    interface PDFDocument {
      readonly [CHOSEN_FONT]: EmbeddedFont;
      /** An open font is taken as its file is, which the published types leave out. */
      registerFont(name: string, source: EmbeddedFont["font"] | Uint8Array): this;
    }
  }
}

const FILES: Readonly<Record<Weight, string>> = {
  light: "Light",
  regular: "Regular",
  semibold: "Semibold",
  bold: "Bold",
  black: "Black",
  italic: "It",
};

const resolve = createRequire(import.meta.url).resolve;
const WEIGHTS: readonly Weight[] = ["light", "regular", "semibold", "bold", "black", "italic"];
const nameOf = (weight: Weight): string => `SourceSans3-${FILES[weight]}`;

let fontFiles: ReadonlyMap<Weight, Buffer> | null = null;

/** The bytes of Source Sans 3 (SIL Open Font License), every weight read once in the program's life. */
function bytesOf(weight: Weight): Buffer {
  fontFiles ??= new Map(
    WEIGHTS.map((each) => [each, readFileSync(resolve(`source-sans/TTF/${nameOf(each)}.ttf`))]),
  );
  const bytes = fontFiles.get(weight);
  if (bytes === undefined) throw new RangeError(`no font for the weight ${weight}`);
  return bytes;
}

/** Each weight as it is opened once in the program's life; no text is ever laid out in these. */
const opened = new Map<Weight, EmbeddedFont["font"]>();

function openedOnce(weight: Weight): EmbeddedFont["font"] {
  let font = opened.get(weight);
  if (font === undefined) {
    const document = new PdfFile({ autoFirstPage: false });
    document.registerFont(nameOf(weight), bytesOf(weight)).font(nameOf(weight));
    font = document[CHOSEN_FONT].font;
    opened.set(weight, font);
  }
  return font;
}

/**
 * The font for one document: its tables are those that have been read already, its glyphs its own. A glyph
 * remembers the first characters that it stood for; one that another document met as a part of `½` would
 * leave `⁄` out of the text that a reader extracts from this one.
 */
const forOneDocument = (weight: Weight): EmbeddedFont["font"] =>
  Object.create(openedOnce(weight), { _glyphs: { value: {} } }) as EmbeddedFont["font"];

/** A document without a page whose fonts go by the names that `fontOf` asks for. */
export function newDocument(options: PDFKit.PDFDocumentOptions): PDFKit.PDFDocument {
  const document = new PdfFile({ ...options, autoFirstPage: false });
  for (const weight of WEIGHTS) document.registerFont(nameOf(weight), forOneDocument(weight));
  return document;
}

/** A weight's font in a document, embedded there from its first use on. */
export function fontOf(document: PDFKit.PDFDocument, weight: Weight): EmbeddedFont {
  document.font(nameOf(weight));
  return document[CHOSEN_FONT];
}

/** Ink of a text on its baseline, in lengths: `up` and `down` from the baseline, `from` and `to` from its start. */
export interface Ink {
  readonly from: Length;
  readonly to: Length;
  readonly up: Length;
  readonly down: Length;
}

export interface PdfTypeface extends Typeface {
  /** The box that the ink of a text fills; null for blanks alone. */
  readonly ink: (text: string, weight: Weight, size: Length) => Ink | null;
}

/**
 * The typeface that `writePdf` embeds, for laying out before drawing. A measure is the very sum of
 * kerned advances that the writer sets, to the nearest tick.
 */
export function pdfTypeface(): PdfTypeface {
  // Never ended, never written: it only holds the fonts open and remembers the words it has set.
  const document = newDocument({});
  const remembered = new Map<string, number>();
  return {
    measure: (text, weight, size) => {
      const key = `${weight}\n${text}`;
      let perThousandEm = remembered.get(key);
      if (perThousandEm === undefined) {
        const [, positions] = fontOf(document, weight).encode(plainSpaces(text));
        perThousandEm = positions.reduce((sum, at) => sum + at.xAdvance, 0);
        if (remembered.size >= MOST_REMEMBERED) remembered.clear();
        remembered.set(key, perThousandEm);
      }
      return fromReal((perThousandEm * size) / 1000, "nearest");
    },
    has: (character) => {
      const codePoint = plainSpaces(character).codePointAt(0);
      return codePoint !== undefined && fontOf(document, "regular").font.hasGlyphForCodePoint(codePoint);
    },
    ink: (text, weight, size) => inkOf(fontOf(document, weight), plainSpaces(text), size),
  };
}

/** Words of a packet repeat; a bound keeps a long run of works from holding every title. */
const MOST_REMEMBERED = 20_000;

function inkOf(font: EmbeddedFont, text: string, size: Length): Ink | null {
  const { glyphs, positions } = font.font.layout(text);
  let x = 0;
  let box: InkBox | null = null;
  glyphs.forEach(({ bbox }, index) => {
    const at = positions[index];
    if (!at) return;
    if (bbox.maxX > bbox.minX) {
      const here = {
        minX: x + at.xOffset + bbox.minX,
        maxX: x + at.xOffset + bbox.maxX,
        minY: at.yOffset + bbox.minY,
        maxY: at.yOffset + bbox.maxY,
      };
      box = box === null ? here : around(box, here);
    }
    x += at.xAdvance;
  });
  if (box === null) return null;
  const { minX, maxX, minY, maxY }: InkBox = box;
  const length = (units: number): Length => fromReal((units * font.scale * size) / 1000, "nearest");
  return { from: length(minX), to: length(maxX), up: length(maxY), down: length(-minY) };
}

const around = (a: InkBox, b: InkBox): InkBox => ({
  minX: Math.min(a.minX, b.minX),
  maxX: Math.max(a.maxX, b.maxX),
  minY: Math.min(a.minY, b.minY),
  maxY: Math.max(a.maxY, b.maxY),
});

/** Spaces that only forbid a break are set, and later extracted, as ordinary ones. */
export const plainSpaces = (text: string): string => text.replaceAll("\u00a0", " ").normalize("NFC");
