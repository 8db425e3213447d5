import { framedSection, type FramedSectionJob, type Mark, type SectionScale } from "../../drawings/index.ts";
import type { Point } from "../../geometry/index.ts";
import { add, type Length, larger, mm, subtract, sum, ZERO } from "../../lengths/index.ts";
import { fineRuler } from "../../lengths/index.ts";
import { FRAME_SHEET, rabbetWord, sectionScale } from "../../words/frame-sheet.ts";
import { type Phrase, withUnit } from "../../words/index.ts";
import { type Block, block, cornersOf, placed } from "../block.ts";
import { dimensionLine, extensionLine, tailOf } from "../dimension.ts";
import { part, points } from "../paper.ts";
import { ringBlock } from "../tags.ts";
import { textAt, widthOf } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { FrameDesk } from "./desk.ts";

/** The largest that fits is taken. */
const SCALES: readonly SectionScale[] = [
  ...[5, 4, 3, 2, 1].map((by) => ({ by, over: 1 })),
  ...[2, 3, 4, 5, 10, 20, 50].map((over) => ({ by: 1, over })),
];
const FIGURE: TextStyle = { ...TYPE.line, figures: { whole: points(14), stacked: points(15) } };
/** Rings beside the drawing, with the lines that lead from them. */
const RINGS = mm(13);
const RING = mm(2.3);
const RING_STEP = mm(5.4);
/** Title above, dimensions above and below the drawing. */
const ABOVE = mm(26);
const BELOW = mm(14);
/** Depths stand beside the frame: the stack's with its figure at its right, the rabbet's with its own under it. */
const BESIDE = mm(31);
const STACK = mm(4);
const RABBET = mm(22);
/** Over the drawing: what the lip hides, and what is seen. */
const LIP_LEVEL = mm(-5.5);
const SEEN_LEVEL = mm(-13);

/** The framed package cut through its foot, every layer numbered, with what is seen, what the lip hides, stack and rabbet. */
export function sectionBlock(desk: FrameDesk, width: Length, high: Length): Block {
  const { composition, plan, held } = desk.job;
  const job: FramedSectionJob = {
    plan,
    foot: composition.mats[0]?.borders.foot ?? ZERO,
    mats: composition.mats.map(({ borders, bevel }) => ({ foot: borders.foot, bevel: bevel.plan })),
    cover: composition.print?.cover.foot ?? null,
    bed: held?.bed ?? null,
  };
  const room = { width: subtract(width, add(RINGS, BESIDE)), height: subtract(high, add(ABOVE, BELOW)) };
  const scale = SCALES.find((one) => {
    const { width: wide, height } = framedSection(job, one);
    return wide <= room.width && height <= room.height;
  }) ?? { by: 1, over: 100 };
  const section = framedSection(job, scale);
  const { at } = section;
  const rings = ringPlaces(section.targets, section.height);
  const fine = fineRuler(desk.speech.ruler);
  const marks: readonly Mark[] = [
    ...section.marks,
    ...section.targets.flatMap((target, index): readonly Mark[] => {
      const y = rings[index] ?? target.y;
      const from = { x: subtract(ZERO, subtract(RINGS, add(RING, RING))), y };
      return [
        { kind: "polyline", points: [from, { x: mm(-1.8), y: target.y }, target], line: "thin" },
        { kind: "circle", centre: target, radius: mm(0.5), fill: "ink", line: null },
        ...placed(
          ringBlock(desk, String(index + 1), "white", RING),
          subtract(ZERO, RINGS),
          subtract(y, RING),
        ),
      ];
    }),
    ...across(desk, at.window, at.sight, SEEN_LEVEL, [
      `${FRAME_SHEET.seen} `,
      withUnit(plan.stands.seen.foot, fine),
    ]),
    ...across(desk, at.sight, at.edge, LIP_LEVEL, [
      `${FRAME_SHEET.underLip} `,
      withUnit(plan.stands.hidden.foot, fine),
    ]),
    extensionLine("x", at.window, ZERO, SEEN_LEVEL),
    extensionLine("x", at.sight, ZERO, SEEN_LEVEL),
    extensionLine("x", at.edge, ZERO, LIP_LEVEL),
    ...(at.rabbet === null || plan.frame.profile.depth === null
      ? []
      : [
          ...deep(section.width, at.face, at.rabbet, add(section.width, RABBET)),
          ...named(
            desk,
            { x: add(section.width, RABBET), y: underBoth(at.rabbet, at.face, at.stack) },
            rabbetWord(desk.speech),
            withUnit(plan.frame.profile.depth, fine, "down"),
            "middle",
          ),
        ]),
    ...deep(section.width, at.face, at.stack, add(section.width, STACK)),
    ...named(
      desk,
      { x: sum([section.width, STACK, mm(1.8)]), y: part(add(at.face, at.stack), 0.5) },
      FRAME_SHEET.stack,
      withUnit(plan.stack.depth, fine, "up"),
      "start",
    ),
  ];
  const height = sum([ABOVE, larger(section.height, rings.at(-1) ?? ZERO), BELOW]);
  return block(width, height, [
    textAt(ZERO, mm(3.7), FRAME_SHEET.inSection, TYPE.band),
    textAt(
      width,
      mm(3.7),
      `${FRAME_SHEET.faceUp}, ${sectionScale(scale.by, scale.over)}`,
      TYPE.caption,
      "end",
    ),
    ...placed(block(ZERO, ZERO, marks), RINGS, ABOVE),
  ]);
}

/** Rings in the order of their layers, far enough apart, as near to their layers as that leaves them. */
function ringPlaces(targets: readonly Point[], height: Length): readonly Length[] {
  const need = RING_STEP * Math.max(0, targets.length - 1);
  const top = Math.min(0, (height - need) / 2);
  let last = Number.NEGATIVE_INFINITY;
  const down = targets.map(({ y }) => {
    last = Math.max(y, last + RING_STEP, top);
    return last;
  });
  // Pushed past the foot, all of them move up together.
  let next = Math.max(height, need + top) + RING_STEP;
  return down
    .toReversed()
    .map((y) => {
      next = Math.min(y, next - RING_STEP);
      return add(ZERO, part(mm(1), next / mm(1)));
    })
    .toReversed();
}

/** A dimension across with its figure above it, at its right where it would not fit. */
function across(desk: FrameDesk, from: Length, to: Length, level: Length, words: Phrase): readonly Mark[] {
  const wide = widthOf(desk, words, FIGURE);
  const fits = wide + mm(2) < to - from;
  const beside = sum([to, tailOf(from, to), mm(1.2)]);
  return [
    ...dimensionLine("x", from, to, level),
    fits
      ? textAt(part(add(from, to), 0.5), subtract(level, mm(1.6)), words, FIGURE, "middle")
      : textAt(beside, add(level, mm(1.7)), words, FIGURE),
  ];
}

/** A depth beside the frame. */
const deep = (outline: Length, from: Length, to: Length, level: Length): readonly Mark[] => [
  extensionLine("y", from, outline, level),
  extensionLine("y", to, outline, level),
  ...dimensionLine("y", from, to, level),
];

/** Where the rabbet's figure stands: under its dimension, clear of an arrow outside it and of the stack's figure. */
function underBoth(rabbet: Length, face: Length, stack: Length): Length {
  const under = add(rabbet, mm(subtract(rabbet, face) < mm(8) ? 10 : 6));
  return larger(under, add(part(add(face, stack), 0.5), mm(12)));
}

/** A depth's name over its figure, on a clear field: what stands farther off is dimensioned past it. */
function named(
  desk: FrameDesk,
  at: Point,
  name: string,
  figure: Phrase,
  anchor: "start" | "middle",
): readonly Mark[] {
  const wide = add(larger(widthOf(desk, name, TYPE.fine), widthOf(desk, figure, FIGURE)), mm(0.6));
  const left = subtract(at.x, anchor === "start" ? mm(0.3) : part(wide, 0.5));
  return [
    {
      kind: "area",
      points: cornersOf({ left, top: subtract(at.y, mm(5.2)), width: wide, height: mm(11.2) }),
      fill: "paper",
      line: null,
    },
    textAt(at.x, subtract(at.y, mm(2.6)), name, TYPE.fine, anchor),
    textAt(at.x, add(at.y, mm(3.4)), figure, FIGURE, anchor),
  ];
}
