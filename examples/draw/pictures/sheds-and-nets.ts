import { around, between, upTo } from "../chance.ts";
import { disc, fill, gouge, many, rect, type Picture, type Spot } from "../svg.ts";
import { TONES } from "../tones.ts";
import { cutSky, glitter, shed, rain } from "./relief.ts";

const { paper, ink } = TONES.relief;

/** Two sheds on the hard, and rain. */
export const shedsInRain: Picture = (canvas) => {
  const { chance, width: w, height: h } = canvas;
  const ground = h * 0.74;
  return (
    rect(0, 0, w, h, ink) +
    rain(canvas, ground * 0.98, 230) +
    shed(canvas, w * 0.1, ground, w * 0.34, h * 0.33) +
    shed(canvas, w * 0.56, ground + 8, w * 0.31, h * 0.27) +
    many(18, (i) => {
      const y = ground + 16 + i * (h - ground) * 0.052;
      return many(4, () => {
        const x = between(chance, -0.05, 0.95) * w;
        return fill(
          gouge(chance, [x, y], [x + w * between(chance, 0.06, 0.3), y + around(chance) * 5], 3 + i * 0.2),
          paper,
        );
      });
    })
  );
};

/** One shed on legs over a sluice, and what the moon does to the water. */
export const sluice: Picture = (canvas) => {
  const { chance, width: w, height: h } = canvas;
  const [deck, water] = [h * 0.56, h * 0.69];
  const moon = { at: [w * 0.8, h * 0.14] as const, clear: w * 0.13 };
  return (
    rect(0, 0, w, h, ink) +
    cutSky(canvas, deck, 27, moon) +
    disc(moon.at[0], moon.at[1], w * 0.085, paper) +
    rect(w * 0.06, deck - h * 0.36, w * 0.66, h * 0.372, ink) +
    shed(canvas, w * 0.16, deck, w * 0.42, h * 0.31) +
    rect(0, deck + 4, w, 15, paper) +
    many(17, (i) =>
      fill(gouge(chance, [w * (i / 17) + 14, deck + 5], [w * (i / 17) + 15, deck + 18], 2.6), ink),
    ) +
    rect(0, deck + 19, w, water - deck - 12, ink) +
    many(6, (i) => rect(w * (0.07 + i * 0.165), deck + 19, w * 0.032, water - deck + (i % 2) * 12, paper)) +
    many(6, (i) =>
      fill(gouge(chance, [w * (0.085 + i * 0.165), deck + 24], [w * (0.086 + i * 0.165), water - 4], 6), ink),
    ) +
    many(26, (i) => {
      const y = water + 6 + (i * (h - water)) / 26;
      return many(3, () => {
        const x = between(chance, -0.1, 0.9) * w;
        return fill(
          gouge(chance, [x, y], [x + w * between(chance, 0.05, 0.2), y + around(chance) * 3], 2.8),
          paper,
        );
      });
    }) +
    glitter(canvas, w * 0.8, water + 4, h, w * 0.13, 40)
  );
};

/** Nets hung from a rail to dry, with their floats. */
export const nets: Picture = (canvas) => {
  const { chance, width: w, height: h } = canvas;
  const rail = h * 0.17;
  const sag = (x: number) => Math.sin((x / w) * Math.PI * 3) ** 2 * h * 0.05;
  const foot = (x: number) => h * 0.83 + Math.sin((x / w) * 5 + 1) * h * 0.035;
  const cells = 15;
  const strand = (i: number, lean: number) => {
    const spots = upTo(25).map((k): Spot => {
      const t = k / 24;
      const x = (w * (i + lean * t * cells * 0.72)) / cells + Math.sin(t * 9 + i) * 2.4;
      return [x, rail + sag(x) + t * (foot(x) - rail - sag(x))];
    });
    return many(24, (k) => {
      const [a, b] = [spots[k], spots[k + 1]];
      return a && b ? fill(gouge(chance, a, b, 4.4), paper) : "";
    });
  };
  return (
    rect(0, 0, w, h, ink) +
    cutSky({ ...canvas, height: rail }, rail - 12, 9) +
    many(cells * 2, (i) => strand(i - cells * 0.5, 1)) +
    many(cells * 2, (i) => strand(i - cells * 0.2, -1)) +
    rect(0, rail - 8, w, 9, paper) +
    many(4, (i) => rect(w * (0.06 + i * 0.29), rail - 42, w * 0.024, h * 0.86 - rail, paper)) +
    many(4, (i) => rect(w * (0.068 + i * 0.29), rail - 36, w * 0.008, h * 0.84 - rail, ink)) +
    many(11, (i) => {
      const x = w * (0.02 + i * 0.094) + around(chance) * 6;
      return (
        tagFloat(x, rail + sag(x) + 13, w * 0.03, w * 0.021) +
        fill(
          gouge(chance, [x - w * 0.012, rail + sag(x) + 15], [x + w * 0.014, rail + sag(x) + 14], 2.4),
          ink,
        )
      );
    }) +
    rect(0, h * 0.885, w, h * 0.12, ink) +
    many(10, (i) =>
      many(5, () => {
        const x = between(chance, -0.1, 0.95) * w;
        const y = h * 0.892 + i * h * 0.011;
        return fill(
          gouge(chance, [x, y], [x + w * between(chance, 0.05, 0.22), y + around(chance) * 3], 3.4),
          paper,
        );
      }),
    )
  );
};

const tagFloat = (x: number, y: number, rx: number, ry: number): string =>
  `<ellipse cx="${Math.round(x)}" cy="${Math.round(y)}" rx="${Math.round(rx)}" ry="${Math.round(ry)}" fill="${paper}" stroke="${ink}" stroke-width="3"/>`;
