import { type Length, mm, sum, times } from "../../lengths/index.ts";
import { beside, type Block, block, placed } from "../block.ts";
import { ringBlock, tickBox } from "../tags.ts";
import type { OrderDesk } from "./desk.ts";

const STEP = mm(12.4);
const LINE = mm(6.6);
const RING = mm(2.9);

/** The most numbers of one row: what is more goes on in the next, so that no row is higher than a page. */
export const MOST_IN_ROW = 60;

/** A box to tick and a blank's number in its ring, as many to a line as there is room for. */
export function tickedRings(desk: OrderDesk, numbers: readonly number[], width: Length): Block {
  const perLine = Math.max(1, Math.floor((width + mm(1)) / STEP));
  const marks = numbers.flatMap((number, index) => {
    const piece = beside([tickBox(), ringBlock(desk, String(number), "white", RING)], mm(0.8), "middle");
    return placed(piece, times(STEP, index % perLine), times(LINE, Math.floor(index / perLine)));
  });
  return block(width, sum([times(LINE, Math.ceil(numbers.length / perLine) - 1), times(RING, 2)]), marks);
}

/** A list in pieces of at most so many. */
export const inPieces = <T>(all: readonly T[], most: number): readonly (readonly T[])[] =>
  all.flatMap((_, place) => (place % most === 0 ? [all.slice(place, place + most)] : []));
