import { around, between } from "../chance.ts";
import {
  blur,
  disc,
  fill,
  glow,
  grain,
  group,
  line,
  many,
  rect,
  shade,
  soft,
  tag,
  type Picture,
} from "../svg.ts";
import { TONES } from "../tones.ts";

const { mezzotint } = TONES;

/** A buoy or a bell on a dark sea, brought up out of the black with a scraper. `low`: how low it rides. */
export const buoy =
  (bell: boolean): Picture =>
  (canvas) => {
    const { chance, width: w, height: h } = canvas;
    const sea = h * 0.6;
    const [x, s] = [w * (bell ? 0.46 : 0.54), w * (bell ? 0.3 : 0.24)];
    const cage = bell
      ? `M${x - s * 0.62} ${sea}L${x - s * 0.2} ${sea - s * 1.35}H${x + s * 0.2}L${x + s * 0.62} ${sea}H${x + s * 0.48}L${x + s * 0.12} ${sea - s * 1.2}H${x - s * 0.12}L${x - s * 0.48} ${sea}Z`
      : `M${x - s * 0.5} ${sea}L${x - s * 0.13} ${sea - s * 1.5}H${x + s * 0.13}L${x + s * 0.5} ${sea}Z`;
    return (
      tag(
        "defs",
        {},
        glow("lit", bell ? 0.46 : 0.54, bell ? 0.34 : 0.4, 0.62, [
          [0, mezzotint.pale, 1],
          [0.3, "#8d8371", 1],
          [0.75, "#38332b", 1],
          [1, mezzotint.ink, 1],
        ]) +
          shade("sea", [
            [0, "#4b453a"],
            [0.25, "#241f19"],
            [1, "#0f0d09"],
          ]) +
          blur("soft", 2.2) +
          blur("wide", 10),
      ) +
      rect(0, 0, w, sea, "url(#lit)") +
      rect(0, sea, w, h - sea, "url(#sea)") +
      group(
        { filter: "url(#wide)" },
        many(26, (i) => {
          const t = i / 26;
          const y = sea + 4 + (h - sea) * t;
          const half = w * between(chance, 0.03, 0.13) * (1.3 - t * 0.5);
          return line(
            `M${Math.round(x - half + around(chance) * 40)} ${Math.round(y)}h${Math.round(half * 2)}`,
            mezzotint.pale,
            5 + 3 * t,
            { opacity: 0.34 * (1.1 - t) },
          );
        }),
      ) +
      group(
        { filter: "url(#soft)" },
        many(34, (i) => {
          const t = i / 34;
          const y = sea + (h - sea) * t ** 1.3;
          const at = chance() * w;
          return line(
            soft([
              [at, y],
              [at + w * 0.05, y - 4 * (0.4 + t)],
              [at + w * 0.11, y],
            ]),
            "#6d6455",
            1.6 + 2 * t,
            { opacity: 0.42 },
          );
        }),
        tag(
          "g",
          { transform: `rotate(${bell ? -5 : 7} ${x} ${sea})` },
          fill(cage, mezzotint.ink) +
            (bell
              ? fill(
                  `M${x - s * 0.15} ${sea - s * 0.95}Q${x - s * 0.13} ${sea - s * 1.16} ${x} ${sea - s * 1.17}Q${x + s * 0.13} ${sea - s * 1.16} ${x + s * 0.15} ${sea - s * 0.95}L${x + s * 0.21} ${sea - s * 0.72}H${x - s * 0.21}Z`,
                  "#221d16",
                ) +
                line(`M${x} ${sea - s * 0.72}v${s * 0.16}`, "#221d16", 7) +
                line(`M${x - s * 0.4} ${sea - s * 0.5}H${x + s * 0.4}`, mezzotint.ink, 8)
              : disc(x, sea - s * 1.62, s * 0.16, mezzotint.ink) +
                line(`M${x - s * 0.2} ${sea - s * 0.2}L${x - s * 0.05} ${sea - s * 1.2}`, "#b3a78f", 5, {
                  opacity: 0.7,
                })) +
            (bell
              ? rect(x - s * 0.3, sea - s * 1.46, s * 0.6, s * 0.12, mezzotint.ink) +
                disc(x, sea - s * 1.58, s * 0.09, "#f2e9d4")
              : many(3, (i) =>
                  line(
                    `M${x - s * (0.42 - i * 0.1)} ${sea - s * (0.3 + i * 0.4)}H${x + s * (0.42 - i * 0.1)}`,
                    "#5a5142",
                    4,
                  ),
                )) +
            fill(
              `M${x - s * 0.86} ${sea - s * 0.12}Q${x} ${sea - s * 0.26} ${x + s * 0.86} ${sea - s * 0.12}L${x + s * 0.72} ${sea + s * 0.26}Q${x} ${sea + s * 0.36} ${x - s * 0.72} ${sea + s * 0.26}Z`,
              "#0e0b07",
            ) +
            line(
              `M${x - s * 0.8} ${sea - s * 0.12}Q${x} ${sea - s * 0.25} ${x + s * 0.4} ${sea - s * 0.19}`,
              "#a79b84",
              4,
              { opacity: 0.75 },
            ),
        ),
      ) +
      grain(canvas, "rocker", mezzotint.ink, 0.5, 0.55) +
      grain(canvas, "burnish", mezzotint.pale, 0.1, 0.6)
    );
  };
