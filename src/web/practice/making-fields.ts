import { absolute, half, type Length } from "../../lengths/index.ts";
import type { PracticeDocument } from "../../show/index.ts";
import {
  HAND_OPTIONS,
  HOLD_KIND_OPTIONS,
  HOLDING_OPTIONS,
  HOLDS_OPTIONS,
  LANGUAGE_OPTIONS,
  liftOptions,
  matOptions,
  mountKindOptions,
  OUTER_HABIT_OPTIONS,
  rulerOptions,
  SCALE_OPTIONS,
  SIZE_OPTIONS,
  unitOptions,
} from "../../words/page.ts";
import { listName, Speller } from "../work/document-of.ts";
import { liftUnder, withMats } from "../work/writing.ts";
import {
  choice,
  type HabitField,
  type HabitsSaid,
  length,
  number,
  orZero,
  own,
  scaleOf,
  scaleSet,
  spelt,
  text,
  without,
} from "./fields.ts";
import { inUnit } from "./units.ts";

type Given<Key extends keyof PracticeDocument> = NonNullable<PracticeDocument[Key]>;

const margin = (side: "top" | "side" | "foot"): HabitField =>
  length(
    ({ habits }) => habits.margins[side],
    (said, written) => {
      const { top, side: at, foot } = said.habits.margins;
      const margins = { top: spelt(said, top), side: spelt(said, at), foot: spelt(said, foot) };
      return { ...said.document, margins: { ...margins, [side]: written } };
    },
  );

const borders = ({ habits: { outer } }: HabitsSaid) => (outer.kind === "borders" ? outer.borders : null);

const borderAt = (side: "head" | "side" | "foot"): HabitField =>
  length(
    (said) => orZero(borders(said)?.[side]),
    (said, written) => {
      const now = borders(said);
      if (now === null) return said.document;
      const all = { head: spelt(said, now.head), side: spelt(said, now.side), foot: spelt(said, now.foot) };
      return { ...said.document, outer: { ...said.document.outer, borders: { ...all, [side]: written } } };
    },
  );

const outerSide = (side: "width" | "height"): HabitField =>
  length(
    ({ habits: { outer } }) => (outer.kind === "size" ? outer[side] : orZero(null)),
    (said, written) => {
      const { outer } = said.habits;
      if (outer.kind !== "size") return said.document;
      const size = { width: spelt(said, outer.width), height: spelt(said, outer.height) };
      return { ...said.document, outer: { ...size, [side]: written } };
    },
  );

/** The least of a list, with what else is said of it. */
const smallest = (said: HabitsSaid, change: { border?: string; holdsSheet?: boolean }): PracticeDocument => {
  const { outer } = said.habits;
  if (outer.kind !== "smallest") return said.document;
  const given = said.document.outer;
  const list =
    given !== undefined && "smallest" in given ? given.smallest : (listName(outer.sizes) ?? "inch");
  const now = { smallest: list, border: spelt(said, outer.border), holdsSheet: outer.holdsSheet };
  return { ...said.document, outer: { ...now, ...change } };
};

/** Another way to come to an outer size, with the borders that stood before. */
function outerUnder(said: HabitsSaid, key: (typeof OUTER_HABIT_OPTIONS)[number]["key"]): PracticeDocument {
  const { document, habits } = said;
  const { outer } = habits;
  const inches = habits.ruler.unit === "in";
  const most: Length | null =
    outer.kind === "smallest" ? outer.border : outer.kind === "borders" ? outer.borders.side : null;
  const border = most === null ? (inches ? "2 in" : "50 mm") : spelt(said, most);
  switch (key) {
    case "own":
      return document;
    case "size":
      return {
        ...document,
        outer: inches ? { width: "16 in", height: "20 in" } : { width: "400 mm", height: "500 mm" },
      };
    case "borders":
      return { ...document, outer: { borders: { head: border, side: border, foot: border } } };
    default: {
      const holdsSheet = outer.kind === "smallest" ? outer.holdsSheet : true;
      return { ...document, outer: { smallest: key, border, holdsSheet } };
    }
  }
}

const withMat = (said: HabitsSaid, mat: number, change: Given<"mats">[number]): PracticeDocument => ({
  ...said.document,
  mats: new Speller(said.habits.ruler.unit)
    .mats(said.habits.mats)
    .map((one, index) => (index === mat ? { ...one, ...change } : one)),
});

/** The blank of one of several boards: `habit.board.0`. */
export function matField(of: string, mat: number): HabitField | null {
  switch (of) {
    case "board":
      return text(
        ({ habits }) => habits.mats[mat]?.board ?? "",
        (said, board) => withMat(said, mat, { board }),
      );
    case "thickness":
    case "reveal":
      return length(
        ({ habits }) => orZero(habits.mats[mat]?.[of]),
        (said, written) => withMat(said, mat, { [of]: written }),
      );
    case "bevel":
      return number(
        1,
        "°",
        ({ habits }) => habits.mats[mat]?.bevel ?? 45,
        (said, bevel) => withMat(said, mat, { bevel }),
      );
    default:
      return null;
  }
}

/** What a work is made by. */
export const MAKING_FIELDS: Readonly<Record<string, HabitField>> = {
  unit: choice(
    ({ language }) => unitOptions(language),
    ({ habits }) => habits.ruler.unit,
    (said, key) => inUnit(said, key),
  ),
  graduation: choice(
    ({ habits, language }) => rulerOptions(habits.ruler, language),
    (said) => spelt(said, said.habits.ruler.graduation),
    ({ document }, graduation) => ({ ...document, graduation }),
  ),
  overlap: own("overlap"),
  marginTop: margin("top"),
  marginSide: margin("side"),
  marginFoot: margin("foot"),
  gap: own("gap"),
  lift: choice(
    ({ language }) => liftOptions(language),
    ({ habits }) => habits.lift.rule,
    (said, rule) => {
      const by = said.habits.ruler.unit === "in" ? "1/4 in" : "6 mm";
      return { ...said.document, lift: rule === "fixed" ? { rule, by } : liftUnder(rule) };
    },
  ),
  liftBy: length(
    ({ habits: { lift } }) => (lift.rule === "fixed" ? lift.by : orZero(null)),
    ({ document }, by) => ({ ...document, lift: { rule: "fixed", by } }),
  ),
  liftRatio: number(
    0.05,
    "",
    ({ habits: { lift } }) => (lift.rule === "ratio" ? Number(lift.foot.over) / Number(lift.foot.under) : 1),
    ({ document }, foot) => ({ ...document, lift: { rule: "ratio", foot } }),
  ),
  outer: choice(
    (said) => OUTER_HABIT_OPTIONS.filter(({ key }) => key !== "own" || outerKind(said) === "own"),
    (said) => outerKind(said),
    outerUnder,
  ),
  outerBorder: length(
    ({ habits: { outer } }) => (outer.kind === "smallest" ? outer.border : orZero(null)),
    (said, border) => smallest(said, { border }),
  ),
  holdsSheet: choice(
    () => HOLDS_OPTIONS,
    ({ habits: { outer } }) => (outer.kind === "smallest" && outer.holdsSheet ? "yes" : "no"),
    (said, key) => smallest(said, { holdsSheet: key === "yes" }),
  ),
  borderHead: borderAt("head"),
  borderSide: borderAt("side"),
  borderFoot: borderAt("foot"),
  outerWidth: outerSide("width"),
  outerHeight: outerSide("height"),
  leastBorder: own("leastBorder"),
  matCount: choice(
    ({ habits, language }) => matOptions(habits.mats.length, language),
    ({ habits }) => String(habits.mats.length),
    (said, key) => ({
      ...said.document,
      mats: new Speller(said.habits.ruler.unit).mats(withMats(said.habits, Number(key))),
    }),
  ),
  printThickness: own("printThickness"),
  mountKind: choice(
    ({ language }) => mountKindOptions(language),
    ({ habits }) => (habits.mount === null ? "mat" : "own"),
    (said, key) =>
      key === "mat"
        ? without(said.document, "mount")
        : { ...said.document, mount: said.habits.mats[0]?.board ?? "" },
  ),
  mount: text(
    ({ habits }) => habits.mount ?? "",
    ({ document }, mount) => (mount === "" ? without(document, "mount") : { ...document, mount }),
  ),
  holding: choice(
    () => HOLDING_OPTIONS,
    ({ habits }) => habits.holding,
    ({ document }, holding) => ({ ...document, holding }),
  ),
  play: own("play"),
  leastPocket: own("leastPocket"),
  holdKind: choice(
    () => HOLD_KIND_OPTIONS,
    ({ habits }) => (habits.hold === null ? "moves" : "own"),
    (said, key) =>
      key === "moves"
        ? without(said.document, "hold")
        : { ...said.document, hold: spelt(said, said.habits.leastHold) },
  ),
  hold: length(
    ({ habits }) => orZero(habits.hold),
    ({ document }, hold) => ({ ...document, hold }),
  ),
  hand: choice(
    () => HAND_OPTIONS,
    ({ habits }) => habits.hand,
    ({ document }, hand) => ({ ...document, hand }),
  ),
  overrun: own("overrun"),
  squaringTrim: own("squaringTrim"),
  scale: choice(
    () => SCALE_OPTIONS,
    scaleOf,
    (said, key) => {
      const { ruler, scaleOffset } = said.habits;
      return scaleSet(said, key, scaleOffset === 0 ? half(ruler.graduation, "up") : scaleOffset);
    },
  ),
  scaleBy: length(
    ({ habits }) => absolute(habits.scaleOffset),
    (said, _, by) => scaleSet(said, by === 0 ? "true" : scaleOf(said), by),
  ),
  scaleTested: text(
    ({ habits }) => habits.scaleTested ?? "",
    ({ document }, day) =>
      day === "" ? without(document, "scaleTested") : { ...document, scaleTested: day },
  ),
  studio: text(
    ({ habits }) => habits.studio,
    ({ document }, studio) => ({ ...document, studio }),
  ),
  size: choice(
    () => SIZE_OPTIONS,
    ({ habits }) => habits.paper,
    ({ document }, paper) => ({ ...document, paper }),
  ),
  language: choice(
    () => LANGUAGE_OPTIONS,
    ({ habits }) => habits.language,
    ({ document }, language) => ({ ...document, language }),
  ),
};

function outerKind({ habits: { outer } }: HabitsSaid): (typeof OUTER_HABIT_OPTIONS)[number]["key"] {
  if (outer.kind !== "smallest") return outer.kind;
  return listName(outer.sizes) ?? "own";
}
