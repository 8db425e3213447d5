import type { Unit } from "../../lengths/index.ts";
import { practiceFor, type PracticeDocument, readHangingHabits, sameJson } from "../../show/index.ts";
import type { KeptShow } from "../state/change.ts";
import { type HabitsSaid, without } from "./fields.ts";

/** A figure without a unit, which means another length in another unit. */
const BARE = /^\s*[-−]?[\d.,]+(?:[ /⁄\d]*)\s*$/;

/** What a bare figure may have meant, by the unit it stood in. */
const ENDS: Readonly<Record<Unit, readonly string[]>> = {
  in: ["in", "lb/ft", "lb/ft2", "lb", "°F"],
  mm: ["mm", "kg/m", "kg/m2", "kg", "°C"],
};

type Leaf = string | number;
type Json = Leaf | boolean | null | undefined | readonly Json[] | { readonly [key: string]: Json };

/** The same practice in another unit: what it says keeps its length, what it leaves open takes that unit's round figures. */
export function inUnit({ document, habits }: HabitsSaid, unit: Unit): PracticeDocument {
  const before = habits.ruler.unit;
  if (unit === before) return document;
  return { ...without(unitsSaid(document, before), "graduation"), unit };
}

/** Each bare figure with the unit that makes it read as it did; one that is no length stays as it is. */
function unitsSaid(document: PracticeDocument, unit: Unit): PracticeDocument {
  const meant = meaning(document, unit);
  let said = document;
  for (const path of leaves(document)) {
    const leaf = at(said, path);
    if (!(typeof leaf === "number" || (typeof leaf === "string" && BARE.test(leaf)))) continue;
    for (const end of ENDS[unit]) {
      const next = put(said, path, `${leaf} ${end}`) as PracticeDocument;
      if (!sameJson(meaning(next, unit), meant)) continue;
      said = next;
      break;
    }
  }
  return said;
}

/** All that a practice comes to, as a value that can be compared; null where it cannot be read. */
function meaning(document: PracticeDocument, unit: Unit): unknown {
  const practice = practiceFor(document, unit);
  if (!practice.ok) return null;
  const hanging = readHangingHabits(document, practice.value);
  if (!hanging.ok) return null;
  // What is whole beyond the safe integers has no JSON of its own.
  return JSON.parse(
    JSON.stringify([practice.value, hanging.value], (_, value: unknown) =>
      typeof value === "bigint" ? String(value) : value,
    ),
  );
}

const isOpen = (value: unknown): value is { readonly [key: string]: Json } | readonly Json[] =>
  typeof value === "object" && value !== null;

function leaves(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (!isOpen(value)) return [path];
  return Object.entries(value).flatMap(([key, inner]) => leaves(inner, [...path, key]));
}

function at(value: unknown, [key, ...rest]: readonly string[]): unknown {
  if (key === undefined) return value;
  return isOpen(value) ? at(Reflect.get(value, key), rest) : undefined;
}

function put(value: unknown, [key, ...rest]: readonly string[], leaf: Leaf): unknown {
  if (key === undefined) return leaf;
  if (Array.isArray(value))
    return value.map((inner: unknown, index) => (String(index) === key ? put(inner, rest, leaf) : inner));
  return isOpen(value) ? { ...value, [key]: put(Reflect.get(value, key), rest, leaf) } : value;
}

/** Figures that are no lengths: degrees, counts, factors, names. */
const NO_LENGTH = new Set([
  "angle",
  "bevel",
  "foot",
  "grammage",
  "humidity",
  "count",
  "columns",
  "seed",
  "safety",
]);

const isBare = (value: unknown): boolean =>
  leaves(value).some((path) => {
    const leaf = at(value, path);
    const figure = typeof leaf === "number" || (typeof leaf === "string" && BARE.test(leaf));
    return figure && !path.some((key) => NO_LENGTH.has(key));
  });

/** Works and walls that name no unit of their own and hold a bare figure: another unit would change what was measured. */
export function bareIn({ works, walls = [] }: KeptShow): number {
  const ofWorks = works.filter(
    ({ design, hang, framed }) => design.unit === undefined && isBare([design, hang, framed]),
  );
  const ofWalls = walls.filter((wall) => wall.unit === undefined && isBare({ ...wall, works: [] }));
  return ofWorks.length + ofWalls.length;
}
