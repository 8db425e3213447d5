import { type Side, type Sides, SIDES } from "../../geometry/index.ts";
import { type Length, mm } from "../../lengths/index.ts";
import { EDITION_COLUMNS, editionTitle, firstSheet } from "../../words/bench-sheet.ts";
import { withUnit } from "../../words/index.ts";
import { gap, stack, restOf } from "../block.ts";
import { points } from "../paper.ts";
import { type Column, type Flowing, tableHead, tableRow } from "../table.ts";
import { ruledHead, tickLine } from "../tags.ts";
import { textLine } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { BenchDesk } from "./desk.ts";

const FIGURES: TextStyle = { ...TYPE.line, figures: { whole: points(15), stacked: points(17) } };

/** Every sheet of an edition by its name, with its own place on the mount and its own least cover. */
export function editionPieces(desk: BenchDesk, width: Length): readonly Flowing[] {
  const { print } = desk.job.composition;
  if (print === null || print.edition.length === 0) return [];
  const between = mm(3);
  const [nameWidth, figureWidth] = [mm(34), mm(21)];
  const columns: readonly Column[] = [
    { name: EDITION_COLUMNS.sheet, width: nameWidth, align: "start" },
    { name: EDITION_COLUMNS.left, width: figureWidth, align: "start" },
    { name: EDITION_COLUMNS.head, width: figureWidth, align: "start" },
    {
      name: EDITION_COLUMNS.least,
      width: restOf(width, between, [nameWidth, figureWidth, figureWidth]),
      align: "start",
    },
  ];
  const head = tableHead(desk, columns, between);
  const { ruler } = desk.speech;
  const rows = print.edition.map(({ name, left, top, cover }): Flowing => {
    const least = leastSide(cover);
    return {
      again: head,
      block: tableRow(
        columns,
        [
          tickLine(desk, name === "" ? desk.job.work.edition || firstSheet : name, TYPE.fact, nameWidth),
          textLine(desk, withUnit(left, ruler), FIGURES),
          textLine(desk, withUnit(top, ruler), FIGURES),
          textLine(desk, [withUnit(cover[least], ruler, "down"), ` ${least}`], FIGURES),
        ],
        between,
        { above: mm(0.9), below: mm(0.9), line: "rule-thin" },
      ),
    };
  });
  const title = ruledHead(desk, editionTitle(print.edition.length), width);
  return [{ block: stack([gap(mm(3)), title, head]), withNext: true }, ...rows];
}

const leastSide = (cover: Sides): Side =>
  SIDES.reduce((least, side) => (cover[side] < cover[least] ? side : least));
