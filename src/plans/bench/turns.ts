import { at } from "../at.ts";
import type { Arrows } from "./arrows.ts";

/** Figures that meet every ring of arrows: a choice of them, and how many it takes at least. */
export interface Turns {
  readonly chosen: readonly number[];
  readonly atLeast: number;
}

/**
 * The fewest figures that meet every ring of arrows (a smallest feedback vertex set), by branching on one
 * figure: chosen, or left out and its arrows joined through. After `steps` branchings the best choice so
 * far is given, with what it surely takes.
 */
export function fewestTurns(arrows: Arrows, steps: number): Turns {
  const all = Array.from({ length: arrows.size }, (_, figure) => figure);
  const root = reduced({ arrows: arrows.copy(), alive: all, chosen: [] });
  let best = dive(root);
  const floor = root.chosen.length + rings(root);
  let left = steps;
  let cutShort = false;
  const branch = (graph: Graph): void => {
    if (graph.alive.length === 0) {
      if (graph.chosen.length < best.length) best = graph.chosen;
      return;
    }
    if (best.length <= floor || graph.chosen.length + rings(graph) >= best.length) return;
    if (left <= 0) {
      cutShort = true;
      return;
    }
    left -= 1;
    const figure = busiest(graph);
    branch(reduced(chosenIn(copied(graph), figure)));
    branch(reduced(joinedThrough(copied(graph), figure)));
  };
  branch(root);
  return { chosen: best, atLeast: cutShort ? Math.min(floor, best.length) : best.length };
}

/** A choice that is good, not always the best: the busiest figure again and again. */
export const someTurns = (arrows: Arrows): readonly number[] =>
  dive(
    reduced({
      arrows: arrows.copy(),
      alive: Array.from({ length: arrows.size }, (_, figure) => figure),
      chosen: [],
    }),
  );

/** What is left to be met: the figures `alive` and the arrows between them. */
interface Graph {
  readonly arrows: Arrows;
  alive: readonly number[];
  chosen: readonly number[];
}

const copied = ({ arrows, alive, chosen }: Graph): Graph => ({ arrows: arrows.copy(), alive, chosen });

function removed(graph: Graph, figure: number): Graph {
  graph.arrows.remove(figure);
  graph.alive = graph.alive.filter((other) => other !== figure);
  return graph;
}

function chosenIn(graph: Graph, figure: number): Graph {
  graph.chosen = [...graph.chosen, figure];
  return removed(graph, figure);
}

/** Left out of the choice: every way in now leads straight to every way out. */
function joinedThrough(graph: Graph, figure: number): Graph {
  const { arrows } = graph;
  const [into, out] = [arrows.comesFrom(figure), arrows.leadsTo(figure)];
  removed(graph, figure);
  for (const a of into) for (const b of out) arrows.add(a, b);
  return graph;
}

/** Without what lies in no ring, with what points to itself chosen, and with single ways in or out joined through. */
function reduced(graph: Graph): Graph {
  for (let changed = true; changed; ) {
    changed = false;
    for (const figure of graph.alive) {
      const { out, into } = graph.arrows.ways(figure);
      if (out === 0 || into === 0) removed(graph, figure);
      else if (graph.arrows.hasOwn(figure)) chosenIn(graph, figure);
      else if (out === 1 || into === 1) joinedThrough(graph, figure);
      else continue;
      changed = true;
    }
  }
  return graph;
}

function busiest({ arrows, alive }: Graph): number {
  let most = -1;
  let found = at(alive, 0);
  for (const figure of alive) {
    const { out, into } = arrows.ways(figure);
    if (out * into <= most) continue;
    most = out * into;
    found = figure;
  }
  return found;
}

function dive(graph: Graph): readonly number[] {
  const state = copied(graph);
  while (state.alive.length > 0) reduced(chosenIn(state, busiest(state)));
  return state.chosen;
}

/** Rings of arrows with no figure in common: each takes one at least. */
function rings(graph: Graph): number {
  let count = 0;
  const rest = copied(graph);
  while (rest.alive.length > 0) {
    for (const figure of shortestRing(rest)) removed(rest, figure);
    count += 1;
    reduced(rest);
  }
  // What a reduction has chosen on the way lies in rings of its own.
  return count + rest.chosen.length - graph.chosen.length;
}

/** The figures of a shortest ring, found breadth first from every figure. The graph must hold one. */
function shortestRing({ arrows, alive }: Graph): readonly number[] {
  let shortest: readonly number[] | null = null;
  for (const start of alive) {
    const came = new Map<number, number>();
    let front = [start];
    for (let steps = 1; front.length > 0 && (shortest === null || steps < shortest.length); steps++) {
      const next: number[] = [];
      for (const figure of front) {
        for (const other of arrows.leadsTo(figure)) {
          if (other === start) {
            const ring = [figure];
            for (let back = came.get(figure); back !== undefined; back = came.get(back)) ring.push(back);
            if (shortest === null || ring.length < shortest.length) shortest = ring;
          } else if (!came.has(other)) {
            came.set(other, figure);
            next.push(other);
          }
        }
      }
      front = next;
    }
    if (shortest?.length === 2) return shortest;
  }
  if (shortest === null) throw new RangeError("no ring of arrows is left");
  return shortest;
}
