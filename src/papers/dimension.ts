import type { Mark } from "../drawings/index.ts";
import { absolute, add, type Length, mm, subtract, ZERO } from "../lengths/index.ts";

/** Arrowheads are 2.6 long; where less than this is between them they stand outside, pointing in. */
const ARROW = mm(2.6);
const ARROWS_OUTSIDE = mm(8);
const OUTSIDE_TAIL = mm(4.2);

/** How far the arrows of a dimension stand out past its ends. */
export const tailOf = (from: Length, to: Length): Length =>
  absolute(subtract(to, from)) >= ARROWS_OUTSIDE ? ZERO : OUTSIDE_TAIL;
/** Extension lines start 0.8 off the outline and end 1.3 past the dimension line. */
const EXTENSION_OFF = mm(0.8);
const EXTENSION_PAST = mm(1.3);

/**
 * A dimension line between two places on one axis, at `level` on the other: thin, with filled heads
 * (ISO 129-1). Its figure is set beside it by the caller, upright.
 */
export function dimensionLine(axis: "x" | "y", from: Length, to: Length, level: Length): readonly Mark[] {
  const [low, high] = from < to ? [from, to] : [to, from];
  const point = (along: Length): { x: Length; y: Length } =>
    axis === "x" ? { x: along, y: level } : { x: level, y: along };
  const forward = axis === "x" ? 0 : 90;
  if (subtract(high, low) >= ARROWS_OUTSIDE) {
    return [
      { kind: "line", from: point(low), to: point(high), line: "thin" },
      { kind: "arrowhead", at: point(low), degrees: forward + 180, size: ARROW },
      { kind: "arrowhead", at: point(high), degrees: forward, size: ARROW },
    ];
  }
  return [
    {
      kind: "line",
      from: point(subtract(low, OUTSIDE_TAIL)),
      to: point(add(high, OUTSIDE_TAIL)),
      line: "thin",
    },
    { kind: "arrowhead", at: point(low), degrees: forward, size: ARROW },
    { kind: "arrowhead", at: point(high), degrees: forward + 180, size: ARROW },
  ];
}

/** An extension line from beside the outline to past the dimension line. */
export function extensionLine(axis: "x" | "y", along: Length, outline: Length, level: Length): Mark {
  const away = level > outline;
  const start = away ? add(outline, EXTENSION_OFF) : subtract(outline, EXTENSION_OFF);
  const end = away ? add(level, EXTENSION_PAST) : subtract(level, EXTENSION_PAST);
  const point = (across: Length): { x: Length; y: Length } =>
    axis === "x" ? { x: along, y: across } : { x: across, y: along };
  return { kind: "line", from: point(start), to: point(end), line: "thin" };
}
