import type { Unit } from "../../lengths/index.ts";
import { type KeptShow, type ShowDocument, withIds as withIdsOf } from "../../show/index.ts";
import { newId } from "./chance.ts";

/**
 * A show as the page or its own server wrote it, told by its form: it was read field by field when it
 * first came in, so only its frame is looked at again. Null where it is none.
 */
export function asKept(json: unknown): KeptShow | null {
  if (!isObject(json)) return null;
  if (json["format"] !== "margent-show" || typeof json["version"] !== "number") return null;
  const works: unknown = json["works"];
  if (typeof json["name"] !== "string" || !Array.isArray(works)) return null;
  const whole = works.every(
    (work: unknown) => isObject(work) && typeof work["title"] === "string" && isObject(work["design"]),
  );
  return whole ? withIds(json as unknown as ShowDocument) : null;
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

export const withIds = (show: ShowDocument): KeptShow => withIdsOf(show, newId);

/** A show that begins here. */
export const newShow = (name: string, unit: Unit, works: ShowDocument["works"]): ShowDocument => ({
  format: "margent-show",
  version: 1,
  name,
  practice: { unit },
  works,
});
