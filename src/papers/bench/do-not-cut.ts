import type { Check } from "../../assembly/index.ts";
import type { Mark } from "../../drawings/index.ts";
import { FRACTION_DOWN, FRACTION_UP } from "../../drawings/index.ts";
import type { Side } from "../../geometry/index.ts";
import { add, type Length, larger, mm, subtract, ZERO } from "../../lengths/index.ts";
import { AWAY, BENCH_SHEET, failureLegend, sideWords, STOP_REASONS } from "../../words/bench-sheet.ts";
import { cautionWords } from "../../words/cautions.ts";
import { bare, flat, NBSP, weighted } from "../../words/index.ts";
import { type Block, block, cornersOf, gap, placed, rule, stack } from "../block.ts";
import { part, points } from "../paper.ts";
import { handTag, headArrow } from "../tags.ts";
import { paragraph, textAt, widthOf } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import { type BenchDesk, drawn, fittingScale } from "./desk.ts";
import { drawnPoint } from "./front.ts";

const PANEL_HEIGHT = mm(15);
const FIGURE_COLUMN = mm(34);
const FIGURE: TextStyle = { size: points(34), weight: "bold", leading: points(34) };
const TEXT: TextStyle = { ...TYPE.step, leading: points(17) };

/**
 * Takes the place of everything that is set, read or ticked: a black panel, the reason in capitals,
 * then for each reason side, figure, hand and ways out. No setting of a stop, no reading of a scale
 * and no tick is printed anywhere on such a sheet.
 */
export function doNotCut(desk: BenchDesk, width: Length, height: Length): Block {
  const stops = desk.job.composition.checks.filter(({ level }) => level === "stop");
  const reasons = [...new Set(stops.map(reasonOf))];
  const rows = stops.flatMap((check, index) => [
    ...(index === 0 ? [] : [rule(width, "rule-thin")]),
    reasonRow(desk, check, width),
  ]);
  const text = stack([
    gap(mm(3)),
    panel(reasons[0] ?? "", width),
    ...reasons.slice(1).map((reason) => otherReason(reason, width)),
    gap(mm(2)),
    ...rows,
    rule(width, "rule-thin"),
    gap(mm(2.4)),
    paragraph(desk, BENCH_SHEET.waysOut, { ...TYPE.words, weight: "bold" }, width),
    gap(mm(3)),
    rule(width, "rule"),
  ]);
  const left = subtract(height, text.height);
  if (left < mm(50)) return text;
  return stack([text, failure(desk, stops, width, left)]);
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

function reasonRow(desk: BenchDesk, check: Check, width: Length): Block {
  const { ruler } = desk.speech;
  const by = shortBy(check);
  const textWidth = subtract(width, FIGURE_COLUMN);
  const words = paragraph(desk, cautionWords(check, desk.speech), TEXT, textWidth);
  const side = sideOf(check);
  const where = side === null ? block(ZERO, ZERO) : sideLine(desk, check, side);
  const text = stack([where, gap(mm(1.2)), words]);
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

/** Side as the front names it, which sheet of an edition, and the hand at which it lies. */
function sideLine(desk: BenchDesk, check: Check, side: Side): Block {
  const sheet = "sheet" in check && check.sheet !== null ? `sheet ${check.sheet}: ` : "";
  const style: TextStyle = { ...TYPE.words, size: points(12.5) };
  if (side === "head" || side === "foot") {
    return block(ZERO, mm(5.4), [textAt(ZERO, mm(4), `${sheet}short at the ${side}, ${AWAY[side]}`, style)]);
  }
  const words = `${sheet}short at the ${sideWords(side)}, at your`;
  const tag = handTag(desk, side === "left" ? "right" : "left");
  const after = add(widthOf(desk, words, style), mm(2.4));
  return block(add(after, tag.width), mm(5.4), [
    textAt(ZERO, mm(4), words, style),
    ...placed(tag, after, mm(0.2)),
  ]);
}

/** Package, window and paper from the front, with a bar along each side that fails; no figure of a border. */
function failure(desk: BenchDesk, stops: readonly Check[], width: Length, height: Length): Block {
  const { composition } = desk.job;
  const { outer, print } = composition;
  const lowest = composition.mats[0];
  if (lowest === undefined || lowest.back.width <= 0 || lowest.back.height <= 0 || print === null) {
    return block(width, ZERO);
  }
  const above = mm(17);
  const sheet = print.sheetOutline ?? print.sheetCorners;
  const reach = {
    left: Math.min(0, ...sheet.map(({ x }) => x)),
    right: Math.max(outer.width, ...sheet.map(({ x }) => x)),
    top: Math.min(0, ...sheet.map(({ y }) => y)),
    foot: Math.max(outer.height, ...sheet.map(({ y }) => y)),
  };
  const real = { width: (reach.right - reach.left) as Length, height: (reach.foot - reach.top) as Length };
  const over = fittingScale(
    real.width,
    real.height,
    subtract(width, mm(70)),
    subtract(height, add(above, mm(4))),
  );
  const shift = { x: part(subtract(width, drawn(outer.width, over)), 0.5), y: above };
  const place = (point: { x: number; y: number }): { x: Length; y: Length } => {
    const { x, y } = drawnPoint({ x: point.x, y: point.y - reach.top }, over);
    return { x: add(x, shift.x), y: add(y, shift.y) };
  };
  const { borders, back } = lowest;
  const corner = place({ x: borders.left, y: borders.head });
  const window = {
    left: corner.x,
    top: corner.y,
    width: drawn(back.width, over),
    height: drawn(back.height, over),
  };
  const board = place({ x: 0, y: 0 });
  const arrow = headArrow(desk, mm(5));
  const failing = [...new Set(stops.flatMap((check) => sideOf(check) ?? []))];
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
    ...placed(arrow, add(board.x, mm(2)), subtract(board.y, add(arrow.height, mm(0.3)))),
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
