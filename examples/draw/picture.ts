import sharp from "sharp";
import { chanceFrom } from "./chance.ts";
import { edgesOf } from "./show.ts";
import { fill, straight, tag } from "./svg.ts";
import type { ExampleWork } from "./work.ts";

/** The longer side of every picture, in pixels. */
export const LONG_EDGE = 900;

/** A work's picture as SVG: the image's own rectangle, level, with bare paper where a brushed edge strays inside it. */
export function svgOf(work: ExampleWork): { svg: string; width: number; height: number } {
  const scale = LONG_EDGE / Math.max(work.image.width, work.image.height);
  const width = Math.round(work.image.width * scale);
  const height = Math.round(work.image.height * scale);
  const drawn = work.draw({ chance: chanceFrom(work.seed ?? work.id), width, height });
  const edge = edgesOf(work).image;
  const clip = edge?.map(([x, y]) => [(x - work.image.left) * scale, (y - work.image.top) * scale] as const);
  const inside = clip
    ? tag("clipPath", { id: "brushed" }, fill(straight(clip, true), "#000")) +
      tag("rect", { x: 0, y: 0, width, height, fill: work.paper ?? "#fff" }) +
      tag("g", { "clip-path": "url(#brushed)" }, drawn)
    : drawn;
  return {
    svg: `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">${inside}</svg>`,
    width,
    height,
  };
}

export const jpegOf = (work: ExampleWork): Promise<Buffer> =>
  sharp(Buffer.from(svgOf(work).svg))
    .flatten({ background: "#fff" })
    .jpeg({ quality: 80, mozjpeg: true })
    .toBuffer();
