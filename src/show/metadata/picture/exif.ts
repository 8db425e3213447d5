import type { Bytes } from "./bytes.ts";
import { type PictureFields, saidBy } from "./fields.ts";

/** Tags of a picture's first directory (EXIF, from memory): its description, its artist, its copyright. */
const DESCRIPTION = 0x010e;
const ARTIST = 0x013b;
const COPYRIGHT = 0x8298;
const ASCII = 2;

/**
 * What an EXIF block says. When the picture was taken is not taken for when the work was made.
 */
export function exifFields(block: Bytes): PictureFields {
  const little = block.says(0, "II");
  if (!little && !block.says(0, "MM")) return {};
  const directory = block.number(4, 4, little);
  if (directory === null || block.number(2, 2, little) !== 42) return {};
  const count = block.number(directory, 2, little) ?? 0;
  const texts = new Map<number, string>();
  for (let entry = 0; entry < count; entry++) {
    const at = directory + 2 + 12 * entry;
    const tag = block.number(at, 2, little);
    const length = block.number(at + 4, 4, little);
    if (tag === null || length === null || block.number(at + 2, 2, little) !== ASCII) continue;
    // Up to four bytes stand in the entry itself.
    const from = length <= 4 ? at + 8 : (block.number(at + 8, 4, little) ?? block.length);
    const text = block.part(from, length)?.text();
    if (text !== undefined) texts.set(tag, text);
  }
  return saidBy("EXIF", {
    maker: texts.get(ARTIST) ?? "",
    description: texts.get(DESCRIPTION) ?? "",
    rights: texts.get(COPYRIGHT) ?? "",
  });
}
