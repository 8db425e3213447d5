import { around, between, upTo } from "../chance.ts";
import {
  below,
  blade,
  blur,
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
import { clouds } from "./skies.ts";

const { silver } = TONES;

/** The banks of a channel that swings from the horizon to the foot. */
function channel(
  { width: w, height: h }: Canvas,
  horizon: number,
  from: number,
  swing: number,
  wide: number,
): string {
  const bank = (side: number) =>
    upTo(31).map((i): Spot => {
      const t = i / 30;
      const middle = w * (from + swing * Math.sin(t * 3.5) * t + 0.16 * t * t);
      return [middle + side * w * wide * (0.012 + t ** 1.8), horizon + (h - horizon) * t ** 1.5];
    });
  return `${soft(bank(-1))}${soft(bank(1).toReversed()).replace("M", "L")}Z`;
}

/** The channel at low water: bright water, black mud. */
export const lowWater: Picture = (canvas) => {
  const { chance, width: w, height: h } = canvas;
  const horizon = h * 0.41;
  const path = channel(canvas, horizon, 0.36, 0.2, 0.21);
  return (
    tag(
      "defs",
      {},
      shade("sky", [
        [0, "#3a3a3b"],
        [0.55, "#8b8a88"],
        [1, "#e4e2dd"],
      ]) +
        shade("mud", [
          [0, "#4a4948"],
          [0.3, "#242424"],
          [1, "#101011"],
        ]) +
        shade("wet", [
          [0, "#efeeea"],
          [0.5, "#bdbcb9"],
          [1, "#77777a"],
        ]) +
        blur("cloud", 13) +
        blur("soft", 2.2) +
        blur("wide", 9),
    ) +
    rect(0, 0, w, horizon + 2, "url(#sky)") +
    clouds(canvas, horizon * 0.8, 22, "#d9d7d2", "#2f2f31") +
    rect(0, horizon, w, h - horizon, "url(#mud)") +
    fill(below(ridge(canvas, horizon, h * 0.014), horizon + 6), "#1d1d1e", { filter: "url(#soft)" }) +
    group(
      { filter: "url(#wide)", opacity: 0.5 },
      fill(path, "#d6d5d1", { stroke: "#d6d5d1", "stroke-width": 16 }),
    ) +
    group(
      { filter: "url(#soft)" },
      fill(path, "url(#wet)"),
      many(120, () => {
        const t = chance() ** 0.6;
        const y = horizon + (h - horizon) * t;
        const x = chance() * w;
        return line(
          soft([
            [x, y],
            [x + w * 0.03 * (0.4 + t), y - 3 * t],
            [x + w * 0.07 * (0.4 + t), y + 1],
          ]),
          chance() < 0.5 ? "#5d5c5a" : "#0d0d0e",
          1 + 4 * t,
          { opacity: 0.42 },
        );
      }),
    ) +
    grain(canvas, "silver", silver.pale, 0.2, 0.9) +
    grain(canvas, "black", silver.ink, 0.22, 0.9)
  );
};

/** An estuary under frost: white grass near, a far line of trees. */
export const frost: Picture = (canvas) => {
  const { chance, width: w, height: h } = canvas;
  const horizon = h * 0.38;
  const path = channel(canvas, horizon, 0.58, -0.2, 0.17);
  const tuft = (x: number, y: number, size: number) =>
    many(15, () => {
      const lean = around(chance) * size * 0.9;
      return fill(
        blade(
          [
            [x, y],
            [x + lean * 0.3, y - size * 0.6],
            [x + lean, y - size * between(chance, 0.7, 1.25)],
          ],
          size * 0.07,
        ),
        chance() < 0.74 ? "#f1f0ec" : "#54544f",
        { opacity: 0.85 },
      );
    });
  return (
    tag(
      "defs",
      {},
      shade("sky", [
        [0, "#a9a8a6"],
        [0.7, "#dcdad6"],
        [1, "#edebe7"],
      ]) +
        shade("land", [
          [0, "#b3b2af"],
          [0.5, "#8e8d8b"],
          [1, "#63625f"],
        ]) +
        shade("river", [
          [0, "#f0efeb"],
          [0.6, "#8f8f90"],
          [1, "#3b3b3e"],
        ]) +
        blur("cloud", 16) +
        blur("soft", 1.6),
    ) +
    rect(0, 0, w, horizon + 4, "url(#sky)") +
    clouds(canvas, horizon * 0.7, 10, "#f1efeb", "#999896") +
    rect(0, horizon, w, h - horizon, "url(#land)") +
    group(
      { filter: "url(#soft)" },
      fill(below(ridge(canvas, horizon - h * 0.012, h * 0.03, 120), horizon + 5), "#5a5a5a"),
      fill(path, "url(#river)"),
    ) +
    many(95, (i) => {
      const t = ((i + 1) / 95) ** 0.9;
      const y = horizon + (h - horizon) * (0.08 + 0.98 * t);
      const side =
        chance() < 0.5 ? between(chance, -0.04, 0.5 - 0.33 * t) : between(chance, 0.62 + 0.14 * t, 1.04);
      return tuft(w * side, y, h * (0.02 + 0.12 * t));
    }) +
    grain(canvas, "silver", silver.ink, 0.2, 0.9)
  );
};
