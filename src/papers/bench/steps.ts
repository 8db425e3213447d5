import { add, type Length, mm, subtract } from "../../lengths/index.ts";
import { type Block, gap, indented, stack } from "../block.ts";
import type { Flowing } from "../table.ts";
import { caution, ruledHead, TICK, TICK_GAP, tickLine } from "../tags.ts";
import { TYPE } from "../type.ts";
import type { Act } from "./act.ts";
import type { Desk } from "../paper.ts";

export const STEPS_WIDTH = mm(107);

/** The steps as pieces that are never parted within; a title stays with its first step, a caution with the act it warns of. */
export function stepPieces(
  desk: Desk,
  acts: readonly Act[],
  width: Length,
  between: Length,
): readonly Flowing[] {
  return acts.map((act, index) => {
    const space = index === 0 ? [] : [gap(act.kind === "title" ? add(between, mm(1)) : between)];
    return {
      block: stack([...space, pieceOf(desk, act, width)]),
      ...(act.kind === "do" ? {} : { withNext: true }),
    };
  });
}

function pieceOf(desk: Desk, act: Act, width: Length): Block {
  const indent = add(TICK, TICK_GAP);
  switch (act.kind) {
    case "do":
      return tickLine(desk, act.words, TYPE.step, width);
    case "caution":
      return indented(caution(desk, act.words, subtract(width, indent), CAUTION), indent);
    case "title":
      return ruledHead(desk, act.words, width);
  }
}

const CAUTION = { ...TYPE.caution, figures: TYPE.step.figures };
