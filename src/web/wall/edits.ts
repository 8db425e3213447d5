import { inch, type Length, mm, printExact, toGraduation, type Unit } from "../../lengths/index.ts";
import { type WallDocument, wallName } from "../../show/index.ts";

/** What can be done to a show's walls, each a list of walls from another. */
export type Walls = readonly WallDocument[];

/** One wall changed, the others as they are. */
export const withWall = (
  walls: Walls,
  index: number,
  change: (wall: WallDocument) => WallDocument,
): WallDocument[] => walls.map((wall, other) => (other === index ? change(wall) : wall));

/** The same wall with its works named in this order; works of one title stand together. */
export const withTitles = (wall: WallDocument, titles: readonly string[]): WallDocument => ({
  ...wall,
  works: [...new Set(titles)],
});

/** A list with one entry carried to another place. */
export function carriedTo<Item>(list: readonly Item[], from: number, to: number): readonly Item[] {
  const item = list[from];
  if (item === undefined) return list;
  const rest = list.filter((_, index) => index !== from);
  return [...rest.slice(0, to), item, ...rest.slice(to)];
}

/** A name that no wall has yet. */
function freeName(walls: Walls, stem: string): string {
  const names = new Set(walls.map((_, index) => wallName(walls, index)));
  for (let number = walls.length + 1; ; number++) {
    const name = `${stem} ${number}`;
    if (!names.has(name)) return name;
  }
}

/** A wall to begin with: a large room's, to be measured. The first takes every work that no other names. */
export function newWall(walls: Walls, stem: string, unit: Unit): WallDocument {
  return {
    name: freeName(walls, stem),
    width: unit === "in" ? "240 in" : "6000 mm",
    height: unit === "in" ? "108 in" : "2700 mm",
    works: walls.length === 0 ? "rest" : [],
  };
}

/** Something that must stay free, or a seat, where nothing is known of it yet. */
export const newObstacle = (
  name: string,
  floor: Length,
  unit: Unit,
): NonNullable<WallDocument["avoid"]>[number] => ({
  name,
  x: "0",
  y: printExact(floor, unit),
  width: unit === "in" ? "36 in" : "900 mm",
  height: unit === "in" ? "80 in" : "2000 mm",
});
export const newSeat = (name: string, unit: Unit): NonNullable<WallDocument["seats"]>[number] => ({
  name,
  x: "0",
  width: unit === "in" ? "48 in" : "1200 mm",
});

type RuleKind = "gap" | "spread" | "rows" | "grid" | "cluster";

/** Another way to lay the works out, with the gap and the middle that stood before. */
export function ruleUnder(
  kind: RuleKind,
  gap: string,
  centre: string | undefined,
  works: number,
): NonNullable<WallDocument["rule"]> {
  const about = centre === undefined ? {} : { centre };
  switch (kind) {
    case "gap":
      return { row: "gap", gap, ...about };
    case "spread":
      return { row: "spread" };
    case "rows":
      return { rows: { count: 2, gap, ...about } };
    case "grid":
      return { grid: { columns: Math.max(1, Math.ceil(Math.sqrt(works * 1.6))), gap, ...about } };
    case "cluster":
      return { cluster: { gap, ...about } };
  }
}

/** The rule with some of its own figures changed, whatever its kind. */
export function inRule(
  rule: WallDocument["rule"],
  change: { readonly gap?: string; readonly rowGap?: string; readonly centre?: string | undefined },
): NonNullable<WallDocument["rule"]> {
  const changed = <Part extends object>(part: Part): Part => {
    const next: Part & { centre?: string | undefined } = { ...part, ...change };
    if ("centre" in change && change.centre === undefined) delete next.centre;
    return next;
  };
  if (rule === undefined) return changed({ row: "gap" as const });
  if ("rows" in rule) return { rows: changed(rule.rows) };
  if ("grid" in rule) return { grid: changed(rule.grid) };
  if ("cluster" in rule) return { cluster: changed(rule.cluster) };
  return changed(rule);
}

/** What a level line or a falling floor begins with, until it is measured. */
export const usualLevel = (unit: Unit): Length => (unit === "in" ? inch(48) : mm(1200));
export const usualFall = (unit: Unit): string => printExact(unit === "in" ? inch(1, 4) : mm(5), unit);

/** A place on the ruler, as a document keeps it. */
export const onRuler = (length: Length, graduation: Length, unit: Unit): string =>
  printExact(toGraduation(length, graduation, "nearest"), unit);
