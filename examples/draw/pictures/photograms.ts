import { around, between, upTo, type Chance } from "../chance.ts";
import { blade, fill, group, line, many, soft, tag, type Picture, type Spot } from "../svg.ts";
import { TONES } from "../tones.ts";
import { ground, specks } from "./cyanotype.ts";

const { deep, pale, mid } = TONES.cyanotype;

/** A stem from the foot of the picture, leaning `lean` by its top. */
function stem(chance: Chance, x: number, foot: number, top: number, lean: number): Spot[] {
  const sway = around(chance) * 14;
  return upTo(7).map((i): Spot => {
    const t = i / 6;
    return [x + lean * t ** 1.9 + sway * Math.sin(t * 3.1), foot + (top - foot) * t];
  });
}

function reed(chance: Chance, x: number, foot: number, top: number, tone: string, wide: number): string {
  const spots = stem(chance, x, foot, top, around(chance) * 70);
  const [tipX, tipY] = spots.at(-1) ?? [x, top];
  const [backX, backY] = spots.at(-2) ?? [x, foot];
  const turn = Math.atan2(tipY - backY, tipX - backX);
  const plume = many(26, (i) => {
    const t = i / 26;
    const long = between(chance, 14, 34) * (1 - t * 0.6);
    const side = turn + (chance() < 0.5 ? -1 : 1) * between(chance, 0.25, 0.7) + 0.2;
    const [px, py] = [tipX - Math.cos(turn) * 62 * (t - 0.35), tipY - Math.sin(turn) * 62 * (t - 0.35)];
    return fill(
      blade(
        [
          [px, py],
          [px + Math.cos(side) * long * 0.6, py + Math.sin(side) * long * 0.6],
          [px + Math.cos(side + 0.25) * long, py + Math.sin(side + 0.25) * long],
        ],
        3.4,
      ),
      tone,
    );
  });
  const leaves = many(3, (k) => {
    const from = spots[1 + k];
    if (!from) return "";
    const out = (chance() < 0.5 ? -1 : 1) * between(chance, 40, 100);
    const rise = between(chance, 110, 210);
    return fill(
      blade(
        [
          from,
          [from[0] + out * 0.25, from[1] - rise * 0.5],
          [from[0] + out * 0.7, from[1] - rise * 0.86],
          [from[0] + out * 1.25, from[1] - rise * 0.8],
        ],
        wide * 1.7,
      ),
      tone,
    );
  });
  return fill(blade(spots, wide), tone) + plume + leaves;
}

/** Reeds laid on the coated paper in the sun. */
export const reeds =
  (count: number): Picture =>
  (canvas) => {
    const { chance, width: w, height: h } = canvas;
    const rank = (tone: string, size: number, opacity: number, shown: number, filter?: string) =>
      group(
        { opacity, ...(filter ? { filter } : {}) },
        many(shown, (i) =>
          reed(
            chance,
            ((i + 0.5 + around(chance) * 0.7) / shown) * w,
            h + 10,
            h * between(chance, 0.09, 0.5) * size,
            tone,
            between(chance, 4, 7),
          ),
        ),
      );
    return (
      ground(canvas) +
      rank(mid, 0.7, 0.7, count, "url(#far)") +
      rank("#8fb3cf", 1, 0.75, Math.round(count * 0.6)) +
      rank(pale, 1.25, 0.95, Math.round(count * 0.45)) +
      specks(canvas, 60)
    );
  };

/** Eelgrass: ribbons only, combed by a current. */
export const eelgrass: Picture = (canvas) => {
  const { chance, width: w, height: h } = canvas;
  const ribbon = (tone: string, wide: number) => {
    const x = between(chance, -0.25, 0.95) * w;
    const [bend, turns, start] = [
      between(chance, 0.03, 0.1) * w,
      between(chance, 0.6, 1),
      between(chance, 0, 0.8),
    ];
    const top = h * between(chance, 0.04, 0.45);
    const spots = upTo(11).map((i): Spot => {
      const t = i / 10;
      return [
        x + w * 0.3 * t ** 1.3 + bend * Math.sin(t * 6.28 * turns + start),
        h * 1.03 + (top - h * 1.03) * t,
      ];
    });
    return fill(blade(spots, wide), tone) + line(soft(spots), deep, 0.9, { opacity: 0.25 });
  };
  return (
    ground(canvas) +
    group(
      { opacity: 0.6, filter: "url(#far)" },
      many(40, () => ribbon(mid, between(chance, 8, 16))),
    ) +
    group(
      { opacity: 0.7 },
      many(26, () => ribbon("#8fb3cf", between(chance, 9, 16))),
    ) +
    group(
      { opacity: 0.95 },
      many(17, () => ribbon(pale, between(chance, 10, 18))),
    ) +
    specks(canvas, 90)
  );
};

/** Samphire: jointed stems that branch in pairs, each joint a little bead. */
export const samphire: Picture = (canvas) => {
  const { chance, width: w, height: h } = canvas;
  const grow = (x: number, y: number, turn: number, long: number, joints: number, tone: string): string => {
    if (joints === 0) return "";
    const [nx, ny] = [x + Math.cos(turn) * long, y + Math.sin(turn) * long];
    const [mx, my] = [(x + nx) / 2, (y + ny) / 2];
    const bead = tag("ellipse", {
      cx: mx,
      cy: my,
      rx: long * 0.54,
      ry: long * (0.11 + 0.009 * joints),
      fill: tone,
      transform: `rotate(${Math.round((turn * 180) / Math.PI)} ${Math.round(mx)} ${Math.round(my)})`,
    });
    const straightOn = turn + around(chance) * 0.1 - (turn + Math.PI / 2) * 0.14;
    const up = grow(nx, ny, straightOn, long * 0.985, joints - 1, tone);
    const forks =
      joints > 3 && joints % 2 === 0 && joints < 15
        ? [-1, 1]
            .map((side) =>
              grow(
                nx,
                ny,
                turn + side * between(chance, 0.5, 0.74),
                long * 0.86,
                Math.floor(joints / 2),
                tone,
              ),
            )
            .join("")
        : "";
    return bead + up + forks;
  };
  const plant = (at: number, size: number, tone: string) =>
    grow(w * at, h * 1.02, -Math.PI / 2 + around(chance) * 0.12, h * 0.0575 * size, 17, tone);
  return (
    ground(canvas) +
    group({ opacity: 0.65, filter: "url(#far)" }, ...[0.2, 0.62, 0.95].map((at) => plant(at, 1.02, mid))) +
    group({ opacity: 0.8 }, ...[0.36, 0.83].map((at) => plant(at, 0.86, "#8fb3cf"))) +
    group({ opacity: 0.96 }, plant(0.56, 0.98, pale), plant(0.1, 0.74, pale)) +
    specks(canvas, 80)
  );
};
