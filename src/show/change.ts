import type { ComposeDocument, PracticeDocument, ShowDocument, WorkDocument } from "./schema.ts";
import { sameJson } from "./same-json.ts";

/** A work as the page keeps it: always with an id, so that a change can name it. */
export type KeptWork = WorkDocument & { readonly id: string };
export type KeptShow = Omit<ShowDocument, "works"> & { readonly works: readonly KeptWork[] };

export type WorkFacts = Omit<WorkDocument, "id" | "design">;
/** What a show says of itself, its works and its form aside. */
export type ShowFacts = Omit<ShowDocument, "works" | "format" | "version">;

/**
 * An edit as a value: applied, inverted for undo, kept in a list. Each holds what stood there before,
 * so that an edit on a value that someone else has changed meanwhile is noticed and not made.
 * `said` is what a person would call it: "raised 1/4 in".
 */
export type Change = { readonly said: string } & (
  | {
      readonly kind: "design";
      readonly work: string;
      readonly before: Patch<ComposeDocument>;
      readonly after: Patch<ComposeDocument>;
    }
  | {
      readonly kind: "facts";
      readonly work: string;
      readonly before: Patch<WorkFacts>;
      readonly after: Patch<WorkFacts>;
    }
  | { readonly kind: "show"; readonly before: Patch<ShowFacts>; readonly after: Patch<ShowFacts> }
  /** Habits one by one, so that two hands on two habits do not stand in each other's way. */
  | {
      readonly kind: "practice";
      readonly before: Patch<PracticeDocument>;
      readonly after: Patch<PracticeDocument>;
    }
  | { readonly kind: "add"; readonly work: KeptWork; readonly at: number }
  | { readonly kind: "remove"; readonly work: KeptWork; readonly at: number }
  | { readonly kind: "move"; readonly work: string; readonly from: number; readonly to: number }
);

/** How a change came to be made: for the first time, taken back, or made again. */
export const ACTS = ["do", "undo", "redo"] as const;
export type Act = (typeof ACTS)[number];

/** The keys that change, each with its whole value; undefined where an optional key is absent. */
export type Patch<T> = { readonly [K in keyof T]?: T[K] };

export type Applied =
  | { readonly ok: true; readonly show: KeptShow }
  /** Someone else has changed the same thing: what stands there now is `theirs`. */
  | { readonly ok: false; readonly theirs: unknown };

/**
 * The change that makes one document from another, by their top-level keys; null when nothing differs.
 * `seen` is the document that was on the screen when the typing began: what stands there, not what came
 * in meanwhile, is what the change is made upon.
 */
export function designChange(
  work: string,
  before: ComposeDocument,
  after: ComposeDocument,
  said: string,
  seen: ComposeDocument = before,
): Change | null {
  const patches = differing(before, after, seen);
  return patches === null ? null : { kind: "design", work, said, ...patches };
}

export function factsChange(work: KeptWork, after: Patch<WorkFacts>, said: string): Change | null {
  const patches = differing<WorkFacts>(work, { ...work, ...after }, work);
  return patches === null ? null : { kind: "facts", work: work.id, said, ...patches };
}

export function showChange(show: KeptShow, after: Patch<ShowFacts>, said: string): Change | null {
  const patches = differing<ShowFacts>(show, { ...show, ...after }, show);
  return patches === null ? null : { kind: "show", said, ...patches };
}

export function practiceChange(
  before: PracticeDocument,
  after: PracticeDocument,
  said: string,
  seen: PracticeDocument = before,
): Change | null {
  const patches = differing(before, after, seen);
  return patches === null ? null : { kind: "practice", said, ...patches };
}

function differing<T extends object>(
  before: T,
  after: T,
  seen: T,
): { before: Patch<T>; after: Patch<T> } | null {
  const from: { [K in keyof T]?: T[K] } = {};
  const to: { [K in keyof T]?: T[K] } = {};
  let any = false;
  for (const key of keysOf(before, after)) {
    if (sameJson(before[key], after[key])) continue;
    from[key] = seen[key];
    to[key] = after[key];
    any = true;
  }
  return any ? { before: from, after: to } : null;
}

export const keysOf = <T extends object>(a: T, b: T): (keyof T)[] =>
  [...new Set([...Object.keys(a), ...Object.keys(b)])] as (keyof T)[];

/** The change that takes this one back. */
export function inverse(change: Change): Change {
  switch (change.kind) {
    case "design":
      return { ...change, before: change.after, after: change.before };
    case "facts":
      return { ...change, before: change.after, after: change.before };
    case "show":
      return { ...change, before: change.after, after: change.before };
    case "practice":
      return { ...change, before: change.after, after: change.before };
    case "add":
      return { ...change, kind: "remove" };
    case "remove":
      return { ...change, kind: "add" };
    case "move":
      return { ...change, from: change.to, to: change.from };
  }
}

/** The show with the change made, unless someone else has changed the same thing. */
export function apply(show: KeptShow, change: Change): Applied {
  switch (change.kind) {
    case "design":
    case "facts":
      return patchWork(show, change);
    case "show": {
      const next = patch<ShowFacts, KeptShow>(show, change);
      return next.ok ? { ok: true, show: next.value } : next;
    }
    case "practice": {
      const next = patch<PracticeDocument, PracticeDocument>(show.practice ?? {}, change);
      return next.ok ? { ok: true, show: { ...show, practice: next.value } } : next;
    }
    case "add": {
      const there = show.works.find(({ id }) => id === change.work.id);
      if (there !== undefined) return { ok: false, theirs: there };
      return done(show, [...show.works.slice(0, change.at), change.work, ...show.works.slice(change.at)]);
    }
    case "remove": {
      const there = show.works.find(({ id }) => id === change.work.id);
      if (there === undefined || !sameJson(there, change.work)) return { ok: false, theirs: there };
      return done(
        show,
        show.works.filter(({ id }) => id !== change.work.id),
      );
    }
    case "move": {
      const rest = show.works.filter(({ id }) => id !== change.work);
      const work = show.works.find(({ id }) => id === change.work);
      if (work === undefined) return { ok: false, theirs: undefined };
      return done(show, [...rest.slice(0, change.to), work, ...rest.slice(change.to)]);
    }
  }
}

const done = (show: KeptShow, works: readonly KeptWork[]): Applied => ({
  ok: true,
  show: { ...show, works },
});

function patchWork(show: KeptShow, change: Change & { kind: "design" | "facts" }): Applied {
  const work = show.works.find(({ id }) => id === change.work);
  if (work === undefined) return { ok: false, theirs: undefined };
  const next = change.kind === "design" ? patchDesign(work, change) : patch(work, change);
  if (!next.ok) return next;
  return done(
    show,
    show.works.map((other) => (other.id === change.work ? next.value : other)),
  );
}

function patchDesign(work: KeptWork, change: Change & { kind: "design" }): Patched<KeptWork> {
  const design = patch(work.design, change);
  return design.ok ? { ok: true, value: { ...work, design: design.value } } : design;
}

type Patched<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly theirs: unknown };

function patch<Part extends object, Whole extends Part>(
  value: Whole,
  { before, after }: { readonly before: Patch<Part>; readonly after: Patch<Part> },
): Patched<Whole> {
  const next = { ...value };
  // A key that only one side names is absent on the other, so that a patch is the same value as JSON.
  for (const key of keysOf<Patch<Part>>(before, after)) {
    if (!sameJson(value[key], before[key])) return { ok: false, theirs: value[key] };
    if (after[key] === undefined) delete next[key];
    else Object.assign(next, { [key]: after[key] });
  }
  return { ok: true, value: next };
}

/** The change with its places as they are, so that its inverse gives back the very same show. */
export function exactly(show: KeptShow, change: Change): Change {
  const placeOf = (id: string): number => show.works.findIndex((work) => work.id === id);
  const last = show.works.length;
  switch (change.kind) {
    case "add":
      return { ...change, at: within(change.at, last) };
    case "remove":
      return { ...change, at: within(placeOf(change.work.id), last) };
    case "move":
      return { ...change, from: within(placeOf(change.work), last), to: within(change.to, last - 1) };
    default:
      return change;
  }
}

const within = (place: number, last: number): number => Math.max(0, Math.min(last, place));

/** The show with an id for every work, and none twice. */
export function withIds(show: ShowDocument, id: () => string): KeptShow {
  const seen = new Set<string>();
  return {
    ...show,
    works: show.works.map((work) => {
      const own = work.id === undefined || work.id === "" || seen.has(work.id) ? id() : work.id;
      seen.add(own);
      return { ...work, id: own };
    }),
  };
}
