import { type Board, contentOf, cutsLeft, type Edges, type Measure } from "./bench.ts";
import type { Part } from "./layout.ts";
import type { Cut } from "./plan.ts";
import { orderMany } from "./many-cuts.ts";
import { type Way, waysOf, written } from "./ways.ts";

/** The cuts of one sheet in the order in which the hand makes them, and every part that comes off and is no piece. */
export interface CutOrder {
  readonly cuts: readonly Cut[];
  /** How often the fence is set. */
  readonly settings: number;
  /** As they come off, trim and slivers included. */
  readonly leftovers: readonly Edges[];
}

/** How many orders are followed side by side, and the most cuts for which more than one is. */
const BEAM = 8;
const MOST_CUTS_TO_WEIGH = 80;
/** More cuts than this, of more pieces than any sheet of a print room gives, are put in order one setting at a time. */
const MOST_CUTS = 150;
/** Past so many places for a cut in one run weighing each takes too long. */
const MOST_PLACES = 24;

/**
 * Puts the cuts of a layout in order: each from edge to edge of a part that lies there by then, and
 * grouped so that the fence moves least. With the fence at one setting every board that can be cut at
 * it is cut, one board after another, and what comes off again; of the orders followed the one with
 * the fewest settings is kept, then the one whose settings fall most steadily. `hurried`: one order alone
 * is followed, for plans of very many sheets.
 */
export function orderCuts(
  sheet: Edges,
  usable: Edges,
  root: Part,
  measure: Measure,
  hurried: boolean,
): CutOrder {
  const known = new Known(measure);
  const board: Board = { edges: sheet, nominal: usable, content: contentOf(root) };
  const { left } = known.of(board);
  if (hurried || left > MOST_CUTS) return orderMany(board, measure);
  let beam: State[] = [
    {
      boards: [board],
      leftovers: null,
      cuts: null,
      settings: 0,
      rises: 0,
      last: Number.POSITIVE_INFINITY,
      left,
    },
  ];
  const width = left > MOST_CUTS_TO_WEIGH ? 1 : BEAM;
  for (;;) {
    const done = beam.filter((state) => state.left === 0).toSorted(better)[0];
    if (done !== undefined) {
      return { cuts: unrolled(done.cuts), settings: done.settings, leftovers: unrolled(done.leftovers) };
    }
    const next = beam.flatMap((state) => settingsOf(state, known).map((set) => cutAt(state, set, known)));
    beam = next.toSorted(better).slice(0, width);
    if (beam.length === 0) throw new RangeError("a layout that no cut within the longest can part");
  }
}

interface State {
  readonly boards: readonly Board[];
  readonly leftovers: Chain<Edges> | null;
  readonly cuts: Chain<Cut> | null;
  readonly settings: number;
  /** How often a setting was larger than the one before. */
  readonly rises: number;
  readonly last: number;
  /** Cuts still to make. */
  readonly left: number;
}

interface Chain<T> {
  readonly one: T;
  readonly earlier: Chain<T> | null;
}

interface Weighed {
  readonly ways: ReadonlyMap<number, Way>;
  /** Cuts that the board still needs. */
  readonly left: number;
}

/** The boards that have come up in any order, each weighed once: the orders share most of them. */
class Known {
  private readonly measure: Measure;
  private readonly boards = new Map<Board, Weighed>();

  constructor(measure: Measure) {
    this.measure = measure;
  }

  of(board: Board): Weighed {
    const found = this.boards.get(board) ?? {
      ways: waysOf(board, this.measure, MOST_PLACES),
      left: cutsLeft(board),
    };
    this.boards.set(board, found);
    return found;
  }
}

function better(a: State, b: State): number {
  return a.settings - b.settings || a.left - b.left || a.rises - b.rises || b.last - a.last;
}

function unrolled<T>(chain: Chain<T> | null): T[] {
  const list: T[] = [];
  for (let link = chain; link !== null; link = link.earlier) list.push(link.one);
  return list.toReversed();
}

/** Every setting at which some board can be cut now, the largest first. */
function settingsOf(state: State, known: Known): number[] {
  const settings = new Set<number>();
  for (const board of state.boards) for (const set of known.of(board).ways.keys()) settings.add(set);
  return [...settings].toSorted((a, b) => b - a);
}

/** Makes every cut that one setting of the fence allows, on what comes off as well. */
function cutAt(state: State, set: number, known: Known): State {
  const waiting = state.boards.toReversed();
  const boards: Board[] = [];
  let { leftovers, cuts } = state;
  let left = 0;
  for (let board = waiting.pop(); board !== undefined; board = waiting.pop()) {
    const { ways, left: own } = known.of(board);
    const way = ways.get(set);
    if (way === undefined) {
      boards.push(board);
      left += own;
      continue;
    }
    cuts = { one: written(board.edges, way, set), earlier: cuts };
    for (const part of [way.cut.after, way.cut.before]) {
      if (part === null) continue;
      if (part.content === null) leftovers = { one: part.edges, earlier: leftovers };
      else if (known.of(part).left > 0) waiting.push(part);
    }
  }
  return {
    boards,
    leftovers,
    cuts,
    settings: state.settings + 1,
    rises: state.rises + Number(set > state.last),
    last: set,
    left,
  };
}
