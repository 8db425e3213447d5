import * as fc from "fast-check";
import { expect, test } from "vitest";
import type { Length } from "../../src/lengths/index.ts";
import { fenceSettings } from "../../src/papers/cutting/fence.ts";
import type { CuttingJob, PlannedSheet } from "../../src/plans/index.ts";
import { smallJob } from "../plans/jobs.ts";
import { EIGHT, METRIC, planOf } from "./papers.ts";

interface Board {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

const sized = ({ width, height }: Board): string => `${width} × ${height}`;

/**
 * Cuts a sheet as a hand would that has only the paper: the lines with their numbers, the letter
 * beside each, and the table's settings, sizes and letters. Gives the boards that lie there at the end.
 */
function follow(sheet: PlannedSheet): readonly Board[] {
  let done: Board[] = [];
  const bench = new Map<string, Board[]>();
  const start = { left: 0, top: 0, ...sheet.size };
  let first: Board[] = [start];
  for (const { set, cuts, into, goesIn, comesOff } of fenceSettings(sheet)) {
    // What goes in by the table is what has that letter on the bench.
    for (const { letters, size } of goesIn)
      for (const letter of letters) expect(bench.get(letter)?.map(sized)).toEqual([sized(toBoard(size))]);
    cuts.forEach((number, at) => {
      const letter = into[at];
      if (letter === undefined) throw new Error("a cut without a board");
      const lying = letter === null ? first : (bench.get(letter) ?? []);
      const line = sheet.cuts[number - 1];
      if (line === undefined) throw new Error("no such cut");
      const crossed = lying.filter((board) => crosses(board, line.from, line.to));
      expect(crossed, `cut ${number} runs from edge to edge of one board`).toHaveLength(1);
      const [board] = crossed;
      if (board === undefined) return;
      const halves = parted(board, line);
      const sides = halves.map((half) => (line.across === "x" ? half.width : half.height));
      expect(sides, `cut ${number} leaves what the fence is set to`).toContain(set);
      const rest = [...lying.filter((one) => one !== board), ...halves.filter(nothingLeft)];
      if (letter === null) first = rest;
      else bench.set(letter, rest);
    });
    const off = [...new Set(into)].flatMap((letter) => (letter === null ? first : (bench.get(letter) ?? [])));
    for (const letter of new Set(into)) if (letter !== null) bench.delete(letter);
    first = into.includes(null) ? [] : first;
    // What comes off: letters are given in the table's order to boards of that size.
    const left = [...off];
    for (const { letters, size, times } of comesOff.boards) {
      expect(letters).toHaveLength(times);
      for (const letter of letters) {
        const found = left.findIndex((board) => sized(board) === sized(toBoard(size)));
        expect(found, `strip ${letter} comes off`).toBeGreaterThanOrEqual(0);
        bench.set(letter, left.splice(found, 1));
      }
    }
    expect(left).toHaveLength(
      comesOff.pieces.length + comesOff.keep.reduce((sum, { times }) => sum + times, 0) + comesOff.waste,
    );
    done = [...done, ...left];
  }
  expect([...bench.keys()]).toEqual([]);
  return sheet.cuts.length === 0 ? [start] : done;
}

const toBoard = ({ width, height }: { width: Length; height: Length }): Board => ({
  left: 0,
  top: 0,
  width,
  height,
});
const nothingLeft = ({ width, height }: Board): boolean => width > 0 && height > 0;

type Spot = { readonly x: number; readonly y: number };

/** Whether a line runs from edge to edge of a board, inside it. */
function crosses(board: Board, from: Spot, to: Spot): boolean {
  const [right, foot] = [board.left + board.width, board.top + board.height];
  return from.x === to.x
    ? from.x >= board.left && from.x < right && from.y === board.top && to.y === foot
    : from.y >= board.top && from.y < foot && from.x === board.left && to.x === right;
}

function parted(
  board: Board,
  { from, across, takes }: { from: Spot; across: "x" | "y"; takes: number },
): readonly Board[] {
  if (across === "x") {
    const width = from.x - board.left;
    return [
      { ...board, width },
      { ...board, left: from.x + takes, width: board.width - width - takes },
    ];
  }
  const height = from.y - board.top;
  return [
    { ...board, height },
    { ...board, top: from.y + takes, height: board.height - height - takes },
  ];
}

function expectPieces(job: CuttingJob): void {
  for (const sheet of planOf(job).sheets) {
    const lying = follow(sheet).map(({ left, top, width, height }) => `${left} ${top} ${width} ${height}`);
    for (const { left, top, width, height } of sheet.placements)
      expect(lying).toContain(`${left} ${top} ${width} ${height}`);
  }
}

test("[CP9] cutting by numbers, letters and settings alone frees every blank, each cut from edge to edge", () => {
  expectPieces(EIGHT);
  expectPieces(METRIC);
  expectPieces({
    ...EIGHT,
    pieces: EIGHT.pieces.map((piece, index) => ({ ...piece, count: (index % 4) + 3 })),
  });
  fc.assert(
    fc.property(smallJob, (job) => expectPieces(job)),
    { numRuns: 100 },
  );
});
