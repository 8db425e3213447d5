import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inflateSync } from "node:zlib";
import { afterAll, describe, expect, test } from "vitest";
import type { Drawing, Mark, Run } from "../../src/drawings/index.ts";
import { pdfTypeface, writePdf } from "../../src/drawings/writers/pdf/index.ts";
import { mm, ZERO } from "../../src/lengths/index.ts";
import { benchSheet, type Page } from "../../src/papers/index.ts";
import { INCH_DESIGN, jobOf, METRIC_DESIGN } from "./fixtures.ts";

const typeface = pdfTypeface();
const hasPoppler = ["pdftotext", "pdftoppm", "pdffonts", "pdfinfo"].every(
  (program) => spawnSync(program, ["-v"]).error === undefined,
);
const why = hasPoppler ? "" : " (skipped: poppler-utils is not installed)";
const folder = mkdtempSync(join(tmpdir(), "margent-papers-"));
afterAll(() => rmSync(folder, { recursive: true }));

const DATE = new Date("2026-11-25T09:00:00Z");
const bytesOf = (pages: Iterable<Drawing>): Promise<Uint8Array> =>
  writePdf(pages, { date: DATE, title: "Bench sheets", language: "en-US", typeface });

async function fileOf(name: string, pages: Iterable<Drawing>): Promise<string> {
  const path = join(folder, name);
  writeFileSync(path, await bytesOf(pages));
  return path;
}

const run = (program: string, ...given: string[]): string =>
  execFileSync(program, given, { encoding: "utf8", maxBuffer: 1 << 26 });

const page = (...marks: Mark[]): Drawing => ({ width: mm(210), height: mm(297), marks });
const line = (y: number, ...runs: Run[]): Mark => ({
  kind: "text",
  at: { x: mm(20), y: mm(y) },
  runs,
  size: mm(5),
  weight: "semibold",
  anchor: "start",
});
const text = (words: string): Run => ({ kind: "text", text: words });
const figure = (whole: string, numerator = "", denominator = ""): Run => ({
  kind: "fraction",
  whole,
  numerator,
  denominator,
});

/** Middles of the dark runs along one line of pixels, in pixels. */
function ticksAlong(pixels: Uint8Array): readonly number[] {
  const middles: number[] = [];
  let start = -1;
  for (let at = 0; at <= pixels.length; at++) {
    const dark = at < pixels.length && (pixels[at] ?? 255) < 128;
    if (dark && start < 0) start = at;
    if (!dark && start >= 0) {
      middles.push((start + at - 1) / 2);
      start = -1;
    }
  }
  return middles;
}

const DPI = 1200;
const pixelsOf = (millimetres: number): number => Math.round((millimetres / 25.4) * DPI);

/** A strip of one page's pixels, grey, as poppler draws them. */
function strip(
  file: string,
  number: number,
  x: number,
  y: number,
  width: number,
  height: number,
): Uint8Array {
  const given = [
    "-gray",
    "-r",
    DPI,
    "-f",
    number,
    "-l",
    number,
    "-x",
    x,
    "-y",
    y,
    "-W",
    width,
    "-H",
    height,
    file,
  ];
  const image = execFileSync("pdftoppm", given.map(String), { maxBuffer: 1 << 28 });
  return image.subarray(image.length - width * height);
}

describe.each(["a4", "letter"] as const)("on %s", (paper) => {
  test.skipIf(!hasPoppler)(
    `[PP2] the corner rule is true on both axes of every rendered page${why}`,
    async () => {
      const pages: readonly Page[] = [
        ...benchSheet(jobOf(INCH_DESIGN), paper, typeface),
        ...benchSheet(jobOf(METRIC_DESIGN), paper, typeface),
      ];
      const file = await fileOf(`rule-${paper}.pdf`, pages);
      const height = paper === "a4" ? 297 : 279.4;
      for (const number of pages.keys()) {
        // A line of pixels 1 mm inside each bar crosses its millimetre ticks and nothing else.
        const along = strip(file, number + 1, pixelsOf(8), pixelsOf(height - 10 - 1), pixelsOf(170), 1);
        const up = strip(file, number + 1, pixelsOf(11 + 1), pixelsOf(height - 10 - 160), 1, pixelsOf(163));
        for (const ticks of [ticksAlong(along), ticksAlong(up)]) {
          expect(ticks).toHaveLength(16);
          const span = (((ticks.at(-1) ?? 0) - (ticks[0] ?? 0)) / DPI) * 25.4;
          expect(Math.abs(span - 150)).toBeLessThan(0.05);
        }
        const inches = strip(file, number + 1, pixelsOf(8), pixelsOf(height - 10 + 1), pixelsOf(170), 1);
        const marks = ticksAlong(inches);
        expect(marks).toHaveLength(7);
        expect(Math.abs((((marks.at(-1) ?? 0) - (marks[0] ?? 0)) / DPI) * 25.4 - 152.4)).toBeLessThan(0.05);
      }
    },
  );
});

describe("the file", () => {
  test.skipIf(!hasPoppler)(`[PP9] text extracts whole, a stacked fraction as one${why}`, async () => {
    const file = await fileOf("text.pdf", [
      page(
        line(30, text("½ 17⁄32 Ærø Zażółć Λίμνη Отлив")),
        line(
          45,
          text("Set "),
          figure("1", "1", "16"),
          text(" in, not "),
          figure("", "11", "16"),
          text(" in."),
        ),
        line(
          60,
          figure("1", "11", "16"),
          text("\u00a0in and "),
          figure("59"),
          text(" mm, "),
          figure("44.5"),
          text(" mm"),
        ),
      ),
    ]);
    for (const way of [["-layout"], ["-raw"], []]) {
      const read = run("pdftotext", ...way, file, "-").replace(/\s+/g, " ");
      expect(read).toContain("½ 17⁄32 Ærø Zażółć Λίμνη Отлив");
      expect(read).toContain("Set 1 1⁄16 in, not 11⁄16 in.");
      expect(read).toContain("1 11⁄16 in and 59 mm, 44.5 mm");
    }
  });

  test.skipIf(!hasPoppler)(
    `[PP9] what one document has read of a font takes no sign from the text of the next${why}`,
    async () => {
      // In a weight that no other test sets: here the parts of ½ are first met as its parts.
      const light = (words: string): Drawing => page({ ...line(30, text(words)), weight: "light" } as Mark);
      await fileOf("halves.pdf", [light("½ é")]);
      const file = await fileOf("slashes.pdf", [light("17⁄32 12 e")]);
      expect(run("pdftotext", file, "-").trim()).toBe("17⁄32 12 e");
    },
  );

  test("[PP9] the replacement text of a fraction stands inside its text object, and its digits stay in order for a reader that ignores it", async () => {
    const bytes = await bytesOf([page(line(45, figure("1", "1", "16")))]);
    const content = contentOf(bytes);
    // UTF-16 of "1 1⁄16".
    const span = content.indexOf("/Span << /ActualText <FEFF003100200031204400310036> >> BDC");
    expect(span).toBeGreaterThan(content.indexOf("BT"));
    expect(content.indexOf("EMC")).toBeGreaterThan(span);
    expect(content.indexOf("EMC")).toBeLessThan(content.indexOf("ET\n"));
    // Whole, unseen space, numerator, unseen slash, denominator.
    expect(content.match(/TJ/g)).toHaveLength(5);
    expect(content.match(/3 Tr/g)).toHaveLength(2);
  });

  test.skipIf(!hasPoppler)(`[PP5] fonts are embedded, subset and readable as text${why}`, async () => {
    const file = await fileOf("fonts.pdf", benchSheet(jobOf(INCH_DESIGN), "letter", typeface));
    const rows = run("pdffonts", file).trim().split("\n").slice(2);
    expect(rows.length).toBeGreaterThanOrEqual(5);
    for (const row of rows) expect(row).toMatch(/SourceSans3-\w+ +CID TrueType +Identity-H +yes yes yes/);
  });

  test("[PP5] the same pages with the same date give the same bytes", async () => {
    const [first, second] = [pdfTypeface(), pdfTypeface()].map((own) =>
      benchSheet(jobOf(METRIC_DESIGN), "a4", own),
    );
    expect(Buffer.compare(await bytesOf(first ?? []), await bytesOf(second ?? []))).toBe(0);
  });

  test.skipIf(!hasPoppler)(`a bench sheet reads as it is printed: settings, words, hands${why}`, async () => {
    const file = await fileOf("sheet.pdf", benchSheet(jobOf(INCH_DESIGN), "letter", typeface));
    const read = run("pdftotext", "-raw", file, "-").replace(/\s+/g, " ");
    for (const words of [
      "Low Water, Pewter Light",
      "one and three quarters",
      "1 3⁄4",
      "1 23⁄32",
      "LEFT HAND",
      "17 13⁄16",
    ]) {
      expect(read).toContain(words);
    }
    expect(run("pdfinfo", file)).toMatch(/Title: +Bench sheets/);
  });

  test("a picture is placed by its name, and a name that nothing is known of is refused", async () => {
    const picture: Mark = {
      kind: "picture",
      source: "ebb",
      left: ZERO,
      top: ZERO,
      width: mm(40),
      height: mm(30),
      degrees: 2,
    };
    await expect(bytesOf([page(picture)])).rejects.toThrow('no picture is at hand under the name "ebb"');
    const bytes = await writePdf(
      [
        page({
          ...picture,
          clip: [
            { x: ZERO, y: ZERO },
            { x: mm(20), y: ZERO },
            { x: mm(20), y: mm(20) },
          ],
        }),
      ],
      {
        date: DATE,
        title: "One",
        language: "en-US",
        pictures: (name) => (name === "ebb" ? ONE_PIXEL : undefined),
      },
    );
    expect(Buffer.from(bytes).toString("latin1")).toContain("/Subtype /Image");
  });

  test("[PP14] the writer refuses a sign that the type lacks", async () => {
    await expect(bytesOf([page(line(30, text("満潮")))])).rejects.toThrow(/the type has no sign for "満"/);
  });
});

/** Everything the pages' content streams say. */
function contentOf(bytes: Uint8Array): string {
  const file = Buffer.from(bytes).toString("latin1");
  const [, length = "0"] = /\/Length (\d+)\n\/Filter \/FlateDecode/.exec(file) ?? [];
  const start = file.indexOf("stream\n", file.indexOf("/FlateDecode")) + "stream\n".length;
  return inflateSync(Buffer.from(file.slice(start, start + Number(length)), "latin1")).toString("latin1");
}

/** The smallest picture there is: one grey pixel. */
const ONE_PIXEL = Buffer.from(
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==",
  "base64",
);
