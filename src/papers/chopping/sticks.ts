import type { Mark } from "../../drawings/index.ts";
import type { Box, Point } from "../../geometry/index.ts";
import { add, type Length, mm, smaller, subtract, sum, times, ZERO } from "../../lengths/index.ts";
import type { Stick } from "../../plans/index.ts";
import { CHOP_LIST, stickName, stickSum, sticksLine } from "../../words/chop-list.ts";
import { strong } from "../../words/index.ts";
import { drawn, fittingScale } from "../scale.ts";
import { beside, type Block, block, cornersOf, gap, placed, stack } from "../block.ts";
import { part, points } from "../paper.ts";
import type { Flowing } from "../table.ts";
import { ringBlock } from "../tags.ts";
import { paragraph, textLine } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import { type ChoppingDesk, markOf } from "./desk.ts";

const HIGH = mm(8.5);
/** How far a mitre leans as it is drawn. */
const LEAN = mm(2.4);
const SUM: TextStyle = { ...TYPE.line, figures: { whole: points(14), stacked: points(15) } };
const SIDE: TextStyle = { ...TYPE.line, weight: "semibold" };
const RING = mm(2.5);

/** Every stick with its rails in order, lip side down, and its sum. */
export function stickRows(desk: ChoppingDesk, width: Length): readonly Flowing[] {
  const { plan, job } = desk.job;
  if (plan.sticks.length === 0) return [];
  const longest = job.lengths.reduce<Length>(
    (most, { length }, index) =>
      plan.sticks.some((stick) => stick.length === index) && length > most ? length : most,
    mm(1),
  );
  const over = fittingScale(longest, mm(1), width, mm(10));
  const title = stack([gap(mm(1.8)), paragraph(desk, sticksLine(over), TYPE.line, width), gap(mm(1.4))]);
  return [
    { block: title, withNext: true },
    ...plan.sticks.map((stick, index) => ({
      block: stickBlock(desk, stick, index + 1, over, width),
      again: title,
    })),
  ];
}

function stickBlock(desk: ChoppingDesk, stick: Stick, number: number, over: number, width: Length): Block {
  const stock = desk.job.job.lengths[stick.length];
  const length = stock?.length ?? stick.used;
  const { kerf, waste } = desk.job.job;
  const { graduation } = desk.speech.ruler;
  const cuts = Math.max(0, stick.rails.length - 1);
  const rails = sum(stick.rails.map(({ rail }) => desk.job.job.rails[rail]?.length ?? ZERO));
  const words = stickSum(
    {
      number,
      length,
      fromRack: stock !== undefined && stock.copies !== null && stock.cost === 0,
      rails,
      cuts,
      kerf,
      waste,
      used: stick.used,
      left: stick.left,
      onMarks: [rails, kerf, waste, length].every((one) => one % graduation === 0),
    },
    desk.speech.ruler,
  );
  const { drawing, unwritten } = stickDrawing(desk, stick, length, over);
  return stack([
    drawing,
    gap(mm(1)),
    paragraph(desk, words, SUM, width),
    ...(unwritten ? [gap(mm(0.8)), inOrder(desk, stick, number, width)] : []),
    gap(mm(2.6)),
  ]);
}

/** The stick to scale along its length: rails as they lie, the ends and what is left hatched. */
function stickDrawing(
  desk: ChoppingDesk,
  stick: Stick,
  length: Length,
  over: number,
): { readonly drawing: Block; readonly unwritten: boolean } {
  const at = (place: Length): Length => drawn(place, over);
  const { rails: wanted } = desk.job.job;
  const whole = at(length);
  const marks: Mark[] = [];
  const labels: Mark[] = [];
  let unwritten = false;
  const last = stick.rails.reduce<Length>(
    (end, { rail, at: from }) =>
      add(from, wanted[rail]?.length ?? ZERO) > end ? add(from, wanted[rail]?.length ?? ZERO) : end,
    ZERO,
  );
  const first = stick.rails[0]?.at ?? ZERO;
  marks.push(hatched({ left: ZERO, top: ZERO, width: at(first), height: HIGH }, "hatch-waste"));
  marks.push(
    hatched({ left: at(last), top: ZERO, width: subtract(whole, at(last)), height: HIGH }, "hatch-out"),
  );
  for (const { rail, copy, at: from } of stick.rails) {
    const [left, right] = [at(from), at(add(from, wanted[rail]?.length ?? ZERO))];
    const lean = smaller(LEAN, part(subtract(right, left), 0.25));
    marks.push(
      trapezoid([
        { x: left, y: ZERO },
        { x: right, y: ZERO },
        { x: subtract(right, lean), y: HIGH },
        { x: add(left, lean), y: HIGH },
      ]),
    );
    const room = subtract(subtract(right, left), add(times(lean, 2), mm(0.4)));
    const label = labelOf(desk, rail, copy, room);
    if (label === null) {
      unwritten = true;
      continue;
    }
    labels.push(
      ...placed(
        label,
        subtract(part(add(left, right), 0.5), part(label.width, 0.5)),
        part(subtract(HIGH, label.height), 0.5),
      ),
    );
  }
  const outline: Mark = {
    kind: "area",
    points: cornersOf({ left: ZERO, top: ZERO, width: whole, height: HIGH }),
    fill: "none",
    line: "edge",
  };
  return { drawing: block(whole, HIGH, [...marks, outline, ...labels]), unwritten };
}

/** Its frame's ring and the side's letter; the ring alone has to be told elsewhere: null. */
function labelOf(desk: ChoppingDesk, rail: number, copy: number, room: Length): Block | null {
  const { frame, side } = markOf(desk.job, rail, copy);
  const pieces = [
    ...(frame === null ? [] : [ringBlock(desk, String(frame), "white", RING)]),
    ...(side === null ? [] : [textLine(desk, CHOP_LIST.letters[side], SIDE)]),
  ];
  if (pieces.length === 0) return null;
  const label = beside(pieces, mm(0.8), "middle");
  return label.width <= room ? label : null;
}

/** The rails of a stick by name, where its drawing is too small for them. */
function inOrder(desk: ChoppingDesk, stick: Stick, number: number, width: Length): Block {
  const said = stick.rails.map(({ rail, copy }) => {
    const { frame, side } = markOf(desk.job, rail, copy);
    const name = side === null ? CHOP_LIST.noSide : CHOP_LIST.sides[side];
    return frame === null ? (desk.job.job.rails[rail]?.name ?? name) : `${frame} ${name}`;
  });
  return paragraph(desk, [strong(`${stickName(number)}: `), `${said.join(", ")}.`], TYPE.line, width);
}

const hatched = (box: Box, fill: "hatch-waste" | "hatch-out"): Mark => ({
  kind: "area",
  points: cornersOf(box),
  fill,
  line: null,
});

const trapezoid = (corners: readonly Point[]): Mark => ({
  kind: "area",
  points: corners,
  fill: "paper",
  line: "thin",
});
