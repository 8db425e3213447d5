import { CORNERS, SIDES } from "../../geometry/index.ts";
import type { MaterialTopic } from "../../assembly/index.ts";
import { add, type Length, mm, subtract, ZERO } from "../../lengths/index.ts";
import { CORNER_WORDS } from "../../words/bench-sheet.ts";
import { materialLine, MOUNTING_SHEET, stackBoxes, stackUnknown } from "../../words/mounting-sheet.ts";
import { beside, type Block, block, gap, placed, stack } from "../block.ts";
import { part } from "../paper.ts";
import { ruledHead, tickLine, writeBox } from "../tags.ts";
import { paragraph, textAt } from "../text.ts";
import { TYPE } from "../type.ts";
import type { MountingDesk } from "./desk.ts";

/** Beside the steps: four corners to look at, the stack to measure where it is not reckoned, and what may touch the work. */
export function sideColumn(desk: MountingDesk, width: Length): Block {
  const { stack: reckoned, plan } = desk.job;
  return stack([
    corners(desk, width),
    ...(reckoned === null && plan.boards.side === "head" ? [gap(mm(3)), stackToMeasure(desk, width)] : []),
    gap(mm(3)),
    materials(desk, width),
  ]);
}

/** Two and two; of a float its four edges. */
function corners(desk: MountingDesk, width: Length): Block {
  const float = desk.job.composition.design.window.show === "sheet";
  const half = part(width, 0.5);
  const named = float ? SIDES : CORNERS.map((corner) => CORNER_WORDS[corner]);
  const row = mm(6);
  return stack([
    paragraph(desk, float ? MOUNTING_SHEET.edgesLookedAt : MOUNTING_SHEET.cornersLookedAt, TYPE.line, width),
    gap(mm(1.4)),
    block(
      width,
      add(row, mm(4.4)),
      named.flatMap((name, index) =>
        placed(tickLine(desk, name, TYPE.line, half), index % 2 === 0 ? ZERO : half, index < 2 ? ZERO : row),
      ),
    ),
  ]);
}

/** Two figures in a hand's own writing. */
function stackToMeasure(desk: MountingDesk, width: Length): Block {
  const half = part(subtract(width, mm(4)), 0.5);
  const boxed = (name: string): Block =>
    stack([
      block(half, mm(4), [textAt(ZERO, mm(3), name, TYPE.caption)]),
      block(half, mm(9), writeBox(mm(24), mm(9)).marks),
    ]);
  const [first, second] = stackBoxes(desk.speech);
  return stack([
    paragraph(desk, stackUnknown(desk.speech), TYPE.line, width),
    gap(mm(1)),
    beside([boxed(first), boxed(second)], mm(4)),
  ]);
}

/** What the bench needs to know of them; the rest stands in the packet's own record. */
const AT_THE_BENCH: ReadonlySet<MaterialTopic> = new Set<MaterialTopic>([
  "board",
  "buffered",
  "unbuffered",
  "buffered-or-not",
  "neutral-fades-too",
  "omitted-no-consensus",
  "activity-test",
  "never-behind",
]);

/** The rules that bear on this bench, each once with all its sources and how sure they are. */
function materials(desk: MountingDesk, width: Length): Block {
  const sources = new Map<string, string>();
  for (const { rule, source } of desk.job.plan.materials
    .filter(({ topic }) => AT_THE_BENCH.has(topic))
    .map(materialLine)) {
    const known = sources.get(rule);
    sources.set(rule, known === undefined ? source : `${known}; ${source}`);
  }
  return stack([
    ruledHead(desk, MOUNTING_SHEET.touches, width),
    ...[...sources].flatMap(([rule, source]) => [
      gap(mm(1.4)),
      paragraph(desk, rule, TYPE.caption, width),
      gap(mm(0.4)),
      paragraph(desk, source, { ...TYPE.fine, weight: "italic" }, width),
    ]),
  ]);
}
