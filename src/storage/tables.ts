import type { Kysely } from "kysely";

/**
 * The tables as both databases hold them. Documents are JSON text as the document has them, so that a
 * length is never a number here; whole numbers are counts, places and versions. A row's `version` is the
 * number of the change that touched it last, counted through its show.
 */
export interface Tables {
  readonly studio: StudioTable;
  readonly shows: ShowTable;
  readonly works: WorkTable;
  readonly sheets: SheetTable;
  readonly pictures: PictureTable;
  readonly changes: ChangeTable;
  readonly papers: PaperTable;
}

export type Database = Kysely<Tables>;

/** One row: the practice that new shows begin with. */
export interface StudioTable {
  readonly id: number;
  readonly practice: string;
  readonly version: number;
  readonly at: string;
}

export interface ShowTable {
  readonly id: string;
  /** The show without its works. */
  readonly document: string;
  /** Of its changes, the last one's. */
  readonly number: number;
  /** Of its own fields. */
  readonly version: number;
  /** Of the order of its works. */
  readonly placed: number;
  readonly name: string;
  readonly room: string;
  readonly date: string | null;
  readonly begun: string;
  readonly at: string;
}

export interface WorkTable {
  readonly show: string;
  readonly id: string;
  readonly place: number;
  readonly document: string;
  readonly version: number;
  readonly title: string;
  readonly maker: string;
  readonly process: string;
  /** Title, maker and process without case and accents, for a search. */
  readonly sought: string;
  /** The heaviest check's level, `unread` where the design cannot be read; null: nothing stands against it. */
  readonly level: string | null;
}

/** What lies in the rack and can be bought, from the shows' own stock: written with it, never by itself. */
export interface SheetTable {
  readonly show: string;
  readonly place: number;
  readonly name: string;
  readonly board: string;
  readonly width: string;
  readonly height: string;
  /** Null: as many as wanted. */
  readonly copies: number | null;
  readonly sought: string;
}

export interface PictureTable {
  /** SHA-256 of the original's bytes, in hexadecimal. */
  readonly sum: string;
  readonly type: string;
  readonly bytes: Uint8Array;
  readonly size: number;
  /** Made small for the screen and for papers; null where nothing could make it. */
  readonly preview: Uint8Array | null;
  readonly width: number | null;
  readonly height: number | null;
  readonly at: string;
}

export interface ChangeTable {
  readonly show: string;
  readonly number: number;
  readonly stamp: string;
  /** Which window made it. */
  readonly window: string;
  readonly at: string;
  /** `do`, `undo` or `redo`. */
  readonly act: string;
  /** The stamp of the change that is undone or done again. */
  readonly of: string | null;
  readonly change: string;
  readonly inverse: string;
}

export interface PaperTable {
  readonly show: string;
  readonly stamp: string;
  readonly paper: string;
  /** The number of the show's last change when it was made. */
  readonly number: number;
  /** The work it is of; null: the whole show. */
  readonly work: string | null;
  /** A fingerprint of all that it was made from. */
  readonly rests: string;
  readonly at: string;
}
