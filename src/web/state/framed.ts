import { practiceOfShow, worksInFrames, type WorksInFrames } from "../../packet/reckoned/index.ts";
import { showReadOf } from "../../show/index.ts";
import type { KeptShow } from "./change.ts";

/** A show as everything outside the page reads it. */
export const readOf = (show: KeptShow) => showReadOf({ ...show, works: [...show.works] });

let known: { readonly of: readonly unknown[]; readonly framed: WorksInFrames } | null = null;

/** Every work of a show in its frame; reckoned once for the same works under the same practice. */
export function framedOf(show: KeptShow): WorksInFrames {
  const of = [show.works, show.practice, show.frames];
  if (known !== null && known.of.every((one, index) => one === of[index])) return known.framed;
  const read = readOf(show);
  const framed = worksInFrames(read.works, practiceOfShow(read));
  known = { of, framed };
  return framed;
}
