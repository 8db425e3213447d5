import * as fc from "fast-check";
import { expect, test } from "vitest";
import { printExact, ticks } from "../../src/lengths/index.ts";
import { readDimensions, type Size } from "../../src/show/lists/dimensions/index.ts";
import { sayDimensionsFault } from "../../src/words/lists.ts";
import { rowOf } from "./helpers.ts";

const sizeText = (size: Size | null): string | null => size && `${size.height.text} x ${size.width.text}`;

/** Sheet, image and notes, short; or the fault's sentence. */
function taken(text: string): { sheet: string | null; image: string | null; notes: string[] } | string {
  const read = readDimensions(text, "in");
  if (!read.ok) return sayDimensionsFault(read.fault);
  const notes = read.notes.map(
    ({ level, note }) => `${level} ${note.code}${"part" in note ? ` ${note.part}` : ""}`,
  );
  return { sheet: sizeText(read.sheet), image: sizeText(read.image), notes };
}

test.each([
  ["image: 241 x 191 mm; support: 254 x 203 mm", "254 mm x 203 mm", "241 mm x 191 mm"],
  ["support: 254 x 203 mm; image: 241 x 191 mm", "254 mm x 203 mm", "241 mm x 191 mm"],
  ["7 1/2 x 9 1/2 in. (19.1 x 24.1 cm) (image)", null, "19.1 cm x 24.1 cm"],
  ["Image: 7 9/16 × 9 1/2 in. Sheet: 8 × 10 in.", "8 in x 10 in", "7 9/16 in x 9 1/2 in"],
  [
    "Image: 19.2 x 24.1 cm (7 9/16 x 9 1/2 in.)\r\nSheet: 20.3 x 25.4 cm (8 x 10 in.)",
    "20.3 cm x 25.4 cm",
    "19.2 cm x 24.1 cm",
  ],
  [
    'image: 7 1/2 × 9 1/2" (19.1 × 24.1 cm); sheet: 11 × 14" (28 × 35.6 cm)',
    "28 cm x 35.6 cm",
    "19.1 cm x 24.1 cm",
  ],
  ["image: 12 x 9 in., sheet: 14 x 11 in.", "14 in x 11 in", "12 in x 9 in"],
  ["20.3 x 25.4 cm (image), 27.9 x 35.6 cm (sheet)", "27.9 cm x 35.6 cm", "20.3 cm x 25.4 cm"],
  ["20.3 x 25.4 cm image; 27.9 x 35.6 cm sheet", "27.9 cm x 35.6 cm", "20.3 cm x 25.4 cm"],
  ["Sheet 20,3 x 25,4 cm. Image 18 x 24 cm", "20,3 cm x 25,4 cm", "18 cm x 24 cm"],
  ["support & image: 282 x 216 mm", "282 mm x 216 mm", "282 mm x 216 mm"],
  ["Image/Sheet: 8 x 10 inches", "8 in x 10 in", "8 in x 10 in"],
  ["image (each): 60 mm x 90 mm; sheet, each: 100 × 150 mm", "100 mm x 150 mm", "60 mm x 90 mm"],
  ['composition: 9 x 7"; sheet (irreg.): 12 1/2 x 9 15/16"', "12 1/2 in x 9 15/16 in", "9 in x 7 in"],
])("[LI24] %s", (text, sheet, image) => {
  expect(taken(text)).toMatchObject({ sheet, image });
});

test.each([
  "19.1 × 24.1 cm (7 1/2 × 9 1/2 in.)",
  "19.1 x 24.1 cm",
  "19.1 by 24.1 cm",
  "19.1x24.1cm",
  "19.1 cm x 24.1 cm",
  "19.1\u00a0✕\u00a024.1\u202fcm",
  "19.1 x 24.1 x 0.4 cm",
  "7 1/2 x 9 1/2 in. / 19.1 x 24.1 cm",
  "H. 19.1 cm; W. 24.1 cm",
  "H. 19.1 cm (7 1/2 in.), W. 24.1 cm (9 1/2 in.)",
  "height: 19.1 cm, width: 24.1 cm",
  "Width 24.1 cm, height 19.1 cm",
  "19.1 h x 24.1 w cm",
  "24.1 cm (w) x 19.1 cm (h)",
  "24.1 x 19.1 cm (W x H)",
  "19.1 cm high by 24.1 cm wide",
  "overall: 19.1 x 24.1 cm, 2 kg",
  "Dimensions: 19.1 × 24.1 cm (unframed)",
])("[LI24] one size of the work, however it is written: %s", (text) => {
  const read = readDimensions(text, "mm");
  expect(read).toMatchObject({ ok: true, image: null });
  if (read.ok) expect([sizeText(read.sheet)]).toEqual(["19.1 cm x 24.1 cm"]);
});

test.each([
  ["9 1/2 x 7 1/2 in", 241.3, 190.5],
  ["9-1/2 x 7-1/2 in.", 241.3, 190.5],
  ['9½ × 7½"', 241.3, 190.5],
  ["9 ½ × 7 ½ inches", 241.3, 190.5],
  ["9 1⁄2 x 7 1⁄2″", 241.3, 190.5],
  ["9.5 x 7.5 in", 241.3, 190.5],
  ["1' 2 1/2\" x 1' 0\"", 368.3, 304.8],
  ["1 ft 2 1/2 in x 1 ft", 368.3, 304.8],
])("[LI24] fractions and feet: %s", (text, height, width) => {
  const read = readDimensions(text, "mm");
  if (!read.ok || read.sheet === null) throw new Error(text);
  expect([read.sheet.height.length / 80_000, read.sheet.width.length / 80_000]).toEqual([height, width]);
});

test("[LI24] a figure without a unit takes the one to its right, else the part's, else the list's, with a warning", () => {
  expect(taken("H. 20; W. 30 cm")).toMatchObject({ sheet: "20 cm x 30 cm" });
  expect(taken("image: 241 x 191")).toEqual({
    sheet: null,
    image: "241 in x 191 in",
    notes: ["warn unit-taken"],
  });
});

test("[LI25] what each part is for", () => {
  expect(taken("plate: 200 x 150 mm; sheet: 300 x 250 mm")).toEqual({
    sheet: "300 mm x 250 mm",
    image: "200 mm x 150 mm",
    notes: ["note plate-is-image"],
  });
  expect(taken("image: 200 x 150 mm; plate: 210 x 160 mm; sheet: 300 x 250 mm")).toMatchObject({
    image: "200 mm x 150 mm",
    notes: ["note part-not-used plate"],
  });
  expect(taken("image: 200 x 150 mm; support (mount): 400 x 300 mm; frame: 500 x 400 x 30 mm")).toEqual({
    sheet: null,
    image: "200 mm x 150 mm",
    notes: ["note part-not-used mount", "note part-not-used frame"],
  });
  expect(taken("support: 200 x 150 mm; support, secondary: 400 x 300 mm")).toMatchObject({
    sheet: "200 mm x 150 mm",
    notes: ["note part-not-used mount"],
  });
  expect(taken("support: 472 x 296 mm; frame: 358 x 362 x 38 mm")).toMatchObject({
    notes: ["note part-not-used frame", "warn frame-smaller"],
  });
  expect(taken("458 x 392 mm")).toEqual({
    sheet: "458 mm x 392 mm",
    image: null,
    notes: ["note part-not-named"],
  });
  expect(taken("unconfirmed: 458 x 392 mm; unconfirmed: 458 x 392 mm")).toMatchObject({
    notes: ["warn part-not-named"],
  });
  expect(taken("object: 310 x 295 mm")).toMatchObject({
    sheet: "310 mm x 295 mm",
    notes: ["warn part-not-named"],
  });
  expect(taken("image, each: 60 x 90 mm")).toMatchObject({ notes: ["note each"] });
  expect(taken("image: approx. 20 x 30 cm (irregular)")).toMatchObject({
    image: "20 cm x 30 cm",
    notes: ["warn not-exact", "warn not-exact"],
  });
});

test("[LI26] inches and millimetres that differ by more than 2 mm are warned about, rounding is not", () => {
  expect(taken("8 x 10 in. (20.3 x 25.4 cm)")).toMatchObject({ notes: ["note part-not-named"] });
  expect(taken("sheet: 8 x 10 in. (20.5 x 25.4 cm)")).toEqual({
    sheet: "20.5 cm x 25.4 cm",
    image: null,
    notes: [],
  });
  expect(taken("sheet: 8 x 10 in. (20.6 x 25.4 cm)")).toEqual({
    sheet: "20.6 cm x 25.4 cm",
    image: null,
    notes: ["warn twice-differs sheet"],
  });
});

test("[LI26] a warning about a size given twice names both", async () => {
  const read = await rowOf({ title: "Ebb", dimensions: "sheet: 8 x 10 in. (30.3 x 25.4 cm)" });
  expect(read.works[0]?.notes).toMatchObject([
    {
      level: "warn",
      code: "twice-differs",
      metric: { height: { text: "30.3 cm" } },
      inch: { height: { text: "8 in" } },
    },
    { code: "image-is-sheet" },
  ]);
});

test.each([
  ["dimensions variable", 'not understood: "dimensions variable"'],
  ["in forty eight parts, each: 530 x 170 x 40 mm", 'not understood: "in forty eight parts each"'],
  ["diam. 20 cm", 'not understood: "diam"'],
  ["sight: 20 x 30 cm", 'not understood: "sight"'],
  ["20 x 30 x", 'not understood: "20 x 30"'],
  ["20 x 30 cm; $$", 'not understood: "; $ $"'],
  ["sheet: ; image: 20 x 30 cm", 'not understood: "image"'],
  ["image: 20 x 30 cm (sheet)", 'not understood: "sheet"'],
  ["1964", 'not understood: "1964"'],
  ["cm", 'not understood: "cm"'],
  ["x", 'not understood: "x"'],
  ["image: 315 x 231 mm; plate: 332 mm", "a height and a width of the plate"],
  ["H. 20 cm", "a height and a width of the work"],
  ["1 x 2 x 3 x 4 cm", "a height, a width and at most a depth of the work"],
  ["20 cm (w) x 30 cm (w)", "a height, a width and at most a depth of the work"],
  ["object: 310 x 395 x 30 mm", "a work on paper; this is 30 mm deep"],
  ["overall: 100 x 100 x 110 mm", "a work on paper; this is 110 mm deep"],
  [
    "image: 166 x 255 mm; image: 195 x 195 mm",
    "one size of the image, not both 166 mm high, 255 mm wide and 195 mm high, 195 mm wide; one row for each work",
  ],
  ["20 x 30 cm; 40 x 50 cm", "one size of the work, not both 20 cm high"],
  ["20 x 30 cm; sheet: 40 x 50 cm", "each size with its name, image or sheet: one here has none"],
  ["frame: 40 x 50 cm; mount: 30 x 40 cm", "a size of the image or the sheet"],
  ["image: 71/4 x 9 in", "a fraction less than 1: 7 1/4 or 17 3/4?, in place of 71/4 in"],
  ["image: 7 1/0 x 9 in", "the lower figure is 0, in place of 7 1/0 in"],
])("[LI27] %s is refused: %s", (text, sentence) => {
  expect(taken(text)).toEqual(expect.stringContaining(sentence));
});

test("[LI27] the columns win over dimensions, and say so where they differ", async () => {
  const agreeing = await rowOf({
    title: "Ebb",
    "sheet width (mm)": "203",
    "sheet height (mm)": "254",
    dimensions: "image: 241 x 191 mm; support: 254 x 203 mm",
  });
  expect(agreeing.works[0]?.work.design.print).toMatchObject({ width: "203 mm", image: { width: "191 mm" } });
  expect(agreeing.works[0]?.notes.map(({ code }) => code)).toEqual(["image-centred"]);
  const other = await rowOf({
    title: "Ebb",
    "sheet width (mm)": "303",
    "sheet height (mm)": "354",
    dimensions: "support: 254 x 203 mm",
  });
  expect(other.works[0]?.notes).toMatchObject([
    { level: "warn", column: "dimensions", code: "columns-win", part: "sheet" },
    { code: "image-is-sheet", column: "sheet width" },
  ]);
});

test("[LI12] the header's unit stands for figures that have none", async () => {
  const read = await rowOf({ title: "Ebb", "dimensions (h x w, cm)": "20 x 30" });
  expect(read.works[0]?.work.design.print).toEqual({ width: "30 cm", height: "20 cm" });
  expect(read.works[0]?.notes.map(({ code }) => code)).toEqual(["part-not-named", "image-is-sheet"]);
  const swapped = await rowOf({ title: "Ebb", "dimensions (w x h)": "20 x 30" });
  expect(swapped.problems.map(({ row, wanted }) => [row, wanted.kind])).toEqual([
    [1, "known-unit"],
    [2, "known-unit"],
  ]);
});

const length = fc.integer({ min: 240_000, max: 80_000_000 }).map((count) => ticks(count));
const exact = (unit: "in" | "mm") => length.map((value) => ({ value, text: printExact(value, unit) }));
const figures = fc.constantFrom<"in" | "mm">("in", "mm").chain((unit) => fc.tuple(exact(unit), exact(unit)));

test("[LI24] any size of any part, in any dress, reads to its ticks", () =>
  fc.assert(
    fc.property(
      figures,
      fc.constantFrom(" x ", " × ", " by ", "x"),
      fc.constantFrom("image: #", "# (image)", "Image #", "image, each: #", "# image"),
      ([height, width], by, dress) => {
        const read = readDimensions(dress.replace("#", `${height.text}${by}${width.text}`), "mm");
        if (!read.ok || read.image === null) throw new Error(JSON.stringify(read));
        expect([read.image.height.length, read.image.width.length]).toEqual([height.value, width.value]);
      },
    ),
    { numRuns: 400 },
  ));
