import { describe, expect, it } from "vitest";
import { borderTexts, headFootSide, inBoard, inches, work } from "./bench.ts";

describe("borders of a mat", () => {
  it("[B1][B3] 11 x 14 in board, 7 x 10 in window, lift 1/4 in: sides 2 in, head 1 3/4 in, foot 2 1/4 in (common practice, no source)", () => {
    const mat = inBoard(["11", "14"], ["7", "10"], { rule: "fixed", by: "1/4" });
    expect(borderTexts(mat)).toEqual(["1 3/4 in", "2 in", "2 in", "2 1/4 in"]);
  });

  it("[B3] centred: 14 x 11 in mat, 9 3/4 x 7 3/4 in window: sides 2 1/8 in, head and foot 1 5/8 in (common practice, no source)", () => {
    const mat = inBoard(["14", "11"], ["9 3/4", "7 3/4"], { rule: "none" });
    expect(borderTexts(mat)).toEqual(["1 5/8 in", "2 1/8 in", "2 1/8 in", "1 5/8 in"]);
  });

  it("[B3] side : bottom = 3 : 4, top and sides equal: 3 in beside, 4 in below (US Navy Illustrator Draftsman course, NAVEDTRA 14066, p. 2-32)", () => {
    // 8 x 10 in window, 3 in left, right and above, 4 in below.
    const mat = inBoard(["14", "17"], ["8", "10"], { rule: "ratio", foot: 4 / 3 });
    expect(borderTexts(mat)).toEqual(["3 in", "3 in", "3 in", "4 in"]);
  });

  it("[B4] the same by its borders makes the same board (NAVEDTRA 14066, p. 2-32)", () => {
    const mat = work({
      unit: "in",
      window: { show: "typed", width: "8", height: "10" },
      outer: { borders: { head: "3", side: "3", foot: "4" } },
    });
    expect([mat.outer.width.text, mat.outer.height.text]).toEqual(["14 in", "17 in"]);
  });

  it("[B3] a lone line sits well with 2 parts above to 3 below (H. L. Gage, Applied Design for Printers, figs 9-10)", () => {
    const mat = inBoard(["10", "12"], ["6", "2"], { rule: "ratio", foot: 1.5 });
    expect(headFootSide(mat)).toEqual({ head: 4, foot: 6, side: 2 });
  });

  it("[B3] at the exact middle a line looks low and must be raised: the house's own lift leaves more below, in both units (H. L. Gage, Applied Design for Printers)", () => {
    for (const unit of ["in", "mm"]) {
      const mat = work({
        unit,
        window: { show: "typed", width: "200 mm", height: "250 mm" },
        outer: { width: "300 mm", height: "400 mm" },
      });
      const borders = mat.mats[0]?.borders;
      expect(borders?.foot.mm).toBeGreaterThan(borders?.head.mm ?? Number.NaN);
    }
  });

  it("[B4] at least 2 in above and beside and 3 in below: an 8 x 10 in window takes 12 x 15 in (photography course handout, college blog, 2014)", () => {
    const mat = work({
      unit: "in",
      window: { show: "typed", width: "8", height: "10" },
      outer: { borders: { head: "2", side: "2", foot: "3" } },
    });
    expect([mat.outer.width.text, mat.outer.height.text]).toEqual(["12 in", "15 in"]);
  });

  it.each([
    { image: ["8", "10"], board: ["14", "17"], beside: 6, above: 7 },
    { image: ["11", "14"], board: ["19", "24"], beside: 8, above: 10 },
    { image: ["16", "20"], board: ["26", "32"], beside: 10, above: 12 },
  ] as const)(
    "[B1] image $image in: add $beside in to the width and $above in to the height (teaching resource page on matting, mmresourcecenter.org)",
    ({ image, board, beside, above }) => {
      const [borders] = inBoard(board, image, { rule: "fixed", by: "1/2" }).mats;
      expect(inches(borders?.borders.left) + inches(borders?.borders.right)).toBe(beside);
      expect(inches(borders?.borders.head) + inches(borders?.borders.foot)).toBe(above);
    },
  );

  it.each([
    { lift: "1/8", more: 0.25 },
    { lift: "1/4", more: 0.5 },
  ])(
    "[B3] bottom 1/4 to 1/2 in wider is a lift of half that: $lift in leaves $more in more below (common practice, no source)",
    ({ lift, more }) => {
      const { head, foot } = headFootSide(inBoard(["16", "20"], ["10", "13"], { rule: "fixed", by: lift }));
      expect(foot - head).toBe(more);
    },
  );
});

/** The opening for an 11 x 14 in image on a larger sheet. */
const overlapping = (overlap?: string) =>
  work({
    unit: "in",
    print: { width: "13", height: "16", image: { left: "1", top: "1", width: "11", height: "14" } },
    window: overlap === undefined ? { show: "overlap" } : { show: "overlap", overlap },
    outer: { width: "16", height: "20" },
  }).mats[0]?.back;

describe("windows", () => {
  it("[W1] an overlap of 1/4 in a side opens 10 1/2 x 13 1/2 in for 11 x 14 in (common practice, no source)", () => {
    const back = overlapping("1/4");
    expect([back?.width.text, back?.height.text]).toEqual(["10 1/2 in", "13 1/2 in"]);
  });

  it("[W1] an overlap of 1/8 in a side opens 10 3/4 x 13 3/4 in for 11 x 14 in, and is what the house takes by itself (common practice, no source)", () => {
    const back = overlapping("1/8");
    expect([back?.width.text, back?.height.text]).toEqual(["10 3/4 in", "13 3/4 in"]);
    expect(overlapping()).toEqual(back);
  });

  it("[W2] 1/8 to 1/4 in of paper shows round a plate mark, a little more below for a signature: the house's own margins (common practice, no source)", () => {
    const back = work({
      unit: "in",
      print: { width: "11", height: "14", image: { left: "2", top: "2", width: "7", height: "9" } },
      window: { show: "margins" },
      outer: { width: "16", height: "20" },
    }).mats[0]?.back;
    const beside = (inches(back?.width) - 7) / 2;
    expect(beside).toBeGreaterThanOrEqual(1 / 8);
    expect(beside).toBeLessThanOrEqual(1 / 4);
    const below = inches(back?.height) - 9 - beside;
    expect(below).toBeGreaterThan(beside);
    expect(below).toBeLessThanOrEqual(beside + 1 / 4);
  });

  it.each([
    { side: 500, movement: 2 },
    { side: 300, movement: 1.2 },
  ])(
    "[U7] paper of $side mm moves by 0.4 %, $movement mm: the hold leaves that and half of the least (typical hygroexpansion across, upper value, after C. Green's Dimensional Stability notes)",
    ({ side, movement }) => {
      const hold = Math.max(3, movement + 1.5);
      const isShort = (cover: number): boolean =>
        work({
          unit: "mm",
          print: { width: side, height: side },
          window: { show: "typed", width: side - 2 * cover, height: side - 2 * cover },
          outer: { width: side + 100, height: side + 100 },
        }).checks.some(({ code }) => code === "hold-short");
      expect(isShort(hold)).toBe(false);
      expect(isShort(hold - 0.1)).toBe(true);
    },
  );
});
