import type { Composition } from "../../assembly/index.ts";
import type { Layer } from "./layers.ts";
import { isFloated } from "./layout.ts";
import type { Pen } from "./pen.ts";

/** How much of the window's inside is seen beyond the last thing in it, in pixels. */
export const INSIDE = 76;
/** A print drawn thinner than this would be lost beside the boards' outlines; thin sections are drawn solid (ISO 128-3). */
const THINNEST = 3.6;

/** Where everything lies: x from the lowest mat's edge at its back towards the outer edge, y down from the topmost face. */
export interface Stack {
  readonly floated: boolean;
  readonly outer: number;
  readonly inner: number;
  readonly mats: readonly {
    readonly back: number;
    readonly face: number;
    readonly top: number;
    readonly bottom: number;
  }[];
  readonly print: { readonly end: number; readonly top: number; readonly bottom: number } | null;
  readonly mount: { readonly top: number; readonly bottom: number };
}

/** The places that must be seen: every edge, and where the paper ends. */
export const placesOf = (stack: Stack): number[] => [
  ...stack.mats.flatMap((mat) => [mat.back, mat.face]),
  stack.outer,
  ...(stack.print ? [stack.print.end] : []),
];

/** The package through its foot, at a scale, true but for a print too thin to be seen. */
export function stackOf(composition: Composition, pen: Pen, scale: number, layers: readonly Layer[]): Stack {
  const foot = composition.mats[0]?.borders.foot ?? 0;
  const outer = foot * scale;
  const thick = (layer: Layer | undefined): number => (layer?.thickness ?? 0) * scale;
  const printLayer = layers.find((layer) => layer.kind === "print");
  const mountLayer = layers.find((layer) => layer.kind === "mount");
  // A floated print lies in the opening; the mats lie on the mount itself.
  const floated = isFloated(composition);
  let y = composition.mats.reduce((sum, mat) => sum + mat.thickness * scale, 0);
  const base = y;
  const mats = composition.mats.map((mat) => {
    const back = (foot - mat.borders.foot) * scale;
    const bottom = y;
    y -= mat.thickness * scale;
    return { back, face: back + mat.bevel.plan * scale, top: y, bottom };
  });
  const printHeight = printLayer ? Math.max(thick(printLayer), THINNEST * pen.pixel) : 0;
  const cover = composition.print?.cover.foot;
  const mountTop = floated ? base : base + printHeight;
  const print =
    cover === undefined ? null : { end: cover * scale, top: mountTop - printHeight, bottom: mountTop };
  const places = [outer, ...mats.flatMap((mat) => [mat.back, mat.face]), ...(print ? [print.end] : [])];
  return {
    floated,
    outer,
    inner: Math.min(...places) - INSIDE * pen.pixel,
    mats,
    print,
    mount: { top: mountTop, bottom: mountTop + thick(mountLayer) },
  };
}
