import type { Mark } from "../../drawings/index.ts";
import { add, type Length, mm, subtract, times } from "../../lengths/index.ts";
import type { PlannedSheet } from "../../plans/cutting/index.ts";
import { bare, weighted } from "../../words/index.ts";
import { drawn } from "../scale.ts";
import { dimensionLine, extensionLine } from "../dimension.ts";
import { part, points } from "../paper.ts";
import { textAt, widthOf } from "../text.ts";
import type { TextStyle } from "../type.ts";
import type { CuttingDesk } from "./desk.ts";

/** How far above and left of the sheet the dimensions stand, and the room that they take there. */
export const CHAIN_ABOVE = mm(10.5);
export const CHAIN_LEFT = mm(15);
const LEVEL = mm(5);

const FIGURE: TextStyle = {
  size: points(17),
  weight: "semibold",
  leading: points(19),
  figures: { whole: points(17), stacked: points(19) },
};

/** The distances between the cuts that start at the head and at the left edge, with the sheet's corner at the origin. */
export function dimensionChains(desk: CuttingDesk, sheet: PlannedSheet, over: number): readonly Mark[] {
  return [...chain(desk, sheet, over, "x"), ...chain(desk, sheet, over, "y")];
}

interface Stretch {
  readonly from: Length;
  readonly to: Length;
}

function chain(desk: CuttingDesk, sheet: PlannedSheet, over: number, axis: "x" | "y"): readonly Mark[] {
  const level = subtract(mm(0), axis === "x" ? LEVEL : mm(6));
  return stretches(desk, sheet, over, axis).flatMap(({ from, to }) => {
    const [start, end] = [drawn(from, over), drawn(to, over)];
    const middle = part(add(start, end), 0.5);
    const figure = weighted("semibold", bare(subtract(to, from), desk.speech.ruler));
    const baseline = part(FIGURE.size, 0.33);
    const at = axis === "x" ? { x: middle, y: add(level, baseline) } : { x: level, y: add(middle, baseline) };
    return [
      ...dimensionLine(axis, start, end, level),
      extensionLine(axis, start, mm(0), level),
      extensionLine(axis, end, mm(0), level),
      ...clearField(desk, figure, at),
      textAt(at.x, at.y, figure, FIGURE, "middle"),
    ];
  });
}

/** A clear field behind a figure that breaks its line. */
function clearField(
  desk: CuttingDesk,
  figure: ReturnType<typeof weighted>,
  at: { x: Length; y: Length },
): readonly Mark[] {
  const half = add(part(widthOf(desk, figure, FIGURE), 0.5), mm(1));
  const [up, down] = [part(FIGURE.size, 0.95), part(FIGURE.size, 0.25)];
  return [
    {
      kind: "area",
      points: [
        { x: subtract(at.x, half), y: subtract(at.y, up) },
        { x: add(at.x, half), y: subtract(at.y, up) },
        { x: add(at.x, half), y: add(at.y, down) },
        { x: subtract(at.x, half), y: add(at.y, down) },
      ],
      fill: "paper",
      line: null,
    },
  ];
}

/** From cut to cut along one edge; where a figure has no room its stretch is taken together with the next. */
function stretches(
  desk: CuttingDesk,
  sheet: PlannedSheet,
  over: number,
  axis: "x" | "y",
): readonly Stretch[] {
  const near = Math.min(...sheet.placements.map((lies) => (axis === "x" ? lies.top : lies.left)));
  const first = sheet.placements.reduce<Length>(
    (least, lies) =>
      axis === "x" ? (lies.left < least ? lies.left : least) : lies.top < least ? lies.top : least,
    axis === "x" ? sheet.size.width : sheet.size.height,
  );
  const places = sheet.cuts
    .filter((cut) => cut.across === axis && (axis === "x" ? cut.from.y : cut.from.x) <= near)
    .map((cut) => ({ at: axis === "x" ? cut.from.x : cut.from.y, takes: cut.takes }))
    .filter(({ at }) => at > first)
    .toSorted((a, b) => a.at - b.at);
  const found: Stretch[] = [];
  let from = first;
  for (const { at, takes } of places) {
    if (at <= from || !hasRoom(desk, from, at, over, axis)) continue;
    found.push({ from, to: at });
    from = add(at, takes);
  }
  return found;
}

function hasRoom(desk: CuttingDesk, from: Length, to: Length, over: number, axis: "x" | "y"): boolean {
  const room = drawn(subtract(to, from), over);
  if (axis === "y") return room >= mm(14);
  return room >= add(widthOf(desk, bare(subtract(to, from), desk.speech.ruler), FIGURE), times(mm(4), 2));
}
