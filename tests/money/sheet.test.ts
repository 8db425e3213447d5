import { expect, test } from "vitest";
import { pdfTypeface } from "../../src/drawings/writers/pdf/index.ts";
import { inch } from "../../src/lengths/index.ts";
import { quoteSheet, type QuoteSheetJob } from "../../src/papers/index.ts";
import { minorUnits, type QuoteJob, quoteShow, readPrice } from "../../src/plans/index.ts";
import { expectClean, textOf } from "../papers/clean.ts";

const typeface = pdfTypeface();
const LONG =
  "The Long Afternoon of the Harbour Master’s Third Daughter, Seen from the Breakwater at Low Tide, with Gulls and a Very Distant Steamer, Second State";

const price = (text: string) => readPrice(text) ?? { units: 0n, places: 0 };

const jobOf = (works: number): QuoteJob => ({
  digits: 2,
  works: Array.from({ length: works }, (_, index) => ({
    title: index % 3 === 0 ? LONG : index % 3 === 1 ? "Zażółć gęślą jaźń, Ærø" : "Ebb",
    copies: index === 1 ? 12 : 1,
    mats: 1,
    panes: 1,
    frames: 1,
    done: { blank: 2, window: 1, hold: 1, glaze: 1, frame: 1, close: 1, hang: 0 },
  })),
  goods: (["board", "glazing", "moulding"] as const).map((group) => ({
    name: `${group}, ${LONG}`,
    group,
    bought: 120,
    cost: group === "glazing" ? null : minorUnits(12_345_678),
    without: null,
    byMeasure: minorUnits(9_876_543),
    uses: Array.from({ length: works }, (_, index) => BigInt(index + 1)),
  })),
  fittings: [{ name: LONG, price: price("0.0625"), pack: 100, each: 8, per: "frame" }],
  minutes: { window: 725, hold: 1500 },
  hour: price("28"),
  having: [{ what: LONG, price: price("1150.00"), per: "frame" }],
});

function sheetOf(job: QuoteJob): QuoteSheetJob {
  return {
    job,
    quote: quoteShow(job),
    sizes: job.works.map(() => ({
      size: { width: inch(177, 16), height: inch(223, 16) },
      ruler: { unit: "in", graduation: inch(1, 16) },
    })),
    currency: "USD",
    stockDate: "2026-11-20",
    practiceDate: null,
    house: { studio: "Tidewater Print Room", show: "Slack Water" },
    planWords: { number: 3, date: "2026-11-25", makesVoid: { number: 2, date: "2026-11-19" } },
    language: "en-GB",
  };
}

test.each(["a4", "letter"] as const)(
  "[PP1] [PP3] [PP6] a quote of any length keeps to its page on %s",
  (paper) => {
    for (const works of [1, 40]) {
      const pages = quoteSheet(sheetOf(jobOf(works)), paper, typeface);
      expect(pages.length).toBeGreaterThan(works === 1 ? 0 : 3);
      for (const page of pages) {
        expectClean(page, paper, typeface);
      }
    }
  },
);

test("[MN4] [MN6] [MN7] [MN8] a quote says whose prices of which day, what is not known, and what having it done costs", () => {
  const text = textOf(quoteSheet(sheetOf(jobOf(3)), "a4", typeface));
  expect(text).toContain("boards, glazing and lengths of 20 Nov 2026, the rest of no day that is told");
  expect(text).toContain("As far as known");
  expect(text).toContain("No price is known for glazing");
  expect(text).toContain("No minutes are told for cutting blanks");
  expect(text).toContain("would not do");
  expect(text).toContain("not known");
  expect(text).toMatch(/24, 1 box of 100 at 0\.0625/);
  expect(text).toContain("3 frames × 1150.00");
  expect(text).toContain("3450.00");
});
