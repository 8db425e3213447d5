import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { printExact } from "../../src/lengths/index.ts";
import { type PacketOrder, prepare } from "../../src/packet/index.ts";
import { afterCutting, type BoardJob, boardJobs } from "../../src/packet/reckoned/index.ts";
import { type CuttingPlan, planCutting } from "../../src/plans/index.ts";
import {
  readCutBlanks,
  readStock,
  showDocument,
  type ShowDocument,
  showReadOf,
  validate,
} from "../../src/show/index.ts";
import { packetOrder } from "../packet-order.ts";

/** Walls have no part in it, and take longest to lay out. */
const example: ShowDocument = {
  ...(JSON.parse(
    readFileSync(join(process.cwd(), "examples/slack-water/show.json"), "utf8"),
  ) as ShowDocument),
  walls: [],
};

const prepared = (show: ShowDocument) => {
  const order: PacketOrder = packetOrder(showReadOf(show));
  const made = prepare(order);
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return made.value;
};

const jobsOf = (show: ShowDocument): readonly BoardJob[] => {
  const { works, practice, stock, cut } = prepared(show);
  return boardJobs(works, practice, stock, cut);
};

/** Every blank that is wanted, as often as it is, by its work's title, its board and its size. */
const wanted = (jobs: readonly BoardJob[]): readonly string[] =>
  jobs
    .flatMap(({ board, job }) =>
      job.pieces.flatMap(({ name, width, height, count }) =>
        Array.from(
          { length: count },
          () => `${name}, ${board}, ${[width, height].toSorted((a, b) => a - b).join(" ")}`,
        ),
      ),
    )
    .toSorted();

const planned = (job: BoardJob["job"]): CuttingPlan =>
  planCutting(job, { seconds: 0, seed: 1, clock: () => 0 });

describe("what is cut already", () => {
  const before = jobsOf(example);

  test("[K14] a sheet that was cut leaves exactly the other blanks to plan, and what is worth keeping in the rack", () => {
    const { works, stock } = prepared(example);
    const sheets = before.flatMap((board) => {
      const plan = planned(board.job);
      return plan.sheets.flatMap(({ from }, index) =>
        from.kind === "stock" ? [{ board, plan, index }] : [],
      );
    });
    fc.assert(
      fc.property(fc.constantFrom(...sheets), ({ board, plan, index }) => {
        const sheet = plan.sheets[index];
        if (sheet === undefined || example.stock === undefined) throw new Error("no sheet");
        const after = afterCutting(board, plan, index, works, stock, { stock: example.stock, cut: [] });
        const show: ShowDocument = { ...example, stock: after.stock, cut: [...after.cut] };
        expect(validate(showDocument, show).ok).toBe(true);
        const gone = sheet.placements.map(
          ({ piece, width, height }) =>
            `${board.job.pieces[piece]?.name}, ${board.board}, ${[width, height].toSorted((a, b) => a - b).join(" ")}`,
        );
        expect([...wanted(jobsOf(show)), ...gone].toSorted()).toEqual(wanted(before));
        const rack = readStock(after.stock);
        if (!rack.ok) throw new Error(JSON.stringify(rack.problems));
        const lying = (all: typeof rack.value.sheets) =>
          all.reduce((sum, { copies, board: of }) => sum + (of === board.board ? (copies ?? 0) : 0), 0);
        const kept = sheet.left.filter(({ keep }) => keep).length;
        const held =
          sheet.from.kind === "stock" && board.job.sheets[sheet.from.sheet]?.copies !== null ? 1 : 0;
        expect(lying(rack.value.sheets)).toBeGreaterThanOrEqual(lying(stock.sheets) - held + kept);
        for (const { width, height } of sheet.left.filter(({ keep }) => keep))
          expect(
            rack.value.sheets.some((one) => one.width === width && one.height === height && one.cost === 0),
          ).toBe(true);
      }),
      { numRuns: 12 },
    );
  });

  test("[K14] cut for another size, another board or another work, it is cut anew", () => {
    const [board] = before;
    const [piece] = board?.job.pieces ?? [];
    const one = prepared(example).works.find(({ work }) => work.title === piece?.name);
    if (board === undefined || piece === undefined || one?.work.id === undefined) throw new Error("no piece");
    const { width, height } = one.composition.outer;
    // Lying down or standing up, it is the same blank.
    const blank = {
      work: one.work.id,
      board: board.board,
      width: printExact(height, "in"),
      height: printExact(width, "in"),
    };
    const all = wanted(before).length;
    const left = (cut: ShowDocument["cut"]): number => wanted(jobsOf({ ...example, cut })).length;
    expect(left([blank])).toBe(all - 1);
    expect(left([{ ...blank, width: "19 in" }])).toBe(all);
    expect(left([{ ...blank, board: "something else" }])).toBe(all);
    expect(left([{ ...blank, work: "nobody" }])).toBe(all);
  });

  test("[K14] what cannot be read is named by its field", () => {
    const read = readCutBlanks([{ work: "a", board: "b", width: "0", height: "3 in", count: 0 }], "in");
    expect(read.ok ? [] : read.problems.map(({ field }) => field)).toEqual(["0.width", "0.count"]);
  });
});
