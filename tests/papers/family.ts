import fc from "fast-check";
import type { Design, MatRule, Print, WindowRule } from "../../src/assembly/index.ts";
import { type Length, ticks, ZERO } from "../../src/lengths/index.ts";
import type { BenchSheetJob, PaperSize } from "../../src/papers/index.ts";
import { jobOf } from "./fixtures.ts";

const SIXTEENTH = 127_000;
const MILLIMETRE = 80_000;

const TITLES = [
  "Ebb",
  "Low Water, Pewter Light",
  "The Long Afternoon of the Harbour Master’s Third Daughter, Seen from the Breakwater at Low Tide, with Gulls and a Very Distant Steamer, Second State",
  "Slackwaterslackwaterslackwaterslackwaterslackwaterslackwaterslackwaterslackwaterslackwaterslackwater",
  "満潮 Zażółć",
];

export interface Case {
  readonly job: BenchSheetJob;
  readonly paper: PaperSize;
}

/** Any work that a bench may meet: either unit and paper, every window, holding and lift, one to three mats, skew, float, edition, small borders, and jobs that cannot be made. */
export const anyCase: fc.Arbitrary<Case> = fc
  .record({
    unit: fc.constantFrom("in" as const, "mm" as const),
    paper: fc.constantFrom("a4" as const, "letter" as const),
    hand: fc.constantFrom("left" as const, "right" as const),
    language: fc.constantFrom("en-US" as const, "en-GB" as const),
    title: fc.constantFrom(...TITLES),
    sheet: fc.tuple(fc.integer({ min: 40, max: 640 }), fc.integer({ min: 40, max: 640 })),
    margins: fc.tuple(fc.integer({ min: 4, max: 40 }), fc.integer({ min: 4, max: 40 })),
    show: fc.constantFrom(
      "overlap" as const,
      "overlap" as const,
      "margins" as const,
      "sheet" as const,
      "typed" as const,
    ),
    borders: fc.tuple(
      fc.integer({ min: 3, max: 90 }),
      fc.integer({ min: 3, max: 90 }),
      fc.integer({ min: 3, max: 90 }),
    ),
    mats: fc.integer({ min: 1, max: 3 }),
    reveal: fc.integer({ min: 1, max: 8 }),
    bevel: fc.constantFrom(45, 45, 60, 90),
    holding: fc.constantFrom("pockets" as const, "hinges" as const, "strips" as const),
    angle: fc.constantFrom(0, 0, 0, 1.3, -2.25),
    edition: fc.constantFrom(0, 0, 2, 12),
    quantity: fc.constantFrom(1, 1, 3, 25),
    tested: fc.boolean(),
    blanks: fc.boolean(),
    print: fc.constantFrom(true, true, true, true, false),
    uneven: fc.boolean(),
  })
  .map((chosen) => {
    const step = chosen.unit === "in" ? SIXTEENTH : MILLIMETRE;
    const of = (marks: number): Length => ticks(marks * step);
    const [wide, high] = chosen.sheet;
    const [left, top] = chosen.margins;
    const sheet = { width: of(wide + 2 * left), height: of(high + 2 * top) };
    const print: Print = {
      sheet,
      image: { left: of(left), top: of(top), width: of(wide), height: of(high) },
      outline: null,
      sheetOutline: null,
      angle: chosen.angle,
      level: "image",
      thickness: ticks(24_000),
      sure: ZERO,
      edition: Array.from({ length: chosen.edition }, (_, index) => ({
        name: `${index + 2} / 13`,
        sheet: { width: of(wide + 2 * left + (index % 3)), height: sheet.height },
        image: { left: of(left), top: of(top), width: of(wide), height: of(high) },
      })),
    };
    const shown: Readonly<Record<typeof chosen.show, WindowRule>> = {
      overlap: { show: "overlap", overlap: of(2) },
      margins: { show: "margins", top: of(2), side: of(2), foot: of(3) },
      sheet: { show: "sheet", gap: of(4) },
      typed: { show: "typed", width: of(Math.max(wide - 6, 8)), height: of(Math.max(high - 6, 8)) },
    };
    const [head, side, foot] = chosen.borders;
    const lower = 12 * (chosen.mats - 1);
    const mat = (index: number): MatRule => ({
      thickness: chosen.unit === "in" ? of(1) : ticks(120_000),
      bevel: chosen.bevel,
      reveal: index === 0 ? ZERO : of(chosen.reveal),
      board: "4-ply white rag",
    });
    const design: Design = {
      ruler: { unit: chosen.unit, graduation: of(1) },
      print: chosen.print ? print : null,
      window: chosen.print ? shown[chosen.show] : shown.typed,
      hold: of(2),
      play: of(1),
      outer: chosen.uneven
        ? {
            kind: "size",
            width: of(wide + 2 * (side + lower) + 1),
            height: of(high + head + foot + 2 * lower + 1),
          }
        : {
            kind: "borders",
            borders: { head: of(head + lower), side: of(side + lower), foot: of(foot + lower) },
            standard: null,
          },
      lift: { rule: "fixed", by: of(2) },
      holding: chosen.holding,
      mount: "4-ply white rag",
      mats: Array.from({ length: chosen.mats }, (_, index) => mat(index)),
      leastBorder: of(16),
      leastPocket: of(8),
      editionSpread: of(1),
      scaleOffset: chosen.tested ? ticks(-step / 2) : ZERO,
    };
    const job = jobOf(design, { language: chosen.language });
    return {
      paper: chosen.paper,
      job: {
        ...job,
        work: { ...job.work, title: chosen.title, quantity: chosen.quantity },
        bench: { ...job.bench, hand: chosen.hand, scaleTested: chosen.tested ? "2026-11-20" : null },
        blanks: chosen.blanks
          ? {
              cutPlan: 2,
              mats: design.mats.map((_, index) => [index + 9]),
              mounts: [],
              fromOut: design.mats.map((_, index) => (index === 0 ? 66 : null)),
            }
          : null,
      },
    };
  });
