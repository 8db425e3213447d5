import { wholeWords } from "../figures.ts";
import { type Language, VOCABULARY } from "../vocabulary.ts";
import { capital } from "./capital.ts";

/** What is said of a studio's own habits: a sentence each, and at its side why, from where, and whom a change moves. */

export const PRACTICE = {
  title: "How we work here",
  line: "Said once, used by every work of this show that does not say otherwise.",
  unread: "This practice cannot be read",
  /** What a refused figure is to be instead. */
  wanted: "a figure with which at least one work of this show can be made",
} as const;

/** The habits in their order; each is a paragraph of its own. */
export const HABITS = [
  "measuring",
  "windows",
  "raising",
  "size",
  "mats",
  "paper",
  "holding",
  "bench",
  "moulding",
  "glazing",
  "backing",
  "closing",
  "hanging",
  "light",
  "money",
  "papers",
] as const;
export type HabitName = (typeof HABITS)[number];

/** What of a practice turns its sentences. */
export interface HabitsNow {
  readonly language: Language;
  readonly lift: "none" | "fixed" | "ratio" | "optical";
  readonly outer: "size" | "borders" | "smallest";
  readonly mats: number;
  readonly pockets: boolean;
  readonly ownHold: boolean;
  readonly ownMount: boolean;
  readonly scale: "true" | "below" | "above";
  readonly moulding: boolean;
  readonly depth: boolean;
  readonly glazing: boolean;
  readonly backing: boolean;
  readonly drop: boolean;
  readonly inset: boolean;
  readonly paid: boolean;
}

export interface Habit {
  readonly name: HabitName;
  readonly title: string;
  readonly sentence: string;
  /** Why, and from where. */
  readonly why: string;
}

/** Every habit as it stands, in order. */
export const habitsSaid = (now: HabitsNow): readonly Habit[] =>
  HABITS.map((name) => ({ name, title: titleOf(name, now), ...SAID[name](now) }));

function titleOf(name: HabitName, { language }: HabitsNow): string {
  const { mats, moulding } = VOCABULARY[language];
  if (name === "mats") return capital(mats);
  return name === "moulding" ? capital(moulding) : TITLES[name];
}

const TITLES: Readonly<Record<Exclude<HabitName, "mats" | "moulding">, string>> = {
  measuring: "Measuring",
  windows: "Windows",
  raising: "Raising",
  size: "Size",
  paper: "Paper",
  holding: "Holding",
  bench: "Cutting",
  glazing: "Glazing",
  backing: "Backing",
  closing: "Closing",
  hanging: "Hanging",
  light: "Light",
  money: "Money",
  papers: "Papers",
};

type Said = (now: HabitsNow) => Pick<Habit, "sentence" | "why">;

/** One board of a stack, as it is cut. */
const cut = (index: number): string =>
  `[habit.board.${index}], [habit.thickness.${index}] thick, cut at [habit.bevel.${index}] to its face`;

/** A habit that stands on nothing but custom says so. */
const CUSTOM = "Common practice, no source.";

const SAID: Readonly<Record<HabitName, Said>> = {
  measuring: () => ({
    sentence: "We measure in [habit.unit] with a ruler marked in [habit.graduation].",
    why: `Windows and borders come out on a mark of this ruler, so that the hand never has to guess. ${CUSTOM}`,
  }),
  windows: () => ({
    sentence:
      "An image is covered [habit.overlap] on each side. Where its margins show, they are [habit.marginTop] at the head, [habit.marginSide] at the sides and [habit.marginFoot] at the foot; round a sheet that is shown whole, [habit.gap] stays clear.",
    why: `Covered, no bare paper shows; below the image there is more of it, for a signature. ${CUSTOM}`,
  }),
  raising: ({ lift, language }) => {
    const { centre } = VOCABULARY[language];
    const said = {
      fixed: `[habit.lift] [habit.liftBy] above ${centre}`,
      ratio: "[habit.lift], [habit.liftRatio] times the head",
      none: "[habit.lift]",
      optical: "[habit.lift]",
    };
    return {
      sentence: `A window is ${said[lift]}.`,
      why: `In the very middle it looks as if it had sunk. Raised by a length, the foot has twice that more than the head. ${CUSTOM}`,
    };
  },
  size: ({ outer }) => {
    const said = {
      smallest:
        "A work lies on [habit.outer] that leaves borders of [habit.outerBorder] or more, and [habit.holdsSheet].",
      borders:
        "A work lies on [habit.outer] of [habit.borderHead] at the head, [habit.borderSide] at the sides and [habit.borderFoot] at the foot.",
      size: "A work lies on [habit.outer], [habit.outerWidth]~×~[habit.outerHeight].",
    };
    return {
      sentence: `${said[outer]} A border under [habit.leastBorder] is warned of.`,
      why: `Ready-made sizes fit ready-made frames, and leave boards that serve again. ${CUSTOM}`,
    };
  },
  mats: ({ mats, language }) => {
    const { mat } = VOCABULARY[language];
    const lower = Array.from({ length: mats - 1 }, (_, index) => mats - 2 - index).map(
      (index) => ` Under it lies ${cut(index)}, [habit.reveal.${index + 1}] of it in sight.`,
    );
    return {
      sentence: `A work gets [habit.matCount]${mats === 1 ? " of " : `. The top ${mat} is `}${cut(mats - 1)}.${lower.join("")}`,
      why: "4-ply board measures 0.050 to 0.060 in, from Saitzyk, Art Hardware, 1987; its sixteenth is trade usage. Measure a new board once.",
    };
  },
  paper: ({ ownMount }) => ({
    sentence: `A print’s paper counts as [habit.printThickness] thick. It is mounted on [habit.mountKind]${ownMount ? ", [habit.mount]" : ""}.`,
    why: `A thickness that nobody measured is a guess, and it decides whether the package goes into its frame. ${CUSTOM}`,
  }),
  holding: ({ pockets, ownHold, language }) => {
    const { mat } = VOCABULARY[language];
    const held = pockets
      ? "We hold prints with [habit.holding], which leave a corner [habit.play] to move and measure [habit.leastPocket] or more."
      : "We hold prints with [habit.holding].";
    return {
      sentence: `${held} A ${mat} lies on the paper by at least [habit.holdKind]${ownHold ? ", [habit.hold]" : ""}.`,
      why: `What touches a print must let go again, and let the paper move. Paper widens by about 0.4 % from dry to damp: a rule from memory. The figures are ${CUSTOM.toLowerCase()}`,
    };
  },
  bench: ({ scale }) => ({
    sentence: `The bench is [habit.hand]. A cut runs [habit.overrun] past the line at both ends, and what falls out is squared by [habit.squaringTrim] a side. The scale is set [habit.scale]${scale === "true" ? "" : ", by [habit.scaleBy]"}; its last test cuts were made [habit.scaleTested].`,
    why: "Overrun: an exhibit-preparation handbook, “Mounting artwork or documents”, asks about 3/16 in. The scale: from your own test cuts, again after each new blade. The blade is bare when you try it: cut away from yourself.",
  }),
  moulding: ({ moulding, depth, language }) => {
    const { rabbet } = VOCABULARY[language];
    return {
      sentence: moulding
        ? `Frames are made of [habit.molding] [habit.moldingName], [habit.overall] wide. Its ${rabbet} reaches [habit.rabbet] under a lip [habit.lip] thick${depth ? ", is [habit.depth] deep" : ""} and leaves the package [habit.allowance]. [habit.waste] is lost at each end of a length.`
        : "Frames are made of [habit.molding].",
      why: "Allowance: a reader’s note to Fine Woodworking no. 275 (2019) gives 1/8 in as the trade’s, its article 1/16 in. What is lost: common practice, no source.",
    };
  },
  glazing: ({ glazing }) => ({
    sentence: glazing
      ? "Behind the lip comes [habit.glass], [habit.glassName], [habit.glassThickness] thick, cut [habit.glassLess] smaller each way."
      : "Behind the lip comes [habit.glass].",
    why: "Acrylic grows with warmth, 7.2e-5 of its size for each kelvin (ASTM D696), so it is cut smaller. Glass cuts: gloves, and eyes covered.",
  }),
  backing: ({ backing }) => ({
    sentence: backing
      ? "The package is closed by [habit.back], [habit.backName], [habit.backThickness] thick and [habit.backLess] smaller each way."
      : "The package is closed by [habit.back].",
    why: "Thickness: a university art department’s teaching page, quoting a framing guide, gives 3/16 in. It keeps out dust and a careless thumb.",
  }),
  closing: ({ language }) => ({
    sentence: `Behind the package, fittings want [habit.fittings] of the ${VOCABULARY[language].rabbet}; it may stand out behind by [habit.offset] at most. The dust cover stays [habit.coverInset] in from the edge, and bumpers keep the frame [habit.bumper] off the wall.`,
    why: CUSTOM,
  }),
  hanging: ({ drop, inset }) => ({
    sentence: `A frame hangs by [habit.fittingKind], at [habit.down] of its height from the top and [habit.insetKind]${inset ? " [habit.inset] from its side" : ""}. From where a hook bears to its nail [habit.drop]${drop ? " [habit.hookDrop]" : ""}, and every fitting is rated for [habit.safety] times its load.`,
    why: "Rings a third of the way down, and the factor: common practice, no source. Overhead, over a bed or seat, in public, where the ground shakes: local codes and a licensed hand come first.",
  }),
  light: () => ({
    sentence: "How long a work may hang in the light follows [habit.guidance].",
    why: "Published limits disagree, so both are kept and you choose. Those of CIE 157:2004 are from memory; the museum’s were read on its own page.",
  }),
  money: ({ paid }) => ({
    sentence: paid
      ? "An hour’s work is [habit.work] [habit.hour]. By our own log a blank takes [habit.minutes.blank] minutes, a window [habit.minutes.window], holding a print [habit.minutes.hold], a pane [habit.minutes.glaze], a frame [habit.minutes.frame], closing it [habit.minutes.close] and hanging it [habit.minutes.hang]. These prices held on [habit.priced]."
      : "An hour’s work is [habit.work].",
    why: "Only your own log knows how long your hands take. What is not said is not reckoned.",
  }),
  papers: () => ({
    sentence: "We are [habit.studio]. Papers come out on [habit.size] and say [habit.language].",
    why: "They stand at the head of every paper. The figures are the same in both sets of words.",
  }),
};

/** Whom a change of a habit would move. */
export function movesSay(moves: number, works: number): string {
  if (works === 0) return "No work takes it yet.";
  if (moves === 0) return "No work of this show takes it: each says otherwise, or has no need of it.";
  if (moves === works)
    return works === 1
      ? "The one work takes it; a change moves it."
      : `All ${wholeWords(works)} works take it; a change moves them.`;
  return `${capital(wholeWords(moves))} of the ${wholeWords(works)} works ${moves === 1 ? "takes" : "take"} it; a change moves ${moves === 1 ? "that one" : "those"}.`;
}

/** Works that a change has left unable to be made. */
export const cannotNow = (works: number): string =>
  works === 1
    ? "One work cannot be made with it: see what stands against it."
    : `${capital(wholeWords(works))} works cannot be made with it: see what stands against them.`;

/** What stands in the way of another unit. */
export const unitWanted = (works: number): string =>
  `a unit of its own in every work and wall, which ${works === 1 ? "one lacks" : `${wholeWords(works)} lack`} (open it and say how it was measured),`;
