import type { FramedWork, Hanging, HangingHabits, HungWork } from "../assembly/index.ts";
import {
  half,
  inch,
  type Length,
  mm,
  negate,
  type Ruler,
  subtract,
  toMillimetres,
  ZERO,
} from "../lengths/index.ts";
import type { Obstacle, WallJob, WallPlan, WallRule } from "../plans/index.ts";
import { type HangDocument, hangDocument } from "./hang-schema.ts";
import { readMass } from "./mass.ts";
import { foundText, type Wanted } from "./problem.ts";
import { Reader } from "./reader.ts";
import { validate } from "./validate.ts";

/** What is wanted in a field of a wall, beyond what every document knows. */
export type HangWanted =
  | Wanted
  /** A weight above nought. */
  | { readonly kind: "mass" }
  /** The wire's length, or its rise. */
  | { readonly kind: "wire" }
  | { readonly kind: "whole"; readonly least: number | null; readonly most: number | null };

export interface HangProblem {
  readonly field: string;
  readonly found: string;
  readonly wanted: HangWanted;
}

export type HangRead =
  | { readonly ok: true; readonly value: HangRequest }
  | { readonly ok: false; readonly problems: readonly HangProblem[] };

/** A wall to lay out, the works on it, and how hooks are held against their load. */
export interface HangRequest {
  readonly studio: string;
  readonly show: string;
  /** What the wall is called. */
  readonly wall: string;
  readonly ruler: Ruler;
  readonly job: WallJob;
  readonly works: readonly FramedWork[];
  readonly habits: HangingHabits;
  /** How many times its load a fitting must be rated for. */
  readonly safety: number;
  /** False where the document does not say how far a nail is above where its hook bears. */
  readonly hookKnown: boolean;
  readonly seed: number;
}

/** A wall as it was read, where its frames hang, and how each of them does. */
export interface HungWall {
  readonly request: HangRequest;
  readonly plan: WallPlan;
  readonly works: readonly HungWork[];
  /** Whether something cannot be hung as asked: a check of level "stop". */
  readonly stopped: boolean;
}

type WorkDocument = HangDocument["works"][number];
type HangingDocument = WorkDocument["hang"];

/** 57 in, 145 cm: middles that several hangers name (art-collective guide 2014; gallery worker). The gap and the factor are common practice, no source. */
const USUAL = {
  in: { eyeLine: inch(57), gap: inch(2), graduation: inch(1, 16) },
  mm: { eyeLine: mm(1450), gap: mm(50), graduation: mm(1) },
} as const;
const USUAL_SAFETY = 4;

const MOST_SCREWS = 50;
const MOST_SAFETY = 100;

/** Reads one wall; every problem is told with its field. */
export function readHang(document: unknown): HangRead {
  const valid = validate(hangDocument, document);
  if (!valid.ok) return valid;
  const { value } = valid;
  const reader = new HangReader(value.unit ?? "in");
  const request = reader.request(value);
  const problems = [...reader.problems, ...reader.others];
  return problems.length === 0 ? { ok: true, value: request } : { ok: false, problems };
}

/** Lengths as every document has them, and what only a wall knows. */
class HangReader extends Reader {
  readonly others: HangProblem[] = [];

  request(document: HangDocument): HangRequest {
    const usual = USUAL[this.unit];
    const works = document.works.map((work, index) => readWork(this, `works.${index}`, work));
    const level = this.lengthOr("levelLine", document.levelLine, ZERO);
    return {
      studio: document.studio ?? "",
      show: document.show ?? "",
      wall: document.wall.name ?? "",
      ruler: {
        unit: this.unit,
        graduation: this.sizeOr("graduation", document.graduation, usual.graduation),
      },
      job: {
        wall: {
          width: this.size("wall.width", document.wall.width),
          height: this.size("wall.height", document.wall.height),
        },
        floor: negate(level),
        avoid: (document.avoid ?? []).map((box, index) => this.obstacle(`avoid.${index}`, box)),
        eyeLine:
          document.eyeLine === undefined
            ? subtract(usual.eyeLine, level)
            : this.place("eyeLine", document.eyeLine),
        rule: readRule(this, document.rule, usual.gap),
        frames: framesOf(works, setsOf(document.works)),
      },
      works,
      habits: {
        hookDrop: this.lengthOr("hookDrop", document.hookDrop, ZERO),
        publicWay: document.publicWay ?? false,
        floor: negate(level),
      },
      safety: this.number("safety", document.safety ?? USUAL_SAFETY, 0, MOST_SAFETY, "count"),
      hookKnown: document.hookDrop !== undefined,
      seed: this.whole("seed", document.seed ?? 1, null, null),
    };
  }

  /** A whole number from `least` up to `most`; `least` or nought stands in where it is not. */
  whole(field: string, value: number, least: number | null, most: number | null): number {
    const within = (least === null || value >= least) && (most === null || value <= most);
    if (Number.isSafeInteger(value) && within) return value;
    this.want(field, value, { kind: "whole", least, most });
    return least ?? 0;
  }

  want(field: string, found: unknown, wanted: HangWanted): void {
    this.others.push({ field, found: foundText(found), wanted });
  }

  private obstacle(field: string, box: NonNullable<HangDocument["avoid"]>[number]): Obstacle {
    return {
      name: box.name ?? "",
      x: this.place(`${field}.x`, box.x),
      y: this.place(`${field}.y`, box.y),
      width: this.size(`${field}.width`, box.width),
      height: this.size(`${field}.height`, box.height),
    };
  }
}

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

function readWork(reader: HangReader, field: string, work: WorkDocument): FramedWork {
  const { weight = null } = work;
  const mass = weight === null ? null : readMass(weight, reader.unit);
  if (weight !== null && mass === null) reader.want(`${field}.weight`, weight, { kind: "mass" });
  const width = reader.size(`${field}.width`, work.width);
  return {
    title: work.title ?? "",
    width,
    height: reader.size(`${field}.height`, work.height),
    mass,
    depth: work.depth === undefined ? null : reader.length(`${field}.depth`, work.depth),
    hanging: readHanging(reader, `${field}.hang`, work.hang, width),
  };
}

function readHanging(reader: HangReader, field: string, hang: HangingDocument, width: Length): Hanging {
  const below = reader.length(`${field}.below`, hang.below);
  switch (hang.kind) {
    case "rings":
    case "plates":
      return { kind: hang.kind, below, apart: reader.size(`${field}.apart`, hang.apart) };
    case "cleat":
      return {
        kind: "cleat",
        below,
        apart: reader.lengthOr(`${field}.apart`, hang.apart, half(width, "down")),
        screws: reader.whole(`${field}.screws`, hang.screws ?? 2, 1, MOST_SCREWS),
        down: reader.lengthOr(`${field}.down`, hang.down, ZERO),
      };
    case "wire": {
      const apart = reader.size(`${field}.apart`, hang.apart);
      const hooks = hang.hooks ?? (hang.hooksApart === undefined ? 1 : 2);
      if (hooks === 2 && hang.hooksApart === undefined)
        reader.refuse(`${field}.hooksApart`, undefined, { kind: "size" });
      return {
        kind: "wire",
        below,
        apart,
        wire: readWire(reader, field, hang),
        hooks,
        hooksApart: hooks === 1 ? ZERO : reader.sizeOr(`${field}.hooksApart`, hang.hooksApart, apart),
      };
    }
  }
}

function readWire(
  reader: HangReader,
  field: string,
  { length, drop }: Extract<HangingDocument, { readonly kind: "wire" }>,
): { readonly length: Length } | { readonly drop: Length } {
  if (drop !== undefined) return { drop: reader.size(`${field}.drop`, drop) };
  if (length === undefined) reader.want(`${field}.length`, undefined, { kind: "wire" });
  return { length: reader.lengthOr(`${field}.length`, length, ZERO) };
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
    const { gap, centre } = rule.cluster;
    return {
      kind: "cluster",
      gap: reader.length("rule.cluster.gap", gap),
      centre: centreOf("rule.cluster.centre", centre),
    };
  }
  const { columns, gap, rowGap, centre } = rule.grid;
  const across = reader.length("rule.grid.gap", gap);
  return {
    kind: "grid",
    columns: reader.whole("rule.grid.columns", columns, 1, null),
    gap: across,
    rowGap: reader.lengthOr("rule.grid.rowGap", rowGap, across),
    centre: centreOf("rule.grid.centre", centre),
  };
}

/** A number for each set: works that share a `with`, and the work whose title it is. */
function setsOf(works: readonly WorkDocument[]): readonly (number | null)[] {
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
    const named = works.findIndex(({ title }, other) => other !== index && title === work.with);
    const shared = works.findIndex((other) => other.with === work.with);
    if (named >= 0) join(Math.min(named, index), Math.max(named, index));
    if (shared < index) join(shared, index);
  });
  return sets;
}
