import * as fc from "fast-check";
import { expect, test } from "vitest";
import { pdfTypeface } from "../../src/drawings/writers/pdf/index.ts";
import { inch, type Length, mm, type Ruler, ZERO } from "../../src/lengths/index.ts";
import { chopList, type ChopListJob, type FrameMade } from "../../src/papers/index.ts";
import { type ChoppingJob, type FrameToMake, planChopping, railsOfFrames } from "../../src/plans/index.ts";
import { textsOf } from "../papers/ink.ts";
import { expectClean } from "../papers/clean.ts";

const typeface = pdfTypeface();
const INCHES: Ruler = { unit: "in", graduation: inch(1, 16) };
const MILLIMETRES: Ruler = { unit: "mm", graduation: mm(1) };

const OAK = { name: "oak", overall: inch(3, 4), rabbet: inch(1, 4), depth: null, allowance: inch(1, 8) };
const ASH = { name: "ash", overall: mm(30), rabbet: mm(6), depth: mm(20), allowance: mm(3) };

const frame = (name: string, width: Length, height: Length, count = 1): FrameToMake => ({
  name,
  width,
  height,
  count,
});
const FOUR = [
  frame("Low Water, Pewter Light", inch(11), inch(14), 2),
  frame("Ferry Slip", inch(14), inch(18)),
  frame("Small Eddy", inch(8), inch(10)),
];

/** A chop list as a packet would make it. */
function listOf(
  kinds: readonly FrameToMake[],
  moulding: ChopListJob["moulding"],
  ruler: Ruler,
  more: Partial<ChoppingJob> = {},
): ChopListJob {
  const job: ChoppingJob = {
    lengths: [
      {
        name: "ten feet",
        length: ruler.unit === "in" ? inch(120) : mm(3000),
        cost: 24,
        copies: null,
      },
    ],
    ...railsOfFrames(kinds, moulding),
    kerf: ruler.unit === "in" ? inch(3, 16) : mm(4.3),
    waste: ruler.unit === "in" ? inch(1, 2) : mm(12),
    ...more,
  };
  let next = 1;
  const frames = kinds.map(({ name, width, height, count }): FrameMade[] =>
    Array.from({ length: count }, () => ({ number: next++, title: name, size: { width, height } })),
  );
  return {
    moulding,
    job,
    plan: planChopping(job, { seconds: 1, seed: 1, clock: () => 0 }),
    frames,
    house: { studio: "Tidewater Print Room", show: "Slack Water" },
    planWords: { number: 3, date: "2026-11-25", makesVoid: { number: 2, date: "2026-11-19" } },
    ruler,
    language: "en-US",
  };
}

const saidBy = (job: ChopListJob): string =>
  chopList(job, "letter", typeface)
    .flatMap((page) => textsOf(page))
    .join("\n");

test("[CL1] every stop of the saw stands once with both its lengths, the longest first", () => {
  const texts = saidBy(listOf(FOUR, OAK, INCHES)).split("\n");
  const large = ["19 1/8 in", "15 1/8 in", "12 1/8 in", "11 1/8 in", "9 1/8 in"];
  expect(texts.filter((text) => large.includes(text))).toEqual(large);
  const short = ["17 5/8 in", "13 5/8 in", "10 5/8 in", "9 5/8 in", "7 5/8 in"];
  expect(texts.filter((text) => short.includes(text))).toEqual(short);
});

test("[CL2] every rail has one tick, with its frame's ring and its side", () => {
  const job = listOf(FOUR, OAK, INCHES);
  const texts = saidBy(job).split("\n");
  for (const side of ["head", "right", "foot", "left"])
    expect(texts.filter((text) => text === side)).toHaveLength(4);
});

test("[CL3] a stick's printed sum is true: rails, cuts and ends make what is used, and with what is kept the length", () => {
  const job = listOf(FOUR, OAK, INCHES);
  const texts = saidBy(job).replaceAll("\n", " ");
  const value = (text: string): number =>
    text.split(" ").reduce((sum, part) => {
      const [over = 0, under = 1] = part.split("/").map(Number);
      return sum + over / under;
    }, 0);
  const figure = String.raw`((?:\d+ )?\d+\/\d+|\d+)`;
  const sums = [
    ...texts.matchAll(
      new RegExp(
        String.raw`Stick \d+, ${figure} in: rails ${figure} \+ (\d+) cuts? × ${figure} = ${figure} \+ 2 ends × ${figure} = ${figure}; in all ${figure}; keep ${figure} in`,
        "g",
      ),
    ),
  ];
  expect(sums).toHaveLength(job.plan.sticks.length);
  for (const [, ...figures] of sums) {
    const [length = 0, rails = 0, cuts = 0, kerf = 0, lost = 0, end = 0, ends = 0, used = 0, keep = 0] =
      figures.map((text) => value(text));
    expect(cuts * kerf).toBe(lost);
    expect(2 * end).toBe(ends);
    expect(rails + lost + ends).toBe(used);
    expect(used + keep).toBe(length);
  }
});

test("[CL3] where the saw's loss falls between the ruler's marks no sum is printed", () => {
  const text = saidBy(listOf([frame("Kesä", mm(300), mm(400), 2)], ASH, MILLIMETRES)).replaceAll("\n", " ");
  expect(text).toContain("in all at most");
  expect(text).not.toMatch(/cuts × /);
});

test("[CL4] scrap first and hands off the saw line stand before the first stop", () => {
  const texts = saidBy(listOf(FOUR, OAK, INCHES)).replaceAll("\n", " ");
  expect(texts.indexOf("Chop one small frame in scrap first.")).toBeGreaterThan(0);
  expect(texts.indexOf("Hands off the saw line.")).toBeGreaterThan(0);
  expect(texts.indexOf("Hands off the saw line.")).toBeLessThan(texts.indexOf("19 1/8 in"));
});

test("[CL5] rails that no length gives are named on a page that comes first", () => {
  const job = listOf([...FOUR, frame("Seawall", inch(130), inch(20))], OAK, INCHES);
  const [first] = chopList(job, "letter", typeface);
  if (first === undefined) throw new Error("no page");
  expect(textsOf(first).join(" ")).toMatch(/Seawall.* \(131 1\/8 in\).*no length is long enough/);
});

const side = fc.integer({ min: 5, max: 40 });
const title = fc.constantFrom(
  "Ebb",
  "Zażółć",
  "Fog on the Bar, Seen from the Long Staithe before Rain, with the Ferry Slip and its Lamp",
);

test("[CL6] no word's ink meets another's, no line strikes one, nothing leaves the content box", () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(title, side, side, fc.integer({ min: 1, max: 9 })), { minLength: 1, maxLength: 9 }),
      fc.constantFrom("a4" as const, "letter" as const),
      fc.constantFrom(INCHES, MILLIMETRES),
      (kinds, paper, ruler) => {
        const unit = (length: number): Length => (ruler.unit === "in" ? inch(length) : mm(length * 25));
        const job = listOf(
          kinds.map(([name, width, height, count]) => frame(name, unit(width), unit(height), count)),
          ruler.unit === "in" ? OAK : ASH,
          ruler,
        );
        for (const page of chopList(job, paper, typeface)) {
          expectClean(page, paper, typeface);
        }
      },
    ),
    { numRuns: 30 },
  );
});

test("[CL6] a single rail without a frame, waste or loss prints", () => {
  const job = listOf([], OAK, INCHES, {
    rails: [{ name: "batten", length: inch(30), shortPoint: null, count: 1, frame: null }],
    kerf: ZERO,
    waste: ZERO,
  });
  expect(saidBy(job)).toContain("30 in");
});
