import type { Drawing } from "../../marks.ts";
import { newDocument, pdfTypeface, type PdfTypeface } from "./fonts.ts";
import { inPoints } from "./numbers.ts";
import { paint } from "./paint.ts";
import { typeSetter } from "./text.ts";

export interface PdfOptions {
  /** Stands in the file as the day it was made; with it the same drawings give the same bytes. */
  readonly date: Date;
  readonly title: string;
  /** Language of the text for readers that speak it, such as `en-US`. */
  readonly language: string;
  /** The bytes of a picture by the name that a mark gives it: PNG or JPEG. */
  readonly pictures?: (source: string) => Uint8Array | undefined;
  readonly typeface?: PdfTypeface;
}

/** One drawing a page; `bookmark` names it in the reader's list of contents. */
export interface PdfPage extends Drawing {
  readonly bookmark?: string;
}

/**
 * Writes one page for each drawing, at the drawing's own size, fonts embedded. Pages are taken one
 * at a time and handed on in chunks, so that a thousand of them never lie in memory together.
 * Throws RangeError when a mark cannot be written: an unknown picture, a sign that the type lacks.
 */
export async function streamPdf(
  pages: Iterable<PdfPage> | AsyncIterable<PdfPage>,
  options: PdfOptions,
  take: (chunk: Uint8Array) => void,
): Promise<void> {
  const document = newDocument({
    pdfVersion: "1.7",
    lang: options.language,
    displayTitle: true,
    info: { Title: options.title, Producer: "Margent", Creator: "Margent", CreationDate: options.date },
  });
  const ended = new Promise<void>((resolve, reject) => {
    document.on("end", () => resolve());
    document.on("error", reject);
  });
  document.on("data", take);
  const context = {
    document,
    setter: typeSetter(document, (options.typeface ?? pdfTypeface()).measure),
    pictures: options.pictures ?? (() => undefined),
  };
  for await (const page of pages) {
    document.addPage({ size: [inPoints(page.width), inPoints(page.height)], margin: 0 });
    if (page.bookmark !== undefined) document.outline.addItem(page.bookmark);
    paint(context, page.marks);
  }
  document.end();
  return ended;
}

/** The whole file in one piece; see `streamPdf`. */
export async function writePdf(
  pages: Iterable<PdfPage> | AsyncIterable<PdfPage>,
  options: PdfOptions,
): Promise<Uint8Array> {
  let bytes = new Uint8Array(1 << 16);
  let length = 0;
  // Copied: each chunk alone would keep alive the block of memory that it was cut from.
  await streamPdf(pages, options, (chunk) => {
    if (length + chunk.length > bytes.length) {
      const larger = new Uint8Array(2 * (length + chunk.length));
      larger.set(bytes.subarray(0, length));
      bytes = larger;
    }
    bytes.set(chunk, length);
    length += chunk.length;
  });
  return bytes.subarray(0, length);
}
