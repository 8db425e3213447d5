import type { FramedWork, Hardware, HangingHabits, Measuring, Tape } from "../assembly/index.ts";
import {
  inch,
  type Length,
  mm,
  negate,
  type Ruler,
  subtract,
  toMillimetres,
  type Unit,
  ZERO,
} from "../lengths/index.ts";
import type { WallJob, WallRule } from "../plans/index.ts";
import type { HangReader, HangRequest } from "./hang-request.ts";
import type { HangDocument, HangingHabitsDocument } from "./hang-schema.ts";

/** 57 in, 145 cm: middles that several hangers name (art-collective guide 2014; gallery worker). The gap is common practice, no source. */
const USUAL = {
  in: { eyeLine: inch(57), gap: inch(2) },
  mm: { eyeLine: mm(1450), gap: mm(50) },
} as const;

/**
 * Four times the load: a trade article gives it for braided galvanised wire against the frame's weight
 * (C. A. Paschke, February 2013); for hooks, rings and screws it is common practice, no source.
 */
export const USUAL_SAFETY = 4;

const MOST_SAFETY = 100;

/** A wall's own measures and how it is hung, whatever document they stand in. */
export interface WallFields extends Omit<HangDocument, "works" | "wall" | "studio" | "show"> {
  readonly face: HangDocument["wall"];
  /** Before the face's own fields. */
  readonly facePath: string;
}

/** What the studio does on every wall that does not say otherwise; a wall's own document has none of it. */
export interface WallHabits {
  readonly safety: number;
  readonly hookDrop: Length | null;
  readonly tape: Tape | null;
  readonly hardware: readonly Hardware[];
}

const NO_HABITS: WallHabits = { safety: USUAL_SAFETY, hookDrop: null, tape: null, hardware: [] };

/** A work as its wall lays it out: framed, and what it hangs beside. */
export interface WallWork {
  readonly framed: FramedWork;
  readonly with: string | undefined;
}

/** One wall with the works that are to hang on it. */
export function wallRequest(
  reader: HangReader,
  fields: WallFields,
  works: readonly WallWork[],
  named: Pick<HangRequest, "studio" | "show">,
  graduation: Length,
  habits: WallHabits = NO_HABITS,
): HangRequest {
  const { face, facePath } = fields;
  const usual = USUAL[reader.unit];
  const level = reader.lengthOr("levelLine", fields.levelLine, ZERO);
  const width = reader.size(`${facePath}width`, face.width);
  const framed = works.map((work) => work.framed);
  const hookDrop =
    fields.hookDrop === undefined ? habits.hookDrop : reader.length("hookDrop", fields.hookDrop);
  return {
    ...named,
    wall: face.name ?? "",
    ruler: rulerOf(reader, fields.graduation, graduation),
    job: {
      wall: { width, height: reader.size(`${facePath}height`, face.height) },
      floor: negate(level),
      avoid: (fields.avoid ?? []).map((box, index) => obstacle(reader, `avoid.${index}`, box)),
      eyeLine:
        fields.eyeLine === undefined
          ? subtract(usual.eyeLine, level)
          : reader.place("eyeLine", fields.eyeLine),
      rule: readRule(reader, fields.rule, usual.gap),
      frames: framesOf(framed, setsOf(works)),
    },
    works: framed,
    habits: habitsOf(reader, fields, hookDrop ?? ZERO, negate(level)),
    measuring: measuringOf(reader, fields, width, habits.tape),
    safety: fields.safety === undefined ? habits.safety : readSafety(reader, "safety", fields.safety),
    hardware: fields.hardware === undefined ? habits.hardware : readHardware(reader, "hardware", fields),
    hookKnown: hookDrop !== null,
    seed: reader.whole("seed", fields.seed ?? 1, null, null),
  };
}

/** How a studio hangs, with every choice made but those that have no usual figure. */
export const readWallHabits = (reader: HangReader, document: HangingHabitsDocument): WallHabits => ({
  safety: readSafety(reader, "hanging.safety", document.safety ?? USUAL_SAFETY),
  hookDrop: document.hookDrop === undefined ? null : reader.length("hanging.hookDrop", document.hookDrop),
  tape: readTape(reader, "hanging.tape", document.tape),
  hardware: readHardware(reader, "hanging.hardware", document),
});

const rulerOf = (reader: HangReader, graduation: string | number | undefined, usual: Length): Ruler => ({
  unit: reader.unit,
  graduation: reader.sizeOr("graduation", graduation, usual),
});

/** Of a wall whose document does not say: a sixteenth, a millimetre. */
export const usualGraduation = (unit: Unit): Length => (unit === "in" ? inch(1, 16) : mm(1));

const habitsOf = (
  reader: HangReader,
  { face, publicWay, shakes, seats }: WallFields,
  hookDrop: Length,
  floor: Length,
): HangingHabits => ({
  hookDrop,
  publicWay: publicWay ?? false,
  floor,
  wall: face.kind ?? null,
  shakes: shakes ?? false,
  seats: (seats ?? []).map(({ name = "", x, width }, index) => ({
    name,
    x: reader.place(`seats.${index}.x`, x),
    width: reader.size(`seats.${index}.width`, width),
  })),
});

const measuringOf = (
  reader: HangReader,
  { face, facePath, tape }: WallFields,
  width: Length,
  usual: Tape | null,
): Measuring => ({
  width,
  tape: tape === undefined ? usual : readTape(reader, "tape", tape),
  fall: face.fall === undefined ? ZERO : reader.place(`${facePath}fall`, face.fall),
});

const readTape = (reader: HangReader, field: string, tape: WallFields["tape"]): Tape | null =>
  tape === undefined
    ? null
    : { span: reader.size(`${field}.span`, tape.span), over: reader.place(`${field}.over`, tape.over) };

const readSafety = (reader: HangReader, field: string, safety: number): number =>
  reader.number(field, safety, 0, MOST_SAFETY, "count");

const readHardware = (
  reader: HangReader,
  field: string,
  { hardware = [] }: Pick<HangingHabitsDocument, "hardware">,
): readonly Hardware[] =>
  hardware.map(({ name, use, rated }, index) => ({
    name,
    use,
    rated: reader.mass(`${field}.${index}.rated`, rated),
  }));

const obstacle = (
  reader: HangReader,
  field: string,
  box: NonNullable<HangDocument["avoid"]>[number],
): WallJob["avoid"][number] => ({
  name: box.name ?? "",
  x: reader.place(`${field}.x`, box.x),
  y: reader.place(`${field}.y`, box.y),
  width: reader.size(`${field}.width`, box.width),
  height: reader.size(`${field}.height`, box.height),
});

/** What the wall knows of each work. Where some weight is not known all count by their size. */
function framesOf(works: readonly FramedWork[], sets: readonly (number | null)[]): WallJob["frames"] {
  const weighed = works.every(({ mass }) => mass !== null);
  return works.map(({ title, width, height, mass }, index) => ({
    title,
    width,
    height,
    weight: weighed && mass !== null ? mass : toMillimetres(width) * toMillimetres(height),
    set: sets[index] ?? null,
  }));
}

function readRule(reader: HangReader, rule: HangDocument["rule"], usual: Length): WallRule {
  const centreOf = (field: string, centre: string | number | undefined): Length | null =>
    centre === undefined ? null : reader.place(field, centre);
  if (rule === undefined) return { kind: "gap", gap: usual, centre: null };
  if ("row" in rule) {
    if (rule.row === "spread") return { kind: "spread" };
    return {
      kind: "gap",
      gap: reader.lengthOr("rule.gap", rule.gap, usual),
      centre: centreOf("rule.centre", rule.centre),
    };
  }
  if ("cluster" in rule) {
    const { gap, centre, largest = "middle" } = rule.cluster;
    return {
      kind: "cluster",
      gap: reader.length("rule.cluster.gap", gap),
      centre: centreOf("rule.cluster.centre", centre),
      largest,
    };
  }
  const [kind, { gap, rowGap, centre }] =
    "rows" in rule ? (["rows", rule.rows] as const) : (["grid", rule.grid] as const);
  const across = reader.length(`rule.${kind}.gap`, gap);
  const shared = {
    gap: across,
    rowGap: reader.lengthOr(`rule.${kind}.rowGap`, rowGap, across),
    centre: centreOf(`rule.${kind}.centre`, centre),
  };
  return "rows" in rule
    ? { kind: "rows", count: reader.whole("rule.rows.count", rule.rows.count, 1, null), ...shared }
    : { kind: "grid", columns: reader.whole("rule.grid.columns", rule.grid.columns, 1, null), ...shared };
}

/** A number for each set: works that share a `with`, and the work whose title it is. */
function setsOf(works: readonly WallWork[]): readonly (number | null)[] {
  const sets: (number | null)[] = works.map(() => null);
  const join = (one: number, other: number): void => {
    const [from, to] = [sets[other] ?? null, sets[one] ?? one];
    sets[one] = to;
    sets[other] = to;
    if (from === null) return;
    for (const [index, set] of sets.entries()) if (set === from) sets[index] = to;
  };
  works.forEach((work, index) => {
    if (work.with === undefined) return;
    const named = works.findIndex(({ framed: { title } }, other) => other !== index && title === work.with);
    const shared = works.findIndex((other) => other.with === work.with);
    if (named >= 0) join(Math.min(named, index), Math.max(named, index));
    if (shared < index) join(shared, index);
  });
  return sets;
}
