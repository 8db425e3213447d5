import type { Unit } from "../lengths/index.ts";
import type { FrameDocument } from "./frame-schema.ts";
import type { WallDocument } from "./hang-schema.ts";
import type { ListNote, ListProblem, UnknownColumn } from "./lists/index.ts";
import type { Problem } from "./problem.ts";
import type {
  CutBlankDocument,
  HangingLightDocument,
  PracticeDocument,
  ShowDocument,
  StockDocument,
  WorkDocument,
} from "./schema.ts";

/** One work with the row that a person would look for it in: of a list its record, the header being 1; of a show's document its place, counted the same way. */
export interface RowWork {
  readonly row: number;
  readonly work: WorkDocument;
}

/** A show as it came in, from a list or from its own document. What could not be read is told beside it. */
export interface ShowRead {
  readonly name: string;
  readonly room: string;
  readonly date: string | null;
  /** The light that it hangs in; null: not said. */
  readonly light: HangingLightDocument | null;
  /** Kinds of frame of its own. */
  readonly frames: readonly FrameDocument[];
  /** The walls that its works hang on. */
  readonly walls: readonly WallDocument[];
  /** What a list mostly measures in, or was told to; of a document, its practice's unit. */
  readonly unit: Unit;
  readonly practice: PracticeDocument | null;
  readonly stock: StockDocument | null;
  /** Blanks that are cut already. */
  readonly cut: readonly CutBlankDocument[];
  readonly works: readonly RowWork[];
  readonly documentProblems: readonly { readonly row: number; readonly problem: Problem }[];
  readonly listProblems: readonly ListProblem[];
  readonly notes: readonly ListNote[];
  readonly unknownColumns: readonly UnknownColumn[];
}

/** A show that has been validated already, as if it had just been read. */
export const showReadOf = (show: ShowDocument): ShowRead => ({
  name: show.name,
  room: show.room ?? "",
  date: show.date ?? null,
  light: show.light ?? null,
  frames: show.frames ?? [],
  walls: show.walls ?? [],
  unit: show.practice?.unit ?? "in",
  practice: show.practice ?? null,
  stock: show.stock ?? null,
  cut: show.cut ?? [],
  works: show.works.map((work, index) => ({ row: rowOf(index), work })),
  documentProblems: [],
  listProblems: [],
  notes: [],
  unknownColumns: [],
});

/** The place of a show's work as a list of it would count it, under a header. */
export const rowOf = (index: number): number => index + 2;
