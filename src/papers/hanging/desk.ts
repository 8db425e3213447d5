import type { ChosenHardware, FramedWork, HungWork, Measuring, WallKind } from "../../assembly/index.ts";
import type { Length, Ruler } from "../../lengths/index.ts";
import { cannotHang, type WallJob, type WallPlan } from "../../plans/index.ts";
import { letterOf } from "../../words/figures.ts";
import type { House, PlanWords } from "../job.ts";
import type { Desk } from "../paper.ts";

/** Everything that one wall's hanging sheet says. */
export interface HangingSheetJob {
  /** What the wall is called in the room; empty where it has no name. */
  readonly wall: string;
  readonly job: WallJob;
  readonly plan: WallPlan;
  readonly works: readonly FramedWork[];
  readonly hung: readonly HungWork[];
  /** Which fittings each work takes of those that are listed. */
  readonly hardware: readonly ChosenHardware[];
  /** What the wall is made of; null: not said. */
  readonly kind: WallKind | null;
  /** The ground shakes where it stands. */
  readonly shakes: boolean;
  readonly measuring: Measuring;
  /** The level line above the floor, where heights are counted from it; null: from the floor. */
  readonly level: Length | null;
  /** From where a hook bears up to its nail; null where it was not measured: nails stand where hooks bear. */
  readonly hookDrop: Length | null;
  /** How many times its load a fitting must be rated for. */
  readonly safety: number;
  readonly house: House;
  readonly planWords: PlanWords;
  readonly ruler: Ruler;
}

/** One hook on the sheet. */
export interface LetteredHook {
  readonly letter: string;
  /** The work's number: its place in the order of hanging. */
  readonly number: number;
  readonly work: number;
  readonly x: Length;
  readonly nail: Length;
  readonly load: number | null;
}

export interface HangingDesk extends Desk {
  /** With every text already printable. */
  readonly job: HangingSheetJob;
  readonly hooks: readonly LetteredHook[];
  /** Numbers of the works, by their place in the job. */
  readonly numbers: readonly number[];
  readonly missing: number;
}

/** Hooks in the order of hanging; a work that cannot be hung as asked has none. */
export function letteredHooks({ plan, hung }: HangingSheetJob): readonly LetteredHook[] {
  return plan.order
    .flatMap((work, turn) => {
      const one = hung[work];
      if (one === undefined || cannotHang(one, work, plan)) return [];
      return one.hooks.map(({ x, nail }) => ({
        number: turn + 1,
        work,
        x,
        nail,
        load: one.loads?.hook ?? null,
      }));
    })
    .map((hook, index) => ({ ...hook, letter: letterOf(index) }));
}
