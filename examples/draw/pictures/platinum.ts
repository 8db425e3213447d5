import { between } from "../chance.ts";
import {
  below,
  blur,
  fill,
  grain,
  group,
  line,
  many,
  rect,
  ridge,
  shade,
  tag,
  type Picture,
} from "../svg.ts";
import { TONES } from "../tones.ts";
import { clouds } from "./skies.ts";

const { platinum } = TONES;

/** Dead calm at neaps: one open boat on its own reflection, in platinum. */
export const neap: Picture = (canvas) => {
  const { chance, width: w, height: h } = canvas;
  const shore = h * 0.4;
  const hull = (y: number, flip: number) =>
    `M${w * 0.36} ${y}Q${w * 0.4} ${y + flip * h * 0.105} ${w * 0.5} ${y + flip * h * 0.108}Q${w * 0.61} ${y + flip * h * 0.1} ${w * 0.66} ${y - flip * h * 0.03}Q${w * 0.5} ${y + flip * h * 0.018} ${w * 0.36} ${y}Z`;
  return (
    tag(
      "defs",
      {},
      shade("sky", [
        [0, "#c9bca6"],
        [0.6, "#e3d9c6"],
        [1, "#efe7d8"],
      ]) +
        shade("sea", [
          [0, "#e9dfcd"],
          [0.55, "#c4b7a0"],
          [1, "#8e826f"],
        ]) +
        blur("cloud", 18) +
        blur("soft", 1.8) +
        blur("wide", 5),
    ) +
    rect(0, 0, w, shore, "url(#sky)") +
    clouds(canvas, shore * 0.8, 9, "#f2ebdd", "#b3a690") +
    rect(0, shore, w, h - shore, "url(#sea)") +
    group(
      { filter: "url(#soft)" },
      fill(below(ridge(canvas, shore - h * 0.018, h * 0.05), shore + 1), "#8f8371"),
    ) +
    group({ filter: "url(#wide)", opacity: 0.5 }, rect(0, shore, w, h * 0.055, "#8f8371")) +
    group(
      { filter: "url(#wide)", opacity: 0.75 },
      fill(hull(h * 0.735, -0.86), "#4b4338"),
      rect(w * 0.465, h * 0.73, w * 0.008, h * 0.2, "#6a6051"),
    ) +
    group(
      { filter: "url(#soft)" },
      rect(w * 0.466, h * 0.27, w * 0.007, h * 0.36, platinum.ink),
      fill(hull(h * 0.62, 1), platinum.ink),
      line(`M${w * 0.36} ${h * 0.62}Q${w * 0.5} ${h * 0.638} ${w * 0.66} ${h * 0.59}`, "#d5c9b4", 3.2),
      line(`M${w * 0.469} ${h * 0.28}L${w * 0.645} ${h * 0.595}`, platinum.ink, 1.2),
      line(`M${w * 0.36} ${h * 0.625}Q${w * 0.25} ${h * 0.68} ${w * 0.17} ${h * 0.8}`, platinum.ink, 1.6),
    ) +
    many(34, (i) => {
      const y = shore + (h - shore) * ((i + 1) / 35);
      const x = between(chance, -0.1, 0.8) * w;
      return line(
        `M${Math.round(x)} ${Math.round(y)}h${Math.round(w * between(chance, 0.08, 0.36))}`,
        chance() < 0.6 ? "#f3ecdf" : platinum.mid,
        between(chance, 0.8, 2.4),
        { opacity: 0.33 },
      );
    }) +
    grain(canvas, "tooth", platinum.ink, 0.15, 0.75)
  );
};
