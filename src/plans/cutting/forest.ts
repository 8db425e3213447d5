import { type Layout, type Part, type SplitPart, tidied } from "./layout.ts";
import { AXIS, FIRST, FREE, H, KIND, Memory, NEXT, PARENT, ROOT, STOCK, W } from "./memory.ts";
import { BESIDE, type Place, type Preference, Seeker, type Skips, STRIP } from "./places.ts";
import type { WholeJob } from "./whole.ts";

/**
 * Sheets as trees. A split node is a rectangle whose children lie side by side along its axis, the
 * axis alternating from level to level; the extent that the children leave is the node's one waste
 * rectangle. Any insertion keeps a tree cuttable from edge to edge, and taking a child away joins its
 * extent to the waste.
 */
export class Forest {
  readonly memory: Memory;
  private readonly job: WholeJob;
  private readonly seeker: Seeker;

  /** An empty forest with room for `pieces` pieces. */
  constructor(job: WholeJob, pieces: number, skips: Skips | null = null) {
    this.job = job;
    this.memory = new Memory(job, pieces);
    this.seeker = new Seeker(job, this.memory, skips);
  }

  /** Opens an empty sheet of a stock. Copies are the caller's to count. */
  open(stock: number): number {
    const size = this.job.stocks[stock];
    if (size === undefined) throw new RangeError(`no stock ${stock}`);
    return this.memory.newRoot(size.width, size.height, stock);
  }

  /** Opens a sheet with a layout on it. */
  plant(layout: Layout): void {
    const root = this.open(layout.stock);
    const part = tidied(layout.root);
    const { memory } = this;
    const { width, height } = part;
    if (part.is === "split") this.fill(root, part);
    else if (width === memory.get(root + W) && height === memory.get(root + H))
      this.fill(root, { is: "split", axis: "x", width, height, parts: [part], rest: 0 });
    else throw new RangeError("a layout that does not fill its sheet");
  }

  private fill(node: number, part: SplitPart): void {
    const { memory } = this;
    const root = memory.get(node + ROOT);
    memory.put(node + AXIS, part.axis === "x" ? 0 : 1);
    for (const one of part.parts) {
      const kind = one.is === "piece" ? one.kind : -1;
      const child = memory.newNode(one.width, one.height, 0, kind, root);
      memory.link(node, child);
      if (one.is === "split") this.fill(child, one);
      else memory.countPlaced(kind, 1);
    }
    memory.setFree(node, part.rest);
  }

  /** Takes a sheet away with all that lies on it; the kinds that came free are added to `freed`. */
  close(root: number, freed: number[]): void {
    this.dropChildren(root, freed);
    this.memory.dropRoot(root);
  }

  private dropChildren(node: number, freed: number[]): void {
    const { memory } = this;
    for (let child = memory.get(node + FIRST); child >= 0; ) {
      const next = memory.get(child + NEXT);
      this.empty(child, freed);
      memory.dropNode(child);
      child = next;
    }
    memory.put(node + FIRST, -1);
  }

  private empty(node: number, freed: number[]): void {
    const kind = this.memory.get(node + KIND);
    if (kind >= 0) {
      freed.push(kind);
      this.memory.countPlaced(kind, -1);
    } else this.dropChildren(node, freed);
  }

  /** Takes one node out of its sheet, with all that lies in it; its place joins the waste around it. Never a root. */
  remove(node: number, freed: number[]): void {
    const { memory } = this;
    this.empty(node, freed);
    let gone = node;
    for (;;) {
      const parent = memory.get(gone + PARENT);
      memory.unlink(gone);
      const along = memory.get(gone + (memory.get(parent + AXIS) === 0 ? W : H));
      memory.dropNode(gone);
      memory.setFree(parent, memory.get(parent + FREE) + along);
      if (memory.get(parent + FIRST) >= 0 || memory.get(parent + PARENT) < 0) return;
      gone = parent;
    }
  }

  /** The best place for a kind in the waste of all sheets, or of one; see `Seeker`. */
  seek(kind: number, preference: Preference, place: Place, only = -1): boolean {
    return this.seeker.seek(kind, preference, place, only);
  }

  /** Puts a piece at a place that `seek` found and nothing has changed since. */
  insert(kind: number, place: Place): void {
    const { memory } = this;
    const wanted = this.job.kinds[kind];
    if (wanted === undefined) throw new RangeError(`no kind ${kind}`);
    const { node, how } = place;
    if (place.flipped) {
      memory.put(node + AXIS, 1 - memory.get(node + AXIS));
      memory.setFree(node, memory.get(node + (memory.get(node + AXIS) === 0 ? W : H)));
    }
    const axis = memory.get(node + AXIS);
    const root = memory.get(node + ROOT);
    const w = place.turned ? wanted.height : wanted.width;
    const h = place.turned ? wanted.width : wanted.height;
    const [p, q] = axis === 0 ? [w, h] : [h, w];
    const free = memory.get(node + FREE);
    const cross = memory.get(node + (axis === 0 ? H : W));
    const piece = memory.newNode(w, h, 0, kind, root);
    memory.countPlaced(kind, 1);
    if (how === BESIDE) {
      memory.link(node, piece);
      memory.setFree(node, free - p);
      return;
    }
    const along = how === STRIP ? p : free;
    const outer =
      axis === 0 ? memory.newNode(along, cross, 1, -1, root) : memory.newNode(cross, along, 0, -1, root);
    memory.link(node, outer);
    memory.setFree(node, free - along);
    memory.setFree(outer, cross - q);
    if (how === STRIP) {
      memory.link(outer, piece);
      return;
    }
    const inner = axis === 0 ? memory.newNode(free, q, 0, -1, root) : memory.newNode(q, free, 1, -1, root);
    memory.link(outer, inner);
    memory.link(inner, piece);
    memory.setFree(inner, free - p);
  }

  /** Every sheet that holds a piece, as a layout. */
  layouts(): Layout[] {
    const { memory } = this;
    const layouts: Layout[] = [];
    for (let index = 0; index < memory.rootCount; index++) {
      const root = memory.root(index);
      if (memory.get(root + FIRST) < 0) continue;
      layouts.push({ stock: memory.get(root + STOCK), root: this.partOf(root) });
    }
    return layouts;
  }

  private partOf(node: number): Part {
    const { memory } = this;
    const [width, height] = [memory.get(node + W), memory.get(node + H)];
    const kind = memory.get(node + KIND);
    if (kind >= 0) return { is: "piece", kind, width, height };
    const parts: Part[] = [];
    for (let child = memory.get(node + FIRST); child >= 0; child = memory.get(child + NEXT)) {
      parts.push(this.partOf(child));
    }
    const axis = memory.get(node + AXIS) === 0 ? "x" : "y";
    return { is: "split", axis, width, height, parts, rest: memory.get(node + FREE) };
  }
}
