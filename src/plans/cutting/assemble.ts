import type { Size } from "../../geometry/index.ts";
import { type Length, ticks } from "../../lengths/index.ts";
import { at } from "../at.ts";
import type { Edges, Measure } from "./bench.ts";
import { orderCuts, type CutOrder } from "./cuts.ts";
import { type CuttingJob, isWorthKeeping } from "./job.ts";
import { extent, type Layout, layoutKey, type Part, resized, tidied, transposed } from "./layout.ts";
import type { Leftover, Placement, PlannedSheet, Source } from "./plan.ts";
import { boxOf } from "./ways.ts";
import type { WholeJob } from "./whole.ts";

/**
 * Turns layouts into sheets of the plan: gives every place the piece that lies there, matches each
 * drop-out's layout to a placement whose window it is cut from, and puts the cuts in order. Sheets
 * of the stock come first in the stock's order, alike ones together; then the drop-outs, the larger
 * hosts first, so that a host always stands before what is cut from its window.
 * Once `weighed` cuts have been put in order the rest is done in less time, with a few settings more.
 * Throws RangeError when the layouts hold more of a kind than is wanted, or more drop-outs than hosts.
 */
export function assemble(
  job: CuttingJob,
  whole: WholeJob,
  layouts: readonly Layout[],
  weighed: number,
): PlannedSheet[] {
  const writer = new Writer(job, whole, weighed);
  const tidy = layouts.map((layout) => ({
    ...layout,
    root: tidied(
      resized(layout.root, at(whole.stocks, layout.stock).width, at(whole.stocks, layout.stock).height),
    ),
  }));
  const keyed = tidy.map((layout) => ({
    layout,
    key: layoutKey(layout),
    stock: at(whole.stocks, layout.stock),
  }));
  const bought = keyed.filter(({ stock }) => stock.hosts === null);
  bought.sort((a, b) => a.layout.stock - b.layout.stock || compare(a.key, b.key));
  for (const { layout, key } of bought) {
    writer.write({ kind: "stock", sheet: layout.stock }, layout.root, key, sizeOfSheet(job, layout.stock));
  }
  const dropOuts = keyed.filter(({ stock }) => stock.hosts !== null);
  dropOuts.sort((a, b) => areaOf(b.stock) - areaOf(a.stock) || compare(a.key, b.key));
  for (const { layout, key, stock } of dropOuts) writer.writeDropOut(layout, key, stock.hosts ?? []);
  return writer.sheets;
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
const areaOf = (stock: Size | { width: number; height: number }): number => stock.width * stock.height;

function sizeOfSheet(job: CuttingJob, sheet: number): Size & { readonly trim: Length } {
  return at(job.sheets, sheet);
}

class Writer {
  readonly sheets: PlannedSheet[] = [];
  private readonly job: CuttingJob;
  private readonly whole: WholeJob;
  private readonly weighed: number;
  private readonly measure: Measure;
  /** For each kind, the next piece of it and its next copy. */
  private readonly next: { piece: number; copy: number }[];
  /** For each piece, the placements whose window is still whole. */
  private readonly windows = new Map<number, { sheet: number; placement: number }[]>();
  private readonly orders = new Map<string, CutOrder>();
  /** Cuts put in order so far, those of layouts that are alike once. */
  private cuts = 0;

  constructor(job: CuttingJob, whole: WholeJob, weighed: number) {
    this.job = job;
    this.weighed = weighed;
    this.whole = whole;
    this.measure = {
      unit: whole.unit,
      kerf: job.kerf,
      longestCut: job.longestCut ?? Number.POSITIVE_INFINITY,
    };
    this.next = whole.kinds.map(() => ({ piece: 0, copy: 0 }));
  }

  write(from: Source, root: Part, key: string, sheet: Size & { readonly trim: Length }): void {
    const { trim } = sheet;
    const edges: Edges = { left: 0, top: 0, right: sheet.width, foot: sheet.height };
    const usable: Edges = { left: trim, top: trim, right: sheet.width - trim, foot: sheet.height - trim };
    const placements: Placement[] = [];
    this.place(root, trim, trim, placements);
    const order = this.orders.get(key) ?? this.ordered(edges, usable, root);
    this.orders.set(key, order);
    placements.forEach(({ piece }, placement) => {
      const hosts = this.windows.get(piece) ?? [];
      hosts.push({ sheet: this.sheets.length, placement });
      this.windows.set(piece, hosts);
    });
    this.sheets.push({
      from,
      size: { width: sheet.width, height: sheet.height },
      placements,
      cuts: order.cuts,
      left: order.leftovers.flatMap((one) => leftoverOf(one, usable, this.job.least)),
      needs: {
        width: ticks(Math.max(...placements.map((one) => one.left + one.width)) + trim),
        height: ticks(Math.max(...placements.map((one) => one.top + one.height)) + trim),
      },
      settings: order.settings,
    });
  }

  private ordered(edges: Edges, usable: Edges, root: Part): CutOrder {
    const order = orderCuts(edges, usable, root, this.measure, this.cuts > this.weighed);
    this.cuts += order.cuts.length;
    return order;
  }

  /** Cuts a layout from the window of the first placement that still has it, turned as that lies. */
  writeDropOut(layout: Layout, key: string, hosts: readonly number[]): void {
    const piece = hosts.find((one) => (this.windows.get(one)?.length ?? 0) > 0);
    const host = piece === undefined ? undefined : this.windows.get(piece)?.shift();
    if (piece === undefined || host === undefined) throw new RangeError("a drop-out without its mat");
    const { width, height, window } = at(this.job.pieces, piece);
    if (window === null) throw new RangeError("a host without a window");
    const lies = at(at(this.sheets, host.sheet).placements, host.placement);
    const turned = lies.width !== width || lies.height !== height;
    const size = turned ? { width: window.height, height: window.width } : window;
    const upright = layout.root.width * this.whole.unit - this.job.kerf === size.width;
    const root = upright ? layout.root : tidied(transposed(layout.root));
    const from: Source = { kind: "drop-out", ...host };
    this.write(from, root, `${key}${upright ? "" : " turned"}`, { ...size, trim: ticks(0) });
  }

  private place(part: Part, left: number, top: number, placements: Placement[]): void {
    const { unit } = this.whole;
    if (part.is === "piece") {
      const width = ticks(part.width * unit - this.job.kerf);
      const height = ticks(part.height * unit - this.job.kerf);
      const { piece, copy } = this.nextOf(part.kind);
      placements.push({ piece, copy, left: ticks(left), top: ticks(top), width, height });
      return;
    }
    let along = 0;
    for (const one of part.parts) {
      const [x, y] = part.axis === "x" ? [left + along * unit, top] : [left, top + along * unit];
      this.place(one, x, y, placements);
      along += extent(one, part.axis);
    }
  }

  /** The pieces of a kind in their own order, all copies of one before the next. */
  private nextOf(kind: number): { readonly piece: number; readonly copy: number } {
    const { pieces, counts } = at(this.whole.kinds, kind);
    const next = at(this.next, kind);
    if (next.copy >= (counts[next.piece] ?? 0)) {
      next.piece++;
      next.copy = 0;
    }
    return { piece: at(pieces, next.piece), copy: next.copy++ };
  }
}

/** What is left of a part inside the usable sheet; nothing where only trim came off. */
function leftoverOf(part: Edges, usable: Edges, least: Size | null): Leftover[] {
  const inside: Edges = {
    left: Math.max(part.left, usable.left),
    top: Math.max(part.top, usable.top),
    right: Math.min(part.right, usable.right),
    foot: Math.min(part.foot, usable.foot),
  };
  if (inside.left >= inside.right || inside.top >= inside.foot) return [];
  const box = boxOf(inside);
  return [{ ...box, keep: isWorthKeeping(box, least) }];
}
