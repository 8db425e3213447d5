export { answers, FILE, openStore, type Store, type StoreOptions } from "./store.ts";
export { CannotKeep } from "./cannot-keep.ts";
export { makeChanges, type Outcome, type Sent } from "./changes.ts";
export { entriesSince, type Entry, type Stacks, stacksOf } from "./entries.ts";
export {
  type Asked,
  listSheets,
  listShows,
  listWorks,
  type SheetListed,
  type ShowListed,
  type WorkListed,
} from "./lists.ts";
export { listPapers, notePaper, type Printed } from "./papers.ts";
export {
  type KeptPicture,
  keepPicture,
  MOST_PICTURE_BYTES,
  PICTURE_ADDRESS,
  readPicture,
  sumOf,
} from "./pictures.ts";
export { beginShow, readShow, removeShow, showStates, type StoredShow } from "./shows.ts";
export { readPractice, type StudioPractice, writePractice } from "./studio.ts";
export { redo, undo, type Undone, type Undoing } from "./undo.ts";
export { type Imported, importArchive } from "./archive-in.ts";
export { type Elsewhere, type Exported, exported } from "./archive-out.ts";
export { backup, exportTo, restore, type Restored } from "./backup.ts";
export { markServing } from "./serving.ts";
