import { type HookPlace, type Measures, measuresOf } from "../assembly/index.ts";
import { type Length, subtract } from "../lengths/index.ts";
import { cannotHang } from "../plans/index.ts";
import type { HungWall } from "./hang-request.ts";

/** One hook of a wall, as the hand comes to it. */
export interface HookRow {
  readonly work: number;
  readonly hook: HookPlace;
  /** From the right corner; with `hook.x` it makes the wall. */
  readonly back: Length;
  /** What the tape must read; null where that is the place itself. */
  readonly tape: Measures | null;
  /** False: its work cannot be hung as asked, and the sheet leaves it out. */
  readonly hangs: boolean;
}

/** Every hook of a wall in the order of hanging. */
export const hookRowsOf = ({ request: { job, measuring }, plan, works }: HungWall): readonly HookRow[] =>
  plan.order.flatMap((work) => {
    const hung = works[work];
    if (hung === undefined) return [];
    const isTrue = measuring.tape === null && measuring.fall === 0;
    return hung.hooks.map((hook) => ({
      work,
      hook,
      back: subtract(job.wall.width, hook.x),
      tape: isTrue ? null : measuresOf(hook, measuring),
      hangs: !cannotHang(hung, work, plan),
    }));
  });
