import { around, between, upTo } from "../chance.ts";
import { disc, fill, gouge, many, rect, straight, type Picture, type Spot } from "../svg.ts";
import { TONES } from "../tones.ts";
import { cutSky } from "./relief.ts";

const { paper, ink } = TONES.relief;

/** A timber slip going down to the water between mooring posts. `low` is how far down the horizon lies. */
export const slip =
  (low: number, posts: number, moonAt: number): Picture =>
  (canvas) => {
    const { chance, width: w, height: h } = canvas;
    const horizon = h * low;
    const moon = { at: [w * moonAt, h * 0.17] as const, clear: w * 0.12 };
    const [top, foot] = [w * 0.055, w * 0.36];
    const vanish = w * 0.47;
    const half = (y: number) => top + ((foot - top) * (y - horizon)) / (h - horizon);
    const lean = (y: number) => vanish + (w * 0.03 * (y - horizon)) / (h - horizon);
    const planks: string[] = [];
    for (let y = horizon + 6, deep = 5; y < h; y += deep * 1.28, deep *= 1.075) {
      const edge = (yy: number, side: number) => lean(yy) + side * (half(yy) + around(chance) * 2);
      const spots: Spot[] = [
        [edge(y, -1), y + around(chance)],
        [edge(y, 1), y + around(chance)],
        [edge(y + deep, 1), y + deep + around(chance) * 1.5],
        [edge(y + deep, -1), y + deep],
      ];
      planks.push(fill(straight(spots, true), paper));
      planks.push(
        many(2, () => {
          const x = lean(y) + around(chance) * half(y) * 0.9;
          return fill(gouge(chance, [x, y + deep * 0.5], [x + half(y) * 0.4, y + deep * 0.55], 1.8), ink);
        }),
      );
    }
    const post = (i: number) => {
      const t = (i + 0.6) / posts;
      const y = horizon + (h - horizon) * t ** 1.7 * 0.82 + 14;
      const side = i % 2 === 0 ? -1 : 1;
      const x = lean(y) + side * (half(y) + w * (0.035 + 0.04 * t));
      const [tall, wide] = [h * (0.14 + 0.3 * t), w * (0.014 + 0.022 * t)];
      return (
        rect(x - wide / 2 - 2.5, y - tall - 3, wide + 5, tall + 3, paper) +
        rect(x - wide / 2, y - tall, wide, tall + h * 0.05, ink) +
        fill(gouge(chance, [x - wide * 0.22, y - tall + 6], [x - wide * 0.2, y - 4], wide * 0.26), paper) +
        many(5, () => {
          const yy = y - tall * between(chance, 0.1, 0.9);
          return fill(gouge(chance, [x, yy], [x + wide * 0.4, yy + 2], 1.6), paper);
        })
      );
    };
    return (
      rect(0, 0, w, h, ink) +
      cutSky(canvas, horizon - 4, Math.round(horizon / 15), moon) +
      disc(moon.at[0], moon.at[1], w * 0.082, paper) +
      rect(0, horizon - 3, w, 4, ink) +
      many(Math.round((h - horizon) / 13), (i) => {
        const y = horizon + 8 + i * 13;
        return many(3, () => {
          const x = between(chance, 0, 1) * w;
          const long = between(chance, 0.03, 0.12) * w * (0.5 + i / 30);
          return fill(
            gouge(chance, [x, y + around(chance) * 4], [x + long, y + around(chance) * 4], 2.6),
            paper,
          );
        });
      }) +
      fill(
        straight(
          [
            [vanish - top * 1.25, horizon],
            [vanish + top * 1.25, horizon],
            [lean(h) + foot * 1.1, h],
            [lean(h) - foot * 1.1, h],
          ],
          true,
        ),
        ink,
      ) +
      planks.join("") +
      upTo(posts).map(post).join("")
    );
  };
