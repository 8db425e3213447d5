import type { KeptWork } from "../show/index.ts";
import type { Database } from "./tables.ts";

/** Neighbours that move together. */
interface Run {
  readonly from: number;
  readonly to: number;
  readonly by: number;
}

/**
 * Writes the places of works that stand elsewhere than before. When a work comes, goes or moves, the
 * works behind it move by one: they are written in one statement, and those that move alone by their ids.
 */
export async function reorder(
  db: Database,
  show: string,
  before: readonly KeptWork[],
  after: readonly KeptWork[],
): Promise<void> {
  const places = new Map(after.map(({ id }, place) => [id, place]));
  const runs: Run[] = [];
  for (const [place, { id }] of before.entries()) {
    const by = (places.get(id) ?? place) - place;
    const last = runs.at(-1);
    if (last?.by === by && last.to === place - 1) runs[runs.length - 1] = { ...last, to: place };
    else runs.push({ from: place, to: place, by });
  }
  const moving = runs.filter(({ by }) => by !== 0);
  const long = moving.filter(({ from, to }) => to > from);
  // Two runs written one after the other could move each other's works: then each work goes by its id.
  const [together] = long.length === 1 ? long : [];
  if (together !== undefined) {
    const { from, to, by } = together;
    const were = new Set(before.map(({ id }) => id));
    const came = after.flatMap(({ id }) => (were.has(id) ? [] : [id]));
    let shift = db
      .updateTable("works")
      .set((eb) => ({ place: eb("place", "+", by) }))
      .where("show", "=", show)
      .where("place", ">=", from)
      .where("place", "<=", to);
    // What has just come stands at its own place already.
    if (came.length > 0) shift = shift.where("id", "not in", came);
    await shift.execute();
  }
  for (const run of moving) {
    if (run === together) continue;
    for (const { id } of before.slice(run.from, run.to + 1)) {
      const place = places.get(id);
      if (place === undefined) continue;
      await db.updateTable("works").set({ place }).where("show", "=", show).where("id", "=", id).execute();
    }
  }
}
