import type { Composition } from "../assembly/index.ts";
import type { Side, Size } from "../geometry/index.ts";
import { printLength } from "../lengths/index.ts";
import { sayCheck, type Speech } from "./checks.ts";
import { briefText } from "./brief.ts";

const SIDES: readonly Side[] = ["head", "left", "right", "foot"];

/** The columns of a check-list; the last six are left empty, for a hand to tick. */
export const CHECK_LIST_HEAD = [
  "work",
  "title",
  "maker",
  "quantity",
  "sheet",
  "outer",
  "window at the back",
  "brief",
  "least cover",
  "checks",
  "light",
  "blanks cut",
  "windows cut",
  "print held",
  "corners looked at",
  "closed",
  "labelled",
] as const;

export interface CheckListWork {
  readonly mark: string;
  readonly title: string;
  readonly maker: string;
  readonly quantity: number;
  readonly composition: Composition;
  /** What must be said of the light that it hangs in; empty where nothing must. */
  readonly light: string;
}

/** A check-list as rows of text, its head first: one row a work, everything that must be looked at once. */
export function checkListRows(works: readonly CheckListWork[], language: Speech["language"]): string[][] {
  return [[...CHECK_LIST_HEAD], ...works.map((work) => rowOf(work, language))];
}

function rowOf(
  { mark, title, maker, quantity, composition, light }: CheckListWork,
  language: Speech["language"],
): string[] {
  const { design, outer, mats, print, checks } = composition;
  const speech: Speech = { ruler: design.ruler, language };
  const size = ({ width, height }: Size): string =>
    `${printLength(width, design.ruler)} × ${printLength(height, design.ruler)}`;
  const lowest = mats[0];
  const least =
    print === null || design.window.show === "sheet"
      ? ""
      : SIDES.reduce((side, other) => (print.cover[other] < print.cover[side] ? other : side));
  return [
    mark,
    title,
    maker,
    String(quantity),
    design.print === null ? "" : size(design.print.sheet),
    size(outer),
    lowest === undefined ? "" : size(lowest.back),
    briefText(composition, speech),
    print === null || least === ""
      ? ""
      : `${least}, ${printLength(print.cover[least], design.ruler, "down")}`,
    checks
      .filter(({ level }) => level !== "note")
      .map((check) => `${check.level}: ${sayCheck(check, speech)}`)
      .join(" "),
    light,
    "",
    "",
    "",
    "",
    "",
    "",
  ];
}
