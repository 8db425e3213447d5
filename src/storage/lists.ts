import { type RawBuilder, sql } from "kysely";
import { likeText } from "./sought.ts";
import type { Store } from "./store.ts";

/** A show as a list tells it. */
export interface ShowListed {
  readonly id: string;
  readonly name: string;
  readonly room: string;
  readonly date: string | null;
  readonly works: number;
  readonly number: number;
  readonly at: string;
}

/** Every show of the studio, the last changed first. */
export async function listShows({ db }: Store): Promise<ShowListed[]> {
  return db
    .selectFrom("shows")
    .select(["id", "name", "room", "date", "number", "at"])
    .select(({ selectFrom }) =>
      selectFrom("works")
        .select(({ fn }) => fn.countAll<number>().as("works"))
        .whereRef("works.show", "=", "shows.id")
        .as("works"),
    )
    .orderBy("at", "desc")
    .orderBy("id")
    .execute()
    .then((rows) => rows.map((row) => ({ ...row, works: row.works ?? 0 })));
}

export interface Asked {
  /** Found anywhere in title, maker and process (of a sheet: name and board), without case and accents; empty: all. */
  readonly search?: string | undefined;
  readonly show?: string | undefined;
  /** Of the heaviest check. */
  readonly level?: string | undefined;
  /** The most that are given. */
  readonly most: number;
}

/** Whether a searched column holds a text; the backslash is no sign of its own in SQLite unless that is said. */
const holds = (column: "works.sought" | "sheets.sought", search: string): RawBuilder<boolean> =>
  sql<boolean>`${sql.ref(column)} like ${likeText(search)} escape '\\'`;

export interface WorkListed {
  readonly show: string;
  readonly showName: string;
  readonly id: string;
  readonly place: number;
  readonly title: string;
  readonly maker: string;
  readonly process: string;
  readonly level: string | null;
}

/** Works of all shows in the order of their shows' lists. */
export async function listWorks({ db }: Store, { search, show, level, most }: Asked): Promise<WorkListed[]> {
  let asked = db
    .selectFrom("works")
    .innerJoin("shows", "shows.id", "works.show")
    .select(["works.show", "shows.name as showName", "works.id", "works.place"])
    .select(["works.title", "works.maker", "works.process", "works.level"]);
  if (show !== undefined) asked = asked.where("works.show", "=", show);
  if (level !== undefined) asked = asked.where("works.level", "=", level);
  if (search !== undefined && search !== "") {
    asked = asked.where(holds("works.sought", search));
  }
  return asked.orderBy("shows.at", "desc").orderBy("works.show").orderBy("works.place").limit(most).execute();
}

export interface SheetListed {
  readonly show: string;
  readonly showName: string;
  readonly place: number;
  readonly name: string;
  readonly board: string;
  readonly width: string;
  readonly height: string;
  readonly copies: number | null;
}

/** What lies in the racks of all shows, every sheet and offcut, in the order of their key: twenty thousand are not sorted for each look. */
export async function listSheets({ db }: Store, { search, show, most }: Asked): Promise<SheetListed[]> {
  let asked = db
    .selectFrom("sheets")
    .innerJoin("shows", "shows.id", "sheets.show")
    .select(["sheets.show", "shows.name as showName", "sheets.place"])
    .select(["sheets.name", "sheets.board", "sheets.width", "sheets.height", "sheets.copies"]);
  if (show !== undefined) asked = asked.where("sheets.show", "=", show);
  if (search !== undefined && search !== "") asked = asked.where(holds("sheets.sought", search));
  return asked.orderBy("sheets.show").orderBy("sheets.place").limit(most).execute();
}
