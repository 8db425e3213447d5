import { printExact } from "../lengths/index.ts";
import { BENCH_ORDER } from "../words/packet.ts";
import type { Blanks } from "./blanks.ts";
import type { ComposedWork } from "./works.ts";

/** A table as a list has it: a header and rows of texts. */
export interface TableOut {
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/**
 * The batch in the order of a day at the cutter: first every top mat, then the mats below, each round from
 * the narrowest setting to the widest, so that within a round the stop only ever moves one way and stays
 * where the next work has the same border.
 */
export function benchOrder(works: readonly ComposedWork[], blanks: Blanks): TableOut {
  const cuts = works.flatMap(({ work, composition, stopped, row }, index) =>
    stopped
      ? []
      : composition.stops.map((stop) => ({
          round: composition.mats.length - 1 - stop.mat,
          stop,
          row,
          title: work.title,
          unit: composition.design.ruler.unit,
          blanks: blanks.ofWork[index]?.mats[stop.mat] ?? [],
        })),
  );
  const ordered = cuts.toSorted((a, b) => a.round - b.round || a.stop.set - b.stop.set || a.row - b.row);
  return {
    header: BENCH_ORDER.header,
    rows: ordered.map(({ round, stop, title, unit, blanks: numbers }, index) => {
      const before = ordered[index - 1];
      const stays = before !== undefined && before.round === round && before.stop.scale === stop.scale;
      return [
        String(index + 1),
        BENCH_ORDER.round(round),
        printExact(stop.set, unit),
        printExact(stop.scale, unit),
        stays ? BENCH_ORDER.stays : BENCH_ORDER.moves,
        title,
        numbers.join(" "),
        stop.edges.map((edge) => BENCH_ORDER.edge(edge)).join(", "),
        stop.hand.map((hand) => BENCH_ORDER.hand(hand)).join(", "),
      ];
    }),
  };
}
