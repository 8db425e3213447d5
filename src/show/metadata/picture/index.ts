import { Bytes } from "./bytes.ts";
import { exifFields } from "./exif.ts";
import { type PictureFields, saidBy } from "./fields.ts";
import { iimFields } from "./iim.ts";
import { inflated } from "./inflate.ts";
import { xmpFields } from "./xmp.ts";

export type { FieldFrom, PictureField, PictureFields } from "./fields.ts";

/** What may lie in a picture, each block as it was found. */
interface Blocks {
  xmp: string;
  iim: Bytes | null;
  exif: Bytes | null;
  texts: PictureFields;
}

/**
 * What a picture (JPEG or PNG) says of the work that it shows: from its XMP, else its IPTC block, else its EXIF,
 * else a PNG's own texts. Nothing but these blocks is read; what is damaged says nothing.
 */
export function readPictureFields(picture: Uint8Array): PictureFields {
  const bytes = new Bytes(picture);
  const blocks: Blocks = { xmp: "", iim: null, exif: null, texts: {} };
  if (bytes.number(0, 2) === 0xffd8) readJpeg(bytes, blocks);
  else if (bytes.says(1, "PNG\r\n")) readPng(bytes, blocks);
  return {
    ...blocks.texts,
    ...(blocks.exif === null ? {} : exifFields(blocks.exif)),
    ...(blocks.iim === null ? {} : iimFields(blocks.iim)),
    ...(blocks.xmp === "" ? {} : xmpFields(blocks.xmp)),
  };
}

/** The signs by which these blocks begin, as the standards fix them (ISO 16684-3, JEITA CP-3451, IPTC-IIM; from memory). */
const XMP_MARK = "http://ns.adobe.com/xap/1.0/\0";
const EXIF_MARK = "Exif\0\0";
const RESOURCES_MARK = "Photoshop 3.0\0";

/** Segments before the picture itself, each with its own length. */
function readJpeg(bytes: Bytes, blocks: Blocks): void {
  let at = 2;
  while (bytes.number(at, 1) === 0xff) {
    const kind = bytes.number(at + 1, 1);
    const length = bytes.number(at + 2, 2);
    // 0xDA: here the picture begins.
    if (kind === null || length === null || length < 2 || kind === 0xda) return;
    const body = bytes.part(at + 4, length - 2);
    if (body === null) return;
    if (kind === 0xe1 && body.says(0, XMP_MARK)) blocks.xmp = textFrom(body, XMP_MARK.length);
    else if (kind === 0xe1 && body.says(0, EXIF_MARK)) blocks.exif = after(body, EXIF_MARK.length);
    else if (kind === 0xed && body.says(0, RESOURCES_MARK)) blocks.iim ??= iimIn(body, RESOURCES_MARK.length);
    at += 2 + length;
  }
}

const after = (bytes: Bytes, from: number): Bytes | null => bytes.part(from, bytes.length - from);
const textFrom = (bytes: Bytes, from: number): string => after(bytes, from)?.text() ?? "";

/** Of a block of resources the one that holds IPTC's data sets. */
function iimIn(body: Bytes, from: number): Bytes | null {
  let at = from;
  while (body.says(at, "8BIM")) {
    const id = body.number(at + 4, 2);
    const named = body.number(at + 6, 1);
    if (id === null || named === null) return null;
    // The name and its length together are even, and so is what follows.
    const size = at + 6 + named + 1 + ((named + 1) % 2);
    const length = body.number(size, 4);
    if (length === null) return null;
    if (id === 0x0404) return body.part(size + 4, length);
    at = size + 4 + length + (length % 2);
  }
  return null;
}

/** A PNG's own names for its texts. */
const TEXT_NAMES = {
  Title: "title",
  Author: "maker",
  Description: "description",
  Copyright: "rights",
} as const;
const isTextName = (name: string): name is keyof typeof TEXT_NAMES => Object.hasOwn(TEXT_NAMES, name);

function readPng(bytes: Bytes, blocks: Blocks): void {
  let at = 8;
  for (;;) {
    const length = bytes.number(at, 4);
    const body = length === null ? null : bytes.part(at + 8, length);
    if (length === null || body === null || bytes.says(at + 4, "IEND")) return;
    if (bytes.says(at + 4, "eXIf")) blocks.exif = body;
    for (const kind of ["tEXt", "zTXt", "iTXt"] as const)
      if (bytes.says(at + 4, kind)) readText(body, kind, blocks);
    at += 12 + length;
  }
}

/** A keyword, a nought, a text; how it is packed, and of an international one its languages, stand between. */
function readText(body: Bytes, kind: "tEXt" | "zTXt" | "iTXt", blocks: Blocks): void {
  const name = body.find(0, 0);
  if (name === null) return;
  const from = kind === "tEXt" ? name + 1 : kind === "zTXt" ? name + 2 : afterLanguages(body, name + 3);
  const packed = kind === "zTXt" || (kind === "iTXt" && body.number(name + 1, 1) === 1);
  const written = from === null ? null : after(body, from);
  const unpacked = packed && written !== null ? inflated(written.bytes) : null;
  const text = (packed ? unpacked && new Bytes(unpacked) : written)?.text() ?? "";
  const keyword = body.part(0, name)?.text() ?? "";
  if (keyword === "XML:com.adobe.xmp") blocks.xmp = text;
  else if (isTextName(keyword))
    blocks.texts = { ...blocks.texts, ...saidBy("PNG", { [TEXT_NAMES[keyword]]: text }) };
}

/** Behind a language and a translated keyword, each with its nought. */
function afterLanguages(body: Bytes, from: number): number | null {
  const language = body.find(0, from);
  const translated = language === null ? null : body.find(0, language + 1);
  return translated === null ? null : translated + 1;
}
