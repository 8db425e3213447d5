import { between, upTo } from "../chance.ts";
import {
  below,
  disc,
  fill,
  gouge,
  line,
  many,
  ridge,
  soft,
  straight,
  tag,
  type Canvas,
  type Picture,
  type Spot,
} from "../svg.ts";
import { TONES } from "../tones.ts";
import { tone, hatch, shower, mud } from "./etching.ts";

const { ink, mid } = TONES.etching;

/** A creek that winds from the horizon at `from` to the foot at `to`: its two banks. */
function creek(
  { width: w, height: h }: Canvas,
  horizon: number,
  from: number,
  to: number,
  wide: number,
): [Spot[], Spot[]] {
  const bank = (side: number) =>
    upTo(25).map((i): Spot => {
      const t = i / 24;
      const y = horizon + (h - horizon) * t ** 1.6;
      const middle =
        w * (from + (to - from) * t) + Math.sin(t * 7.4) * w * 0.19 * (0.15 + t) * (1 - t * 0.35);
      return [middle + side * wide * w * (0.02 + 0.5 * t ** 1.5), y];
    });
  return [bank(-1), bank(1)];
}

function wader(canvas: Canvas, x: number, y: number, size: number, faces: number): string {
  const { chance } = canvas;
  const s = size * faces;
  return (
    fill(
      `M${x - s} ${y - size * 0.2}Q${x - s * 0.2} ${y - size * 0.95} ${x + s * 0.75} ${y - size * 0.5}Q${x + s * 0.9} ${y - size * 0.2} ${x + s * 0.4} ${y}Q${x - s * 0.3} ${y + size * 0.25} ${x - s} ${y - size * 0.2}Z`,
      ink,
    ) +
    disc(x + s * 0.78, y - size * 0.66, size * 0.3, ink) +
    line(`M${x + s} ${y - size * 0.66}L${x + s * 1.55} ${y - size * 0.5}`, ink, size * 0.12) +
    line(
      `M${x} ${y}L${x + s * 0.06} ${y + size * 0.75}M${x + s * 0.25} ${y}L${x + s * 0.34} ${y + size * 0.75}`,
      ink,
      size * 0.1,
    ) +
    fill(gouge(chance, [x - s * 1.1, y + size * 0.82], [x + s * 1.2, y + size * 0.86], size * 0.16), ink, {
      opacity: 0.6,
    })
  );
}

/** Mud at low water, a creek, and those who live on it. */
export const mudLarks: Picture = (canvas) => {
  const { width: w, height: h } = canvas;
  const horizon = h * 0.33;
  const [left, right] = creek(canvas, horizon, 0.66, 0.3, 0.34);
  const far = ridge({ ...canvas, height: h }, horizon - 3, h * 0.035);
  return (
    tone(canvas) +
    shower(canvas, horizon, 150) +
    fill(below(far, horizon + 2), ink, { opacity: 0.75 }) +
    fill(below(far, horizon + h * 0.02), ink, { opacity: 0.25 }) +
    mud(canvas, horizon, 44) +
    fill(`${soft(left)}${soft(right.toReversed()).replace("M", "L")}Z`, "#f6efde") +
    line(soft(left), ink, 2) +
    line(soft(right), ink, 2.6) +
    many(16, (i) => {
      const t = (i + 3) / 20;
      const [a, b] = [left[Math.round(t * 24)], right[Math.round(t * 24)]];
      if (!a || !b) return "";
      const x = a[0] + (b[0] - a[0]) * between(canvas.chance, 0.1, 0.5);
      return line(
        straight([
          [x, a[1]],
          [x + (b[0] - a[0]) * 0.35, a[1]],
        ]),
        mid,
        1.4,
        { opacity: 0.7 },
      );
    }) +
    wader(canvas, w * 0.76, h * 0.64, h * 0.032, -1) +
    wader(canvas, w * 0.85, h * 0.72, h * 0.038, 1) +
    wader(canvas, w * 0.66, h * 0.5, h * 0.02, -1)
  );
};

/** A shingle bank with its birds: dots for stones, lines for the water behind. */
export const plovers: Picture = (canvas) => {
  const { chance, width: w, height: h } = canvas;
  const crest = (x: number) =>
    h * (0.52 - 0.11 * Math.sin((x / w) * 2.6 + 0.4) + 0.02 * Math.sin((x / w) * 17));
  return (
    tone(canvas) +
    hatch(canvas, h * 0.04, h * 0.24, 26, 0.9, 0.4) +
    shower(canvas, h * 0.3, 60) +
    fill(below(ridge(canvas, h * 0.29, h * 0.024), h * 0.31), ink, { opacity: 0.7 }) +
    hatch(canvas, h * 0.31, h * 0.47, 24, 1.1, 0.6) +
    fill(
      below(
        upTo(41).map((i): Spot => [(w * i) / 40, crest((w * i) / 40)]),
        h - 8,
      ),
      "#efe5cc",
    ) +
    many(1500, () => {
      const x = chance() * w;
      const t = chance() ** 0.75;
      const y = crest(x) + (h - 14 - crest(x)) * t;
      const size = 1.2 + 7 * t * between(chance, 0.4, 1);
      return tag("ellipse", {
        cx: x,
        cy: y,
        rx: size * 1.35,
        ry: size * 0.75,
        fill: chance() < 0.22 ? ink : "none",
        stroke: ink,
        "stroke-width": 0.8 + t * 0.5,
        opacity: 0.35 + 0.5 * chance(),
      });
    }) +
    (
      [
        [0.2, 0.06, 1],
        [0.29, 0.1, 1],
        [0.6, 0.09, -1],
        [0.68, 0.15, -1],
        [0.75, 0.07, -1],
        [0.46, 0.2, 1],
      ] as const
    )
      .map(([x, down, faces]) =>
        wader(canvas, w * x, crest(w * x) + h * down, h * (0.024 + down * 0.12), faces),
      )
      .join("")
  );
};
