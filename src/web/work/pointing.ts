import type { BlankName } from "../../words/page.ts";
import { partsOf } from "../drawing/parts.ts";
import { pointed } from "../state/draft.ts";

/** Whether a part of a drawing that this blank speaks of is pointed at; then the sentence washes the blank. */
export const isPointedAt = (blank: BlankName): boolean =>
  pointed.value !== null && partsOf(blank).includes(pointed.value);
