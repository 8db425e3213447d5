import { absolute, type Length, negate, printExact, type Unit, ZERO } from "../../lengths/index.ts";
import type { Practice, PracticeDocument, ShowHabits } from "../../show/index.ts";
import type { Language } from "../../words/index.ts";
import type { HabitsNow, Options } from "../../words/page.ts";
import type { DocumentField } from "../blanks/field.ts";

/** What the blanks of a practice are read from: what it says, and every choice made. */
export interface HabitsSaid {
  readonly document: PracticeDocument;
  readonly habits: Practice;
  readonly hanging: ShowHabits;
  readonly language: Language;
}

/** What stands behind each blank of a practice. */
export type HabitField = DocumentField<HabitsSaid, PracticeDocument>;

export const length = (
  read: (said: HabitsSaid) => Length,
  write: (said: HabitsSaid, written: string, of: Length) => PracticeDocument,
): HabitField => ({ kind: "length", read, write });

/** A length that a practice says by its own name. */
export const own = (
  key:
    | "overlap"
    | "gap"
    | "leastBorder"
    | "printThickness"
    | "play"
    | "leastPocket"
    | "overrun"
    | "squaringTrim",
): HabitField =>
  length(
    ({ habits }) => habits[key],
    ({ document }, written) => ({ ...document, [key]: written }),
  );

export const choice = <Key extends string>(
  options: (said: HabitsSaid) => Options<Key>,
  read: (said: HabitsSaid) => string,
  write: (said: HabitsSaid, key: Key) => PracticeDocument,
): HabitField => ({
  kind: "choice",
  options,
  read,
  // A control offers no other key.
  write: (said, key) => {
    const option = options(said).find((one) => one.key === key);
    return option === undefined ? said.document : write(said, option.key);
  },
});

export const text = (
  read: (said: HabitsSaid) => string,
  write: (said: HabitsSaid, typed: string) => PracticeDocument,
): HabitField => ({ kind: "text", read, write });

export const number = (
  step: number,
  unit: string,
  read: (said: HabitsSaid) => number,
  write: (said: HabitsSaid, value: number) => PracticeDocument,
): HabitField => ({ kind: "number", unit, step, read, write });

/** The practice without one of its habits: what it says of it is the usual again. */
export function without(document: PracticeDocument, key: keyof PracticeDocument): PracticeDocument {
  const { [key]: _, ...rest } = document;
  return rest;
}

export const unitOf = ({ habits }: HabitsSaid): Unit => habits.ruler.unit;
export const spelt = (said: HabitsSaid, of: Length): string => printExact(of, unitOf(said));

/** Which way the scale of the cutter is set beside the border that is wanted, and by how much. */
export const scaleOf = ({ habits: { scaleOffset } }: HabitsSaid): "true" | "below" | "above" =>
  scaleOffset === 0 ? "true" : scaleOffset < 0 ? "below" : "above";

/** A scale that is set `by` beside the border, as a document keeps it. */
export function scaleSet(said: HabitsSaid, scale: "true" | "below" | "above", by: Length): PracticeDocument {
  if (scale === "true") return without(said.document, "scaleOffset");
  return {
    ...said.document,
    scaleOffset: spelt(said, scale === "below" ? negate(absolute(by)) : absolute(by)),
  };
}

/** What turns the sentences. */
export function habitsNow(said: HabitsSaid): HabitsNow {
  const { document, habits, hanging, language } = said;
  return {
    language,
    lift: habits.lift.rule,
    outer: habits.outer.kind,
    mats: habits.mats.length,
    pockets: habits.holding === "pockets",
    ownHold: habits.hold !== null,
    ownMount: habits.mount !== null,
    scale: scaleOf(said),
    moulding: habits.moulding !== null,
    depth: (habits.moulding?.depth ?? null) !== null,
    glazing: habits.glazing !== null,
    backing: habits.backing !== null,
    drop: hanging.hookDrop !== null,
    inset: hanging.fittings.inset !== null,
    paid: document.money?.hour !== undefined,
  };
}

export const orZero = (of: Length | null | undefined): Length => of ?? ZERO;
