import { practiceOfShow } from "../../packet/reckoned/index.ts";
import { framePracticeFor } from "../../show/index.ts";
import { FRAMING, type Options } from "../../words/page.ts";
import type { KeptShow, KeptWork } from "../state/change.ts";
import { readOf } from "../state/framed.ts";

/** What a work may be framed in, by the key that a choice keeps. A kind's own name may be any text, so it has a key of its own. */
const OWN = "practice";
const NOTHING = "nothing";
const NAMED = "kind ";

type Asked = KeptWork["frame"];

/** The choices of a show; none where it names no frame at all. */
export function kindsOf(show: KeptShow): Options<string> {
  const read = readOf(show);
  const practice = practiceOfShow(read);
  const kinds = framePracticeFor(practice, practice.unit ?? read.unit);
  if (!kinds.ok) return [];
  const { moulding, frames } = kinds.value;
  if (moulding === null && frames.length === 0) return [];
  return [
    ...(moulding === null ? [] : [{ key: OWN, words: moulding.name }]),
    ...frames.map(({ name }) => ({ key: NAMED + name, words: name })),
    { key: NOTHING, words: FRAMING.nothing },
  ];
}

/** The choice that a work's own words come to. */
export function keyOf(asked: Asked, kinds: Options<string>): string {
  if (asked === null) return NOTHING;
  if (asked !== undefined) return NAMED + (typeof asked === "string" ? asked : asked.kind);
  return kinds.some(({ key }) => key === OWN) ? OWN : NOTHING;
}

/** A work's own words for a choice. How it stands goes with the frame that it stood in. */
export const askedFor = (key: string): Asked =>
  key === OWN ? undefined : key === NOTHING ? null : key.slice(NAMED.length);

/** The name of the kind that a work names itself; null where it names none. */
export const namedKind = (asked: Asked): string | null =>
  asked === null || asked === undefined ? null : typeof asked === "string" ? asked : asked.kind;
