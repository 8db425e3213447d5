import {
  minorDigits,
  type PlanOptions,
  type Quote,
  type QuotedWork,
  type QuoteJob,
  quoteShow,
} from "../plans/index.ts";
import type { Blanks } from "./blanks.ts";
import type { PlannedBoard } from "./boards.ts";
import type { PlannedFrames } from "./frames.ts";
import { goodsOfBoard, goodsOfFrames } from "./goods.ts";
import type { Prepared } from "./order.ts";

/** What a packet costs, and what its sums are. */
export interface Quoted {
  readonly job: QuoteJob;
  readonly quote: Quote;
  /** Places of the quoted works among the composed ones. */
  readonly works: readonly number[];
  readonly currency: string | null;
}

/** What everything that is cut costs; null where nothing is cut. */
export function quotePacket(
  { works, holds, stock, practice }: Prepared,
  boards: readonly PlannedBoard[],
  blanks: Blanks,
  frames: readonly PlannedFrames[],
  options: PlanOptions,
): Quoted | null {
  const going = works.flatMap(({ stopped }, index) => (stopped ? [] : [index]));
  if (going.length === 0) return null;
  const at = new Map(going.map((index, place) => [index, place]));
  const { money } = practice;
  const currency = stock.currency ?? money.currency;
  const digits = minorDigits(currency);
  const panes = boards.filter(({ material }) => material !== "board");
  const quoted = going.flatMap((index): QuotedWork[] => {
    const work = works[index];
    if (work === undefined) return [];
    const { quantity, composition, ready } = work;
    const mats = ready ? 0 : composition.mats.length * quantity;
    const glazed = panes.some(({ uses }) => uses.some((use) => use.work === index)) ? quantity : 0;
    const framed = frames.some((one) => one.works.includes(work)) ? quantity : 0;
    return [
      {
        title: work.work.title,
        copies: quantity,
        mats,
        panes: glazed,
        frames: framed,
        done: {
          blank: blanks.all.filter(({ use }) => use.work === index && use.layer !== "glazing").length,
          window: mats,
          hold: holds[index] === null ? 0 : quantity,
          glaze: glazed,
          frame: framed,
          close: quantity,
          // Whether it is hung by those who make it, only their own log says.
          hang: money.minutes.hang === undefined ? 0 : quantity,
        },
      },
    ];
  });
  const job: QuoteJob = {
    digits,
    works: quoted,
    goods: [
      ...boards.map((board) => goodsOfBoard(board, at, going.length, digits)),
      ...frames.map((one) =>
        goodsOfFrames(
          one,
          one.works.map((work) => at.get(works.indexOf(work)) ?? 0),
          going.length,
          options,
          digits,
        ),
      ),
    ],
    fittings: money.fittings,
    minutes: money.minutes,
    hour: money.hour,
    having: money.having,
  };
  return { job, quote: quoteShow(job), works: going, currency };
}
