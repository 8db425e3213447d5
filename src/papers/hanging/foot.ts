import type { Mark } from "../../drawings/index.ts";
import type { HungWork } from "../../assembly/index.ts";
import { add, type Length, larger, mm, subtract } from "../../lengths/index.ts";
import {
  apartWords,
  HANGING_SHEET,
  otherWire,
  ratedTimes,
  wallKindWords,
  wireHead,
  wireLine,
} from "../../words/hanging-sheet.ts";
import { type Phrase, withUnit } from "../../words/index.ts";
import { drawn, fittingScale } from "../scale.ts";
import { beside, type Block, block, columns, gap, stack } from "../block.ts";
import { dimensionLine } from "../dimension.ts";
import { part } from "../paper.ts";
import { caution } from "../tags.ts";
import { paragraph, textAt } from "../text.ts";
import { TYPE } from "../type.ts";
import { cannotHang } from "../../plans/index.ts";
import type { HangingDesk } from "./desk.ts";

/** What the hand must know before the hammer: nail against bearing, the wire's triangle, the cautions. */
export function footBand(desk: HangingDesk, width: Length): Block {
  const between = mm(6);
  const [wired, ...others] = wires(desk);
  const shares = wired === undefined ? [1, 2] : [1, 1.3, 1.2];
  const [first = width, second = width, third = width] = columns(width, between, shares);
  const cautions = cautionBlock(desk, wired === undefined ? second : third);
  return beside(
    [
      nailPicture(desk, first),
      ...(wired === undefined ? [] : [wirePicture(desk, [wired, ...others], second)]),
      cautions,
    ],
    between,
  );
}

function cautionBlock(desk: HangingDesk, width: Length): Block {
  const { safety, kind, shakes } = desk.job;
  const said = [
    ratedTimes(safety),
    wallKindWords(kind),
    ...(shakes ? [HANGING_SHEET.shakes] : []),
    HANGING_SHEET.licensed,
  ];
  return stack(
    said.map((words) => caution(desk, words, width)),
    mm(1.8),
  );
}

/** Nail against bearing at true size: the hook's own drop is what people forget. */
function nailPicture(desk: HangingDesk, width: Length): Block {
  const { hookDrop, ruler } = desk.job;
  const head = paragraph(desk, HANGING_SHEET.nailNotWire, TYPE.band, width);
  if (hookDrop === null) return stack([head, gap(mm(1)), caution(desk, HANGING_SHEET.dropUnknown, width)]);
  if (hookDrop <= 0) return head;
  const drop = hookDrop > mm(30) ? mm(30) : hookDrop;
  const left = mm(6);
  const top = mm(6.4);
  const low = add(top, drop);
  const edge = mm(14);
  const level = (y: Length): Mark => ({
    kind: "line",
    from: { x: left, y },
    to: { x: add(edge, mm(4)), y },
    line: "thin",
  });
  // Of a small drop the arrows stand outside, and reach below it.
  const under = drop < mm(10) ? mm(9) : mm(5.6);
  const words = [
    textAt(mm(0), mm(3.4), HANGING_SHEET.nailHole, TYPE.caption),
    textAt(mm(0), add(low, under), HANGING_SHEET.bears, TYPE.caption),
  ];
  const hookShape: readonly Mark[] = [
    { kind: "circle", centre: { x: left, y: top }, radius: mm(0.9), fill: "ink", line: null },
    { kind: "line", from: { x: left, y: top }, to: { x: left, y: low }, line: "outline" },
    {
      kind: "polyline",
      points: [
        { x: left, y: low },
        { x: subtract(left, mm(1.2)), y: add(low, mm(1.4)) },
        { x: subtract(left, mm(3)), y: add(low, mm(1.1)) },
        { x: subtract(left, mm(3.6)), y: subtract(low, mm(0.8)) },
      ],
      line: "outline",
    },
  ];
  const figure = textAt(add(edge, mm(6)), add(part(add(top, low), 0.5), mm(1.6)), withUnit(hookDrop, ruler), {
    ...TYPE.words,
    size: TYPE.step.figures.whole,
  });
  const picture = block(width, add(low, add(under, mm(1.4))), [
    ...hookShape,
    level(top),
    level(low),
    ...dimensionLine("y", top, low, edge),
    figure,
    ...words,
  ]);
  const note = hookDrop > mm(30) ? [] : [paragraph(desk, HANGING_SHEET.trueSize, TYPE.caption, width)];
  return stack([head, gap(mm(1)), picture, gap(mm(1)), ...note]);
}

/** Works that hang by wires alike. */
interface Wired {
  readonly numbers: readonly number[];
  readonly hung: HungWork;
  readonly wire: NonNullable<HungWork["wire"]>;
  readonly apart: Length;
  readonly hooks: number;
  readonly hooksApart: Length;
}

/** Every kind of wire on the wall, in the order of hanging. */
function wires({ job: { plan, hung, works }, numbers }: HangingDesk): readonly Wired[] {
  const found = new Map<string, Wired>();
  for (const index of plan.order) {
    const [one, work] = [hung[index], works[index]];
    if (one === undefined || one.wire === null || work?.hanging.kind !== "wire") continue;
    if (cannotHang(one, index, plan)) continue;
    const { apart, hooks, hooksApart } = work.hanging;
    const key = `${one.wire.length} ${one.wire.rise} ${hooks} ${work.mass}`;
    const number = numbers[index] ?? 0;
    const known = found.get(key);
    found.set(
      key,
      known === undefined
        ? { numbers: [number], hung: one, wire: one.wire, apart, hooks, hooksApart }
        : { ...known, numbers: [...known.numbers, number] },
    );
  }
  return [...found.values()];
}

/** More kinds of wire than this are left to the list of works. */
const MOST_WIRES = 3;

/** The first wire drawn, then every one in words. */
function wirePicture(desk: HangingDesk, all: readonly [Wired, ...Wired[]], width: Length): Block {
  const [{ wire, apart, hooks, hooksApart }] = all;
  const over = fittingScale(apart, wire.rise, subtract(width, mm(8)), mm(14));
  const [wide, rise] = [drawn(apart, over), larger(mm(1), drawn(wire.rise, over))];
  const left = part(subtract(width, wide), 0.5);
  const [top, low] = [mm(2.4), add(mm(2.4), rise)];
  const middle = part(width, 0.5);
  const half = part(drawn(hooksApart, over), 0.5);
  const right = add(left, wide);
  const rings = [left, right].map(
    (x): Mark => ({ kind: "circle", centre: { x, y: low }, radius: mm(0.9), fill: "ink", line: null }),
  );
  const picture = block(width, add(low, mm(6.4)), [
    {
      kind: "polyline",
      points: [
        { x: left, y: low },
        { x: subtract(middle, half), y: top },
        { x: add(middle, half), y: top },
        { x: right, y: low },
      ],
      line: "edge",
    },
    ...rings,
    ...(rise >= mm(8) ? dimensionLine("y", top, low, middle) : []),
    textAt(middle, add(low, mm(5.2)), apartWords(apart, desk.job.ruler), TYPE.caption, "middle"),
  ]);
  return stack([
    paragraph(desk, wireHead(hooks), TYPE.band, width),
    gap(mm(1.4)),
    picture,
    gap(mm(1)),
    ...(all.length > MOST_WIRES
      ? [paragraph(desk, HANGING_SHEET.wiresListed, TYPE.line, width)]
      : all.map((one) => paragraph(desk, otherWire(one.numbers, wireWords(desk, one)), TYPE.line, width))),
  ]);
}

function wireWords({ job: { ruler } }: HangingDesk, { wire, hung: { loads }, hooks }: Wired): Phrase {
  const pull =
    loads === null || loads.wire === null ? null : { wire: loads.wire, half: (loads.hook * hooks) / 2 };
  return wireLine(wire.length, wire.rise, pull, ruler);
}
