import { compose, type Design, type Print } from "../../src/assembly/index.ts";
import { inch, mm, ZERO } from "../../src/lengths/index.ts";
import type { BenchSheetJob } from "../../src/papers/index.ts";

/** A sheet whose image lies nearer its head and left. */
export const INCH_PRINT: Print = {
  sheet: { width: inch(9), height: inch(95, 8) },
  image: { left: inch(3, 4), top: inch(5, 8), width: inch(29, 4), height: inch(41, 4) },
  outline: null,
  sheetOutline: null,
  angle: 0,
  level: "image",
  thickness: mm(0.3),
  sure: ZERO,
  edition: [],
};

/** A sheet with a wide foot. */
export const METRIC_PRINT: Print = {
  sheet: { width: mm(330), height: mm(430) },
  image: { left: mm(20), top: mm(26), width: mm(287), height: mm(371) },
  outline: null,
  sheetOutline: null,
  angle: 0,
  level: "image",
  thickness: mm(0.3),
  sure: ZERO,
  edition: [],
};

/** A platinum print on an 11 by 14 board: one mat, equal sides, pockets. */
export const INCH_DESIGN: Design = {
  ruler: { unit: "in", graduation: inch(1, 16) },
  print: INCH_PRINT,
  window: { show: "overlap", overlap: inch(1, 8) },
  hold: inch(1, 8),
  play: inch(1, 16),
  outer: { kind: "size", width: inch(11), height: inch(14) },
  lift: { rule: "fixed", by: inch(1, 4) },
  holding: "pockets",
  mount: "4-ply white rag",
  mats: [{ thickness: inch(1, 16), bevel: 45, reveal: ZERO, board: "4-ply white rag" }],
  leastBorder: inch(1),
  leastPocket: inch(1, 2),
  editionSpread: mm(2),
  scaleOffset: inch(-1, 32),
};

/** An etching in two mats, every border different, in millimetres. */
export const METRIC_DESIGN: Design = {
  ...INCH_DESIGN,
  ruler: { unit: "mm", graduation: mm(1) },
  print: METRIC_PRINT,
  window: { show: "overlap", overlap: mm(3) },
  hold: mm(3),
  play: mm(1.5),
  outer: { kind: "size", width: mm(400), height: mm(500) },
  lift: { rule: "fixed", by: mm(6) },
  mats: [
    { thickness: mm(1.5), bevel: 45, reveal: ZERO, board: "4-ply white rag" },
    { thickness: mm(1.5), bevel: 45, reveal: mm(5), board: "4-ply white rag" },
  ],
  leastBorder: mm(25),
  leastPocket: mm(12),
  scaleOffset: mm(-0.5),
};

/** A job round a design; what a test is about goes into `more`. */
export const jobOf = (design: Design, more: Partial<BenchSheetJob> = {}): BenchSheetJob => ({
  composition: compose(design),
  work: {
    title: "Low Water, Pewter Light",
    maker: "Ines Okonedo-Vale",
    year: "2026",
    process: "Platinum print on cotton paper",
    edition: "",
    quantity: 1,
  },
  house: { studio: "Tidewater Print Room", show: "Slack Water" },
  plan: { number: 3, date: "2026-11-25", makesVoid: { number: 2, date: "2026-11-19" } },
  bench: {
    hand: "right",
    scaleTested: "2026-11-20",
    overrun: design.ruler.unit === "in" ? inch(3, 16) : mm(4.5),
    squaringTrim: design.ruler.unit === "in" ? inch(1, 8) : mm(3),
  },
  blanks: null,
  picture: null,
  language: "en-US",
  ...more,
});
