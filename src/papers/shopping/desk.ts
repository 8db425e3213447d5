import type { Length, Ruler } from "../../lengths/index.ts";
import type { Language } from "../../words/index.ts";
import type { House, PlanWords } from "../job.ts";
import type { Desk } from "../paper.ts";
import type { BoardToBuy, MouldingToBuy } from "./items.ts";

/** Everything that a shopping list says. */
export interface ShoppingJob {
  readonly boards: readonly BoardToBuy[];
  /** Of which frames are made. */
  readonly mouldings: readonly MouldingToBuy[];
  /** How many works it is for. */
  readonly works: number;
  /** The heads of all works together: what the hinges need of tape; null: no tape. */
  readonly tape: Length | null;
  readonly currency: string | null;
  /** Whether the stock's prices are money; else only sheets are counted. */
  readonly priced: boolean;
  readonly house: House;
  readonly planWords: PlanWords;
  readonly ruler: Ruler;
  readonly language: Language;
}

/** What every part of one shopping list is laid out with. */
export interface ShoppingDesk extends Desk {
  readonly job: ShoppingJob;
  readonly missing: number;
}
