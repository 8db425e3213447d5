import type { ShowDocument } from "../show/index.ts";
import { readPicture, type Store, sumOf } from "../storage/index.ts";

/** The small pictures that a show's works name, by their addresses, for whoever makes its papers. */
export async function keptPictures(store: Store, { works }: ShowDocument): Promise<Map<string, Uint8Array>> {
  const found = new Map<string, Uint8Array>();
  for (const { picture } of works) {
    const sum = sumOf(picture);
    if (picture === undefined || sum === null || found.has(picture)) continue;
    const kept = await readPicture(store, sum, "preview");
    if (kept !== null) found.set(picture, kept.bytes);
  }
  return found;
}
