import type { LiftRule, OuterRule } from "../assembly/index.ts";
import { type Length, printExact } from "../lengths/index.ts";
import type { Practice } from "../show/practice.ts";
import { VOCABULARY } from "./vocabulary.ts";

/** The habits that a list leaves open, as sentences for a terminal: what every work gets that does not ask for something else. */
export function sayHabits(practice: Practice): string[] {
  const { ruler, language, mats, overlap } = practice;
  const { mat } = VOCABULARY[language];
  const say = (length: Length): string => printExact(length, ruler.unit);
  const [lowest] = mats;
  const board =
    lowest === undefined
      ? ""
      : `, in ${lowest.board}, ${say(lowest.thickness)} thick, cut at ${lowest.bevel}°`;
  const count = mats.length === 1 ? `one ${mat}` : `${mats.length} ${VOCABULARY[language].mats}`;
  return [
    `Where a work does not say: covered ${say(overlap)} all round, or as much as the hold needs; ${count}${board}; ${sayLift(practice.lift, practice)}; held with ${practice.holding}.`,
    `Outer size where a work does not say: ${sayOuter(practice.outer, practice)}.`,
  ];
}

function sayOuter(outer: OuterRule, { ruler }: Practice): string {
  const say = (length: Length): string => printExact(length, ruler.unit);
  switch (outer.kind) {
    case "size":
      return `${say(outer.width)} × ${say(outer.height)}`;
    case "borders":
      return `borders of ${say(outer.borders.head)} at the head, ${say(outer.borders.side)} at the sides, ${say(outer.borders.foot)} at the foot${outer.standard === null ? "" : ", up to the next listed size"}`;
    case "smallest":
      return `the smallest of ${outer.sizes.length} listed sizes with borders of at least ${say(outer.border)}${outer.holdsSheet ? " that takes the whole sheet" : ""}`;
  }
}

function sayLift(lift: LiftRule, { ruler, language }: Practice): string {
  const { centre } = VOCABULARY[language];
  switch (lift.rule) {
    case "none":
      return "not raised";
    case "fixed":
      return `raised ${printExact(lift.by, ruler.unit)} above ${centre}`;
    case "ratio":
      return `foot to head as ${Number(lift.foot.over) / Number(lift.foot.under)} to 1`;
    case "optical":
      return `raised to the optical ${centre}`;
  }
}
