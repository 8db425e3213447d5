import type { Holding, LiftRule, MatRule, OuterRule } from "../assembly/index.ts";
import { SIZE_LISTS } from "../assembly/index.ts";
import { inch, type Length, mm, type Ruler, type Unit, ZERO } from "../lengths/index.ts";
import type { FramePractice } from "./read-frames.ts";
import type { HeldPractice } from "./read-held.ts";
import type { MoneyHabits } from "./read-money.ts";
import type { PackingPractice } from "./read-packing.ts";

/**
 * A studio's habits of composing with every choice made: what a design leaves open is taken from here.
 * Figures that stand here without a source are common practice and can all be changed by the user.
 */
export interface Habits {
  readonly ruler: Ruler;
  readonly overlap: Length;
  readonly margins: { readonly top: Length; readonly side: Length; readonly foot: Length };
  readonly gap: Length;
  /** Null: the larger of `leastHold` and the paper's movement plus half of it. */
  readonly hold: Length | null;
  readonly leastHold: Length;
  readonly play: Length;
  readonly holding: Holding;
  readonly lift: LiftRule;
  readonly outer: OuterRule;
  readonly mats: readonly MatRule[];
  readonly printThickness: Length;
  readonly leastBorder: Length;
  readonly leastPocket: Length;
  readonly editionSpread: Length;
  readonly scaleOffset: Length;
  readonly scaleTested: string | null;
  readonly hand: "right" | "left";
  /** How far the cut runs past the line at both ends. */
  readonly overrun: Length;
  readonly squaringTrim: Length;
  /** The board that prints are mounted on, as it is called in the rack; null: each on the board of its lowest mat. */
  readonly mount: string | null;
  readonly paper: "a4" | "letter";
  readonly language: "en-US" | "en-GB";
  readonly studio: string;
}

/** All of a studio's practice: its habits, and what becomes of a work once it is composed. */
export interface Practice extends Habits, FramePractice {
  readonly held: HeldPractice;
  readonly money: MoneyHabits;
  readonly packing: PackingPractice;
}

const DEFAULT_BOARD = "4-ply white rag";

/** The habits before anyone has said anything, in the round figures of each unit. */
export const DEFAULT_HABITS: Readonly<Record<Unit, Habits>> = {
  in: {
    ruler: { unit: "in", graduation: inch(1, 16) },
    overlap: inch(1, 8),
    // 1/8 to 1/4 in of paper round a plate mark, a little more below for a signature: common practice, no source.
    margins: { top: inch(1, 4), side: inch(1, 4), foot: inch(3, 8) },
    gap: inch(1, 4),
    hold: null,
    leastHold: inch(1, 8),
    play: inch(1, 16),
    holding: "pockets",
    lift: { rule: "fixed", by: inch(1, 4) },
    outer: { kind: "smallest", sizes: SIZE_LISTS.inch, border: inch(2), holdsSheet: true },
    // 4-ply 0.050 to 0.060 in (Saitzyk, Art Hardware, 1987); a sixteenth is trade usage.
    mats: [{ thickness: inch(1, 16), bevel: 45, reveal: inch(1, 4), board: DEFAULT_BOARD }],
    printThickness: mm(0.3),
    leastBorder: inch(1),
    leastPocket: inch(1, 2),
    editionSpread: mm(2),
    scaleOffset: ZERO,
    scaleTested: null,
    hand: "right",
    // Exhibit-preparation handbook, "Mounting artwork or documents": about 3/16 in (4 to 5 mm) past the crossing.
    overrun: inch(3, 16),
    squaringTrim: inch(1, 8),
    mount: null,
    paper: "letter",
    language: "en-US",
    studio: "",
  },
  mm: {
    ruler: { unit: "mm", graduation: mm(1) },
    overlap: mm(3),
    margins: { top: mm(6), side: mm(6), foot: mm(10) },
    gap: mm(6),
    hold: null,
    leastHold: mm(3),
    play: mm(1.5),
    holding: "pockets",
    lift: { rule: "fixed", by: mm(6) },
    outer: { kind: "smallest", sizes: SIZE_LISTS.metric, border: mm(50), holdsSheet: true },
    mats: [{ thickness: mm(1.5), bevel: 45, reveal: mm(5), board: DEFAULT_BOARD }],
    printThickness: mm(0.3),
    leastBorder: mm(25),
    leastPocket: mm(12),
    editionSpread: mm(2),
    scaleOffset: ZERO,
    scaleTested: null,
    hand: "right",
    overrun: mm(4.5),
    squaringTrim: mm(3),
    mount: null,
    paper: "a4",
    language: "en-US",
    studio: "",
  },
};
