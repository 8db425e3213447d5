import type { Length } from "../../lengths/index.ts";
import type { PracticeDocument } from "../../show/index.ts";
import {
  BACKING_OPTIONS,
  DROP_OPTIONS,
  FITTING_OPTIONS,
  GLAZING_OPTIONS,
  GUIDANCE_OPTIONS,
  INSET_OPTIONS,
  MOULDING_OPTIONS,
  NEW_HABIT,
  WORK_OPTIONS,
} from "../../words/page.ts";
import { choice, type HabitField, type HabitsSaid, length, number, orZero, text, without } from "./fields.ts";

type Given<Key extends keyof PracticeDocument> = NonNullable<PracticeDocument[Key]>;

/** One word of the moulding, the glazing or the backing, where there is one. */
const withMoulding = ({ document }: HabitsSaid, change: Partial<Given<"moulding">>): PracticeDocument =>
  document.moulding === undefined ? document : { ...document, moulding: { ...document.moulding, ...change } };
const withGlazing = ({ document }: HabitsSaid, change: Partial<Given<"glazing">>): PracticeDocument =>
  document.glazing === undefined ? document : { ...document, glazing: { ...document.glazing, ...change } };
const withBacking = ({ document }: HabitsSaid, change: Partial<Given<"backing">>): PracticeDocument =>
  document.backing === undefined ? document : { ...document, backing: { ...document.backing, ...change } };

const moulding = (key: "overall" | "rabbet" | "lip" | "depth" | "allowance" | "waste"): HabitField =>
  length(
    ({ habits }) => orZero(habits.moulding?.[key]),
    (said, written) => withMoulding(said, { [key]: written }),
  );
const glazing = (key: "thickness" | "less"): HabitField =>
  length(
    ({ habits }) => orZero(habits.glazing?.[key]),
    (said, written) => withGlazing(said, { [key]: written }),
  );
const backing = (key: "thickness" | "less"): HabitField =>
  length(
    ({ habits }) => orZero(habits.backing?.[key]),
    (said, written) => withBacking(said, { [key]: written }),
  );
const framing = (key: "fittings" | "offset" | "coverInset" | "bumper"): HabitField =>
  length(
    ({ habits }): Length => habits.framing[key],
    ({ document }, written) => ({ ...document, framing: { ...document.framing, [key]: written } }),
  );

const withHanging = ({ document }: HabitsSaid, change: Given<"hanging">): PracticeDocument => ({
  ...document,
  hanging: { ...document.hanging, ...change },
});
const withFittings = (
  said: HabitsSaid,
  change: NonNullable<Given<"hanging">["fittings"]>,
): PracticeDocument => withHanging(said, { fittings: { ...said.document.hanging?.fittings, ...change } });

/** The blank of one kind of work's minutes: `habit.minutes.window`. */
export const minutesField = (of: string): HabitField | null => {
  const operation = OPERATIONS.find((one) => one === of);
  if (operation === undefined) return null;
  return number(
    1,
    "",
    ({ document }) => document.money?.minutes?.[operation] ?? 0,
    ({ document }, minutes) => ({
      ...document,
      money: { ...document.money, minutes: { ...document.money?.minutes, [operation]: minutes } },
    }),
  );
};
const OPERATIONS = ["blank", "window", "hold", "glaze", "frame", "close", "hang"] as const;

/** What a work is framed, hung and reckoned by. */
export const FRAMING_FIELDS: Readonly<Record<string, HabitField>> = {
  molding: choice(
    () => MOULDING_OPTIONS,
    ({ habits }) => (habits.moulding === null ? "none" : "own"),
    (said, key) => {
      if (key === "none") return without(said.document, "moulding");
      const inches = said.habits.ruler.unit === "in";
      const sizes = inches
        ? { overall: "3/4 in", rabbet: "1/4 in", depth: "3/4 in" }
        : { overall: "20 mm", rabbet: "6 mm", depth: "20 mm" };
      return { ...said.document, moulding: { name: NEW_HABIT.moulding, ...sizes } };
    },
  ),
  moldingName: text(
    ({ habits }) => habits.moulding?.name ?? "",
    (said, name) => withMoulding(said, { name }),
  ),
  overall: moulding("overall"),
  rabbet: moulding("rabbet"),
  lip: moulding("lip"),
  depth: moulding("depth"),
  allowance: moulding("allowance"),
  waste: moulding("waste"),
  glass: choice(
    () => GLAZING_OPTIONS,
    ({ habits }) => habits.glazing?.kind ?? "none",
    ({ document }, kind) =>
      kind === "none"
        ? without(document, "glazing")
        : { ...document, glazing: { kind, board: NEW_HABIT[kind] } },
  ),
  glassName: text(
    ({ habits }) => habits.glazing?.board ?? "",
    (said, board) => withGlazing(said, { board }),
  ),
  glassThickness: glazing("thickness"),
  glassLess: glazing("less"),
  back: choice(
    () => BACKING_OPTIONS,
    ({ habits }) => (habits.backing === null ? "none" : "own"),
    ({ document }, key) =>
      key === "none" ? without(document, "backing") : { ...document, backing: { board: NEW_HABIT.backing } },
  ),
  backName: text(
    ({ habits }) => habits.backing?.board ?? "",
    (said, board) => withBacking(said, { board }),
  ),
  backThickness: backing("thickness"),
  backLess: backing("less"),
  fittings: framing("fittings"),
  offset: framing("offset"),
  coverInset: framing("coverInset"),
  bumper: framing("bumper"),
  fittingKind: choice(
    () => FITTING_OPTIONS,
    ({ hanging }) => hanging.fittings.kind,
    (said, kind) => withFittings(said, { kind }),
  ),
  down: number(
    0.05,
    "",
    ({ hanging }) => Number(hanging.fittings.down.toFixed(3)),
    (said, down) => withFittings(said, { down }),
  ),
  insetKind: choice(
    () => INSET_OPTIONS,
    ({ hanging }) => (hanging.fittings.inset === null ? "middle" : "own"),
    (said, key) => {
      if (key === "own")
        return withFittings(said, { inset: said.habits.ruler.unit === "in" ? "3/8 in" : "10 mm" });
      const { inset: _, ...rest } = said.document.hanging?.fittings ?? {};
      return withHanging(said, { fittings: rest });
    },
  ),
  inset: length(
    ({ hanging }) => orZero(hanging.fittings.inset),
    (said, inset) => withFittings(said, { inset }),
  ),
  drop: choice(
    () => DROP_OPTIONS,
    ({ hanging }) => (hanging.hookDrop === null ? "unknown" : "own"),
    (said, key) => {
      if (key === "own")
        return withHanging(said, { hookDrop: said.habits.ruler.unit === "in" ? "5/16 in" : "8 mm" });
      const { hookDrop: _, ...rest } = said.document.hanging ?? {};
      return { ...said.document, hanging: rest };
    },
  ),
  hookDrop: length(
    ({ hanging }) => orZero(hanging.hookDrop),
    (said, hookDrop) => withHanging(said, { hookDrop }),
  ),
  safety: number(
    1,
    "",
    ({ hanging }) => hanging.safety,
    (said, safety) => withHanging(said, { safety }),
  ),
  guidance: choice(
    () => GUIDANCE_OPTIONS,
    ({ document }) => document.lightGuidance ?? "cie-157",
    ({ document }, lightGuidance) => ({ ...document, lightGuidance }),
  ),
  work: choice(
    () => WORK_OPTIONS,
    ({ document }) => (document.money?.hour === undefined ? "free" : "paid"),
    ({ document }, key) => {
      if (key === "paid") return { ...document, money: { ...document.money, hour: 0 } };
      const { hour: _, ...rest } = document.money ?? {};
      return { ...document, money: rest };
    },
  ),
  hour: number(
    1,
    "",
    ({ document }) => Number(document.money?.hour ?? 0),
    ({ document }, hour) => ({ ...document, money: { ...document.money, hour } }),
  ),
  priced: text(
    ({ document }) => document.money?.date ?? "",
    ({ document }, date) => {
      const { date: _, ...rest } = document.money ?? {};
      return { ...document, money: date === "" ? rest : { ...rest, date } };
    },
  ),
};
