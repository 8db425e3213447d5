import fc from "fast-check";
import { expect, test } from "vitest";
import {
  type Length,
  mm,
  printExact,
  toGraduation,
  toMillimetres,
  wholeNumber,
} from "../../src/lengths/index.ts";
import type { ComposeDocument } from "../../src/show/index.ts";
import { sayCheck, saySum } from "../../src/words/index.ts";
import { borders, codes, composed } from "./helpers.ts";

const double: ComposeDocument = {
  unit: "mm",
  graduation: "1 mm",
  print: { width: "330", height: "430", image: { left: "23", top: "27", width: "287", height: "371" } },
  window: { show: "overlap", overlap: "3" },
  outer: { width: "400", height: "500" },
  lift: { rule: "fixed", by: "6" },
  mats: [
    { thickness: "1.5", bevel: 45 },
    { thickness: "1.5", bevel: 45, reveal: "5" },
  ],
};

test("[M1] the face is larger by t / tan(a); 90 degrees exactly nothing", () => {
  const at = (bevel: number) => composed({ ...double, mats: [{ thickness: "1.5", bevel }] }).mats[0];
  const plan = (bevel: number) => toMillimetres(at(bevel)?.bevel.plan ?? mm(-1));
  expect(plan(45)).toBe(1.5);
  expect(plan(90)).toBe(0);
  expect(plan(60)).toBeCloseTo(0.866025, 5);
  expect(at(45)?.face.width).toBe((at(45)?.back.width ?? 0) + mm(3));
  // Slope 1.5 x sqrt 2 = 2.12 (geometry).
  expect(toMillimetres(at(45)?.bevel.slope ?? mm(-1))).toBeCloseTo(1.5 * Math.SQRT2, 4);
});

test("[M2] a 5 mm strip over a 1.5 mm bevel steps by 7 on whole millimetres and is cut as 5.5", () => {
  const two = composed(double);
  expect(borders(two, 0)).toEqual(["61", "59", "60", "74"]);
  expect(borders(two, 1)).toEqual(["54", "52", "53", "67"]);
  expect(printExact(two.mats[1]?.revealAsCut ?? mm(0), "mm")).toBe("5.5 mm");
});

test("[M3] a strip that rounding takes away is a stop, one off by more than a third a warning", () => {
  const strip = (reveal: string, thickness = "1.4") =>
    codes(
      composed({
        ...double,
        mats: [
          { thickness, bevel: 45 },
          { thickness, bevel: 45, reveal },
        ],
      }),
    );
  expect(strip("0.05")).toContain("reveal-gone");
  expect(strip("0.95")).toContain("reveal-off");
  expect(strip("5")).not.toContain("reveal-off");
});

test("[U1][U2] place, cover and window add up to the sheet", () => {
  const side = fc.integer({ min: 500, max: 6000 }).map((n) => n / 10);
  fc.assert(
    fc.property(
      side,
      side,
      fc.integer({ min: 0, max: 300 }),
      fc.integer({ min: 0, max: 300 }),
      fc.constantFrom("overlap", "typed", "margins"),
      (w, h, l, t, show) => {
        const one = composed({
          ...double,
          print: {
            width: `${w + l / 10 + 20}`,
            height: `${h + t / 10 + 20}`,
            image: { left: `${l / 10}`, top: `${t / 10}`, width: `${w}`, height: `${h}` },
          },
          window:
            show === "typed"
              ? { show, width: "200.1", height: "200.3" }
              : { show: show as "overlap" | "margins" },
          outer: { borders: { head: "60", side: "50.5", foot: "70" } },
        });
        const { print, mats } = one;
        const back = mats[0]?.back;
        const sheet = one.design.print?.sheet;
        if (!print || !back || !sheet) throw new Error("no print");
        expect(print.cover.left + back.width + print.cover.right).toBe(sheet.width);
        expect(print.cover.head + back.height + print.cover.foot).toBe(sheet.height);
        expect(print.left + print.cover.left).toBe(mats[0]?.borders.left);
      },
    ),
    { numRuns: 300 },
  );
});

test("[U2] a torn sheet covers with its inner envelope", () => {
  const torn = composed({
    ...double,
    print: {
      ...double.print,
      sheetOutline: [
        ["2", "1"],
        ["330", "0"],
        ["327", "215"],
        ["329", "430"],
        ["0", "428"],
        ["5", "200"],
      ],
    },
  });
  const straight = composed(double);
  for (const side of ["head", "left", "right", "foot"] as const) {
    expect(torn.print?.cover[side]).toBeLessThanOrEqual(straight.print?.cover[side] ?? 0);
  }
  expect(torn.print?.cover.left).toBeLessThanOrEqual((straight.print?.cover.left ?? 0) - mm(4));
});

test("[U3] paper that ends, and paper held too little, stop the work and name side, hand, figure and way out", () => {
  const short: ComposeDocument = {
    unit: "in",
    print: {
      width: "7 1/4",
      height: "10",
      image: { left: "0", top: "3/8", width: "6 5/8", height: "9 1/8" },
    },
    window: { show: "overlap", overlap: "1/16" },
    hold: "1/8",
    outer: { width: "11", height: "14" },
  };
  const held = composed(short);
  const check = held.checks.find(({ code }) => code === "hold-short");
  expect(check).toMatchObject({ side: "left", level: "stop" });
  expect(check && sayCheck(check, { ruler: held.design.ruler, language: "en-US" })).toBe(
    "The front's left, at your right hand on the back: the paper reaches under by 1/16 in and must reach 1/8 in. It is short by 1/16 in. Show less there, or hinge it to a carrier sheet of 6 3/4 in × 9 1/4 in.",
  );
  const bare = composed({ ...short, window: { show: "margins", top: "0", side: "1/4", foot: "0" } });
  expect(bare.checks[0]).toMatchObject({ code: "paper-ends", side: "left" });
  expect(
    codes(
      composed({
        ...short,
        print: { ...short.print, sure: "1/8" },
        window: { show: "overlap", overlap: "1/8" },
      }),
    ),
  ).toContain("hold-short");
  expect(
    codes(composed({ ...short, window: { show: "sheet", gap: "1/4" }, holding: "hinges" })),
  ).not.toContain("paper-ends");
});

test("[U4] pockets are u + v - play, rounded down, never below nought", () => {
  const { print, design } = composed(double);
  if (print === null) throw new Error("no print");
  expect(print.pockets.topLeft).toBe(print.cover.left + print.cover.head - design.play);
  expect(print.pockets.bottomRight).toBe(print.cover.right + print.cover.foot - design.play);
  const floated = composed({ ...double, window: { show: "sheet", gap: "6" }, holding: "hinges" });
  expect(Object.values(floated.print?.pockets ?? {})).toEqual([0, 0, 0, 0]);
});

test("[U5] pockets too small, or in sight, are warned about", () => {
  const tight: ComposeDocument = {
    ...double,
    print: { width: "293", height: "377", image: { left: "3", top: "3", width: "287", height: "371" } },
  };
  expect(codes(composed({ ...tight, hold: "1" }))).toContain("pocket-small");
  expect(codes(composed({ ...tight, hold: "1", holding: "strips" }))).not.toContain("pocket-small");
  const shown: ComposeDocument = { ...double, window: { show: "sheet", gap: "6" } };
  expect(codes(composed({ ...shown, holding: "pockets" }))).toContain("holding-shows");
  expect(codes(composed(shown))).not.toContain("holding-shows");
});

test("[U6] a sheet larger than its package is a stop", () => {
  const large = composed({ ...double, outer: { width: "320", height: "500" } });
  expect(large.checks.filter(({ code }) => code === "sheet-past-board").length).toBeGreaterThan(0);
  expect(large.checks[0]?.level).toBe("stop");
});

test("[U7] without a hold of the practice it is 1/8 in, or the paper's movement and half of that", () => {
  expect(
    printExact(
      composed({
        ...double,
        unit: "in",
        print: { width: "8 in", height: "10 in" },
        window: { show: "overlap" },
        outer: { width: "11 in", height: "14 in" },
      }).design.hold,
      "in",
    ),
  ).toBe("1/8 in");
  // 430 mm x 0.4 % = 1.72, and 1.5: 3.22 mm.
  expect(printExact(composed(double).design.hold, "mm")).toBe("3.22 mm");
});

test("[U8] where no overlap is asked, the practice's grows by what the hold needs; an asked one stays", () => {
  // The sheet ends at the image: 30 in x 0.4 % + 1/16 in = 0.1825 in of hold, so 1/8 in becomes 3/16.
  const full: ComposeDocument = {
    unit: "in",
    print: { width: "20", height: "30" },
    outer: { width: "28", height: "38" },
  };
  expect(printExact(composed(full).mats[0]?.back.width ?? mm(0), "in")).toBe("19 5/8 in");
  expect(codes(composed(full))).not.toContain("hold-short");
  const asked = composed({ ...full, window: { show: "overlap", overlap: "1/8" } });
  expect(printExact(asked.mats[0]?.back.width ?? mm(0), "in")).toBe("19 3/4 in");
  expect(codes(asked)).toContain("hold-short");
});

test("[U9] the board it is mounted on is the lowest mat's, unless one is named", () => {
  expect(composed({ ...double, mats: [{ board: "unbuffered" }] }).design.mount).toBe("unbuffered");
  expect(
    composed({ ...double, mats: [{ board: "unbuffered" }] }, { unit: "mm", mount: "8-ply" }).design.mount,
  ).toBe("8-ply");
});

test("[S1][S2] the top mat first, narrow to wide, equal borders in one setting, every edge once, each at its hand", () => {
  const { stops } = composed(double);
  expect(stops.map(({ mat, set, edges, hand }) => [mat, printExact(set, "mm"), edges, hand])).toEqual([
    [1, "52 mm", ["left"], ["right"]],
    [1, "53 mm", ["right"], ["left"]],
    [1, "54 mm", ["head"], ["away"]],
    [1, "67 mm", ["foot"], ["near"]],
    [0, "59 mm", ["left"], ["right"]],
    [0, "60 mm", ["right"], ["left"]],
    [0, "61 mm", ["head"], ["away"]],
    [0, "74 mm", ["foot"], ["near"]],
  ]);
  const equal = composed({
    unit: "in",
    window: { show: "typed", width: "7", height: "10" },
    outer: { width: "11", height: "14" },
  });
  expect(equal.stops.map(({ edges }) => edges)).toEqual([["head"], ["left", "right"], ["foot"]]);
});

test("[S1] a setting that serves the next mat too is left until last", () => {
  const shared = composed({
    unit: "in",
    window: { show: "typed", width: "7", height: "9 1/2" },
    outer: { borders: { head: "2", side: "2 1/4", foot: "2 1/4" } },
    mats: [
      { thickness: "1/16", bevel: 90 },
      { thickness: "1/16", bevel: 90, reveal: "1/4" },
    ],
  });
  // Top: 1 3/4 and 2; lower: 2 and 2 1/4.
  expect(shared.stops.map(({ mat, set }) => `${mat}: ${printExact(set, "in")}`)).toEqual([
    "1: 1 3/4 in",
    "1: 2 in",
    "0: 2 in",
    "0: 2 1/4 in",
  ]);
});

test("[S3] the scale reads the border plus the cutter's offset", () => {
  const offset = composed(double, { unit: "mm", scaleOffset: "-0.5" });
  expect(offset.stops.map(({ set, scale }) => scale - set)).toEqual(offset.stops.map(() => mm(-0.5)));
});

test("[R1] stops come before warnings, warnings before notes", () => {
  const rank = { stop: 0, warn: 1, note: 2 };
  const many = composed({
    ...double,
    print: {
      width: "290",
      height: "375",
      angle: 1,
      image: { left: "1", top: "1", width: "287", height: "371" },
    },
  });
  const ranks = many.checks.map(({ level }) => rank[level]);
  expect(ranks.length).toBeGreaterThan(2);
  expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
});

test("[R2][R3] every step makes what it keeps, and prints both", () => {
  const ways = { graduation: mm(1) };
  for (const lift of [
    { rule: "optical" },
    { rule: "ratio", foot: 1.25 },
    { rule: "fixed", by: "6" },
    { rule: "none" },
  ] as const) {
    const one = composed({
      ...double,
      lift,
      mats: [
        { thickness: "1.5", bevel: 50 },
        { thickness: "1.4", bevel: 45, reveal: "5" },
      ],
    });
    expect(one.reckoning.length).toBeGreaterThan(20);
    for (const step of one.reckoning) {
      const kept =
        step.rounded === null
          ? wholeNumber(step.makes, "nearest")
          : toGraduation(step.makes as Length, ways.graduation, step.rounded);
      expect([step.name, kept]).toEqual([step.name, step.is]);
    }
  }
  const sums = composed({
    unit: "in",
    window: { show: "typed", width: "7 1/8", height: "10" },
    outer: { width: "11", height: "14" },
  }).reckoning.map((step) => saySum(step, "in"));
  expect(sums).toContain("11 in - 7 1/8 in = 3 7/8 in");
  expect(sums).toContain("3 7/8 in / 2 = 1 15/16 in");
  expect(sums).toContain("√((11 in)² + (14 in)²) ≈ 17.8045 in");
});
