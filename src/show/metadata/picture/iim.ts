import type { Bytes } from "./bytes.ts";
import { type PictureFields, saidBy } from "./fields.ts";

/** Data sets of the application record (IPTC Information Interchange Model, from memory). */
const SETS = {
  title: 5,
  keywords: 25,
  date: 55,
  maker: 80,
  credit: 110,
  rights: 116,
  description: 120,
} as const;
const APPLICATION = 2;
const MARKER = 0x1c;

/** What an IPTC block says: data sets one after the other, each with its length. */
export function iimFields(block: Bytes): PictureFields {
  const texts = new Map<number, string[]>();
  let at = 0;
  while (block.number(at, 1) === MARKER) {
    const length = block.number(at + 3, 2);
    const set = block.number(at + 2, 1);
    // A length with its highest bit set is written otherwise, for what is too long to be a field.
    if (length === null || set === null || length >= 0x8000) break;
    const text = block.part(at + 5, length)?.text();
    if (text === undefined) break;
    if (block.number(at + 1, 1) === APPLICATION) texts.set(set, [...(texts.get(set) ?? []), text]);
    at += 5 + length;
  }
  const of = (set: number): string => (texts.get(set) ?? []).join("; ");
  return saidBy("IPTC", {
    title: of(SETS.title),
    subject: of(SETS.keywords),
    year: /^\d{4}/.exec(of(SETS.date))?.[0] ?? "",
    maker: of(SETS.maker),
    credit: of(SETS.credit),
    rights: of(SETS.rights),
    description: of(SETS.description),
  });
}
