import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isStopped } from "../../src/assembly/index.ts";
import { inch, mm } from "../../src/lengths/index.ts";
import { type Page } from "../../src/papers/index.ts";
import { anyCase } from "./family.ts";
import { INCH_DESIGN, INCH_PRINT, jobOf, METRIC_DESIGN, METRIC_PRINT } from "./fixtures.ts";
import { flatMarks, textsOf, reading, type TextMark } from "./ink.ts";
import { sheetOf, textMarks, textOf, valueOf } from "./reading.ts";

const RUNS = { numRuns: 60 };

describe("what the steps say", () => {
  test("[PP19] DO NOT CUT names side, figure, hand and ways out, and no border's figure is on the sheet", () => {
    const job = jobOf({
      ...INCH_DESIGN,
      print: {
        ...INCH_PRINT,
        image: { left: inch(3, 4), top: inch(1, 16), width: inch(33, 4), height: inch(41, 4) },
      },
      window: { show: "margins", top: inch(1, 4), side: inch(1, 4), foot: inch(3, 8) },
    });
    expect(isStopped(job.composition)).toBe(true);
    const pages = sheetOf(job);
    const text = textOf(pages);
    expect(text).toContain("PAPER ENDS BEFORE THE WINDOW");
    expect(text).toContain("short at the front’s right, at your");
    expect(text).toContain("LEFT HAND");
    expect(text).toContain("short at the head, away from you");
    expect(text).toMatch(/carrier sheet 9 × 11 1\/8 in/);
    const big = pages.flatMap((page) => textMarks(page)).filter((mark) => mark.size > inch(1) / 4);
    const figures = big.flatMap((mark) =>
      mark.runs.flatMap((run) => (run.kind === "fraction" ? [valueOf(run)] : [])),
    );
    expect(figures.toSorted()).toEqual([3 / 16, 1 / 4]);
    const ticks = flatMarks(pages[0]?.marks ?? []).filter(
      (mark) =>
        mark.kind === "area" &&
        mark.fill === "none" &&
        mark.line === "edge" &&
        isSquare(mark.points, mm(4.2)),
    );
    expect(ticks).toEqual([]);
  });

  test("[PP20] a warning stands as a caution before the step it concerns", () => {
    const small = jobOf({ ...INCH_DESIGN, leastBorder: inch(5, 2) });
    const text = textOf(sheetOf(small));
    const at = text.indexOf("Look again: the head border is only 1 3/4 in.");
    expect(at).toBeGreaterThan(text.indexOf("Mark four lines"));
    expect(at).toBeLessThan(text.indexOf("Set the stop"));
    const pockets = textOf(sheetOf(jobOf({ ...INCH_DESIGN, leastPocket: inch(2) }))).replaceAll("\n", " ");
    expect(pockets).toContain("Pockets show past 1 9/16 in, and need 2 in. Hinge it at the head.");
    expect(pockets).not.toContain("Four pockets");
  });

  test("what must lie on the bench: every copy's blanks and mounts, what holds it, a fresh blade", () => {
    const job = jobOf(INCH_DESIGN, {
      blanks: { cutPlan: 1, mats: [[3, 4, 8]], mounts: [], fromOut: [null] },
    });
    const three = textOf(
      sheetOf({ ...job, work: { ...job.work, quantity: 3, process: "etching", edition: "1 / 3" } }),
    ).replaceAll("\n", " ");
    expect(three).toContain(
      "Blanks 3, 4 and 8 and three mounts of 4-ply white rag, 11 × 14 in; four pockets each, linen tape, a weight, a fresh blade, a hard pencil, scrap.",
    );
    const numbered = textOf(
      sheetOf(jobOf(INCH_DESIGN, { blanks: { cutPlan: 1, mats: [[3]], mounts: [9], fromOut: [null] } })),
    ).replaceAll("\n", " ");
    expect(numbered).toContain("Blank 3 and mount blank 9 of 4-ply white rag, 11 × 14 in;");
    expect(three).toContain("Three blanks 11 × 14 in");
    expect(three).toContain("Ines Okonedo-Vale, 2026. Etching, 1 / 3, sheet");
    expect(three).toContain("3 alike");
    const mat = jobOf({
      ...INCH_DESIGN,
      print: null,
      window: { show: "typed", width: inch(7), height: inch(9) },
    });
    const alone = textOf(sheetOf(mat)).replaceAll("\n", " ");
    expect(alone).toContain("One mat, 11 × 14 in; a fresh blade, a hard pencil, scrap.");
    expect(alone).toContain("No print is given: this is a mat by itself.");
    expect(alone).not.toContain("Lay the print");
  });

  test("[PP21] the sides are listed least first, from the front", () => {
    const [page] = sheetOf(jobOf(INCH_DESIGN));
    const texts = textsOf(page as Page);
    expect(texts).toContain("seen from the FRONT");
    const from = texts.indexOf("Paper reaches under");
    const listed = texts.slice(from).filter((text) => /^[\d /]+ in$/.test(text));
    expect(listed).toEqual(["3/4 in", "7/8 in", "1 1/8 in", "1 1/8 in"]);
    const names = texts.slice(from).filter((text) => /^(head|left|right|foot)$/.test(text));
    expect(names).toEqual(["head", "left", "right", "foot"]);
  });

  test("[PP22] a turned sheet is laid by both its head corners", () => {
    expect(turned("en-US")).toMatch(
      /turned 1\.3° counterclockwise: its top left corner ≈ 1 in from the left, ≈ 1 1\/8 in from the head; its top right ≈ 10 in from the left, ≈ 7\/8 in from the head\./,
    );
    expect(turned("en-GB")).toContain("1.3° anticlockwise");
  });

  test("[PP23] a float is hinged to a riser and stands clear", () => {
    const float = jobOf({
      ...INCH_DESIGN,
      window: { show: "sheet", gap: inch(1, 4) },
      outer: { kind: "size", width: inch(14), height: inch(18) },
    });
    const text = textOf(sheetOf(float)).replaceAll("\n", " ");
    expect(text).toContain("Paper stands clear");
    expect(text).toMatch(
      /Riser 8 × 10 7\/8 in: fix it to the mount, 3 in from the left, 3 5\/16 in from the head\./,
    );
    expect(text).toMatch(/Hinge the sheet to it, two hinges hidden behind its head/);
    expect(text).toContain("Spacers must stand higher than riser and sheet together.");
    expect(text).toContain("Hinge it from behind: corner pockets would show.");
    expect(text).not.toContain("Four pockets");
  });

  test("[PP24] every sheet of an edition has its own row, and no pocket is longer than each of them allows", () => {
    const edition = [1, 2].map((number) => ({
      name: `${number + 1} / 3`,
      sheet: { width: mm(330 - 10 * number), height: mm(430) },
      image: { left: mm(20 - 6 * number), top: mm(26), width: mm(287), height: mm(371) },
    }));
    const job = jobOf({
      ...METRIC_DESIGN,
      mats: METRIC_DESIGN.mats.slice(0, 1),
      print: { ...METRIC_PRINT, edition },
    });
    expect(isStopped(job.composition)).toBe(false);
    const text = textOf(sheetOf({ ...job, work: { ...job.work, edition: "1 / 3" } }));
    for (const name of ["1 / 3", "2 / 3", "3 / 3"]) expect(text).toContain(name);
    expect(text).toContain("Three sheets share this window: lay each by its own figures");
    const covers = job.composition.print?.edition.map(({ cover }) => cover) ?? [];
    const limit = Math.min(
      ...covers.flatMap((cover) =>
        [cover.head, cover.foot].flatMap((a) => [cover.left, cover.right].map((b) => a + b)),
      ),
    );
    const leg = Number(/leg (\d+) mm/.exec(text)?.[1]) * mm(1);
    expect(leg).toBeLessThanOrEqual(limit - mm(1.5));
    expect(leg).toBeGreaterThan(0);
  });

  test("[PP25] [PP26] several mats: drop-outs taped back, called by their blank's number, and the strip as it is cut", () => {
    const job = jobOf(METRIC_DESIGN, {
      blanks: { cutPlan: 2, mats: [[10], [9]], mounts: [], fromOut: [12, null] },
    });
    const text = textOf(sheetOf(job, "a4"));
    expect(text).toContain("Put OUT back, flush; tape it. It stays until all are cut.");
    expect(text).toContain("tape back in");
    expect(text).toContain("this is blank 12: keep");
    expect(text).toContain("The lower mat’s OUT is blank 12. Do not throw it away.");
    expect(text.replaceAll("\n", " ")).toContain("The other OUT squares up to 289 × 373 mm: to the rack.");
    expect(text.replaceAll("\n", " ")).toContain("Strip: asked 5 mm, comes out at 5.5 mm on this ruler.");
    expect(text).toContain("Blanks 9 and 10 of cut plan 2.");
  });

  test("[PP27] a caution has at most twelve words a sentence and never says please", () => {
    fc.assert(
      fc.property(anyCase, ({ job, paper }) => {
        for (const page of sheetOf(job, paper)) {
          for (const sentence of cautionsOf(page)) {
            expect(sentence.split(/\s+/).length, sentence).toBeLessThanOrEqual(12);
            expect(sentence).not.toMatch(/please|warning/i);
          }
        }
      }),
      RUNS,
    );
  });
});

const turned = (language: "en-US" | "en-GB"): string =>
  textOf(sheetOf(jobOf({ ...INCH_DESIGN, print: { ...INCH_PRINT, angle: 1.3 } }, { language }))).replaceAll(
    "\n",
    " ",
  );

/** Sentences beside a caution's bar. */
function cautionsOf(page: Page): readonly string[] {
  const marks = flatMarks(page.marks);
  return marks.flatMap((mark, index) => {
    if (mark.kind !== "area" || mark.fill !== "ink") return [];
    const [a, b, c] = mark.points;
    if (a === undefined || b === undefined || c === undefined || b.x - a.x !== mm(1.6)) return [];
    const beside = marks
      .slice(index + 1)
      .filter(
        (other): other is TextMark =>
          other.kind === "text" && other.at.y > a.y && other.at.y <= c.y && other.at.x - b.x === mm(2),
      );
    return beside
      .map(reading)
      .join(" ")
      .split(/(?<=[.!?]) /);
  });
}

const isSquare = (points: readonly { x: number; y: number }[], side: number): boolean =>
  points.length === 4 &&
  Math.max(...points.map(({ x }) => x)) - Math.min(...points.map(({ x }) => x)) === side &&
  Math.max(...points.map(({ y }) => y)) - Math.min(...points.map(({ y }) => y)) === side;
