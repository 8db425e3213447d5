import type { HungWork } from "../../assembly/index.ts";
import { type Length, mm, subtract, toGraduation } from "../../lengths/index.ts";
import { sayHangCheck } from "../../words/hanging.ts";
import {
  fittingWords,
  hardwareWords,
  HANGING_SHEET,
  pullWords,
  workWords,
} from "../../words/hanging-sheet.ts";
import { bare, strong } from "../../words/index.ts";
import { beside, type Block, block, gap, indented, stack, restOf } from "../block.ts";
import { type Column, type Flowing, tableHead, tableRow } from "../table.ts";
import { caution, ringBlock } from "../tags.ts";
import { paragraph, textLine } from "../text.ts";
import { TYPE } from "../type.ts";
import { cannotHang } from "../../plans/index.ts";
import type { HangingDesk } from "./desk.ts";
import { PROOF } from "./hook-rows.ts";

const BETWEEN = mm(3);
const RING = mm(8);

function columnsOf(width: Length): readonly Column[] {
  const [down, apart, wire, pull] = [mm(26), mm(28), mm(28), mm(40)];
  const rest = restOf(width, BETWEEN, [down, apart, wire, pull]);
  return [
    { name: HANGING_SHEET.work, width: rest, align: "start" },
    { name: strong(HANGING_SHEET.down), width: down, align: "start" },
    { name: strong(HANGING_SHEET.apart), width: apart, align: "start" },
    { name: strong(HANGING_SHEET.wire), width: wire, align: "start" },
    { name: HANGING_SHEET.pulls, width: pull, align: "end" },
  ];
}

/** One row a work: what it is, where its fittings go on the back of its frame, what they bear, and its cautions. */
export function workRows(desk: HangingDesk, width: Length): readonly Flowing[] {
  const { plan, hung } = desk.job;
  const columns = columnsOf(width);
  const head = tableHead(desk, columns, BETWEEN);
  const rows = plan.order.flatMap((work): readonly Flowing[] => {
    const one = hung[work];
    if (one === undefined || cannotHang(one, work, plan)) return [];
    const row = tableRow(columns, cellsOf(desk, one, work, columns), BETWEEN, {
      above: mm(0.9),
      below: mm(0.9),
      line: "rule-thin",
    });
    const said = cautionsOf(desk, one, width);
    return [{ block: stack([...said, row]), again: head }];
  });
  return rows.length === 0 ? [] : [{ block: head, withNext: true }, ...rows];
}

/** What the hand must know of this work; where the ground shakes is said once for the wall. */
function cautionsOf(desk: HangingDesk, { checks }: HungWork, width: Length): readonly Block[] {
  const speech = { ruler: desk.job.ruler, job: desk.job.job };
  const said = checks.filter(({ level, code }) => level === "warn" && code !== "shakes");
  if (said.length === 0) return [];
  return [
    gap(mm(1.2)),
    ...said.map((check) =>
      stack([
        indented(caution(desk, sayHangCheck(check, speech), subtract(width, RING), TYPE.line), RING),
        gap(mm(0.8)),
      ]),
    ),
  ];
}

function cellsOf(
  desk: HangingDesk,
  { wire, loads }: HungWork,
  index: number,
  columns: readonly Column[],
): readonly Block[] {
  const { ruler, works, safety, hardware } = desk.job;
  const work = works[index];
  const [first, , , , last] = columns;
  if (work === undefined || first === undefined || last === undefined) return [];
  const { hanging } = work;
  const figure = (length: Length): Block =>
    textLine(desk, bare(toGraduation(length, ruler.graduation, "nearest"), ruler), PROOF);
  const none = block(mm(0), mm(0));
  const chosen = hardwareWords(hardware[index]);
  return [
    beside(
      [
        ringBlock(desk, String(desk.numbers[index] ?? 0), "white"),
        stack([
          paragraph(desk, strong(work.title), TYPE.line, subtract(first.width, RING)),
          paragraph(desk, workWords(work, ruler), TYPE.caption, subtract(first.width, RING)),
        ]),
      ],
      mm(2),
      "middle",
    ),
    figure(hanging.below),
    figure(hanging.apart),
    wire === null ? paragraph(desk, fittingWords(hanging.kind), TYPE.line, mm(28)) : figure(wire.length),
    stack([
      ...(loads === null
        ? [none]
        : [paragraph(desk, pullWords(loads.ring, safety), TYPE.caption, last.width, "end")]),
      ...(chosen === "" ? [] : [paragraph(desk, chosen, TYPE.caption, last.width, "end")]),
    ]),
  ];
}
