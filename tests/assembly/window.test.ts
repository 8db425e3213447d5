import { expect, test } from "vitest";
import { mm, printExact } from "../../src/lengths/index.ts";
import type { ComposeDocument } from "../../src/show/index.ts";
import { codes, composed, opening } from "./helpers.ts";

const inchPrint: ComposeDocument = {
  unit: "in",
  print: {
    width: "9 1/2",
    height: "12",
    image: { left: "1 1/8", top: "3/4", width: "7 1/4", height: "10 1/4" },
  },
  outer: { width: "11", height: "14" },
};

test("[W1] overlap draws the image in, down to the graduation, centred on the image", () => {
  expect(opening(composed({ ...inchPrint, window: { show: "overlap", overlap: "1/8" } }))).toBe(
    "7 in x 10 in",
  );
  const down = composed({ ...inchPrint, window: { show: "overlap", overlap: "5/32" } });
  expect(opening(down)).toBe("6 15/16 in x 9 15/16 in");
  const { print } = down;
  // 2 1/32 (left border 2, right 2 1/16) less half of what the rounding took from the image's place.
  expect(print && printExact(print.left, "in")).toBe("23/32 in");
});

test("[W2] margins let the image out to the nearest graduation", () => {
  const shown = composed({
    ...inchPrint,
    window: { show: "margins", top: "1/4", side: "1/4", foot: "13/32" },
    hold: "1/8",
  });
  expect(opening(shown)).toBe("7 3/4 in x 10 15/16 in");
});

test("[W2] margins go down where the nearest would break the hold and down does not", () => {
  const document: ComposeDocument = {
    unit: "mm",
    graduation: "1 mm",
    hold: "3",
    print: { width: "107.6", height: "200", image: { left: "10", top: "50", width: "87.6", height: "100" } },
    window: { show: "margins", top: "5", side: "7", foot: "5" },
    outer: { width: "200", height: "300" },
  };
  // 101.6 to the nearest is 102: cover (107.6 - 102) / 2 = 2.8, short of 3; 101 leaves 3.3.
  expect(opening(composed(document))).toBe("101 mm x 110 mm");
  expect(codes(composed(document))).not.toContain("hold-short");
  // Where down breaks it too the nearest stays and the check says so.
  const tighter = composed({ ...document, hold: "4" });
  expect(opening(tighter)).toBe("102 mm x 110 mm");
  expect(codes(tighter)).toContain("hold-short");
});

test("[W3] a floated sheet is let out by the gap, up, and never turned", () => {
  const floated = composed({
    unit: "mm",
    holding: "hinges",
    print: {
      width: "200.3",
      height: "300",
      angle: 1.5,
      image: { left: "20", top: "20", width: "160", height: "240" },
    },
    window: { show: "sheet", gap: "6" },
    outer: { width: "300", height: "400" },
  });
  expect(opening(floated)).toBe("213 mm x 312 mm");
  expect(floated.print?.angle).toBe(0);
  expect(codes(floated)).toEqual(expect.arrayContaining(["image-skew"]));
});

test("[W4] a typed window is as typed, centred on the image; it needs no print", () => {
  const typed = composed({ ...inchPrint, window: { show: "typed", width: "6.03", height: "9.01" } });
  expect(opening(typed)).toBe("6.03 in x 9.01 in");
  const bare = composed({
    unit: "in",
    window: { show: "typed", width: "7", height: "10" },
    outer: { width: "11", height: "14" },
  });
  expect(bare.print).toBeNull();
  expect(opening(bare)).toBe("7 in x 10 in");
});

test("[W5] overlap starts inside the outline, margins round it, and the hidden share is said", () => {
  // A rough square of 100 with a notch of 4 bitten out of the left edge and a spur of 3 at the right.
  const outline: [string, string][] = [
    ["20", "20"],
    ["120", "20"],
    ["120", "60"],
    ["123", "62"],
    ["120", "64"],
    ["120", "120"],
    ["20", "120"],
    ["20", "72"],
    ["24", "70"],
    ["20", "68"],
  ];
  const document: ComposeDocument = {
    unit: "mm",
    print: { width: "150", height: "150", outline },
    window: { show: "overlap", overlap: "2" },
    outer: { width: "300", height: "300" },
  };
  const inside = composed(document);
  expect(opening(inside)).toBe("92 mm x 96 mm");
  // Image 10,000 + 6 (spur) - 8 (notch) = 9,998 mm2; the window shows 92 x 96 = 8,832 of it.
  const hidden = inside.checks.find(({ code }) => code === "image-hidden");
  expect(hidden?.code === "image-hidden" && hidden.share).toBeCloseTo(1 - 8832 / 9998, 9);
  const round = composed({ ...document, window: { show: "margins", top: "3", side: "4", foot: "5" } });
  expect(opening(round)).toBe("111 mm x 108 mm");
});

test("[W6] a skew image is levelled by turning the sheet; a level sheet is had by asking", () => {
  const print = {
    width: "300",
    height: "400",
    angle: 2,
    image: { left: "50", top: "60", width: "200", height: "280" },
  };
  const document: ComposeDocument = {
    unit: "mm",
    print,
    window: { show: "overlap", overlap: "3" },
    outer: { width: "400", height: "500" },
  };
  const level = composed(document);
  expect(opening(level)).toBe("194 mm x 274 mm");
  expect(level.print?.angle).toBe(-2);
  expect(codes(level)).toContain("sheet-turned");
  const asked = composed({ ...document, print: { ...print, level: "sheet" } });
  expect(asked.print?.angle).toBe(0);
  const { width, height } = asked.mats[0]?.back ?? { width: mm(0), height: mm(0) };
  // An upright rectangle inside 200 x 280 turned by 2 degrees loses at least min(h, w) sin 2 somewhere.
  expect(width).toBeLessThan(mm(194));
  expect(height).toBeLessThanOrEqual(mm(274));
  expect(codes(asked)).toContain("image-skew");
});

test("[W7] no image: the whole sheet; a torn sheet gives its own size", () => {
  expect(
    opening(
      composed({
        unit: "mm",
        print: { width: "100", height: "120" },
        window: { show: "overlap", overlap: "4" },
        outer: { width: "200", height: "220" },
      }),
    ),
  ).toBe("92 mm x 112 mm");
  const torn = composed({
    unit: "mm",
    holding: "hinges",
    print: {
      sheetOutline: [
        ["0", "1"],
        ["99", "0"],
        ["100", "119"],
        ["1", "120"],
      ],
    },
    window: { show: "sheet", gap: "5" },
    outer: { width: "200", height: "220" },
  });
  expect(opening(torn)).toBe("110 mm x 130 mm");
});

test("[W8] one window serves an edition; the sheet that stands out is named", () => {
  const image = { left: "20", top: "20", width: "160", height: "220" };
  const edition = composed({
    unit: "mm",
    print: {
      width: "200",
      height: "260",
      image,
      edition: [
        { name: "2/3", width: "200", height: "261", image: { ...image, width: "158.5" } },
        { name: "3/3", width: "195", height: "260", image: { ...image, height: "219" } },
      ],
    },
    window: { show: "overlap", overlap: "3" },
    outer: { width: "300", height: "380" },
  });
  expect(opening(edition)).toBe("152 mm x 213 mm");
  const named = edition.checks.filter(({ code }) => code === "edition-outlier");
  expect(named).toMatchObject([{ sheet: "3/3", part: "sheet", direction: "width" }]);
  expect(edition.print?.edition.map(({ name }) => name)).toEqual(["", "2/3", "3/3"]);
  const float = composed({
    unit: "mm",
    holding: "hinges",
    print: { width: "200", height: "260", edition: [{ name: "2/2", width: "203", height: "258" }] },
    window: { show: "sheet", gap: "5" },
    outer: { width: "300", height: "380" },
  });
  expect(opening(float)).toBe("213 mm x 270 mm");
});

test("[W9] a window of nothing is a stop", () => {
  const gone = composed({ ...inchPrint, window: { show: "overlap", overlap: "3 5/8" } });
  expect(gone.checks[0]).toMatchObject({ code: "window-gone", level: "stop", direction: "width" });
});
