import {
  type Done,
  type Fitting,
  type Operation,
  OPERATIONS,
  type Price,
  readPrice,
} from "../plans/index.ts";
import type { MoneyHabitsDocument } from "./money-schema.ts";
import type { Reader } from "./reader.ts";
import { readDay } from "./days.ts";

/** A studio's prices and minutes; what is not told is absent or null, and never made up. */
export interface MoneyHabits {
  readonly currency: string | null;
  /** ISO 8601; null: not told. */
  readonly date: string | null;
  readonly hour: Price | null;
  /** Hundredths of a minute. */
  readonly minutes: Readonly<Partial<Record<Operation, number>>>;
  readonly fittings: readonly Fitting[];
  readonly having: readonly Done[];
}

const NO_MONEY: MoneyHabits = {
  currency: null,
  date: null,
  hour: null,
  minutes: {},
  fittings: [],
  having: [],
};

/** Longer than a day at one window is a slip of the pen. */
const MOST_MINUTES = 1440;
const MOST_EACH = 10_000;

/** Reads a studio's prices; every one that cannot be read is a problem with its field. */
export function readMoney(reader: Reader, document: MoneyHabitsDocument | undefined): MoneyHabits {
  if (document === undefined) return NO_MONEY;
  const price = (field: string, written: string | number): Price => {
    const read = readPrice(written);
    if (read === null) reader.refuse(`money.${field}`, written, { kind: "type", expected: "number" });
    return read ?? { units: 0n, places: 0 };
  };
  const { currency, date, hour, minutes = {}, fittings = [], having = [] } = document;
  if (date !== undefined) readDay(reader, "money.date", date);
  const told = OPERATIONS.flatMap((operation) => {
    const each = minutes[operation];
    if (each === undefined) return [];
    const field = `money.minutes.${operation}`;
    if (!(each >= 0 && each <= MOST_MINUTES)) {
      reader.refuse(
        field,
        each,
        each > 0 ? { kind: "at-most", most: MOST_MINUTES } : { kind: "at-least", least: 0 },
      );
      return [];
    }
    return [[operation, Math.round(each * 100)] as const];
  });
  const whole = (field: string, value: number | undefined): number =>
    reader.count(`money.${field}`, value ?? 1, MOST_EACH);
  return {
    currency: currency ?? null,
    date: date ?? null,
    hour: hour === undefined ? null : price("hour", hour),
    minutes: Object.fromEntries(told),
    fittings: fittings.map((one, index) => ({
      name: one.name,
      price: price(`fittings.${index}.cost`, one.cost),
      pack: whole(`fittings.${index}.pack`, one.pack),
      each: whole(`fittings.${index}.each`, one.each),
      per: one.per ?? "frame",
    })),
    having: having.map((one, index) => ({
      what: one.what,
      price: price(`having.${index}.cost`, one.cost),
      per: one.per ?? "work",
    })),
  };
}
