import type { Check } from "../../assembly/index.ts";
import type { Mark } from "../../drawings/index.ts";
import { FRACTION_DOWN, FRACTION_UP } from "../../drawings/index.ts";
import type { Side } from "../../geometry/index.ts";
import { add, type Length, larger, mm, subtract, ZERO } from "../../lengths/index.ts";
import {
  BENCH_SHEET,
  failingSheets,
  failureLegend,
  matName,
  shortWords,
  STOP_REASONS,
} from "../../words/bench-sheet.ts";
import { cautionWords } from "../../words/cautions.ts";
import { bare, flat, NBSP, weighted } from "../../words/index.ts";
import { type Block, block, cornersOf, gap, placed, rule, stack } from "../block.ts";
import { part, points } from "../paper.ts";
import { flow } from "../table.ts";
import { handTag, headArrow } from "../tags.ts";
import { paragraph, textAt, widthOf } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import { type BenchDesk, drawn, fittingScale, nearestTick } from "./desk.ts";
import { drawnPoint } from "./front.ts";

const PANEL_HEIGHT = mm(15);
const FIGURE_COLUMN = mm(34);
const FIGURE: TextStyle = { size: points(34), weight: "bold", leading: points(34) };
const TEXT: TextStyle = { ...TYPE.step, leading: points(17) };

/** One reason at one side: the sheet that fails worst, and every sheet of an edition that fails there. */
interface Reason {
  readonly check: Check;
  readonly sheets: readonly string[];
}

/** Checks of level "stop", those of one kind at one side of one mat together. */
function reasonsOf(desk: BenchDesk): readonly Reason[] {
  const found = new Map<string, Reason>();
  for (const check of desk.job.composition.checks) {
    if (check.level !== "stop") continue;
    const key = `${check.code} ${"side" in check ? check.side : ""} ${"mat" in check ? check.mat : ""}`;
    const known = found.get(key);
    const sheets = [
      ...(known?.sheets ?? []),
      ...("sheet" in check && check.sheet !== null ? [check.sheet] : []),
    ];
    const worse = known === undefined || (shortBy(check) ?? 0) > (shortBy(known.check) ?? 0);
    found.set(key, { check: worse ? check : known.check, sheets });
  }
  return [...found.values()];
}

/**
 * Takes the place of everything that is set, read or ticked: a black panel, the reason in capitals,
 * then for each reason side, figure, hand and ways out. No setting of a stop, no reading of a scale
 * and no tick is printed anywhere on such a sheet. `first` is the room under the head, `next` that of
 * each further page.
 */
export function doNotCut(desk: BenchDesk, width: Length, first: Length, next: Length): readonly Block[] {
  const reasons = reasonsOf(desk);
  const named = [...new Set(reasons.map(({ check }) => reasonOf(check)))];
  const top = stack([
    gap(mm(3)),
    panel(named[0] ?? "", width),
    ...named.slice(1).map((reason) => otherReason(reason, width)),
    gap(mm(2)),
  ]);
  const again = stack([gap(mm(3)), panel(named[0] ?? "", width), gap(mm(2))]);
  const pages = flow(
    [
      { block: top, withNext: true },
      ...reasons.map((reason) => ({
        block: stack([reasonRow(desk, reason, width), rule(width, "rule-thin")]),
        again,
      })),
      {
        block: stack([
          gap(mm(2.4)),
          paragraph(desk, BENCH_SHEET.waysOut, { ...TYPE.words, weight: "bold" }, width),
          gap(mm(3)),
        ]),
        again,
      },
    ],
    first,
    next,
  );
  return pages.map((page, index) => {
    const left = subtract(index === 0 ? first : next, page.height);
    return index < pages.length - 1 || left < mm(60)
      ? page
      : stack([page, rule(width, "rule"), failure(desk, reasons, width, left)]);
  });
}

const reasonOf = (check: Check): string =>
  check.code in STOP_REASONS ? STOP_REASONS[check.code as keyof typeof STOP_REASONS] : "";

function panel(reason: string, width: Length): Block {
  const base = add(part(PANEL_HEIGHT, 0.5), mm(3.1));
  return block(width, PANEL_HEIGHT, [
    {
      kind: "area",
      points: cornersOf({ left: ZERO, top: ZERO, width, height: PANEL_HEIGHT }),
      fill: "ink",
      line: null,
    },
    textAt(
      mm(4.5),
      base,
      BENCH_SHEET.doNotCut,
      { size: points(27), weight: "black", leading: points(27) },
      "start",
      { onInk: true },
    ),
    textAt(
      subtract(width, mm(4.5)),
      subtract(base, mm(0.6)),
      reason,
      { size: points(14), weight: "semibold", leading: points(15) },
      "end",
      { onInk: true },
    ),
  ]);
}

const otherReason = (reason: string, width: Length): Block =>
  block(width, mm(8), [
    {
      kind: "area",
      points: cornersOf({ left: ZERO, top: ZERO, width, height: mm(8) }),
      fill: "ink",
      line: null,
    },
    textAt(
      subtract(width, mm(4.5)),
      mm(5.2),
      reason,
      { size: points(14), weight: "semibold", leading: points(15) },
      "end",
      { onInk: true },
    ),
  ]);

/** The figure that is missing, by kind of check; null where no one figure says it. */
function shortBy(check: Check): Length | null {
  switch (check.code) {
    case "paper-ends":
    case "sheet-past-board":
      return check.by;
    case "hold-short":
      return subtract(check.hold, check.cover);
    case "border-negative":
      return subtract(ZERO, check.border);
    case "reveal-gone":
      return subtract(ZERO, check.cut);
    default:
      return null;
  }
}

const sideOf = (check: Check): Side | null => ("side" in check ? check.side : null);

function reasonRow(desk: BenchDesk, { check, sheets }: Reason, width: Length): Block {
  const { ruler } = desk.speech;
  const by = shortBy(check);
  const textWidth = subtract(width, FIGURE_COLUMN);
  const words = paragraph(desk, cautionWords(check, desk.speech), TEXT, textWidth);
  const side = sideOf(check);
  const where = side === null ? block(ZERO, ZERO) : sideLine(desk, check, side);
  const listed =
    sheets.length === 0 ? [] : [paragraph(desk, failingSheets(sheets), TYPE.line, textWidth), gap(mm(1.2))];
  const text = stack([where, gap(mm(1.2)), ...listed, words]);
  const figureHeight = part(FIGURE.size, FRACTION_UP + FRACTION_DOWN);
  const height = add(larger(text.height, by === null ? ZERO : figureHeight), mm(6));
  const figure: readonly Mark[] =
    by === null
      ? []
      : [
          textAt(
            mm(2),
            add(mm(3), part(FIGURE.size, FRACTION_UP)),
            flat([
              weighted(
                "bold",
                bare(by, ruler, "up").map((run) => ({ ...run, weight: "bold" as const })),
              ),
              { kind: "text", text: `${NBSP}${ruler.unit}`, weight: "regular", size: points(14) },
            ]),
            FIGURE,
          ),
        ];
  return block(width, height, [...figure, ...placed(text, FIGURE_COLUMN, mm(3))]);
}

/** Side as the front names it, which mat of several, and the hand at which it lies. */
function sideLine(desk: BenchDesk, check: Check, side: Side): Block {
  const { mats } = desk.job.composition;
  const mat = "mat" in check && mats.length > 1 ? matName(check.mat, mats.length, desk.speech) : null;
  const style: TextStyle = { ...TYPE.words, size: points(12.5) };
  const words = shortWords(side, mat);
  const line = textAt(ZERO, mm(4), words, style);
  if (side === "head" || side === "foot") return block(ZERO, mm(5.4), [line]);
  const tag = handTag(desk, side === "left" ? "right" : "left");
  const after = add(widthOf(desk, words, style), mm(2.4));
  return block(add(after, tag.width), mm(5.4), [line, ...placed(tag, after, mm(0.2))]);
}

/** Package, window and paper from the front, with a bar along each side that fails; no figure of a border. */
function failure(desk: BenchDesk, reasons: readonly Reason[], width: Length, height: Length): Block {
  const { composition } = desk.job;
  const { outer, print } = composition;
  const lowest = composition.mats[0];
  if (lowest === undefined || lowest.back.width <= 0 || lowest.back.height <= 0 || print === null) {
    return block(width, ZERO);
  }
  const above = mm(17);
  const sheet = print.sheetOutline ?? print.sheetCorners;
  const { borders, back } = lowest;
  const xs = [0, outer.width, borders.left, borders.left + back.width, ...sheet.map(({ x }) => x)];
  const ys = [0, outer.height, borders.head, borders.head + back.height, ...sheet.map(({ y }) => y)];
  const reach = {
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    foot: Math.max(...ys),
  };
  const real = { width: nearestTick(reach.right - reach.left), height: nearestTick(reach.foot - reach.top) };
  const over = fittingScale(
    real.width,
    real.height,
    subtract(width, mm(70)),
    subtract(height, add(above, mm(4))),
  );
  const shift = { x: part(subtract(width, drawn(real.width, over)), 0.5), y: above };
  const place = (point: { x: number; y: number }): { x: Length; y: Length } => {
    const { x, y } = drawnPoint({ x: point.x - reach.left, y: point.y - reach.top }, over);
    return { x: add(x, shift.x), y: add(y, shift.y) };
  };
  const corner = place({ x: borders.left, y: borders.head });
  const window = {
    left: corner.x,
    top: corner.y,
    width: drawn(back.width, over),
    height: drawn(back.height, over),
  };
  const board = place({ x: 0, y: 0 });
  const arrow = headArrow(desk, mm(5));
  const failing = [...new Set(reasons.flatMap(({ check }) => sideOf(check) ?? []))];
  const [a, b, c, d] = cornersOf(window);
  const edges: Readonly<Record<Side, readonly [typeof a, typeof a]>> = {
    head: [a, b],
    right: [b, c],
    foot: [c, d],
    left: [d, a],
  };
  return block(width, height, [
    textAt(ZERO, mm(6), BENCH_SHEET.whereItFails, TYPE.band),
    textAt(width, mm(6), BENCH_SHEET.seenFromFront, TYPE.caption, "end"),
    textAt(ZERO, mm(10.4), failureLegend, TYPE.caption),
    ...placed(arrow, add(board.x, mm(2)), subtract(above, add(arrow.height, mm(0.6)))),
    {
      kind: "area",
      points: cornersOf({
        left: board.x,
        top: board.y,
        width: drawn(outer.width, over),
        height: drawn(outer.height, over),
      }),
      fill: "none",
      line: "outline",
    },
    { kind: "area", points: cornersOf(window), fill: "none", line: "edge" },
    { kind: "area", points: sheet.map(place), fill: "none", line: "phantom" },
    ...failing.map(
      (side): Mark => ({ kind: "line", from: edges[side][0], to: edges[side][1], line: "heavy" }),
    ),
  ]);
}
