import type { HeldHinges } from "../../assembly/index.ts";
import type { Mark } from "../../drawings/index.ts";
import { atScale } from "../../words/cut-plan.ts";
import { add, type Length, mm, subtract, ZERO } from "../../lengths/index.ts";
import { NBSP, withUnit } from "../../words/index.ts";
import { hingeNote, MOUNTING_SHEET } from "../../words/mounting-sheet.ts";
import { type Block, block, cornersOf } from "../block.ts";
import { dimensionLine, extensionLine } from "../dimension.ts";
import { part, points } from "../paper.ts";
import { drawn, fittingScale } from "../scale.ts";
import { textAt } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { MountingDesk } from "./desk.ts";

const FIGURE: TextStyle = { ...TYPE.line, figures: { whole: points(14), stacked: points(16) } };

/** One level of a hinge, from the sheet's head: below nought lies above the head. */
interface Span {
  readonly from: Length;
  readonly to: Length;
}

interface Parts {
  readonly tab: Span;
  /** The part of the tab that is pasted to the sheet. */
  readonly pasted: Span;
  readonly cross: Span | null;
  readonly slit: Length | null;
  /** The stretches that are figured at the side, from the head down. */
  readonly figured: readonly Span[];
}

const span = (from: Length, to: Length): Span => ({ from, to });
const minus = (length: Length): Length => subtract(ZERO, length);

function partsOf({ kind, tab, pasted, bare, cross, slit }: HeldHinges): Parts {
  switch (kind) {
    case "T": {
      const head = minus(add(bare, cross.height));
      return {
        tab: span(head, pasted),
        pasted: span(ZERO, pasted),
        cross: span(head, minus(bare)),
        slit: null,
        figured: [span(head, minus(bare)), span(minus(bare), ZERO), span(ZERO, pasted)],
      };
    }
    case "V": {
      const leg = part(tab.height, 0.5);
      const folded = span(bare, add(bare, leg));
      return { tab: folded, pasted: folded, cross: null, slit: null, figured: [span(ZERO, bare), folded] };
    }
    case "pass-through": {
      const under = span(slit.down, add(slit.down, pasted));
      return {
        tab: under,
        pasted: under,
        cross: null,
        slit: slit.down,
        figured: [span(ZERO, slit.down), under],
      };
    }
  }
}

/** One hinge from the front at true size where it fits, what lies behind the sheet dashed; every part figured. */
export function hingePicture(desk: MountingDesk, width: Length): Block {
  const { hinges } = desk.job.plan;
  const { ruler } = desk.speech;
  const parts = partsOf(hinges);
  const widest =
    hinges.kind === "T" ? hinges.cross.width : hinges.kind === "V" ? hinges.tab.width : hinges.slit.length;
  const widestAt = parts.cross?.from ?? parts.slit ?? parts.tab.from;
  const up = parts.figured[0]?.from ?? ZERO;
  const down = parts.figured.at(-1)?.to ?? ZERO;
  const rightRoom = mm(25);
  const over = fittingScale(widest, subtract(down, up), subtract(width, rightRoom), mm(46));
  const y0 = add(mm(11.4), minus(drawn(up, over)));
  const y = (level: Length): Length =>
    add(y0, level < 0 ? minus(drawn(minus(level), over)) : drawn(level, over));
  const middle = part(subtract(width, rightRoom), 0.5);
  const right = subtract(width, rightRoom);
  const half = (length: Length): Length => part(drawn(length, over), 0.5);
  const box = (of: Span, wide: Length, fill: "none" | "hatch-section", line: "edge" | "hidden"): Mark => ({
    kind: "area",
    points: cornersOf({
      left: subtract(middle, half(wide)),
      top: y(of.from),
      width: drawn(wide, over),
      height: subtract(y(of.to), y(of.from)),
    }),
    fill,
    line,
  });
  const low = add(y(down), mm(4));
  const level = subtract(y(up), mm(4.4));
  const dimension = add(right, mm(2));
  return block(width, add(low, mm(13.6)), [
    // The sheet hangs down from its head.
    { kind: "line", from: { x: ZERO, y: y0 }, to: { x: right, y: y0 }, line: "outline" },
    box(parts.tab, hinges.tab.width, "none", "hidden"),
    ...(parts.cross === null ? [] : [box(parts.cross, hinges.cross.width, "hatch-section", "edge")]),
    ...(parts.slit === null
      ? []
      : [
          {
            kind: "line" as const,
            from: { x: subtract(middle, half(hinges.slit.length)), y: y(parts.slit) },
            to: { x: add(middle, half(hinges.slit.length)), y: y(parts.slit) },
            line: "heavy" as const,
          },
        ]),
    ...dimensionLine("x", subtract(middle, half(widest)), add(middle, half(widest)), level),
    extensionLine("x", subtract(middle, half(widest)), y(widestAt), level),
    extensionLine("x", add(middle, half(widest)), y(widestAt), level),
    textAt(middle, subtract(level, mm(2)), withUnit(widest, ruler), FIGURE, "middle"),
    ...levels(parts.figured).map((one) => extensionLine("y", y(one), right, dimension)),
    ...parts.figured.flatMap((of) => figured(desk, of, y, dimension)),
    textAt(ZERO, add(y0, mm(4)), MOUNTING_SHEET.sheetWord, TYPE.fine),
    textAt(
      ZERO,
      add(low, mm(4.6)),
      [
        MOUNTING_SHEET.tabWord,
        NBSP,
        withUnit(hinges.tab.width, ruler),
        `; ${over === 1 ? MOUNTING_SHEET.trueSize : atScale(over)}`,
      ],
      FIGURE,
    ),
    textAt(ZERO, add(low, mm(11.6)), hingeNote(hinges, desk.speech), FIGURE),
  ]);
}

const levels = (spans: readonly Span[]): readonly Length[] => [
  ...new Set(spans.flatMap(({ from, to }) => [from, to])),
];

/** A stretch with its figure beside it; the short one without paste is told in words below. */
function figured(
  desk: MountingDesk,
  { from, to }: Span,
  y: (level: Length) => Length,
  x: Length,
): readonly Mark[] {
  const [top, foot] = [y(from), y(to)];
  const long = subtract(foot, top);
  if (long < mm(8)) return [];
  return [
    ...dimensionLine("y", top, foot, x),
    textAt(
      add(x, mm(2)),
      add(part(add(top, foot), 0.5), mm(1.8)),
      withUnit(subtract(to, from), desk.speech.ruler),
      FIGURE,
    ),
  ];
}
