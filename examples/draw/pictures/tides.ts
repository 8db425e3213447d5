import { around, between, upTo } from "../chance.ts";
import { disc, fill, group, line, many, soft, type Canvas, type Picture, type Spot } from "../svg.ts";
import { TONES } from "../tones.ts";
import { ground, specks } from "./cyanotype.ts";

const { ink, deep, pale } = TONES.cyanotype;

/** Lines of a swell from the horizon to the foot, drawn across `span` of the canvas's own width so that one sea can lie over two prints. */
function swell(
  { chance, width: w, height: h }: Canvas,
  horizon: number,
  rows: number,
  rough: number,
): string {
  return many(rows, (i) => {
    const t = (i + 1) / rows;
    const y = horizon + (h - horizon) * t ** 1.55;
    const waves = upTo(3).map((k) => ({
      size: (rough * (2 + 26 * t)) / (k + 1),
      turns: between(chance, 0.8, 1.6) * (k + 1) * (2.4 - 1.3 * t),
      start: chance() * 7,
    }));
    const spots = upTo(49).map((k): Spot => {
      const x = (w * k) / 48;
      return [
        x,
        y +
          waves.reduce(
            (sum, wave) => sum + wave.size * Math.sin((k / 48) * wave.turns * 6.28 + wave.start),
            0,
          ),
      ];
    });
    const dash =
      t < 0.5 || chance() < 0.3
        ? {
            "stroke-dasharray": `${Math.round(between(chance, 60, 260))} ${Math.round(between(chance, 6, 40))}`,
          }
        : {};
    return line(soft(spots), t > 0.55 ? pale : "#9fc0d8", 1.2 + 2.4 * t, {
      opacity: between(chance, 0.6, 1),
      ...dash,
    });
  });
}

function track({ chance, height: h }: Canvas, x: number, horizon: number, spread: number): string {
  return many(46, (i) => {
    const t = i / 46;
    const y = horizon + 6 + (h - horizon) * t;
    const half = spread * (0.25 + t) * between(chance, 0.25, 1);
    const mx = x + around(chance) * spread * (0.2 + t);
    return line(`M${Math.round(mx - half)} ${Math.round(y)}H${Math.round(mx + half)}`, pale, 1.6 + 3 * t, {
      opacity: 0.85,
    });
  });
}

/** Four nights' tides in one sheet, under a young moon. */
export const springTide: Picture = (canvas) => {
  const { chance, width: w, height: h } = canvas;
  const horizon = h * 0.37;
  return (
    ground(canvas) +
    disc(w * 0.2, h * 0.18, h * 0.085, pale) +
    disc(w * 0.222, h * 0.166, h * 0.083, ink) +
    many(36, () =>
      disc(chance() * w, chance() * horizon * 0.9, between(chance, 0.8, 2.2), pale, {
        opacity: between(chance, 0.4, 0.95),
      }),
    ) +
    swell(canvas, horizon, 24, 1) +
    specks(canvas, 30)
  );
};

/** The turn of the tide over two sheets: `panel` 0 is the left one. Both are cut from one sea. */
export const slack =
  (panel: 0 | 1): Picture =>
  (canvas) => {
    const { chance, width: w, height: h } = canvas;
    const both = { chance, width: w * 2, height: h };
    const horizon = h * 0.44;
    const shore = upTo(33).map((i): Spot => {
      const t = i / 32;
      return [
        w * 2 * t,
        horizon - h * 0.085 * Math.exp(-(((t - 0.72) / 0.2) ** 2)) - 3 * Math.sin(t * 23) - 4 * chance(),
      ];
    });
    const sea =
      ground(both) +
      disc(w * 0.62, h * 0.19, h * 0.08, pale) +
      many(60, () =>
        disc(chance() * w * 2, chance() * horizon * 0.8, between(chance, 0.8, 2), pale, {
          opacity: between(chance, 0.4, 0.9),
        }),
      ) +
      fill(`${soft(shore)}L${w * 2} ${horizon + 2}L0 ${horizon + 2}Z`, deep) +
      swell(both, horizon, 18, 0.32) +
      track(both, w * 0.62, horizon, w * 0.07) +
      specks(both, 40);
    return group({ transform: `translate(${-panel * w} 0)` }, sea);
  };
