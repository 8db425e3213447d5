import type { Fit } from "../assembly/index.ts";
import type { Side } from "../geometry/index.ts";
import { printLength, type Ruler } from "../lengths/index.ts";
import { REUSE_TABLE } from "./packet.ts";

const SIDES: readonly Side[] = ["head", "left", "right", "foot"];

/** What of the things that exist one work goes into, as lines for a terminal. */
export function sayReuse(
  frames: readonly { readonly kind: { readonly name: string }; readonly fit: Fit }[],
  offcuts: readonly { readonly name: string; readonly serves: readonly string[] }[] | null,
  ruler: Ruler,
): string[] {
  return [
    "",
    "frames and mats that exist, the best one first",
    ...(frames.length === 0 ? ["  none: the practice names none that exists"] : []),
    ...frames.map(({ kind, fit }) => `  ${kind.name}: ${fitWords(fit, ruler)}`),
    ...(offcuts === null
      ? []
      : [
          "",
          "offcuts that serve",
          ...(offcuts.length === 0 ? ["  none is large enough"] : []),
          ...offcuts.map(({ name, serves }) => `  ${name}: ${serves.join(", ")}`),
        ]),
  ];
}

function fitWords({ composition, plan, turned, stops, warnings }: Fit, ruler: Ruler): string {
  const { width, height } = composition.outer;
  const seen = SIDES.map((side) => `${side} ${printLength(plan.stands.seen[side], ruler)}`).join(", ");
  const size = `${printLength(width, ruler)} × ${printLength(height, ruler)}`;
  return `${REUSE_TABLE.hangs(turned)}, package ${size}, seen ${seen}; ${counted(stops, "stop")}, ${counted(warnings, "warning")}`;
}

const counted = (number: number, one: string): string => `${number} ${one}${number === 1 ? "" : "s"}`;
