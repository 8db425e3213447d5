import type { HabitField } from "./fields.ts";
import { FRAMING_FIELDS, minutesField } from "./framing-fields.ts";
import { MAKING_FIELDS, matField } from "./making-fields.ts";

/** What stands behind a blank by its name, `habit.overlap`, `habit.bevel.0`; null where there is no such blank. */
export function habitField(blank: string): HabitField | null {
  const [, of = "", index = ""] = blank.split(".");
  if (of === "minutes") return minutesField(index);
  return MAKING_FIELDS[of] ?? FRAMING_FIELDS[of] ?? matField(of, Number(index));
}
