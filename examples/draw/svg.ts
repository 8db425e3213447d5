import { around, between, type Chance, upTo } from "./chance.ts";

export type Spot = readonly [x: number, y: number];

/** What is drawn inside a picture: its width and height are in points of the drawing, not lengths. */
export interface Canvas {
  readonly chance: Chance;
  readonly width: number;
  readonly height: number;
}

export type Picture = (canvas: Canvas) => string;

const n = (value: number): string => String(Math.round(value * 10) / 10);

type Attributes = Readonly<Record<string, string | number>>;

export function tag(name: string, attributes: Attributes, inner = ""): string {
  const list = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${typeof value === "number" ? roundTo(value, 1000) : value}"`)
    .join("");
  return inner === "" ? `<${name}${list}/>` : `<${name}${list}>${inner}</${name}>`;
}

const roundTo = (value: number, parts: number): string => String(Math.round(value * parts) / parts);

export const group = (attributes: Attributes, ...inner: readonly string[]): string =>
  inner.length === 0 ? "" : tag("g", attributes, inner.join(""));

export const rect = (
  x: number,
  y: number,
  width: number,
  height: number,
  fill: string,
  more: Attributes = {},
) => tag("rect", { x, y, width, height, fill, ...more });

export const disc = (x: number, y: number, r: number, fill: string, more: Attributes = {}) =>
  tag("circle", { cx: x, cy: y, r, fill, ...more });

/** Straight from spot to spot. */
export const straight = (spots: readonly Spot[], closed = false): string =>
  `M${spots.map(([x, y]) => `${n(x)} ${n(y)}`).join("L")}${closed ? "Z" : ""}`;

/** A soft curve through every spot (a Catmull-Rom spline written as cubic Béziers). */
export function soft(spots: readonly Spot[]): string {
  const [first] = spots;
  if (!first) return "";
  const at = (i: number): Spot => spots[Math.min(spots.length - 1, Math.max(0, i))] ?? first;
  const curves = upTo(spots.length - 1).map((i) => {
    const [before, from, to, after] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    const one = [from[0] + (to[0] - before[0]) / 6, from[1] + (to[1] - before[1]) / 6];
    const two = [to[0] - (after[0] - from[0]) / 6, to[1] - (after[1] - from[1]) / 6];
    return `C${[...one, ...two, ...to].map((value) => n(value)).join(" ")}`;
  });
  return `M${n(first[0])} ${n(first[1])}${curves.join("")}`;
}

export const fill = (d: string, colour: string, more: Attributes = {}) =>
  tag("path", { d, fill: colour, ...more });

export const line = (d: string, colour: string, width: number, more: Attributes = {}) =>
  tag("path", {
    d,
    fill: "none",
    stroke: colour,
    "stroke-width": width,
    "stroke-linecap": "round",
    "stroke-linejoin": "round",
    ...more,
  });

/** One cut of a gouge or one stroke of a full pen: pointed at both ends, fullest near the middle, never quite straight. */
export function gouge(chance: Chance, from: Spot, to: Spot, width: number): string {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const long = Math.hypot(dx, dy) || 1;
  const [nx, ny] = [-dy / long, dx / long];
  const bend = around(chance) * Math.min(width * 1.5, long * 0.04);
  const side = (sign: number): Spot[] =>
    [0.2, 0.5, 0.8].map((t) => {
      const off =
        sign * (width / 2) * between(chance, 0.7, 1) * (t === 0.5 ? 1 : 0.75) + bend * Math.sin(t * Math.PI);
      return [from[0] + dx * t + nx * off, from[1] + dy * t + ny * off];
    });
  return straight([from, ...side(1), to, ...side(-1).toReversed()], true);
}

/** A leaf or a stem: a soft line through the spots whose width goes from `foot` to nothing at the last spot. */
export function blade(spots: readonly Spot[], foot: number): string {
  const sides = [1, -1].map((sign) =>
    spots.map(([x, y], i): Spot => {
      const [ax, ay] = spots[Math.max(0, i - 1)] ?? [x, y];
      const [bx, by] = spots[Math.min(spots.length - 1, i + 1)] ?? [x, y];
      const long = Math.hypot(bx - ax, by - ay) || 1;
      const half = (foot / 2) * (1 - i / (spots.length - 1)) ** 0.7;
      return [x - (sign * half * (by - ay)) / long, y + (sign * half * (bx - ax)) / long];
    }),
  );
  const [left = [], right = []] = sides;
  return `${soft(left)}${soft(right.toReversed()).replace("M", "L")}Z`;
}

/** A rough skyline from x = 0 to the full width, about the level `y`. */
export function ridge({ chance, width }: Canvas, y: number, height: number, steps = 64): Spot[] {
  const waves = upTo(5).map((k) => ({
    size: (height / (k + 1) ** 1.1) * between(chance, 0.4, 1),
    turns: between(chance, 0.5, 1.4) * (k + 1),
    start: chance() * 7,
  }));
  return upTo(steps + 1).map((i): Spot => {
    const t = i / steps;
    const rise = waves.reduce(
      (total, wave) => total + wave.size * Math.sin(t * wave.turns * 6.283 + wave.start),
      0,
    );
    return [t * width, y - rise * 0.5 - height * 0.2 * chance()];
  });
}

/** The area below a skyline down to `foot`. */
export const below = (spots: readonly Spot[], foot: number): string => {
  const first = spots[0] ?? [0, 0];
  const last = spots.at(-1) ?? first;
  return `${soft(spots)}L${n(last[0])} ${n(foot)}L${n(first[0])} ${n(foot)}Z`;
};

/** A vertical shade through `stops`, each [offset from 0 to 1, colour]; use it as `url(#id)`. */
export const shade = (id: string, stops: readonly (readonly [number, string])[], across = false): string =>
  tag(
    "linearGradient",
    { id, x1: 0, y1: 0, x2: across ? 1 : 0, y2: across ? 0 : 1 },
    stops.map(([offset, colour]) => tag("stop", { offset, "stop-color": colour })).join(""),
  );

export const glow = (
  id: string,
  x: number,
  y: number,
  r: number,
  stops: readonly (readonly [number, string, number])[],
): string =>
  tag(
    "radialGradient",
    { id, cx: x, cy: y, r },
    stops
      .map(([offset, colour, opacity]) =>
        tag("stop", { offset, "stop-color": colour, "stop-opacity": opacity }),
      )
      .join(""),
  );

export const blur = (id: string, size: number): string =>
  tag(
    "filter",
    { id, x: "-20%", y: "-20%", width: "140%", height: "140%" },
    tag("feGaussianBlur", { stdDeviation: size }),
  );

/** Grain over a whole picture: silver, aquatint, a dusty plate. `coarse` from 0.3 (coarse) to 1.2 (fine). */
export function grain(canvas: Canvas, id: string, colour: string, opacity: number, coarse = 0.8): string {
  const seed = Math.floor(canvas.chance() * 1000);
  const noise =
    tag("feTurbulence", { type: "fractalNoise", baseFrequency: coarse, numOctaves: 2, seed, result: "n" }) +
    tag("feColorMatrix", {
      in: "n",
      type: "matrix",
      values: "0 0 0 0 0  0 0 0 0 0  0 0 0 0 0  0 2.4 0 0 -0.9",
      result: "a",
    }) +
    tag("feFlood", { "flood-color": colour, result: "c" }) +
    tag("feComposite", { in: "c", in2: "a", operator: "in" });
  return (
    tag("filter", { id, x: 0, y: 0, width: 1, height: 1 }, noise) +
    rect(0, 0, canvas.width, canvas.height, colour, { filter: `url(#${id})`, opacity })
  );
}

/** Marks of chance: `count` of them, drawn one after the other. */
export const many = (count: number, draw: (i: number) => string): string => upTo(count).map(draw).join("");
