import type { Mark } from "../../drawings/index.ts";
import type { Box, Size } from "../../geometry/index.ts";
import { add, half, type Length, mm, subtract } from "../../lengths/index.ts";
import type { Placement } from "../../plans/cutting/index.ts";
import { CUT_PLAN, wasteStrip } from "../../words/cut-plan.ts";
import { bold, sizeRuns } from "../../words/index.ts";
import { drawn } from "../scale.ts";
import { type Block, block, cornersOf } from "../block.ts";
import { points } from "../paper.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { CuttingDesk, DrawnSheet, OutsOf } from "./desk.ts";
import { fenceSettings } from "./fence.ts";
import { type BlankWords, fieldOf, inField, inMiddle, inset, labelIn } from "./label.ts";
import { cutRings } from "./rings.ts";

/** A layout drawn, and the blanks whose size did not fit into it. */
export interface LayoutDrawing {
  readonly block: Block;
  readonly unwritten: readonly BlankWords[];
}

/**
 * A sheet in true proportions: blanks ringed white with their size and whose they are, cuts on their
 * own lines ringed black in their order, windows dashed with what is cut from them drawn inside, what
 * is kept hatched once and waste crossed.
 */
export function layoutDrawing(
  desk: CuttingDesk,
  { sheet, numbers, index, turned }: DrawnSheet,
  over: number,
  outsOf: OutsOf,
  from: number | null,
): LayoutDrawing {
  const scaled = scaledTo(over);
  const size = { width: drawn(sheet.size.width, over), height: drawn(sheet.size.height, over) };
  const under: Mark[] = [];
  const labels: Mark[] = [];
  const taken: Box[] = [];
  const unwritten: BlankWords[] = [];
  const write = (marks: readonly Mark[], room: Box): void => {
    labels.push(...marks);
    taken.push(room);
  };
  for (const one of sheet.left) {
    const box = scaled(one);
    under.push({
      kind: "area",
      points: cornersOf(box),
      fill: one.keep ? "hatch-out" : "hatch-waste",
      line: null,
    });
    const field = leftField(desk, one, one.keep, box);
    if (field !== null) write(inMiddle(field, box), middleOf(field, box));
  }
  const label = (words: BlankWords, room: Box, centre: Box, clear = false): boolean => {
    const { block: bare, saysSize } = labelIn(desk, words, room);
    const piece = clear ? inField(bare, mm(0.4)) : bare;
    write(inMiddle(piece, centre), middleOf(piece, centre));
    return saysSize;
  };
  sheet.placements.forEach((lies, placement) => {
    const box = scaled(lies);
    under.push({ kind: "area", points: cornersOf(box), fill: "paper", line: "thin" });
    const window = windowOf(desk, lies, turned, over, box);
    const out = window === null ? null : outsOf(placement);
    if (window !== null)
      under.push({ kind: "area", points: cornersOf(window), fill: "none", line: "hidden" });
    const words = wordsOf(desk, lies, numbers[placement] ?? 0, from, out === null && keeps(desk, lies));
    if (window !== null && out !== null) {
      // A blank whose window is in use has its label in the border above it.
      const head = { ...box, height: subtract(window.top, box.top) };
      if (!label({ ...words, name: "" }, head, head)) unwritten.push(words);
      const inner = outInside(desk, out, window, over, words.number);
      for (const { one, box: inside } of inner.labels) {
        if (!label(one, inside, inside)) unwritten.push(one);
      }
      under.push(...inner.marks);
      return;
    }
    const inWindow = window !== null && labelIn(desk, words, window).saysSize;
    // A window too small to be written in is broken by the words across it.
    if (!label(words, inWindow ? window : box, box, window !== null && !inWindow)) unwritten.push(words);
  });
  const cuts: Mark[] = sheet.cuts.map(({ from: start, to }) => ({
    kind: "line",
    from: { x: drawn(start.x, over), y: drawn(start.y, over) },
    to: { x: drawn(to.x, over), y: drawn(to.y, over) },
    line: "edge",
  }));
  const outline: Mark = {
    kind: "area",
    points: cornersOf({ left: mm(0), top: mm(0), ...size }),
    fill: "none",
    line: "outline",
  };
  return {
    block: block(size.width, size.height, [
      { kind: "group", name: `sheet ${index + 1}`, marks: [...under, ...cuts, outline, ...labels] },
      ...cutRings(
        desk,
        sheet.cuts,
        fenceSettings(sheet).flatMap(({ into }) => into),
        over,
        size,
        taken,
      ),
    ]),
    unwritten,
  };
}

/** What is cut from a window, drawn in it with its blanks' numbers; its own cuts stand on a page of their own. */
function outInside(
  desk: CuttingDesk,
  out: DrawnSheet,
  window: Box,
  over: number,
  host: number,
): { readonly marks: readonly Mark[]; readonly labels: readonly { one: BlankWords; box: Box }[] } {
  const scaled = scaledTo(over);
  const marks: Mark[] = [];
  const labels = out.sheet.placements.map((lies, placement) => {
    const inside = scaled(lies);
    const box = { ...inside, left: add(window.left, inside.left), top: add(window.top, inside.top) };
    marks.push({ kind: "area", points: cornersOf(box), fill: "none", line: "thin" });
    return { one: wordsOf(desk, lies, out.numbers[placement] ?? 0, host, false), box };
  });
  return { marks, labels };
}

function wordsOf(
  desk: CuttingDesk,
  lies: Placement,
  number: number,
  from: number | null,
  toRack: boolean,
): BlankWords {
  return { number, size: lies, name: desk.job.job.pieces[lies.piece]?.name ?? "", toRack, from };
}

/** Whether the piece's window is worth keeping. */
function keeps(desk: CuttingDesk, lies: Placement): boolean {
  const { least, pieces } = desk.job.job;
  const window = pieces[lies.piece]?.window;
  if (least === null || window === null || window === undefined) return false;
  const [short, long] = [Math.min(window.width, window.height), Math.max(window.width, window.height)];
  return short >= Math.min(least.width, least.height) && long >= Math.max(least.width, least.height);
}

/** The window of a blank, in its middle, lying as the blank does. */
function windowOf(desk: CuttingDesk, lies: Placement, turned: boolean, over: number, box: Box): Box | null {
  const piece = desk.job.job.pieces[lies.piece];
  if (piece === undefined || piece.window === null) return null;
  const [width, height] = turned ? [lies.height, lies.width] : [lies.width, lies.height];
  const straight = width === piece.width && height === piece.height;
  const [across, down] =
    straight === turned
      ? [piece.window.height, piece.window.width]
      : [piece.window.width, piece.window.height];
  return middleOf({ width: drawn(across, over), height: drawn(down, over) }, box);
}

const SIZE: TextStyle = {
  size: points(14),
  weight: "bold",
  leading: points(16),
  figures: { whole: points(14), stacked: points(16) },
};

/** What a leftover is: KEEP with its size and use, or waste with its width; nothing where there is no room. */
function leftField(desk: CuttingDesk, size: Size, keep: boolean, box: Box): Block | null {
  const { ruler } = desk.speech;
  const figure = bold(sizeRuns(size, ruler, "down", false));
  const narrow = size.width < size.height ? size.width : size.height;
  const fields = keep
    ? [
        fieldOf(desk, [
          [figure, SIZE],
          [CUT_PLAN.keep, TYPE.caption],
        ]),
        fieldOf(desk, [[figure, SIZE]]),
        fieldOf(desk, [[CUT_PLAN.keepShort, TYPE.caption]]),
      ]
    : [
        fieldOf(desk, [[wasteStrip(narrow, ruler), TYPE.caption]]),
        fieldOf(desk, [[CUT_PLAN.waste, TYPE.caption]]),
      ];
  const room = inset(box, mm(0.6));
  return fields.find(({ width, height }) => width <= room.width && height <= room.height) ?? null;
}

/** A box on the sheet as it is drawn: by its edges, so that neighbours meet. */
const scaledTo =
  (over: number) =>
  ({ left, top, width, height }: Box): Box => {
    const [x, y] = [drawn(left, over), drawn(top, over)];
    return {
      left: x,
      top: y,
      width: subtract(drawn(add(left, width), over), x),
      height: subtract(drawn(add(top, height), over), y),
    };
  };

/** Where a thing of a size lies when its middle is in the middle of a box. */
const middleOf = ({ width, height }: Size, box: Box): Box => ({
  left: add(box.left, halved(subtract(box.width, width))),
  top: add(box.top, halved(subtract(box.height, height))),
  width,
  height,
});

const halved = (length: Length): Length => half(length, "down");
