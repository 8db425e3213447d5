import { describe, expect, it } from "vitest";
import { pdfTypeface } from "../../src/drawings/writers/pdf/index.ts";
import { mm } from "../../src/lengths/index.ts";
import { wallSheetJob } from "../../src/packet/index.ts";
import { hangingSheet, type Page, type PaperSize } from "../../src/papers/index.ts";
import { hangFor, type HungWall } from "../../src/show/index.ts";
import { textsOf } from "../papers/ink.ts";
import { expectClean } from "../papers/clean.ts";

const typeface = pdfTypeface();

const work = (index: number) => ({
  title:
    index === 4
      ? "A very long title that goes on about the tide as though it would never turn"
      : `Tide ${index}`,
  width: 300 + ((index * 37) % 200),
  height: 400 + ((index * 53) % 200),
  weight: index % 5 === 4 ? null : 2 + (index % 3),
  hang:
    index % 3 === 0
      ? { kind: "wire", below: index === 3 ? 20 : 120, apart: 240, drop: 60, hooks: 2, hooksApart: 100 }
      : { kind: "rings", below: 70, apart: 200 },
});

/** Each wall is laid out once, on whatever paper it comes. */
const laid = new Map<string, HungWall>();

function wallOf(document: object): HungWall {
  const key = JSON.stringify(document);
  const known = laid.get(key);
  if (known !== undefined) return known;
  const hung = hangFor(document);
  if (!hung.ok) throw new Error(JSON.stringify(hung.problems));
  laid.set(key, hung.value);
  return hung.value;
}

function sheet(count: number, rule: object, size: PaperSize, more: object = {}): readonly Page[] {
  const document = {
    unit: "mm",
    wall: { width: 9000, height: 3000 },
    hookDrop: 12,
    rule,
    avoid: [{ name: "lights", x: 900, y: 1000, width: 90, height: 120 }],
    works: Array.from({ length: count }, (_, index) => work(index)),
    ...more,
  };
  const job = wallSheetJob(
    wallOf(document),
    { studio: "Tidewater Print Room", show: "Slack Water" },
    { number: 3, date: "2026-11-25", makesVoid: { number: 2, date: "2026-11-19" } },
  );
  return hangingSheet({ ...job, wall: "North wall" }, size, typeface);
}

const ROW = { row: "spread" };
const FULL = { wall: { width: 14_000, height: 3000, kind: "plasterboard" } };
const CLUSTER = { cluster: { gap: 50 } };
const level = { levelLine: 1200, eyeLine: 250 };
const walls: readonly (readonly [string, number, object, object])[] = [
  ["one work", 1, ROW, {}],
  ["three in a row from a level line", 3, { row: "gap", gap: 120 }, level],
  ["twelve that fill the wall", 12, ROW, {}],
  ["a cluster of twenty", 20, CLUSTER, {}],
  ["a grid of nine", 9, { grid: { columns: 3, gap: 60 } }, level],
  [
    "sixty in a cluster, in parts",
    60,
    CLUSTER,
    { wall: { width: 14_000, height: 3000, kind: "plasterboard" } },
  ],
  [
    "sixty in a row, in parts",
    60,
    { row: "gap", gap: 60 },
    { wall: { width: 40_000, height: 3000 }, shakes: true },
  ],
  [
    "rows over a bench, a tape that sags, a floor that falls",
    14,
    { rows: { count: 2, gap: 60 } },
    {
      wall: { width: 9000, height: 3000, kind: "masonry", fall: 12 },
      tape: { span: 5000, over: 4 },
      seats: [{ name: "bench", x: 3000, width: 1500 }],
      hardware: [{ name: "brass, no. 2", use: "hook", rated: "12 kg" }],
    },
  ],
  ["a wall that is too narrow", 6, { row: "gap", gap: 100 }, { wall: { width: 1500, height: 3000 } }],
];

describe("the hanging sheet", () => {
  for (const size of ["a4", "letter"] as const)
    it.each(walls)(
      `[HG20] %s on ${size}: no words meet, nothing strikes a word or leaves the page`,
      (_, count, rule, more) => {
        for (const page of sheet(count, rule, size, more)) {
          expectClean(page, size, typeface);
        }
      },
    );

  it("[HG20] each hook has its letter, and both measures across make the wall", () => {
    const texts = sheet(12, ROW, "a4").flatMap((page) => textsOf(page));
    // Eleven works have two hooks; the fourth cannot be hung as asked.
    for (const letter of ["A", "V"]) expect(texts).toContain(letter);
    expect(texts).not.toContain("W");
    expect(texts).toContain("435 mm");
    expect(texts).toContain("8565");
  });

  it("[HG21] a work that cannot be hung as asked has no row, and its reason stands at the top", () => {
    const texts = sheet(4, ROW, "a4")
      .flatMap((page) => textsOf(page))
      .join(" ");
    expect(texts).toContain("NOT ON THIS SHEET");
    expect(texts).toMatch(/4, Tide 3: The taut wire rises 60 mm/);
  });

  it("[HG21] however many cannot be hung, each is named with why, and so is a wall too narrow for them", () => {
    const texts = sheet(14, { row: "gap", gap: 100 }, "a4", { wall: { width: 1500, height: 3000 } })
      .flatMap((page) => textsOf(page))
      .join(" ");
    expect(texts).toMatch(/The frames and their gaps take \d+ mm and the wall has 1500 mm/);
    for (const index of [0, 1, 2, 3, 5, 11, 12, 13]) expect(texts).toContain(`${index + 1}, Tide ${index}: `);
    expect(texts).toMatch(/NOT ON THIS SHEET: \d+ of 14 works/);
  });

  it("[HG33] every work that hangs is named with its frame, where its fittings go, its wire and what it pulls", () => {
    const texts = sheet(60, CLUSTER, "a4", FULL).flatMap((page) => textsOf(page));
    const said = texts.join(" ");
    for (let index = 0; index < 60; index++)
      if (index !== 3 && index !== 4) expect(said).toContain(`Tide ${index}`);
    expect(said).toContain("300 × 400 mm");
    // The wire of the first work: 100 between its hooks, and two legs of 60 up and 70 in.
    expect(texts).toContain("284");
    expect(said).toContain("rings, no wire");
  });

  it("[HG33] a wall too full to be read whole comes again in parts, each with its own hooks and no other", () => {
    const pages = sheet(60, { row: "gap", gap: 60 }, "a4", { wall: { width: 40_000, height: 3000 } });
    const parts = pages.filter((page) =>
      textsOf(page).some((text) => text.startsWith("hook") && text.length === 4),
    );
    expect(parts.length).toBeGreaterThan(4);
    const letters = parts.map((page) => new Set(textsOf(page).filter((text) => /^[A-Z]{1,2}$/.test(text))));
    letters.forEach((own, index) =>
      letters
        .slice(0, index)
        .forEach((other) => expect([...own].filter((one) => other.has(one))).toEqual([])),
    );
  });

  it("[HG24] [HG33] the sheet's figures are what the tape must read", () => {
    const more = { wall: { width: 9000, height: 3000, fall: 90 }, tape: { span: 9000, over: 80 } };
    const texts = sheet(1, ROW, "a4", { ...more, avoid: [] }).flatMap((page) => textsOf(page));
    // Its hooks stand at 4450 and 4550: 80 too much over the whole wall is 10 over half of it.
    expect(texts).toContain("4460 mm");
    expect(texts).toContain("4560");
    // Half of the fall further up than 1450 + 200 - 120 + 60 + 12.
    expect(texts.some((text) => text.startsWith("1647") || text.startsWith("1648"))).toBe(true);
  });

  it("[HG25] [HG26] [HG33] what the wall is made of, shaking ground and seats are said on the sheet", () => {
    const seats = [{ name: "the bench", x: 0, width: 9000 }];
    const more = { wall: { width: 9000, height: 3000, kind: "lath" }, shakes: true, seats };
    const said = sheet(3, ROW, "a4", more)
      .flatMap((page) => textsOf(page))
      .join(" ");
    expect(said).toContain("drill first, never hammer");
    expect(said).toContain("closed hangers");
    expect(said).toContain("It hangs over the bench");
  });

  it("[HG21] nail, load, wall and licensed hand are cautioned of on the page of the first hook", () => {
    for (const count of [3, 20]) {
      const texts = textsOf(
        sheet(count, ROW, "a4")[0] ?? { width: mm(1), height: mm(1), bookmark: "", marks: [] },
      ).join(" ");
      for (const said of ["NAIL, not wire", "rated 4 times", "Plaster alone", "licensed hand", "Local codes"])
        expect(texts).toContain(said);
    }
  });
});
