import { type Act, apply, type Change, exactly, inverse, type KeptShow } from "../show/index.ts";
import { entriesSince, type Entry, rowOf } from "./entries.ts";
import { reorder } from "./order.ts";
import { levelOf, showFields, workFields, writeSheets } from "./rows.ts";
import { knownShow, remember, tell } from "./shows.ts";
import type { Known, Store } from "./store.ts";
import type { Database } from "./tables.ts";

/** A change on its way in. */
export interface Sent {
  readonly stamp: string;
  readonly window: string;
  readonly act: Act;
  readonly of: string | null;
  readonly change: Change;
}

export type Outcome =
  /** All are on the disk. `entries` are those after `base`, of others too, in their order. */
  | { readonly kind: "kept"; readonly number: number; readonly entries: readonly Entry[] }
  /** A row that one of them touches has changed since `base`: nothing was written. `entries` is what has happened. */
  | { readonly kind: "behind"; readonly number: number; readonly entries: readonly Entry[] }
  /** One of them does not fit on what stands there, `theirs`: nothing was written. */
  | {
      readonly kind: "against";
      readonly number: number;
      readonly entries: readonly Entry[];
      readonly stamp: string;
      readonly theirs: unknown;
    }
  | { readonly kind: "none" };

/** Undoes the transaction and carries why. */
class Refused extends Error {
  readonly outcome: Outcome;
  constructor(outcome: Outcome) {
    super(outcome.kind);
    this.outcome = outcome;
  }
}

/**
 * Makes changes upon a show as it stood at number `base`, all of them or none, on the disk before this
 * settles. One whose stamp is known already is not made again.
 */
export async function makeChanges(
  store: Store,
  id: string,
  base: number,
  sent: readonly Sent[],
): Promise<Outcome> {
  let after: Known | null = null;
  try {
    const outcome = await store.db.transaction().execute(async (step): Promise<Outcome> => {
      // The first statement writes, so that the row is this one's on both databases before anything is read.
      const row = await step
        .updateTable("shows")
        .set(({ ref }) => ({ number: ref("number") }))
        .where("id", "=", id)
        .returning(["id", "document", "number", "at", "version", "placed"])
        .executeTakeFirst();
      if (row === undefined) return { kind: "none" };
      const before = await knownShow(store, step, row);
      after = await makeAll(store, step, id, before, base, sent);
      const entries = await entriesSince(step, id, base);
      return { kind: "kept", number: after.number, entries };
    });
    if (after !== null && outcome.kind === "kept") {
      remember(store, id, after);
      tell(store, id);
    }
    return outcome;
  } catch (error) {
    if (error instanceof Refused) return error.outcome;
    throw error;
  }
}

async function makeAll(
  store: Store,
  step: Database,
  id: string,
  before: Known,
  base: number,
  sent: readonly Sent[],
): Promise<Known> {
  const known = await knownStamps(step, id, sent);
  const at = store.clock().toISOString();
  const mine: Mine = { works: new Set(), own: false, order: false };
  let now = before;
  for (const one of sent) {
    if (known.has(one.stamp)) continue;
    const made = exactly(now.show, one.change);
    if (base > before.number || isBehind(made, now, base, mine)) {
      throw new Refused({
        kind: "behind",
        number: before.number,
        entries: await entriesSince(step, id, base),
      });
    }
    const applied = apply(now.show, made);
    if (!applied.ok) {
      const entries = await entriesSince(step, id, base);
      const { stamp } = one;
      throw new Refused({ kind: "against", number: before.number, entries, stamp, theirs: applied.theirs });
    }
    const number = now.number + 1;
    now = await write(step, id, now, applied.show, number, made, mine);
    const entry: Entry = { ...one, number, at, change: made, inverse: inverse(made) };
    await step.insertInto("changes").values(rowOf(id, entry)).execute();
    known.add(one.stamp);
  }
  if (now !== before) {
    const { number, version, placed } = now;
    await step
      .updateTable("shows")
      .set({ number, version, placed, at, ...showFields(now.show) })
      .where("id", "=", id)
      .execute();
  }
  return now === before ? now : { ...now, at };
}

/** What of the show this very order has written already: it is not behind itself. */
interface Mine {
  readonly works: Set<string>;
  own: boolean;
  order: boolean;
}

/** Whether a row that the change touches has been written by somebody else since `base`. */
function isBehind(change: Change, { version, placed, versions }: Known, base: number, mine: Mine): boolean {
  switch (change.kind) {
    case "design":
    case "facts":
      return !mine.works.has(change.work) && (versions.get(change.work) ?? 0) > base;
    case "show":
    case "practice":
      return !mine.own && version > base;
    case "add":
    case "move":
      return !mine.order && placed > base;
    case "remove":
      return (
        (!mine.order && placed > base) ||
        (!mine.works.has(change.work.id) && (versions.get(change.work.id) ?? 0) > base)
      );
  }
}

async function knownStamps(db: Database, show: string, sent: readonly Sent[]): Promise<Set<string>> {
  if (sent.length === 0) return new Set();
  const stamps = sent.map(({ stamp }) => stamp);
  const rows = await db
    .selectFrom("changes")
    .select("stamp")
    .where("show", "=", show)
    .where("stamp", "in", stamps)
    .execute();
  return new Set(rows.map(({ stamp }) => stamp));
}

/** Writes the rows in which two states differ: what a change leaves alone is the very same value in both. */
async function write(
  step: Database,
  id: string,
  before: Known,
  show: KeptShow,
  number: number,
  { kind }: Change,
  mine: Mine,
): Promise<Known> {
  const versions = new Map(before.versions);
  const old = new Map(before.show.works.map((work) => [work.id, work]));
  const { practice } = show;
  const again = practice !== before.show.practice;
  for (const [place, work] of show.works.entries()) {
    const was = old.get(work.id);
    old.delete(work.id);
    if (was === undefined) {
      await step
        .insertInto("works")
        .values({ show: id, id: work.id, place, version: number, ...workFields(work, practice) })
        .execute();
    } else if (was !== work) {
      const { numUpdatedRows } = await step
        .updateTable("works")
        .set({ version: number, ...workFields(work, practice) })
        .where("show", "=", id)
        .where("id", "=", work.id)
        .where("version", "=", versions.get(work.id) ?? -1)
        .executeTakeFirst();
      if (numUpdatedRows !== 1n) throw new Error(`work ${work.id} of show ${id} is not as it was read`);
    } else {
      // A habit may weigh on works that are as they were.
      if (again) await setLevel(step, id, work.id, levelOf(work, practice));
      continue;
    }
    versions.set(work.id, number);
    mine.works.add(work.id);
  }
  for (const gone of old.keys()) {
    await step.deleteFrom("works").where("show", "=", id).where("id", "=", gone).execute();
    versions.delete(gone);
  }
  const order = kind === "add" || kind === "remove" || kind === "move";
  const own = kind === "show" || kind === "practice";
  mine.order ||= order;
  mine.own ||= own;
  if (order) await reorder(step, id, before.show.works, show.works);
  if (show.stock !== before.show.stock) await writeSheets(step, id, show.stock);
  return {
    number,
    at: before.at,
    version: own ? number : before.version,
    placed: order ? number : before.placed,
    show,
    versions,
  };
}

async function setLevel(db: Database, show: string, id: string, level: string | null): Promise<void> {
  await db.updateTable("works").set({ level }).where("show", "=", show).where("id", "=", id).execute();
}
