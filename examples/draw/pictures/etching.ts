import { around, between } from "../chance.ts";
import { glow, grain, line, many, rect, soft, straight, tag, type Canvas } from "../svg.ts";
import { TONES } from "../tones.ts";

const { ink, plate, mid } = TONES.etching;

/** The plate's own tone, wiped brighter towards the middle, with the line of its edge. */
export function tone(canvas: Canvas): string {
  const { width: w, height: h } = canvas;
  return (
    tag(
      "defs",
      {},
      glow("wipe", 0.5, 0.42, 0.75, [
        [0, "#f4ecd9", 1],
        [0.6, plate, 1],
        [1, "#d8c9a6", 1],
      ]),
    ) +
    rect(0, 0, w, h, "url(#wipe)") +
    rect(3, 3, w - 6, h - 6, "none", { stroke: mid, "stroke-width": 4, opacity: 0.55 }) +
    grain(canvas, "foul", ink, 0.16, 0.7)
  );
}

/** Level needle lines between two heights, each broken where the hand lifted. */
export function hatch(
  canvas: Canvas,
  top: number,
  foot: number,
  rows: number,
  width = 1.1,
  opacity = 0.7,
): string {
  const { chance, width: w } = canvas;
  return many(rows, (i) => {
    const y = top + ((foot - top) * (i + chance() * 0.6)) / rows;
    return many(3, () => {
      const x = between(chance, 0, 0.9) * w;
      return line(
        soft([
          [x, y],
          [x + w * 0.1, y + around(chance) * 2],
          [Math.min(w - 8, x + w * between(chance, 0.14, 0.4)), y + around(chance) * 3],
        ]),
        ink,
        width,
        { opacity },
      );
    });
  });
}

/** Slanting strokes of a shower. */
export const shower = ({ chance, width: w }: Canvas, foot: number, count: number): string =>
  many(count, () => {
    const [x, y] = [between(chance, 0, 1.05) * w, between(chance, 0.02, 0.7) * foot];
    const long = between(chance, 0.14, 0.3) * foot;
    return line(
      straight([
        [x, y],
        [x - long * 0.5, y + long],
      ]),
      ink,
      0.9,
      { opacity: 0.36 },
    );
  });

export function mud(canvas: Canvas, horizon: number, rows: number): string {
  const { chance, width: w, height: h } = canvas;
  return many(rows, (i) => {
    const t = (i + 0.5) / rows;
    const y = horizon + (h - horizon) * t ** 1.4;
    return many(7, () => {
      const x = between(chance, -0.05, 1) * w;
      const long = w * between(chance, 0.02, 0.1) * (0.5 + t);
      return line(
        soft([
          [x, y],
          [x + long / 2, y - between(chance, 1, 6) * (0.4 + t)],
          [x + long, y + around(chance) * 2],
        ]),
        ink,
        0.9 + t * 0.8,
        { opacity: 0.62 },
      );
    });
  });
}
