import { between } from "../chance.ts";
import { blur, disc, group, line, many, rect, tag, type Canvas } from "../svg.ts";
import { TONES } from "../tones.ts";

const { ink, deep, pale, mid } = TONES.cyanotype;

/** Prussian blue as a wide brush lays it: level strokes, some fuller than others, paler where the brush ran dry. */
export function ground(canvas: Canvas): string {
  const { chance, width: w, height: h } = canvas;
  return (
    tag("defs", {}, blur("wet", 14) + blur("far", 3)) +
    rect(0, 0, w, h, ink) +
    group(
      { filter: "url(#wet)" },
      many(16, () =>
        rect(
          -40,
          between(chance, -0.05, 1) * h,
          w + 80,
          h * between(chance, 0.02, 0.09),
          chance() < 0.6 ? deep : "#21598f",
          { opacity: between(chance, 0.2, 0.5) },
        ),
      ),
      rect(-30, -30, 60, h + 60, mid, { opacity: 0.35 }),
      rect(w - 26, -30, 60, h + 60, mid, { opacity: 0.3 }),
    ) +
    many(70, () => {
      const y = between(chance, 0, 1) * h;
      const x = between(chance, -0.2, 0.9) * w;
      return line(
        `M${Math.round(x)} ${Math.round(y)}h${Math.round(between(chance, 60, 300))}`,
        chance() < 0.5 ? deep : mid,
        between(chance, 0.5, 1.6),
        { opacity: 0.3 },
      );
    })
  );
}

export const specks = ({ chance, width: w, height: h }: Canvas, count: number): string =>
  many(count, () =>
    disc(chance() * w, chance() * h, between(chance, 0.6, 2), pale, { opacity: between(chance, 0.2, 0.8) }),
  );
