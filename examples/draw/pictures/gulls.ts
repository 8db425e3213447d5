import { around, between, upTo } from "../chance.ts";
import { below, fill, line, many, rect, ridge, straight, tag, type Canvas, type Picture } from "../svg.ts";
import { TONES } from "../tones.ts";
import { tone, hatch, mud } from "./etching.ts";

const { ink, plate } = TONES.etching;

const gull = (x: number, y: number, span: number, lift: number, turn: number): string => {
  const wing = (side: number) =>
    `M0 0C${side * span * 0.2} ${-lift * 1.25} ${side * span * 0.42} ${-lift * 1.2} ${side * span} ${lift * 0.15}C${side * span * 0.5} ${-lift * 0.7} ${side * span * 0.24} ${-lift * 0.5} 0 ${span * 0.13}Z`;
  return tag(
    "g",
    { transform: `translate(${Math.round(x)} ${Math.round(y)}) rotate(${Math.round(turn)})` },
    fill(wing(-1), ink) +
      fill(wing(1), ink) +
      tag("ellipse", { cx: span * 0.02, cy: span * 0.05, rx: span * 0.19, ry: span * 0.085, fill: ink }),
  );
};

const flock = (
  { chance, width: w, height: h }: Canvas,
  count: number,
  left: number,
  top: number,
  wide: number,
  tall: number,
): string =>
  many(count, (i) => {
    const [x, y] = [
      w * (left + wide * ((i + chance()) / count)),
      h * (top + tall * chance() * (0.4 + 0.6 * Math.sin((i / count) * 3.1))),
    ];
    const span = w * (0.012 + 0.034 * chance() ** 2);
    return gull(x, y, span, span * between(chance, 0.3, 0.75), around(chance) * 26);
  });

/** A flat sea, a bright sky, and gulls. */
export const gulls: Picture = (canvas) => {
  const { height: h } = canvas;
  const horizon = h * 0.66;
  return (
    tone(canvas) +
    hatch(canvas, h * 0.05, horizon * 0.5, 16, 0.8, 0.3) +
    line(
      straight([
        [6, horizon],
        [canvas.width - 6, horizon],
      ]),
      ink,
      1.8,
    ) +
    hatch(canvas, horizon + 3, h - 12, 46, 1.2, 0.66) +
    mud(canvas, horizon + h * 0.06, 14) +
    flock(canvas, 19, 0.3, 0.1, 0.62, 0.42)
  );
};

/** A landing stage on its piles, and gulls coming over it. */
export const staithe: Picture = (canvas) => {
  const { chance, width: w, height: h } = canvas;
  const [horizon, deck] = [h * 0.6, h * 0.47];
  const pile = (i: number) => {
    const t = i / 8;
    const x = w * (0.96 - 0.62 * t ** 0.8);
    const wide = w * (0.024 - 0.014 * t);
    const foot = h * (0.93 - 0.3 * t);
    return (
      rect(x, deck + h * 0.02 * t, wide, foot - deck, ink, { opacity: 0.92 }) +
      many(6, () =>
        line(
          straight([
            [x + wide * 0.3, deck + chance() * (foot - deck) * 0.9],
            [x + wide * 0.3, deck + chance() * (foot - deck) * 0.9],
          ]),
          plate,
          1,
        ),
      ) +
      hatchBelow(x - wide, foot, wide * 3.4)
    );
  };
  const hatchBelow = (x: number, y: number, wide: number) =>
    many(5, (k) =>
      line(
        straight([
          [x + around(chance) * 4, y + k * 5],
          [x + wide * between(chance, 0.5, 1.1), y + k * 5],
        ]),
        ink,
        1.3,
        { opacity: 0.8 - k * 0.12 },
      ),
    );
  return (
    tone(canvas) +
    hatch(canvas, h * 0.04, h * 0.2, 14, 0.8, 0.3) +
    fill(below(ridge(canvas, horizon - 2, h * 0.018), horizon + 2), ink, { opacity: 0.5 }) +
    hatch(canvas, horizon, h - 12, 52, 1.15, 0.55) +
    upTo(9).toReversed().map(pile).join("") +
    fill(
      straight(
        [
          [w - 5, deck - h * 0.05],
          [w * 0.33, deck + h * 0.012],
          [w * 0.33, deck + h * 0.032],
          [w - 5, deck + h * 0.02],
        ],
        true,
      ),
      ink,
    ) +
    many(26, (i) =>
      line(
        straight([
          [w * (0.36 + i * 0.0245), deck + h * (0.012 - 0.0022 * i)],
          [w * (0.36 + i * 0.0245), deck + h * 0.02],
        ]),
        plate,
        1.2,
      ),
    ) +
    many(7, (i) =>
      line(
        straight([
          [w * (0.42 + i * 0.085), deck - h * (0.008 + 0.006 * i)],
          [w * (0.42 + i * 0.085), deck - h * (0.055 + 0.016 * i)],
        ]),
        ink,
        3 + i * 0.5,
      ),
    ) +
    line(
      straight([
        [w * 0.42, deck - h * 0.05],
        [w - 5, deck - h * 0.155],
      ]),
      ink,
      2,
    ) +
    flock(canvas, 12, 0.08, 0.08, 0.5, 0.34)
  );
};
