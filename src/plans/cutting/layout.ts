/**
 * A layout as the planners hand it over: a tree in whole units of a `WholeJob`. A split lays its parts
 * side by side along its axis; what they leave of the extent, `rest`, comes last and is no piece.
 * Plain and immutable, so that layouts made by different planners can be kept, counted and mixed.
 */
export interface Layout {
  /** Index into the whole job's stocks. */
  readonly stock: number;
  readonly root: Part;
}

export type Part = PiecePart | SplitPart;

export interface PiecePart {
  readonly is: "piece";
  readonly kind: number;
  /** As it lies. */
  readonly width: number;
  readonly height: number;
}

export interface SplitPart {
  readonly is: "split";
  /** "x": the parts lie side by side from left to right; "y": from the top down. */
  readonly axis: Axis;
  readonly width: number;
  readonly height: number;
  readonly parts: readonly Part[];
  /** Extent along the axis after the last part; nought or more. */
  readonly rest: number;
}

export type Axis = "x" | "y";

export const otherAxis = (axis: Axis): Axis => (axis === "x" ? "y" : "x");

export const extent = (part: { readonly width: number; readonly height: number }, axis: Axis): number =>
  axis === "x" ? part.width : part.height;

/** A text that is the same for two layouts exactly when they are cut alike from the same stock. */
export const layoutKey = (layout: Layout): string => `${layout.stock}:${partKey(layout.root)}`;

function partKey(part: Part): string {
  if (part.is === "piece") return `${part.kind}${part.width < part.height ? "u" : "l"}`;
  return splitKey(part.axis, part.rest, part.parts.map(partKey));
}

const splitKey = (axis: Axis, rest: number, keys: readonly string[]): string =>
  `${axis}${rest}(${keys.join(",")})`;

/**
 * The same layout in its plainest form: no split that parts nothing, no split inside another of the
 * same axis, the largest extents first and equal ones together, so that one setting of the fence
 * serves neighbours and the rest gathers at the far edge.
 */
export const tidied = (part: Part): Part => keyed(part).part;

/** A part in its plainest form with its key, which is put together from those of its own parts. */
interface Keyed {
  readonly part: Part;
  readonly key: string;
}

function keyed(part: Part): Keyed {
  if (part.is === "piece") return { part, key: partKey(part) };
  const { axis } = part;
  let { rest } = part;
  const inner: Keyed[] = [];
  for (const one of part.parts.map(keyed)) {
    if (one.part.is === "split" && one.part.axis === axis) {
      for (const own of one.part.parts) inner.push({ part: own, key: partKey(own) });
      rest += one.part.rest;
    } else inner.push(one);
  }
  const [only] = inner;
  if (only !== undefined && inner.length === 1 && rest === 0) return only;
  inner.sort(
    (a, b) => extent(b.part, axis) - extent(a.part, axis) || (a.key < b.key ? -1 : a.key > b.key ? 1 : 0),
  );
  const parts = inner.map((one) => one.part);
  return {
    part: { ...part, parts, rest },
    key: splitKey(
      axis,
      rest,
      inner.map((one) => one.key),
    ),
  };
}

/** Mirrored about its diagonal: width and height, x and y change places. */
export function transposed(part: Part): Part {
  const turned = { width: part.height, height: part.width };
  if (part.is === "piece") return { ...part, ...turned };
  return { ...part, ...turned, axis: otherAxis(part.axis), parts: part.parts.map(transposed) };
}

/** How many of each kind lie in it, added to `counts`. */
export function countKinds(part: Part, counts: Int32Array): void {
  if (part.is === "piece") {
    counts[part.kind] = (counts[part.kind] ?? 0) + 1;
    return;
  }
  for (const one of part.parts) countKinds(one, counts);
}

/** The least width and height that the pieces need as they are arranged. */
export function leastExtent(part: Part): { readonly width: number; readonly height: number } {
  if (part.is === "piece") return part;
  let along = 0;
  let across = 0;
  for (const one of part.parts) {
    const least = leastExtent(one);
    along += extent(least, part.axis);
    across = Math.max(across, extent(least, otherAxis(part.axis)));
  }
  return part.axis === "x" ? { width: along, height: across } : { width: across, height: along };
}

/**
 * The same arrangement in a rectangle of another size, no smaller than `leastExtent`: each rest grows or shrinks.
 * The rests that lie inside strips stay where they are.
 */
export function resized(part: Part, width: number, height: number): Part {
  if (part.is === "piece") {
    if (part.width === width && part.height === height) return part;
    const level: Part = {
      is: "split",
      axis: "x",
      width,
      height: part.height,
      parts: [part],
      rest: width - part.width,
    };
    const inner = level.rest === 0 ? part : level;
    if (height === part.height) return inner;
    return { is: "split", axis: "y", width, height, parts: [inner], rest: height - part.height };
  }
  const [only] = part.parts;
  // A split that parts nothing needs no cut, and must not come to need one.
  if (only !== undefined && part.parts.length === 1 && part.rest === 0) return resized(only, width, height);
  const across = part.axis === "x" ? height : width;
  const along = part.axis === "x" ? width : height;
  let used = 0;
  const parts = part.parts.map((one) => {
    const own = extent(leastExtent(one), part.axis);
    used += own;
    return part.axis === "x" ? resized(one, own, across) : resized(one, across, own);
  });
  return { ...part, width, height, parts, rest: along - used };
}
