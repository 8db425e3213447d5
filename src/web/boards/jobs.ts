import { type BoardJob, boardJobs, type ComposedWork, practiceOfShow } from "../../packet/reckoned/index.ts";
import {
  DEFAULT_STOCK,
  practiceFor,
  readCutBlanks,
  readStock,
  type Stock,
  type StockDocument,
} from "../../show/index.ts";
import type { KeptShow } from "../state/change.ts";
import { framedOf, readOf } from "../state/framed.ts";

/** Every material's job of a show, from its own rack or what can be had where it names none. */
export interface ShowBoards {
  readonly jobs: readonly BoardJob[];
  readonly works: readonly ComposedWork[];
  readonly document: StockDocument;
  readonly stock: Stock;
  /** For each job, how many blanks the jobs before it make: numbers go on from board to board, as in the packet. */
  readonly offset: readonly number[];
}

/** What a show's rack is, or a usual one to begin with. */
export const rackOf = (show: KeptShow): StockDocument => show.stock ?? DEFAULT_STOCK;

/** Null where the practice or the rack cannot be read. */
export function boardsOf(show: KeptShow, document: StockDocument = rackOf(show)): ShowBoards | null {
  const read = readOf(show);
  const habits = practiceOfShow(read);
  const practice = practiceFor(habits, habits.unit ?? read.unit);
  const stock = readStock(document);
  const cut = readCutBlanks(read.cut, habits.unit ?? read.unit);
  if (!practice.ok || !stock.ok || !cut.ok) return null;
  const { works } = framedOf(show);
  const jobs = boardJobs(works, practice.value, stock.value, cut.value);
  let before = 0;
  const offset = jobs.map(({ job }) => {
    const first = before;
    before += job.pieces.reduce((all, { count }) => all + count, 0);
    return first;
  });
  return { jobs, works, document, stock: stock.value, offset };
}
