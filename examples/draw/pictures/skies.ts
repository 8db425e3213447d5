import { between } from "../chance.ts";
import { group, many, tag, type Canvas } from "../svg.ts";

export function clouds(
  { chance, width: w }: Canvas,
  foot: number,
  count: number,
  light: string,
  dark: string,
): string {
  return group(
    { filter: "url(#cloud)" },
    many(count, () => {
      const [x, y] = [chance() * w, between(chance, 0.05, 0.95) * foot];
      const wide = w * between(chance, 0.1, 0.34);
      return tag("ellipse", {
        cx: x,
        cy: y,
        rx: wide,
        ry: wide * between(chance, 0.05, 0.13),
        fill: chance() < 0.55 ? light : dark,
        opacity: between(chance, 0.25, 0.6),
      });
    }),
  );
}
