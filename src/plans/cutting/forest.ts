import { type Layout, type Part, type SplitPart, tidied } from "./layout.ts";
import { AXIS, FIRST, FREE, H, KIND, Memory, NEXT, PARENT, ROOT, STOCK, W } from "./memory.ts";
import { FLIPPED, howOf, type Seeker, TURNED } from "./places.ts";
import { BESIDE, STRIP } from "./scoring.ts";
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

  /** An empty forest with room for `pieces` pieces. */
  constructor(job: WholeJob, pieces: number) {
    this.job = job;
    this.memory = new Memory(job, pieces);
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
    memory.touch(root);
  }

  /** Takes a sheet away with all that lies on it. */
  close(root: number): void {
    this.dropChildren(root);
    this.memory.dropRoot(root);
  }

  private dropChildren(node: number): void {
    const { memory } = this;
    for (let child = memory.get(node + FIRST); child >= 0; ) {
      const next = memory.get(child + NEXT);
      this.empty(child);
      memory.dropNode(child);
      child = next;
    }
    memory.put(node + FIRST, -1);
  }

  private empty(node: number): void {
    const kind = this.memory.get(node + KIND);
    if (kind >= 0) this.memory.countPlaced(kind, -1);
    else this.dropChildren(node);
  }

  /** Takes one node out of its sheet, with all that lies in it; its place joins the waste around it. Never a root. */
  remove(node: number): void {
    const { memory } = this;
    memory.touch(memory.get(node + ROOT));
    this.empty(node);
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

  /** Puts a piece at a place that was found and nothing has changed since; gives the sheet. */
  insert(kind: number, { node, way }: Seeker): number {
    const { memory } = this;
    const wanted = this.job.kinds[kind];
    if (wanted === undefined) throw new RangeError(`no kind ${kind}`);
    const how = howOf(way);
    if ((way & FLIPPED) !== 0) {
      memory.put(node + AXIS, 1 - memory.get(node + AXIS));
      memory.setFree(node, memory.get(node + (memory.get(node + AXIS) === 0 ? W : H)));
    }
    const axis = memory.get(node + AXIS);
    const root = memory.get(node + ROOT);
    const turned = (way & TURNED) !== 0;
    const w = turned ? wanted.height : wanted.width;
    const h = turned ? wanted.width : wanted.height;
    const [p, q] = axis === 0 ? [w, h] : [h, w];
    const free = memory.get(node + FREE);
    const cross = memory.get(node + (axis === 0 ? H : W));
    const piece = memory.newNode(w, h, 0, kind, root);
    memory.countPlaced(kind, 1);
    memory.touch(root);
    if (how === BESIDE) {
      memory.link(node, piece);
      memory.setFree(node, free - p);
      return root;
    }
    const along = how === STRIP ? p : free;
    const outer =
      axis === 0 ? memory.newNode(along, cross, 1, -1, root) : memory.newNode(cross, along, 0, -1, root);
    memory.link(node, outer);
    memory.setFree(node, free - along);
    memory.setFree(outer, cross - q);
    if (how === STRIP) {
      memory.link(outer, piece);
      return root;
    }
    const inner = axis === 0 ? memory.newNode(free, q, 0, -1, root) : memory.newNode(q, free, 1, -1, root);
    memory.link(outer, inner);
    memory.link(inner, piece);
    memory.setFree(inner, free - p);
    return root;
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
