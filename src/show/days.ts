import type { Day } from "../assembly/index.ts";
import type { Reader } from "./reader.ts";

const ISO_DATE = /^(\d{4})-(\d{2})-(\d{2})$/;
const DAY = 86_400_000;

/** The day of an ISO 8601 date; null for anything else, and for a day that no month has. */
export function dayOf(iso: string): Day | null {
  const match = ISO_DATE.exec(iso);
  if (match === null) return null;
  const day = Date.UTC(Number(match[1]), Number(match[2]) - 1, Number(match[3])) / DAY;
  return isoOf(day) === iso ? day : null;
}

/** A day as ISO 8601. */
export const isoOf = (day: Day): string => new Date(day * DAY).toISOString().slice(0, 10);

/** A day of a document; null where it is none. */
export function readDay(reader: Reader, field: string, iso: string): Day | null {
  const day = dayOf(iso);
  if (day === null) reader.refuse(field, iso, { kind: "date", after: null });
  return day;
}
