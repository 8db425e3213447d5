import { around, between } from "../chance.ts";
import { fill, gouge, many, rect, straight, type Canvas, type Spot } from "../svg.ts";
import { TONES } from "../tones.ts";

const { paper, ink } = TONES.relief;

/** A sky cleared with the gouge: long level cuts, closer and longer towards `foot`, none within `clear` of `moon`. */
export function cutSky(
  canvas: Canvas,
  foot: number,
  rows: number,
  moon?: { at: Spot; clear: number },
): string {
  const { chance, width } = canvas;
  return many(rows, (i) => {
    const y = foot * (0.02 + 0.98 * (1 - (1 - i / rows) ** 1.3));
    return many(5, () => {
      const x = between(chance, -0.1, 1) * width;
      const long = between(chance, 0.08, 0.32) * width * (0.5 + y / foot);
      const end = Math.min(x + long, width * 1.02);
      if (
        moon &&
        Math.abs(y - moon.at[1]) < moon.clear &&
        x < moon.at[0] + moon.clear &&
        end > moon.at[0] - moon.clear
      )
        return "";
      return fill(
        gouge(chance, [x, y + around(chance) * 4], [end, y + around(chance) * 5], between(chance, 1.6, 4.2)),
        paper,
      );
    });
  });
}

/** Light on dark water: short cuts under `middle`, scattered wider towards the foot. */
export function glitter(
  canvas: Canvas,
  middle: number,
  top: number,
  foot: number,
  spread: number,
  rows: number,
): string {
  const { chance } = canvas;
  return many(rows, (i) => {
    const t = i / rows;
    const y = top + (foot - top) * t;
    const x = middle + around(chance) * spread * (0.3 + t);
    const long = between(chance, 0.15, 0.6) * spread * (0.5 + t);
    return fill(gouge(chance, [x - long, y], [x + long, y + around(chance) * 2], 2 + 4 * t), paper);
  });
}

export function shed(canvas: Canvas, x: number, foot: number, wide: number, tall: number): string {
  const { chance } = canvas;
  const roof = tall * 0.44;
  const eaves = foot - tall + roof;
  const boards = Math.round(wide / 13);
  const door = wide * 0.3;
  return (
    fill(
      straight(
        [
          [x, foot],
          [x, eaves],
          [x + wide / 2, foot - tall],
          [x + wide, eaves],
          [x + wide, foot],
        ],
        true,
      ),
      paper,
    ) +
    many(boards, (i) => {
      const bx = x + ((i + 0.5) * wide) / boards;
      const reach = eaves - roof * (1 - Math.abs(2 * (bx - x) - wide) / wide);
      return fill(gouge(chance, [bx, reach + 8], [bx + around(chance) * 2, foot - 3], 3.4), ink);
    }) +
    rect(x + wide * 0.36, foot - tall * 0.36, door, tall * 0.36, ink) +
    fill(
      gouge(
        chance,
        [x + wide * 0.36 + door * 0.2, foot - tall * 0.2],
        [x + wide * 0.36 + door * 0.2, foot - tall * 0.12],
        4,
      ),
      paper,
    ) +
    fill(
      straight(
        [
          [x - wide * 0.09, eaves + 7],
          [x + wide / 2, foot - tall - 10],
          [x + wide * 1.09, eaves + 7],
          [x + wide * 1.09, eaves - 6],
          [x + wide / 2, foot - tall - 25],
          [x - wide * 0.09, eaves - 6],
        ],
        true,
      ),
      paper,
    ) +
    many(13, (i) => {
      const t = (i + 0.5) / 13;
      const rx = x + wide * t;
      const ry = foot - tall - 17 + roof * Math.abs(2 * t - 1) * 1.02;
      return fill(gouge(chance, [rx, ry - 5], [rx + 1, ry + 6], 2.2), ink);
    })
  );
}

export function rain(canvas: Canvas, foot: number, count: number): string {
  const { chance, width: w } = canvas;
  return many(count, () => {
    const x = between(chance, -0.1, 1.1) * w;
    const y = between(chance, -0.05, 1) * foot;
    const long = between(chance, 26, 84);
    return fill(gouge(chance, [x, y], [x - long * 0.3, y + long], between(chance, 1.8, 3.6)), paper);
  });
}
