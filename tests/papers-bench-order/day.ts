import { readFileSync } from "node:fs";
import { benchDay } from "../../src/packet/bench-day.ts";
import { benchOrder, benchOrderJob } from "../../src/packet/bench-order.ts";
import { numberBlanks } from "../../src/packet/blanks.ts";
import { planBoards } from "../../src/packet/boards.ts";
import { packeted, prepare } from "../../src/packet/index.ts";
import type { PacketOrder } from "../../src/packet/order.ts";
import { readShow } from "../../src/show/index.ts";
import { packetOrder } from "../packet-order.ts";

/**
 * A list's or show's day, as its packet has it. The board plans' time is counted by how often they ask for
 * it, `asked` times each, so that it is quick and every run the same.
 */
export async function dayOf(path: string, asked = 0) {
  const read = await readShow(readFileSync(path), path, null);
  if (!read.ok) throw new Error(`${path} cannot be read`);
  const order: PacketOrder = packetOrder(read.show, {
    plan: { number: 2, makesVoid: { number: 1, date: "2026-11-19" } },
  });
  const prepared = prepare(order);
  if (!prepared.ok) throw new Error(`${path} cannot be prepared`);
  const { works, practice, stock } = prepared.value;
  let time = 0;
  const boards = planBoards(
    works,
    practice,
    stock,
    { seconds: asked / 1000, seed: 1, clock: () => time++ },
    () => undefined,
  );
  const blanks = numberBlanks(works, boards, 2);
  const day = benchDay(works, blanks);
  return {
    works,
    blanks,
    day,
    table: benchOrder(day),
    job: benchOrderJob(day, blanks, packeted(order, prepared.value)),
  };
}
