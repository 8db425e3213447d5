import type { Drawing } from "../../drawings/index.ts";
import type { PaperSize } from "../../papers/index.ts";
import type { PaperName } from "../../words/paper-names.ts";
import type { KeptShow } from "../state/change.ts";
import { now } from "../state/chance.ts";
import { signal } from "../state/signal.ts";

/** What the server gives a look at. */
export interface Looked {
  readonly papers: readonly { readonly name: PaperName; readonly page: Drawing | null }[];
  readonly leftOut: readonly string[];
  readonly plan: number;
}

export type Look =
  | { readonly state: "looking" }
  /** `refused`: what the server answered; null: it did not. */
  | { readonly state: "none"; readonly refused: number | null }
  | { readonly state: "here"; readonly looked: Looked };

/** The papers as they were last laid out. */
export const look = signal<Look>({ state: "looking" });
/** Which size is printed on, where it is not the practice's. */
export const chosenSize = signal<PaperSize | null>(null);
/** The works that are printed, by their ids; null: all. */
export const chosenWorks = signal<ReadonlySet<string> | null>(null);

/** A show with only the works that are printed. */
export const printed = (show: KeptShow): KeptShow => {
  const chosen = chosenWorks.value;
  return chosen === null ? show : { ...show, works: show.works.filter(({ id }) => chosen.has(id)) };
};

let latest: AbortController | null = null;

/** Asks for every paper's first page; the last asking counts. */
export async function lookAt(show: KeptShow, paper: PaperSize): Promise<void> {
  latest?.abort();
  const asking = new AbortController();
  latest = asking;
  const { signal: ends } = asking;
  try {
    const answer = await fetch("./api/papers/previews", {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify({ show, paper, date: now().slice(0, 10) }),
      signal: ends,
    });
    const looked: unknown = answer.ok ? await answer.json() : null;
    if (ends.aborted) return;
    look.value = isLooked(looked) ? { state: "here", looked } : { state: "none", refused: answer.status };
  } catch (fault) {
    if (ends.aborted) return;
    // A TypeError is how a browser says that nothing answered.
    if (!(fault instanceof TypeError)) throw fault;
    look.value = { state: "none", refused: null };
  }
}

/** Our own server's answer; anything else is none. */
const isLooked = (json: unknown): json is Looked =>
  typeof json === "object" &&
  json !== null &&
  Array.isArray(Reflect.get(json, "papers")) &&
  Array.isArray(Reflect.get(json, "leftOut")) &&
  typeof Reflect.get(json, "plan") === "number";
