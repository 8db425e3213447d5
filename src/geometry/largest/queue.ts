/** Hands out what was put in, highest bound first; equal bounds in no order that a caller may count on, but always the same one. */
export class Queue<T extends { readonly bound: number }> {
  readonly #heap: T[] = [];

  get size(): number {
    return this.#heap.length;
  }

  put(item: T): void {
    const heap = this.#heap;
    let at = heap.length;
    heap.push(item);
    while (at > 0) {
      const above = (at - 1) >> 1;
      const parent = heap[above];
      if (parent === undefined || parent.bound >= item.bound) break;
      heap[at] = parent;
      at = above;
    }
    heap[at] = item;
  }

  take(): T | undefined {
    const heap = this.#heap;
    const first = heap[0];
    const last = heap.pop();
    if (last === undefined || heap.length === 0) return first;
    let at = 0;
    for (;;) {
      let below = 2 * at + 1;
      let child = heap[below];
      const other = heap[below + 1];
      if (child !== undefined && other !== undefined && other.bound > child.bound) {
        child = other;
        below++;
      }
      if (child === undefined || child.bound <= last.bound) break;
      heap[at] = child;
      at = below;
    }
    heap[at] = last;
    return first;
  }
}
