import { around, between } from "../chance.ts";
import {
  blade,
  type Canvas,
  disc,
  fill,
  gouge,
  group,
  line,
  many,
  type Picture,
  rect,
  type Spot,
  straight,
} from "../svg.ts";
import { TONES } from "../tones.ts";

const { paper, ink } = TONES.relief;

/** The grain of a plank, printed faintly where the wood was left: long level lines that part round a knot. */
function planks(canvas: Canvas, colour: string, opacity: number, rows: number): string {
  const { chance, width: w, height: h } = canvas;
  const knot = { x: w * between(chance, 0.6, 0.85), y: h * between(chance, 0.12, 0.4) };
  return group(
    { opacity },
    many(rows, (i) => {
      const y = (h * (i + 0.5)) / rows;
      const push = (x: number) => {
        const off = y - knot.y || 1;
        return (
          (Math.sign(off) * 26 * Math.exp(-(((x - knot.x) / (w * 0.09)) ** 2))) / (1 + Math.abs(off) / 40)
        );
      };
      const spots: Spot[] = Array.from({ length: 13 }, (_, k) => {
        const x = (w * k) / 12;
        return [x, y + push(x) + around(chance) * 1.4];
      });
      return line(straight(spots), colour, between(chance, 0.6, 2));
    }),
  );
}

function water(canvas: Canvas, top: number, rows: number): string {
  const { chance, width: w, height: h } = canvas;
  return many(rows, (i) => {
    const t = i / rows;
    const y = top + (h - top) * t ** 1.15;
    return many(4, () => {
      const x = between(chance, -0.15, 0.95) * w;
      const long = w * between(chance, 0.06, 0.26) * (0.6 + t);
      return fill(
        gouge(chance, [x, y + around(chance) * 4], [x + long, y + around(chance) * 4], 3 + 5 * t),
        ink,
      );
    });
  });
}

/** A heron standing, neck folded, waiting. */
export const heron: Picture = (canvas) => {
  const { chance, width: w, height: h } = canvas;
  const u = w / 100;
  const feather = (x: number, y: number, long: number, turn: number, wide: number) => {
    const a = (turn * Math.PI) / 180;
    return fill(
      gouge(chance, [x * u, y * u], [(x + long * Math.cos(a)) * u, (y + long * Math.sin(a)) * u], wide * u),
      paper,
    );
  };
  const reeds = (from: number, to: number, count: number) =>
    many(count, () => {
      const x = between(chance, from, to) * w;
      const top = between(chance, 0.38, 0.72) * h;
      const lean = around(chance) * w * 0.07;
      return fill(
        blade(
          [
            [x, h * 0.9],
            [x + lean * 0.2, (h * 0.9 + top) / 2],
            [x + lean, top],
          ],
          between(chance, 5, 10),
        ),
        ink,
      );
    });
  return (
    rect(0, 0, w, h, paper) +
    planks(canvas, ink, 0.16, 44) +
    water(canvas, h * 0.855, 12) +
    reeds(0.78, 1, 15) +
    reeds(-0.02, 0.1, 6) +
    line(`M${57 * u} ${88 * u}L${55.5 * u} ${101 * u}L${57.5 * u} ${119 * u}`, ink, u * 1.5) +
    line(`M${64 * u} ${89 * u}L${66 * u} ${102 * u}L${63.5 * u} ${119 * u}`, ink, u * 1.5) +
    many(2, (i) => {
      const x = (i === 0 ? 57.5 : 63.5) * u;
      return many(3, (k) =>
        line(`M${x} ${119 * u}L${x + (k - 1.3) * 4.6 * u} ${(120.4 + (k % 2) * 0.5) * u}`, ink, u),
      );
    }) +
    fill(
      `M${43 * u} ${61 * u}C${40 * u} ${74 * u} ${48 * u} ${90 * u} ${62 * u} ${92 * u}C${74 * u} ${94 * u} ${82 * u} ${99 * u} ${93 * u} ${108 * u}C${91 * u} ${96 * u} ${86 * u} ${80 * u} ${76 * u} ${69 * u}C${68 * u} ${60 * u} ${58 * u} ${55 * u} ${50 * u} ${55 * u}Z`,
      ink,
    ) +
    line(
      `M${49 * u} ${63 * u}C${38 * u} ${60 * u} ${39 * u} ${49 * u} ${47 * u} ${44 * u}C${53 * u} ${40 * u} ${53 * u} ${34 * u} ${46 * u} ${30 * u}`,
      ink,
      u * 6.6,
    ) +
    line(
      `M${44.5 * u} ${60 * u}C${37.5 * u} ${57 * u} ${40 * u} ${50 * u} ${46 * u} ${46 * u}`,
      paper,
      u * 0.9,
      { "stroke-dasharray": `${u * 2.4} ${u * 1.5}` },
    ) +
    fill(
      `M${50 * u} ${33 * u}C${49.5 * u} ${25.5 * u} ${42 * u} ${23 * u} ${37 * u} ${26.4 * u}L${12 * u} ${32.4 * u}L${37.5 * u} ${32 * u}C${41 * u} ${35.4 * u} ${47 * u} ${37 * u} ${50 * u} ${33 * u}Z`,
      ink,
    ) +
    fill(gouge(chance, [16 * u, 31.6 * u], [37 * u, 29.2 * u], 0.7 * u), paper) +
    fill(
      blade(
        [
          [43 * u, 25.6 * u],
          [52 * u, 26.4 * u],
          [61 * u, 31 * u],
          [65 * u, 36 * u],
        ],
        u * 2.4,
      ),
      ink,
    ) +
    fill(gouge(chance, [38 * u, 26.4 * u], [47 * u, 27 * u], 1.1 * u), paper) +
    disc(41.4 * u, 28.9 * u, u * 1, paper) +
    disc(41.2 * u, 28.9 * u, u * 0.45, ink) +
    many(5, (i) => feather(47 + i * 1.4, 64 + i * 4.6, 6, 70 - i * 8, 0.9)) +
    many(8, (i) => feather(56 + i * 2.6, 63 + i * 1.5, 21 - i * 0.6, 49 + i * 1.5, 1.25)) +
    many(6, (i) => feather(55 + i * 3.6, 77 + i * 2, 15, 37 + i * 2, 1.2)) +
    many(4, (i) => feather(66 + i * 4, 88 + i * 2.4, 12, 40, 0.9)) +
    many(5, (i) => feather(44.5 + i * 1.5, 66 + i * 2.2, 10, 96, 0.55))
  );
};

/** A bittern among reeds, bill to the sky, trusting that it is a reed. */
export const bittern: Picture = (canvas) => {
  const { chance, width: w, height: h } = canvas;
  const u = w / 100;
  const reed = (x: number, colour: string, wide: number) => {
    const top = between(chance, -0.05, 0.34) * h;
    const lean = around(chance) * w * 0.06;
    return fill(
      blade(
        [
          [x, h * 1.02],
          [x + lean * 0.2, h * 0.66],
          [x + lean * 0.5, (h * 0.66 + top) / 2],
          [x + lean, top],
        ],
        wide,
      ),
      colour,
    );
  };
  const body: Spot[] = [
    [44, 130],
    [35, 112],
    [33, 92],
    [38, 74],
    [43, 60],
    [45.5, 46],
    [46, 36],
    [48.5, 12],
    [52.5, 34],
    [57, 40],
    [57.5, 50],
    [61, 64],
    [67, 82],
    [68, 104],
    [62, 122],
    [58, 132],
  ];
  return (
    rect(0, 0, w, h, paper) +
    planks(canvas, ink, 0.15, 40) +
    disc(w * 0.77, h * 0.16, w * 0.105, "none", { stroke: ink, "stroke-width": 5 }) +
    many(7, (i) =>
      fill(gouge(chance, [w * 0.69, h * (0.115 + i * 0.014)], [w * 0.85, h * (0.115 + i * 0.014)], 2.6), ink),
    ) +
    many(34, () => reed(between(chance, 0, 1) * w, ink, between(chance, 5, 13))) +
    fill(
      straight(
        body.map(([x, y]): Spot => [x * u, y * u]),
        true,
      ),
      paper,
      { stroke: paper, "stroke-width": 12, "stroke-linejoin": "round" },
    ) +
    fill(
      straight(
        body.map(([x, y]): Spot => [x * u, y * u]),
        true,
      ),
      ink,
      { stroke: ink, "stroke-width": 5, "stroke-linejoin": "round" },
    ) +
    disc(51.6 * u, 37.6 * u, u * 1.3, paper) +
    disc(51.4 * u, 37.6 * u, u * 0.55, ink) +
    fill(gouge(chance, [48.8 * u, 18 * u], [49.4 * u, 34 * u], 0.8 * u), paper) +
    many(15, (i) => {
      const y = (44 + i * 5.4) * u;
      const half = (3.2 + Math.min(i, 9) * 1.15) * u;
      return many(4, (k) => {
        const x = 50.6 * u + (k - 1.5) * half * 0.62;
        return fill(
          gouge(
            chance,
            [x - u * 0.6, y + around(chance) * u],
            [x + around(chance) * u, y + u * between(chance, 3.2, 4.8)],
            1.3 * u,
          ),
          paper,
        );
      });
    }) +
    many(15, () => reed(between(chance, 0, 0.38) * w, ink, between(chance, 6, 14))) +
    many(15, () => reed(between(chance, 0.66, 1) * w, ink, between(chance, 6, 14))) +
    many(9, () => reed(between(chance, 0, 1) * w, paper, between(chance, 3, 6))) +
    water(canvas, h * 0.93, 8)
  );
};
