import { type ColumnDataType, type Kysely, sql } from "kysely";

export type Kind = "sqlite" | "postgres";

/** The database before it is known which tables it has. */
export type Bare = Kysely<Record<string, Record<string, unknown>>>;

/** Steps from an empty file to the tables of `tables.ts`, numbered from 1 by their place. Forward only; one that has been given out is never changed. */
export const MIGRATIONS: readonly ((db: Bare, kind: Kind) => Promise<void>)[] = [firstTables];

/** Whole numbers of 64 bits on both: SQLite's integers are that by themselves. */
const whole = (kind: Kind): ColumnDataType => (kind === "sqlite" ? "integer" : "bigint");
const bytes = (kind: Kind): ColumnDataType => (kind === "sqlite" ? "blob" : "bytea");

async function firstTables(db: Bare, kind: Kind): Promise<void> {
  const { schema } = db;
  await schema
    .createTable("studio")
    .addColumn("id", whole(kind), (column) => column.primaryKey())
    .addColumn("practice", "text", (column) => column.notNull())
    .addColumn("version", whole(kind), (column) => column.notNull())
    .addColumn("at", "text", (column) => column.notNull())
    .execute();
  await schema
    .createTable("shows")
    .addColumn("id", "text", (column) => column.primaryKey().notNull())
    .addColumn("document", "text", (column) => column.notNull())
    .addColumn("number", whole(kind), (column) => column.notNull())
    .addColumn("version", whole(kind), (column) => column.notNull())
    .addColumn("placed", whole(kind), (column) => column.notNull())
    .addColumn("name", "text", (column) => column.notNull())
    .addColumn("room", "text", (column) => column.notNull())
    .addColumn("date", "text")
    .addColumn("begun", "text", (column) => column.notNull())
    .addColumn("at", "text", (column) => column.notNull())
    .execute();
  await schema
    .createTable("works")
    .addColumn("show", "text", (column) => column.notNull().references("shows.id").onDelete("cascade"))
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("place", whole(kind), (column) => column.notNull())
    .addColumn("document", "text", (column) => column.notNull())
    .addColumn("version", whole(kind), (column) => column.notNull())
    .addColumn("title", "text", (column) => column.notNull())
    .addColumn("maker", "text", (column) => column.notNull())
    .addColumn("process", "text", (column) => column.notNull())
    .addColumn("sought", "text", (column) => column.notNull())
    .addColumn("level", "text")
    .addPrimaryKeyConstraint("works_key", ["show", "id"])
    .execute();
  await schema.createIndex("works_in_order").on("works").columns(["show", "place"]).execute();
  await schema
    .createTable("sheets")
    .addColumn("show", "text", (column) => column.notNull().references("shows.id").onDelete("cascade"))
    .addColumn("place", whole(kind), (column) => column.notNull())
    .addColumn("name", "text", (column) => column.notNull())
    .addColumn("board", "text", (column) => column.notNull())
    .addColumn("width", "text", (column) => column.notNull())
    .addColumn("height", "text", (column) => column.notNull())
    .addColumn("copies", whole(kind))
    .addColumn("sought", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("sheets_key", ["show", "place"])
    .execute();
  await schema
    .createTable("pictures")
    .addColumn("sum", "text", (column) => column.primaryKey().notNull())
    .addColumn("type", "text", (column) => column.notNull())
    .addColumn("bytes", bytes(kind), (column) => column.notNull())
    .addColumn("size", whole(kind), (column) => column.notNull())
    .addColumn("preview", bytes(kind))
    .addColumn("width", whole(kind))
    .addColumn("height", whole(kind))
    .addColumn("at", "text", (column) => column.notNull())
    .execute();
  await schema
    .createTable("changes")
    .addColumn("show", "text", (column) => column.notNull().references("shows.id").onDelete("cascade"))
    .addColumn("number", whole(kind), (column) => column.notNull())
    .addColumn("stamp", "text", (column) => column.notNull())
    .addColumn("window", "text", (column) => column.notNull())
    .addColumn("at", "text", (column) => column.notNull())
    .addColumn("act", "text", (column) => column.notNull().check(sql`act in ('do', 'undo', 'redo')`))
    .addColumn("of", "text")
    .addColumn("change", "text", (column) => column.notNull())
    .addColumn("inverse", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("changes_key", ["show", "number"])
    .addUniqueConstraint("changes_stamp", ["show", "stamp"])
    .execute();
  await schema
    .createTable("papers")
    .addColumn("show", "text", (column) => column.notNull().references("shows.id").onDelete("cascade"))
    .addColumn("stamp", "text", (column) => column.notNull())
    .addColumn("paper", "text", (column) => column.notNull())
    .addColumn("number", whole(kind), (column) => column.notNull())
    .addColumn("work", "text")
    .addColumn("rests", "text", (column) => column.notNull())
    .addColumn("at", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("papers_key", ["show", "stamp"])
    .execute();
}
