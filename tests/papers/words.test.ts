import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  compose,
  type Design,
  type Holding,
  type LiftRule,
  type OuterRule,
  type WindowRule,
} from "../../src/assembly/index.ts";
import { setRun } from "../../src/drawings/index.ts";
import { pdfTypeface } from "../../src/drawings/writers/pdf/index.ts";
import { figureOf, figureText, inch, type Length, mm, ticks, ZERO } from "../../src/lengths/index.ts";
import {
  articleOf,
  briefRuns,
  briefText,
  dateWords,
  figureRuns,
  figureWords,
  type Language,
  ordinal,
  wholeWords,
} from "../../src/words/index.ts";
import { INCH_DESIGN, METRIC_DESIGN } from "./fixtures.ts";

const INCH = { unit: "in" as const, graduation: inch(1, 16) };
const MM = { unit: "mm" as const, graduation: mm(0.5) };
const spoken = (length: Length, ruler: typeof INCH | typeof MM): string => {
  const { measure } = pdfTypeface();
  return figureRuns(figureOf(length, ruler))
    .map((run) => setRun(run, mm(5), "regular", measure).spoken)
    .join("");
};

const article = (length: Length): string => articleOf(figureOf(length, INCH));

describe("figures", () => {
  test.each([
    [inch(17, 16), "1 1⁄16", "one and one sixteenth"],
    [inch(11, 16), "11⁄16", "eleven sixteenths"],
    [inch(27, 16), "1 11⁄16", "one and eleven sixteenths"],
    [inch(7, 4), "1 3⁄4", "one and three quarters"],
    [inch(17, 8), "2 1⁄8", "two and one eighth"],
    [inch(1, 2), "1⁄2", "one half"],
    [inch(265, 16), "16 9⁄16", "sixteen and nine sixteenths"],
    [inch(11), "11", "eleven"],
  ])("[PP8] [PP29] %i ticks are %s and said %s", (length, written, said) => {
    expect(spoken(length, INCH)).toBe(written);
    expect(figureWords(figureOf(length, INCH))).toBe(said);
  });

  test.each([
    [mm(59), "59", "fifty-nine"],
    [mm(60), "60", "sixty"],
    [mm(66), "66", "sixty-six"],
    [mm(89), "89", "eighty-nine"],
    [mm(44.5), "44.5", "forty-four and a half"],
    [mm(0.5), "0.5", "a half"],
    [mm(1219), "1219", "one thousand two hundred nineteen"],
  ])("[PP8] [PP29] in millimetres %i ticks are %s and said %s", (length, written, said) => {
    expect(spoken(length, MM)).toBe(written);
    expect(figureWords(figureOf(length, MM))).toBe(said);
  });

  test("[PP29] two figures are said alike only when they are written alike", () => {
    const any = fc.tuple(fc.integer({ min: 0, max: 60 * 16 }), fc.integer({ min: 0, max: 60 * 16 }));
    fc.assert(
      fc.property(any, ([a, b]) => {
        const [one, other] = [a, b].map((sixteenths) => figureOf(ticks(sixteenths * 127_000), INCH));
        if (one === undefined || other === undefined) return;
        expect(figureWords(one) === figureWords(other)).toBe(figureText(one) === figureText(other));
      }),
    );
  });

  test("[PP29] numbers, ordinals, articles and dates", () => {
    expect([0, 13, 20, 21, 100, 112, 1000, 20_001, 100_000].map(wholeWords)).toEqual([
      "nought",
      "thirteen",
      "twenty",
      "twenty-one",
      "one hundred",
      "one hundred twelve",
      "one thousand",
      "twenty thousand one",
      "100000",
    ]);
    expect([1, 2, 3, 4, 11, 12, 13, 21, 22, 103, 111].map(ordinal).join(" ")).toBe(
      "1st 2nd 3rd 4th 11th 12th 13th 21st 22nd 103rd 111th",
    );
    expect(
      [inch(8), inch(11), inch(18), inch(1), inch(14), inch(80), inch(1, 8), inch(11, 16)]
        .map(article)
        .join(" "),
    ).toBe("an an an a a an a an");
    expect(dateWords("2026-11-25")).toBe("25 Nov 2026");
    expect(dateWords("soon")).toBe("soon");
  });
});

const brief = (more: Partial<Design>, language: Language = "en-GB"): string => {
  const design = { ...INCH_DESIGN, ...more };
  return briefText(compose(design), { ruler: design.ruler, language });
};

const say = (design: Design): string =>
  briefText(compose(design), { ruler: design.ruler, language: "en-US" });

describe("[PP28] the brief", () => {
  test("says the whole design in one sentence, its choices in semibold", () => {
    expect(brief({}, "en-US")).toBe(
      "Show the image, covered 1/8 in all round, in one mat of 4-ply white rag, on an 11 × 14 in board, raised 1/4 in above center; hold it with corner pockets.",
    );
    expect(brief({}, "en-GB")).toBe(
      "Show the image, covered 1/8 in all round, in one mount of 4-ply white rag, on an 11 × 14 in board, raised 1/4 in above centre; hold it with corner pockets.",
    );
    const runs = briefRuns(compose(INCH_DESIGN), { ruler: INCH, language: "en-US" });
    const chosen = runs.flatMap((run) =>
      run.kind === "text" && run.weight === "semibold" ? [run.text] : [],
    );
    expect(chosen).toEqual(["image", "one mat", "4-ply white rag", "corner pockets"]);
    expect(runs.filter((run) => run.kind === "fraction")).toHaveLength(4);
  });

  test.each<[WindowRule, string]>([
    [{ show: "overlap", overlap: inch(1, 8) }, "Show the image, covered 1/8 in all round, in"],
    [
      { show: "margins", top: inch(1, 4), side: inch(1, 4), foot: inch(3, 8) },
      "Show the image and its margins, 1/4 in of paper in sight, 3/8 in at the foot, in",
    ],
    [
      { show: "margins", top: inch(1, 4), side: inch(1, 4), foot: inch(1, 4) },
      "Show the image and its margins, 1/4 in of paper in sight all round, in",
    ],
    [
      { show: "margins", top: inch(1, 8), side: inch(1, 4), foot: inch(1, 2) },
      "1/8 in of paper in sight at the head, 1/4 in at the sides, 1/2 in at the foot, in",
    ],
    [{ show: "sheet", gap: inch(1, 4) }, "Show the whole sheet, floated, 1/4 in clear all round, in"],
    [{ show: "typed", width: inch(6), height: inch(8) }, "Show the part in a window of 6 × 8 in, in"],
  ])("says the window %j", (window, said) => {
    expect(brief({ window })).toContain(said);
  });

  test("says a mat without a print, and holds nothing", () => {
    const said = brief({ print: null, window: { show: "typed", width: inch(15, 2), height: inch(8) } });
    expect(said).toContain("Show the opening, 7 1/2 × 8 in, in one mount");
    expect(said).not.toContain("hold");
  });

  test.each<[LiftRule, string]>([
    [{ rule: "none" }, ", kept in the middle"],
    [{ rule: "fixed", by: inch(1, 4) }, ", raised 1/4 in above centre"],
    [{ rule: "fixed", by: ZERO }, ", kept in the middle"],
    [{ rule: "fixed", by: inch(-1, 4) }, ", lowered 1/4 in below centre"],
    [{ rule: "ratio", foot: { over: 5n, under: 4n } }, ", the foot 1.25 times the head"],
    [{ rule: "optical" }, ", at the optical centre"],
  ])("says where the window lies: %#", (lift, said) => {
    expect(brief({ lift })).toContain(`board${said}; hold it`);
  });

  test.each<[OuterRule, string]>([
    [{ kind: "size", width: inch(8), height: inch(10) }, "on an 8 × 10 in board, raised"],
    [
      { kind: "borders", borders: { head: inch(2), side: inch(2), foot: inch(5, 2) }, standard: null },
      "on an 11 × 14 1/2 in board, borders 2 in at the head, 2 in at the sides, 2 1/2 in at the foot;",
    ],
    [
      { kind: "borders", borders: { head: inch(2), side: inch(2), foot: inch(2) }, standard: null },
      "on an 11 × 14 in board, borders 2 in all round;",
    ],
  ])("says the board that was found: %#", (outer, said) => {
    expect(brief({ outer })).toContain(said);
  });

  test.each<[Holding, string]>([
    ["pockets", "corner pockets"],
    ["hinges", "hinges at the head"],
    ["strips", "edge strips"],
  ])("says what holds it: %s", (holding, said) => {
    expect(brief({ holding })).toContain(`; hold it with ${said}.`);
  });

  test("says how many mats, of what, and which strips show", () => {
    const [lowest] = METRIC_DESIGN.mats;
    if (lowest === undefined) throw new Error("the fixture has a mat");
    const two = { ...METRIC_DESIGN, mats: [lowest, { ...lowest, reveal: mm(5) }] };
    const three = {
      ...METRIC_DESIGN,
      mats: [lowest, { ...lowest, reveal: mm(5) }, { ...lowest, reveal: mm(5) }],
    };
    const mixed = {
      ...METRIC_DESIGN,
      mats: [
        lowest,
        { ...lowest, reveal: mm(5), board: "grey rag" },
        { ...lowest, reveal: mm(8), board: "grey rag" },
      ],
    };
    expect(say(two)).toContain(
      "in two mats of 4-ply white rag, a 5 mm strip of the lower one showing, on a 400 × 500 mm board",
    );
    expect(say(three)).toContain("in three mats of 4-ply white rag, a 5 mm strip of each lower one showing");
    expect(say(mixed)).toContain(
      "in three mats of grey rag and 4-ply white rag, strips of 5 mm and 8 mm showing, from the lowest up",
    );
  });
});
