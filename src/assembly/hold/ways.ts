import type { Holding } from "../design.ts";
import type { Never } from "./facts.ts";
import type { HingeKind } from "./hinges.ts";
import type { Way } from "./hold-plan.ts";

const HINGES: readonly HingeKind[] = ["T", "V", "pass-through"];

/** In which order the ways are tried: the asked one first, and paste last where nobody asked for it. */
export const ORDER: Readonly<Record<Holding, readonly Way[]>> = {
  pockets: ["pockets", "strips", ...HINGES],
  strips: ["strips", "pockets", ...HINGES],
  hinges: [...HINGES, "pockets", "strips"],
};

/** What holds the sheet as a design would call it. */
export const holdingOfWay = (way: Way): Holding => (way === "pockets" || way === "strips" ? way : "hinges");

/** What forbids a way. */
export const forbiddenBy = (way: Way, never: readonly Never[]): Never | null => {
  const by: readonly Never[] =
    way === "pockets" ? ["pockets"] : way === "strips" ? ["strips"] : ["hinges", "paste"];
  return by.find((one) => never.includes(one)) ?? null;
};

export const isHinge = (way: Way | null): way is HingeKind => way !== null && holdingOfWay(way) === "hinges";

/** Hinges of every kind, the strongest hold that shows nothing first. */
export const HINGE_KINDS = HINGES;
