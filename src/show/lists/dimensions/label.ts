import type { DimensionsFault, Part } from "./records.ts";
import { LABEL_WORDS } from "./vocabulary.ts";

/** Leaves the reading at the first thing that makes no sense; `partsOf` turns it into its fault. */
export class NotUnderstood extends Error {
  readonly fault: DimensionsFault;
  constructor(fragment: string) {
    super("not understood");
    this.fault = { code: "not-understood", fragment };
  }
}

/** What a label says, its words put together. */
export interface Label {
  readonly names: readonly Part[];
  readonly each: boolean;
  readonly unsure: boolean;
  readonly notExact: readonly string[];
  readonly text: string;
  /** A colon stands behind it: it names what follows. */
  readonly colon: boolean;
}

/** The words of a label as what they say. `joined`: two parts are named together by "and", "&" or a slash, and both have this size. */
export function labelOf(words: readonly string[], joined: boolean, colon: boolean): Label {
  const text = words.join(" ");
  const names = new Set<Part>();
  const notExact: string[] = [];
  let each = false;
  let unsure = false;
  let secondary = false;
  for (const word of words) {
    const meant = LABEL_WORDS.get(word);
    if (meant === undefined) throw new NotUnderstood(text);
    if (meant.says === "part") names.add(meant.part);
    else if (meant.says === "each") each = true;
    else if (meant.says === "secondary") secondary = true;
    else if (meant.says === "not-exact") notExact.push(word);
    else if (meant.says === "not-sure") {
      unsure = true;
      names.add("whole");
    }
  }
  // "support, secondary" and "support (mount)" are what the sheet lies on.
  if (secondary || (names.has("mount") && !joined)) {
    names.delete("sheet");
    names.add("mount");
  }
  return { names: [...names], each, unsure, notExact, text, colon };
}
