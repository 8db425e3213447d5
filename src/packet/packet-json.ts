import { choppingPlanJson, compositionJson, cuttingPlanJson } from "../show/index.ts";
import type { Unit } from "../lengths/index.ts";
import type { PlannedBoard } from "./boards.ts";
import { framedOfWork } from "./framed.ts";
import { reuseJson } from "./reuse.ts";
import type { PlannedFrames } from "./frames.ts";
import { wallsJson } from "./hang.ts";
import { labelJson } from "./labels.ts";
import { lightJson } from "./light.ts";
import type { Quoted } from "./money.ts";
import type { PacketOrder, Prepared } from "./order.ts";
import { pictureJson } from "./pictures.ts";
import { moneyJson } from "./quote.ts";

/** Everything of a packet for the machine. */
export function packetJson(
  order: PacketOrder,
  prepared: Prepared,
  boards: readonly PlannedBoard[],
  frames: readonly PlannedFrames[],
  quoted: Quoted | null,
): string {
  const { practice, works, lights, holds, framed, reuse, walls, problems } = prepared;
  return `${JSON.stringify(
    {
      format: "margent-packet",
      version: 1,
      show: order.show.name,
      plan: order.plan.number,
      date: order.date,
      works: works.map((one, index) => ({
        row: one.row,
        title: one.work.title,
        quantity: one.quantity,
        ...compositionJson(one.composition, practice.language, holds[index] ?? null),
        ...framedOfWork(one, framed[index], practice.language),
        ...lightJson(lights[index]),
        ...labelJson(one.work),
        ...pictureJson(prepared, one.row),
      })),
      cut: Object.fromEntries(
        boards.map(({ board, job, plan }) => [board, cuttingPlanJson(job, plan, practice.ruler.unit, 0)]),
      ),
      ...chopJson(frames, practice.ruler.unit),
      ...reuseJson(reuse, practice.language),
      ...(quoted === null ? {} : { money: moneyJson(quoted, prepared) }),
      ...wallsJson(walls, works),
      problems,
    },
    null,
    1,
  )}\n`;
}

/** The first moulding's plan is `chop`; those of further ones stand under their names. */
function chopJson(frames: readonly PlannedFrames[], unit: Unit): object {
  const [first, ...more] = frames.map(({ moulding, job, plan }) => ({
    name: moulding.name,
    plan: choppingPlanJson(job, plan, unit, 0),
  }));
  return {
    ...(first === undefined ? {} : { chop: { moulding: first.name, ...first.plan } }),
    ...(more.length === 0
      ? {}
      : { chopFurther: more.map(({ name, plan }) => ({ moulding: name, ...plan })) }),
  };
}
