import { between, type Chance, upTo } from "./chance.ts";
import type { Spot } from "./svg.ts";

/** A rectangle in plain numbers of one unit. */
export interface Area {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** How an edge strays: the deepest it goes inward, its spots along each side, and whether it came from a brush or from tearing. */
export interface Edge {
  readonly deepest: number;
  readonly spots: number;
  readonly kind: "brushed" | "deckled";
}

/**
 * The outline of a coating brushed on by hand, or of a sheet torn to size: a polygon that touches all
 * four sides of its area and never leaves it. Spots run along each side in order and the corners are
 * kept clear by the deepest stray, so that the polygon is simple whatever the chance.
 */
export function strayingEdge(chance: Chance, area: Area, edge: Edge): Spot[] {
  const clear = edge.deepest * 1.05;
  const side = (long: number, ragged: boolean): { along: number; in: number }[] => {
    const strays = edge.kind === "deckled" ? deckle(chance, edge.spots) : brush(chance, edge.spots, ragged);
    const least = Math.min(...strays);
    return strays.map((stray, i) => ({
      along: clear + ((long - 2 * clear) * (i + 0.5)) / edge.spots,
      in: (stray - least) * edge.deepest,
    }));
  };
  const [right, foot] = [area.left + area.width, area.top + area.height];
  const head = side(area.width, false).map((s): Spot => [area.left + s.along, area.top + s.in]);
  const east = side(area.height, true).map((s): Spot => [right - s.in, area.top + s.along]);
  const low = side(area.width, false).map((s): Spot => [right - s.along, foot - s.in]);
  const west = side(area.height, true).map((s): Spot => [area.left + s.in, foot - s.along]);
  return [
    ...head,
    ...corner(east[0], head.at(-1)),
    ...east,
    ...corner(east.at(-1), low[0]),
    ...low,
    ...corner(west[0], low.at(-1)),
    ...west,
    ...corner(west.at(-1), head[0]),
  ];
}

/** One spot that rounds a corner, between the nearest spots of its upright side and of its level side, and no further out than either. */
function corner(upright: Spot | undefined, level: Spot | undefined): Spot[] {
  if (!upright || !level) return [];
  return [[upright[0] * 0.72 + level[0] * 0.28, level[1] * 0.72 + upright[1] * 0.28]];
}

/** From 0 to 1: where a brush ends its strokes the edge steps from one stroke to the next; along a stroke it only wavers. */
function brush(chance: Chance, spots: number, ragged: boolean): number[] {
  let reach = between(chance, 0.1, 0.7);
  let left = 0;
  const [turns, start] = [between(chance, 1, 2.4), chance() * 7];
  return upTo(spots).map((i) => {
    if (left-- <= 0) {
      left = Math.round(between(chance, spots * 0.04, spots * 0.14));
      reach = ragged ? between(chance, 0, 0.8) : between(chance, 0.1, 0.35);
    }
    const waver = 0.08 * Math.sin((i / spots) * 6.28 * turns + start);
    return Math.min(1, Math.max(0, reach + waver + between(chance, 0, ragged ? 0.2 : 0.09)));
  });
}

/** From 0 to 1: fibres pulled apart, coarse over fine. */
function deckle(chance: Chance, spots: number): number[] {
  const waves = upTo(6).map((k) => ({ turns: between(chance, 0.7, 1.3) * 2 ** k, start: chance() * 7 }));
  return upTo(spots).map((i) => {
    const sum = waves.reduce(
      (total, { turns, start }, k) => total + Math.sin((i / spots) * 6.28 * turns + start) / (k + 1.5),
      0,
    );
    return Math.min(1, Math.max(0, 0.4 + sum * 0.16 + between(chance, 0, 0.24)));
  });
}
