import type { RealPoint } from "./types.ts";

/**
 * Points turned about a centre by degrees clockwise as seen (y runs down). Whole quarter turns are
 * exact: 0, 90, 180, 270 and what differs from them by whole turns. Other turns are as exact as
 * doubles: a point r ticks from the centre is off by less than r / 10^15.
 */
export function turned(
  points: readonly RealPoint[],
  centre: RealPoint,
  degrees: number,
): readonly RealPoint[] {
  const { cos, sin } = cosineAndSine(degrees);
  return points.map((point) => {
    const x = point.x - centre.x;
    const y = point.y - centre.y;
    return { x: centre.x + x * cos - y * sin, y: centre.y + x * sin + y * cos };
  });
}

function cosineAndSine(degrees: number): { readonly cos: number; readonly sin: number } {
  // Whole turns taken off first, so that 450 degrees is a quarter turn to the last bit.
  const rest = degrees % 360;
  switch (rest < 0 ? rest + 360 : rest) {
    case 0:
      return { cos: 1, sin: 0 };
    case 90:
      return { cos: 0, sin: 1 };
    case 180:
      return { cos: -1, sin: 0 };
    case 270:
      return { cos: 0, sin: -1 };
    default:
      return { cos: Math.cos((rest * Math.PI) / 180), sin: Math.sin((rest * Math.PI) / 180) };
  }
}
