import { readdirSync, readFileSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";
import Papa from "papaparse";
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { listOf } from "../../examples/draw/list.ts";
import { LONG_EDGE, svgOf } from "../../examples/draw/picture.ts";
import { edgesOf, PRACTICE, SHOW, STOCK, WORKS } from "../../examples/draw/show.ts";
import type { Spot } from "../../examples/draw/svg.ts";
import type { Composition } from "../../src/assembly/index.ts";
import {
  composeFrom,
  practiceDocument,
  readPractice,
  showDocument,
  stockDocument,
  validate,
  worksOfWalls,
} from "../../src/show/index.ts";

const folder = fileURLToPath(new URL("../../examples/slack-water/", import.meta.url));
const json = (name: string): unknown => JSON.parse(readFileSync(`${folder}${name}`, "utf8"));

function composed(title: string): Composition {
  const work = SHOW.works.find((one) => one.title === title);
  const result = composeFrom(work?.design, PRACTICE);
  if (!result.ok) throw new Error(`${title}: ${JSON.stringify(result.problems)}`);
  return result.value;
}
const levels = (title: string, level: string): string[] =>
  composed(title)
    .checks.filter((check) => check.level === level)
    .map((check) => check.code);
const titles = SHOW.works.map(({ title }) => title);

describe("the documents", () => {
  test("[EX1] are of the open format", () => {
    expect(validate(showDocument, json("show.json"))).toMatchObject({ ok: true });
    expect(validate(practiceDocument, json("practice.json"))).toMatchObject({ ok: true });
    expect(validate(stockDocument, json("stock.json"))).toMatchObject({ ok: true });
    expect(readPractice(PRACTICE, "in")).toMatchObject({ ok: true });
    expect(readPractice(PRACTICE, "mm")).toMatchObject({ ok: true });
  });

  test("[EX1] hold boards that the rack has, for every mat", () => {
    const rack = new Set(STOCK.sheets.map(({ board }) => board));
    for (const title of titles) {
      for (const mat of composed(title).design.mats) expect(rack, title).toContain(mat.board);
    }
  });

  test("[EX2] are twenty-four works by four makers, in both units", () => {
    expect(SHOW.works).toHaveLength(24);
    expect(new Set(SHOW.works.map(({ id }) => id)).size).toBe(24);
    expect(new Set(SHOW.works.map(({ maker }) => maker)).size).toBe(4);
    expect(new Set(SHOW.works.map(({ design }) => design.unit))).toEqual(new Set(["in", "mm"]));
    const processes = SHOW.works.map(({ process = "" }) => process).join(", ");
    for (const kind of [
      "linocut",
      "woodcut",
      "etching",
      "mezzotint",
      "monotype",
      "gelatin silver",
      "cyanotype",
      "platinum",
    ]) {
      expect(processes).toContain(kind);
    }
  });

  test("[EX3] stop one work and warn of two", () => {
    const said = (level: string) => titles.filter((title) => levels(title, level).length > 0);
    expect(said("stop")).toEqual(["Two Sheds, Rain"]);
    expect(levels("Two Sheds, Rain", "stop")).toEqual(["hold-short"]);
    expect(said("warn")).toEqual(["Ferry Slip at Ebb", "Over the Staithe"]);
    expect(levels("Ferry Slip at Ebb", "warn")).toEqual(["edition-outlier"]);
    expect(levels("Over the Staithe", "warn")).toEqual(["reveal-off"]);
  });

  test("[EX4] hold each kind that needs its own rule", () => {
    expect(composed("Reed Cutters’ Ground").print?.imageOutline.length).toBeGreaterThan(100);
    expect(composed("Fog on the Bar").print?.sheetOutline?.length).toBeGreaterThan(100);
    expect(composed("Fog on the Bar").design.window.show).toBe("sheet");
    expect(composed("Bittern").print?.angle).toBe(-0.8);
    expect(composed("Ferry Slip at Ebb").print?.edition).toHaveLength(3);
    expect(composed("Ringed Plover Bank").mats).toHaveLength(2);
    expect(composed("Two Sheds, Rain").design.window.show).toBe("typed");
    expect(new Set(titles.map((title) => composed(title).design.lift.rule))).toEqual(
      new Set(["fixed", "optical", "ratio"]),
    );
  });

  test("[EX4] hang the pair alike: same window, same borders", () => {
    const [left, right] = [composed("Slack, left sheet"), composed("Slack, right sheet")];
    expect(left.mats[0]?.back).toEqual(right.mats[0]?.back);
    expect(left.mats[0]?.borders).toEqual(right.mats[0]?.borders);
  });
});

describe("the walls", () => {
  const shared = worksOfWalls(
    SHOW.walls ?? [],
    SHOW.works.map(({ title, wall }) => ({ title, wall, free: title !== "Two Sheds, Rain" })),
  );

  test("[EX10] take every work that can be made, the pair beside each other", () => {
    expect(SHOW.walls).toHaveLength(2);
    expect([shared.problems, shared.unhung]).toEqual([[], []]);
    expect(shared.ofWall.map((works) => works.length)).toEqual([12, 11]);
    expect(SHOW.works.find(({ title }) => title === "Slack, right sheet")?.with).toBe("Slack, left sheet");
  });
});

describe("the edges", () => {
  const strayed = WORKS.flatMap((work) => {
    const { image, sheet } = edgesOf(work);
    const [width, height] = work.sheet;
    return [
      ...(image ? [{ name: work.id, spots: image, area: work.image }] : []),
      ...(sheet ? [{ name: work.id, spots: sheet, area: { left: 0, top: 0, width, height } }] : []),
    ];
  });

  test("[EX5] are there to be tested", () => expect(strayed).toHaveLength(8));

  test.each(strayed)("[EX5] $name touches its rectangle and stays in it", ({ spots, area }) => {
    const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => y)];
    expect(Math.min(...xs)).toBeCloseTo(area.left, 9);
    expect(Math.min(...ys)).toBeCloseTo(area.top, 9);
    expect(Math.max(...xs)).toBeCloseTo(area.left + area.width, 9);
    expect(Math.max(...ys)).toBeCloseTo(area.top + area.height, 9);
  });

  test.each(strayed)("[EX5] $name does not cross itself", ({ spots }) => {
    const sides = spots.map((from, i) => [from, spots[(i + 1) % spots.length] ?? from] as const);
    const crossing = sides.flatMap((one, i) =>
      sides
        .slice(i + 2)
        .filter((other, k) => !(i === 0 && i + 2 + k === sides.length - 1) && cross(one, other)),
    );
    expect(crossing).toEqual([]);
  });
});

type Side = readonly [Spot, Spot];
const turn = ([a, b]: Side, c: Spot): number =>
  Math.sign((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
const cross = (one: Side, other: Side): boolean =>
  turn(one, other[0]) !== turn(one, other[1]) && turn(other, one[0]) !== turn(other, one[1]);

/** A picture in 60 by 60 greys, decoded whole first so that no decoder takes a short cut. */
async function small(picture: Buffer | string): Promise<Buffer> {
  const { data, info } = await sharp(picture)
    .flatten()
    .greyscale()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const { width, height, channels } = info;
  return sharp(data, { raw: { width, height, channels } })
    .resize(60, 60, { fit: "fill" })
    .greyscale()
    .raw()
    .toBuffer();
}

describe("the pictures", () => {
  test("[EX6] are one for each work and no other, in less than 3 MB", () => {
    const names = readdirSync(`${folder}pictures`);
    expect(names.toSorted()).toEqual(WORKS.map(({ id }) => `${id}.jpg`).toSorted());
    const bytes = names.reduce((sum, name) => sum + statSync(`${folder}pictures/${name}`).size, 0);
    expect(bytes).toBeLessThan(3_000_000);
  });

  test.each(WORKS)("[EX6] $id has the shape of its image", async (work) => {
    const { width, height } = await sharp(`${folder}pictures/${work.id}.jpg`).metadata();
    expect(Math.max(width, height)).toBe(LONG_EDGE);
    const shorter =
      (LONG_EDGE * Math.min(work.image.width, work.image.height)) /
      Math.max(work.image.width, work.image.height);
    expect(Math.abs(Math.min(width, height) - shorter)).toBeLessThanOrEqual(0.5);
    expect(width > height).toBe(work.image.width > work.image.height);
  });

  test("[EX7] are drawn the same each time", () => {
    for (const work of WORKS) expect(svgOf(work).svg, work.id).toBe(svgOf(work).svg);
  });

  // One of each process: rendering all again would take the suite's time.
  const oneOfEach = [...new Map(WORKS.map((work) => [work.work.process, work])).values()];
  test.each(oneOfEach)("[EX7] $id lies in the folder as it is drawn", async (work) => {
    const [drawn, kept] = await Promise.all([
      small(Buffer.from(svgOf(work).svg)),
      small(`${folder}pictures/${work.id}.jpg`),
    ]);
    // Another version of the renderer may differ by a shade, never by a thing drawn elsewhere.
    const worst = Math.max(...[...drawn].map((value, i) => Math.abs(value - (kept[i] ?? 0))));
    expect(worst).toBeLessThanOrEqual(8);
  });

  test("[EX7] differ from one another", () => {
    expect(new Set(WORKS.map((work) => svgOf(work).svg)).size).toBe(24);
  });
});

describe("what lies in the folder", () => {
  test("[EX7] is what the code makes", () => {
    expect(json("show.json")).toEqual(JSON.parse(JSON.stringify(SHOW)));
    expect(json("practice.json")).toEqual(PRACTICE);
    expect(json("stock.json")).toEqual(STOCK);
    expect(readFileSync(`${folder}list.csv`, "utf8")).toBe(listOf());
  });

  test("[EX8] has a list that says what a list can", () => {
    const { data, errors } = Papa.parse<Record<string, string>>(listOf().trimEnd(), { header: true });
    expect(errors).toEqual([]);
    expect(data.map((row) => row["title"])).toEqual(titles);
    expect(data.find((row) => row["title"] === "Bittern")).toMatchObject({
      maker: "T. Marrable",
      "sheet width (in)": "9 1/4",
      angle: "0.8",
      show: "overlap",
      "outer height (in)": "14",
    });
    expect(data.find((row) => row["title"] === "Neap")).toMatchObject({
      "sheet width (in)": "250 mm",
      "outer width (in)": "300 mm",
    });
    expect(data.find((row) => row["title"] === "Two Sheds, Rain")).toMatchObject({
      show: "",
      "window width (in)": "6 1/2",
      "image left (in)": "0",
    });
  });
});
