import { expect, test } from "vitest";
import { sayListNote, sayListProblem } from "../../src/words/lists.ts";
import { problemsOf, rowOf, worksOf } from "./helpers.ts";

const SHEET = { title: "Ebb", "sheet width": "8", "sheet height": "10" };

test("[LI15] a list without titles is one problem and no works", async () => {
  const read = await worksOf("name,sheet width,sheet height\nEbb,8,10\nNeap,8,10\n");
  expect(read.works).toEqual([]);
  expect(read.problems.map(sayListProblem)).toEqual([
    'row 1, title: found name, sheet width, sheet height; wanted: a header with a column "title"',
  ]);
});

test("[LI15] a row without a title is refused", async () => {
  expect(problemsOf(await rowOf({ ...SHEET, title: " \u00a0" }))).toEqual(["2 title title"]);
});

test("[LI16] a sheet size is needed, unless an image size, dimensions or a picture is there", async () => {
  const nothing = await rowOf({ title: "Ebb", maker: "T. Marrable" });
  expect(nothing.problems.map(sayListProblem)).toEqual([
    "row 2, sheet width: found nothing; wanted: a sheet width and height, an image width and height, dimensions, or a picture",
  ]);
  const enough: Record<string, string>[] = [
    SHEET,
    { title: "Ebb", "image width": "7", "image height": "9" },
    { title: "Ebb", dimensions: "10 x 8 in" },
    { title: "Ebb", picture: "ebb.jpg" },
  ];
  for (const columns of enough) expect((await rowOf(columns)).problems).toEqual([]);
  const picture = await rowOf({ title: "Ebb", picture: "ebb.jpg", angle: "0,5" });
  expect(picture.works[0]?.work).toMatchObject({ picture: "ebb.jpg", design: { print: { angle: 0.5 } } });
  expect(picture.works[0]?.notes.map(sayListNote)).toEqual([
    "row 2, picture: No size is given: it has to come from the picture.",
  ]);
});

test.each([
  [{ ...SHEET, "sheet height": "" }, "2 sheet height both-of"],
  [{ ...SHEET, "image width": "7" }, "2 image height both-of"],
  [{ ...SHEET, "outer height": "14" }, "2 outer width both-of"],
  [{ ...SHEET, "window width": "6" }, "2 window height both-of"],
])("[LI16] width and height go together: %o", async (columns, problem) => {
  expect(problemsOf(await rowOf(columns))).toEqual([problem]);
});

test("[LI17] only an image: the sheet ends at it", async () => {
  const [listed] = (await rowOf({ title: "Ebb", "image width": "7", "image height": "18 cm" })).works;
  expect(listed?.work.design.print).toEqual({
    width: "7 in",
    height: "18 cm",
    image: { left: "0 in", top: "0 in", width: "7 in", height: "18 cm" },
  });
  expect(listed?.notes.map(({ code }) => code)).toEqual(["sheet-ends-at-image"]);
});

test("[LI17] only a sheet: the image is the whole of it", async () => {
  const [listed] = (await rowOf(SHEET)).works;
  expect(listed?.work.design.print).toEqual({ width: "8 in", height: "10 in" });
  expect(listed?.notes.map(({ code }) => code)).toEqual(["image-is-sheet"]);
});

test("[LI17] both: the image lies in the middle, to the tick", async () => {
  const [listed] = (await rowOf({ ...SHEET, "image width": "7 1/16", "image height": "200 mm" })).works;
  expect(listed?.work.design.print?.image).toEqual({
    left: "15/32 in",
    top: "27 mm",
    width: "7 1/16 in",
    height: "200 mm",
  });
  expect(listed?.notes).toMatchObject([{ code: "image-centred", direction: "both", column: "image left" }]);
  const [half] = (await rowOf({ ...SHEET, "image width": "7", "image height": "9", "image top": "3/8" }))
    .works;
  expect(half?.work.design.print?.image).toMatchObject({ left: "1/2 in", top: "3/8 in" });
  expect(half?.notes).toMatchObject([{ code: "image-centred", direction: "width" }]);
  const [whole] = (await rowOf({ ...SHEET, "image width": "8", "image height": "10" })).works;
  expect(whole?.notes).toEqual([]);
});

test.each([
  [{ ...SHEET, "image left": "1" }, "2 image left for-place"],
  [{ title: "Ebb", "image width": "7", "image height": "9", "image top": "1/4" }, "2 image top for-place"],
  [{ ...SHEET, "image width": "8.01", "image height": "9" }, "2 image width within-sheet"],
  [
    { ...SHEET, "image width": "7", "image height": "9", "image left": "1 1/16" },
    "2 image left place-on-sheet",
  ],
  [{ title: "Ebb", dimensions: "image: 241 x 191 mm; support: 203 x 254 mm" }, "2 dimensions within-sheet"],
])("[LI18] an image must lie on its sheet: %o", async (columns, problem) => {
  expect(problemsOf(await rowOf(columns))).toEqual([problem]);
});

test("[LI18] an image past its sheet is told how far it may go", async () => {
  const read = await rowOf({ ...SHEET, "image width": "7", "image height": "10.5", "image left": "2" });
  expect(read.problems.map(sayListProblem)).toEqual([
    "row 2, image left: found 2; wanted: at most 1 in, so that the image ends on its sheet",
    "row 2, image height: found 10.5; wanted: an image that lies on its sheet: the image is 10.5 in high, the sheet 10 in",
  ]);
});

test.each([
  ["0", "size"],
  ["0 mm", "size"],
  ["2.9 mm", "believable"],
  ["20001 mm", "believable"],
  ["66 ft", "believable"],
  ["101 m", "length"],
])("[LI19] a sheet %s wide is refused", async (width, kind) => {
  expect(problemsOf(await rowOf({ ...SHEET, "sheet width": width }))).toEqual([`2 sheet width ${kind}`]);
});

test("[LI19] what is refused for its size says so, in dimensions too", async () => {
  const columns = await rowOf({ title: "Ebb", "sheet width (mm)": "1,500", "sheet height (mm)": "900" });
  expect(columns.problems.map(sayListProblem)).toEqual([
    "row 2, sheet width: found 1,500; wanted: a size from 3 mm to 20 m, not 1,500 mm: is the unit right?",
  ]);
  const dimensions = await rowOf({ title: "Ebb", dimensions: "sheet: 2410 x 1910 cm" });
  expect(dimensions.problems.map(sayListProblem)).toEqual([
    "row 2, dimensions: found sheet: 2410 x 1910 cm; wanted: a size from 3 mm to 20 m, not 2410 cm: is the unit right?",
  ]);
});

test("[LI20] what the window shows, and a typed one before it", async () => {
  const shows = await Promise.all(
    ["overlap", "Margins", " SHEET ", ""].map(
      async (show) => (await rowOf({ ...SHEET, show })).works[0]?.work.design.window,
    ),
  );
  expect(shows).toEqual([{ show: "overlap" }, { show: "margins" }, { show: "sheet" }, undefined]);
  expect((await rowOf({ ...SHEET, show: "all of it" })).problems.map(sayListProblem)).toEqual([
    "row 2, show: found all of it; wanted: overlap, margins or sheet",
  ]);
  const [typed] = (await rowOf({ ...SHEET, show: "margins", "window width": "6", "window height": "15 cm" }))
    .works;
  expect(typed?.work.design.window).toEqual({ show: "typed", width: "6 in", height: "15 cm" });
  expect(typed?.notes).toMatchObject([
    { code: "image-is-sheet" },
    { level: "warn", code: "typed-window-wins" },
  ]);
});

test.each(["1", "1000", "3.0", "12,0"])("[LI21] a quantity of %s", async (quantity) => {
  expect((await rowOf({ ...SHEET, quantity })).works[0]?.work.quantity).toBe(Number.parseInt(quantity, 10));
});

test.each(["0", "1001", "2.5", "three", "-1", "1e2"])("[LI21] no quantity of %s", async (quantity) => {
  const read = await rowOf({ ...SHEET, quantity });
  expect(read.problems.map(sayListProblem)).toEqual([
    `row 2, quantity: found ${quantity}; wanted: a whole number from 1 to 1000`,
  ]);
});

test.each([
  ["0.8", 0.8],
  ["-1,25", -1.25],
  ["\u22120.5°", -0.5],
  ["+2 deg", 2],
  ["-0", 0],
  ["45", 45],
])("[LI21] an angle of %s", async (angle, degrees) => {
  expect((await rowOf({ ...SHEET, angle })).works[0]?.work.design.print?.angle).toBe(degrees);
});

test.each(["-45", "46", "about 2", "1 1/2", "NaN", "Infinity"])("[LI21] no angle of %s", async (angle) => {
  expect(problemsOf(await rowOf({ ...SHEET, angle }))).toEqual(["2 angle number"]);
});

test("[LI22] every text of a work, and its lengths with their units", async () => {
  const columns = {
    title: "Slack\nWater ",
    maker: " Ines  Okonedo-Vale",
    year: "1964, printed 1971",
    process: "etching",
    edition: "4 / 12",
    quantity: "2",
    picture: "slack water.jpg",
    notes: " two\nlines ",
    "sheet width (cm)": "30,5",
    "sheet height (cm)": "12 in",
    "image left": "1",
    "image top": "1 1/4",
    "image width": "10",
    "image height": "9",
    "outer width": "16",
    "outer height": "20",
  };
  const read = await rowOf(columns, { unit: "in", graduation: "1/32 in" });
  expect(read.works).toEqual([
    {
      row: 2,
      notes: [],
      work: {
        title: "Slack Water",
        maker: "Ines Okonedo-Vale",
        year: "1964, printed 1971",
        process: "etching",
        edition: "4 / 12",
        quantity: 2,
        picture: "slack water.jpg",
        notes: "two\nlines",
        design: {
          unit: "in",
          graduation: "1/32 in",
          print: {
            width: "30,5 cm",
            height: "12 in",
            image: { left: "1 in", top: "1 1/4 in", width: "10 in", height: "9 in" },
          },
          outer: { width: "16 in", height: "20 in" },
        },
      },
    },
  ]);
});

test("[LI23] a row names all of its faults", async () => {
  const read = await rowOf({
    title: "",
    "sheet width": "7 1/",
    "sheet height": "1,500",
    "image width": "0",
    "image height": "9",
    "image left": "x",
    show: "nothing",
    "outer width": "14",
    quantity: "many",
    angle: "steep",
    dimensions: "variable",
  });
  expect(problemsOf(read)).toEqual([
    "2 title title",
    "2 quantity quantity",
    "2 angle number",
    "2 sheet width length",
    "2 sheet height length",
    "2 image width size",
    "2 dimensions dimensions",
    "2 image left length",
    "2 show one-of",
    "2 outer height both-of",
  ]);
});

const EUROPEAN = `\ufeffTidewater Print Room: Slack Water;;;;;;;;;;
Stand 14.03.2026;;;;;;;;;;

Title;Maker;Blatt;Sheet_Width (cm);Sheet_Height (cm);image width;IMAGE HEIGHT;Outer width (mm);outer height (mm);Edition;Notes
Ærø, low water;Ines Okonedo-Vale;a;30,5;40;24,5 cm;32,0 cm;500;600;4 / 12;"two lines:
recto signed"
Zażółć;T. Marrable;b;"12 1/2""";16 in;;;;;;
„Ebbe“;Søren Halle;;24;30;180 mm;24 cm;400;500;"=1+1";
;Søren Halle;;24;30;;;;;;no title
Großer Priel;;;56,0;76,0;ca. 40;50;;;;
Neap;;c;20;25;-;–;300;;;
`;

test("[LI9] a messy European list: the good rows go in, the bad ones are named by row and column", async () => {
  const read = await worksOf(EUROPEAN, { unit: "mm" });
  expect(read.notes.map(sayListNote)).toEqual(["The header is line 4 of the list. It is counted as row 1."]);
  expect(read.unknownColumns).toEqual([{ name: "Blatt", like: null }]);
  expect(read.works.map(({ row, work }) => [row, work.title, work.design.print, work.design.outer])).toEqual([
    [
      2,
      "Ærø, low water",
      {
        width: "30,5 cm",
        height: "40 cm",
        image: { left: "30 mm", top: "40 mm", width: "24,5 cm", height: "32,0 cm" },
      },
      { width: "500 mm", height: "600 mm" },
    ],
    [3, "Zażółć", { width: '12 1/2"', height: "16 in" }, undefined],
    [
      4,
      "„Ebbe“",
      {
        width: "24 cm",
        height: "30 cm",
        image: { left: "30 mm", top: "30 mm", width: "180 mm", height: "24 cm" },
      },
      { width: "400 mm", height: "500 mm" },
    ],
  ]);
  expect(read.works[0]?.work).toMatchObject({
    edition: "4 / 12",
    notes: "two lines:\nrecto signed",
    more: { Blatt: "a" },
  });
  expect(read.problems.map(sayListProblem)).toEqual([
    "row 5, title: found nothing; wanted: a title",
    "row 6, image width: found ca. 40; wanted: a length, such as 7 1/4 in or 184 mm",
    "row 7, outer height: found nothing; wanted: a length here too, beside outer width",
  ]);
});

const INCHES = `title,maker,year,process,sheet width,sheet height,image left,image top,image width,image height,show,outer width,outer height,edition,quantity
Ferry slip,Ines Okonedo-Vale,2024,wood engraving,8 1/2,11,3/4,3/4,7,9 1/2,overlap,11,14,3 / 40,1
"Thole, twice",T. Marrable,2025,etching,11 1/4,15,1 5/8,1 7/8,8,10,margins,16,20,,3
Neap,T. Marrable,2026,cyanotype,9-7/8,12⅛,,,,,sheet,14,18,,
`;

test("[LI22] a clean list in inches goes in as it stands", async () => {
  const read = await worksOf(INCHES, { unit: "in", graduation: "1/16 in" });
  expect(read.problems).toEqual([]);
  expect(read.unknownColumns).toEqual([]);
  expect(read.works.map(({ row, work }) => [row, work.title, work.quantity, work.design])).toEqual([
    [
      2,
      "Ferry slip",
      1,
      {
        unit: "in",
        graduation: "1/16 in",
        print: {
          width: "8 1/2 in",
          height: "11 in",
          image: { left: "3/4 in", top: "3/4 in", width: "7 in", height: "9 1/2 in" },
        },
        window: { show: "overlap" },
        outer: { width: "11 in", height: "14 in" },
      },
    ],
    [
      3,
      "Thole, twice",
      3,
      {
        unit: "in",
        graduation: "1/16 in",
        print: {
          width: "11 1/4 in",
          height: "15 in",
          image: { left: "1 5/8 in", top: "1 7/8 in", width: "8 in", height: "10 in" },
        },
        window: { show: "margins" },
        outer: { width: "16 in", height: "20 in" },
      },
    ],
    [
      4,
      "Neap",
      undefined,
      {
        unit: "in",
        graduation: "1/16 in",
        print: { width: "9-7/8 in", height: "12⅛ in" },
        window: { show: "sheet" },
        outer: { width: "14 in", height: "18 in" },
      },
    ],
  ]);
});
