import { around, between } from "../chance.ts";
import {
  below,
  blur,
  disc,
  fill,
  grain,
  group,
  line,
  many,
  rect,
  ridge,
  shade,
  soft,
  tag,
  type Canvas,
  type Picture,
  type Spot,
} from "../svg.ts";
import { TONES } from "../tones.ts";

const { monotype } = TONES;

/** Wiped ink: level bands, each with the streaks of the rag. */
function wiped(
  { chance, width: w }: Canvas,
  top: number,
  foot: number,
  light: string,
  dark: string,
  rows: number,
): string {
  return many(rows, (i) => {
    const y = top + ((foot - top) * i) / rows;
    const x = between(chance, -0.3, 0.6) * w;
    return line(
      soft([
        [x, y],
        [x + w * 0.3, y + around(chance) * 5],
        [x + w * between(chance, 0.5, 0.9), y + around(chance) * 4],
      ]),
      chance() < 0.5 ? light : dark,
      between(chance, 1, 9),
      { opacity: between(chance, 0.06, 0.24) },
    );
  });
}

/** Fog on a bar: bands of grey that cannot decide which is water. */
export const fog: Picture = (canvas) => {
  const { width: w, height: h } = canvas;
  const hills = [
    [0.4, "#b9bbb8"],
    [0.5, "#979b9a"],
    [0.58, "#737879"],
    [0.66, "#4d5254"],
  ] as const;
  return (
    tag(
      "defs",
      {},
      shade("air", [
        [0, "#dddcd6"],
        [0.45, "#c8c9c5"],
        [1, "#8d9192"],
      ]) +
        shade("foot", [
          [0, "#50565a"],
          [0.4, "#7f8587"],
          [1, "#3a4043"],
        ]) +
        blur("soft", 3.4) +
        blur("wide", 20),
    ) +
    rect(0, 0, w, h, "url(#air)") +
    hills
      .map(
        ([at, tone], i) =>
          group(
            { filter: "url(#soft)" },
            fill(below(ridge(canvas, h * at, h * (0.1 - i * 0.012)), h * (at + 0.2)), tone, { opacity: 0.9 }),
          ) +
          group(
            { filter: "url(#wide)", opacity: 0.8 },
            rect(-30, h * (at + 0.1), w + 60, h * 0.055, "#e3e2dc"),
          ),
      )
      .join("") +
    rect(0, h * 0.79, w, h * 0.21, "url(#foot)") +
    group({ filter: "url(#wide)", opacity: 0.7 }, rect(-30, h * 0.765, w + 60, h * 0.045, "#d8d8d3")) +
    wiped(canvas, 0, h * 0.75, "#f0efe9", monotype.mid, 44) +
    wiped(canvas, h * 0.78, h, "#e4e3dd", monotype.ink, 40) +
    grain(canvas, "rag", monotype.ink, 0.17, 0.45)
  );
};

/** Hills twice over: once in the air, once in water that nothing moves. */
export const noWind: Picture = (canvas) => {
  const { width: w, height: h } = canvas;
  const shore = h * 0.53;
  const ranges = (
    [
      [0.36, 0.16, "#c3c4c0"],
      [0.43, 0.12, "#9fa3a2"],
      [0.48, 0.08, "#6c7274"],
      [0.52, 0.035, "#373d40"],
    ] as const
  ).map(([at, tall, tone]) => ({ tone, spots: ridge(canvas, h * at, h * tall) }));
  const drawn = (flip: boolean) =>
    ranges
      .map(({ tone, spots }) =>
        fill(below(flip ? spots.map(([x, y]): Spot => [x, shore + (shore - y) * 0.86]) : spots, shore), tone),
      )
      .join("");
  return (
    tag(
      "defs",
      {},
      shade("air", [
        [0, "#d5d5d0"],
        [1, "#ece9e0"],
      ]) +
        shade("mirror", [
          [0, "#e2e0d8"],
          [1, "#8b9092"],
        ]) +
        blur("soft", 1.6) +
        blur("wide", 5),
    ) +
    rect(0, 0, w, shore, "url(#air)") +
    rect(0, shore, w, h - shore, "url(#mirror)") +
    disc(w * 0.3, h * 0.17, h * 0.055, "#f8f5ec", { filter: "url(#soft)" }) +
    group({ filter: "url(#soft)" }, drawn(false)) +
    group({ filter: "url(#wide)", opacity: 0.72 }, drawn(true)) +
    rect(0, shore - 2, w, 3, "#f4f1e8", { opacity: 0.7 }) +
    wiped(canvas, shore, h, "#f0efe9", monotype.ink, 90) +
    wiped(canvas, 0, shore * 0.6, "#f6f4ee", monotype.mid, 34) +
    grain(canvas, "rag", monotype.ink, 0.15, 0.45)
  );
};
