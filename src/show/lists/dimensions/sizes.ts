import { absolute, type Length, readLength, subtract } from "../../../lengths/index.ts";
import { AGREES_WITHIN } from "../bounds.ts";
import type { Statement, WrittenFigure, WrittenPart } from "./parts.ts";
import type { DimensionsFault, Part, Size, WrittenLength } from "./records.ts";
import type { UnitWord } from "./tokens.ts";
import type { Axis } from "./vocabulary.ts";

/** What one part's statements come to. */
export interface PartSize {
  readonly size: Size;
  readonly depth: WrittenLength | null;
  /** Both statements, where the one in inches and the metric one are further apart than rounding. */
  readonly differs: { readonly metric: Size; readonly inch: Size } | null;
  /** No unit is written anywhere in this part. */
  readonly unitTaken: boolean;
}

export type PartSizeRead =
  | ({ readonly ok: true } & PartSize)
  | { readonly ok: false; readonly fault: DimensionsFault };

type TogetherRead =
  | ({ readonly ok: true } & Omit<PartSize, "unitTaken">)
  | { readonly ok: false; readonly fault: DimensionsFault };

type Measure = "metric" | "inch";
type Figures = Partial<Record<Axis, WrittenLength>>;

const refuse = (fault: DimensionsFault): { ok: false; fault: DimensionsFault } => ({ ok: false, fault });

/**
 * The size that a part's statements give: height before width unless the text says otherwise. Where it is
 * stated in inches and in millimetres the metric one is taken, as the finer; a figure without a unit takes
 * the one to its right, else the part's only one, else `unit`.
 */
export function sizeOf(written: WrittenPart, unit: UnitWord): PartSizeRead {
  const part = written.names[0] ?? "whole";
  const stated = onlyUnit(written.statements);
  const metric: Figures[] = [];
  const inch: Figures[] = [];
  let before: StatementRead | null = null;
  for (const statement of written.statements) {
    const read: StatementRead | DimensionsFault = readStatement(statement, stated ?? unit, part, before);
    if ("code" in read) return refuse(read);
    const list = read.measure === "metric" ? metric : inch;
    const open = list.at(-1);
    // "H. 20 cm; W. 30 cm" is one size in two statements.
    if (read.alone !== null && open !== undefined && open[read.alone] === undefined) {
      Object.assign(open, read.figures);
    } else {
      list.push(read.figures);
    }
    before = read;
  }
  const sizes = together(part, metric, inch);
  const unitTaken = written.statements.flat().every((figure) => figure.unit === null);
  return sizes.ok ? { ...sizes, unitTaken } : sizes;
}

interface StatementRead {
  readonly measure: Measure;
  readonly figures: Figures;
  /** The one direction that is stated. */
  readonly alone: Axis | null;
}

/** One statement's figures as lengths; `before` is the statement that it may repeat in the other measure. */
function readStatement(
  statement: Statement,
  other: UnitWord,
  part: Part,
  before: StatementRead | null,
): StatementRead | DimensionsFault {
  if (statement.length > 3) return { code: "many-figures", part };
  const written = withUnits(statement, other);
  const measure = measureOf(written[0]?.unit ?? other);
  let axes = axesOf(statement);
  // "H. 20 cm (7 7/8 in)": the figure in brackets is the same height.
  if (axes === null && statement.length === 1 && before !== null && before.measure !== measure) {
    axes = before.alone === null ? null : [before.alone];
  }
  if (axes === null) return { code: statement.length === 1 ? "one-figure" : "many-figures", part };

  const figures: Figures = {};
  for (const [index, axis] of axes.entries()) {
    const figure = written[index];
    if (figure === undefined) continue;
    const text = `${figure.text} ${figure.unit}`;
    const length = readLength(text, "mm");
    if (!length.ok) return { code: "length", fragment: text, fault: length.fault };
    figures[axis] = { text, length: length.length };
  }
  return { measure, figures, alone: axes.length === 1 ? (axes[0] ?? null) : null };
}

const measureOf = (unit: UnitWord): Measure => (unit === "in" || unit === "ft" ? "inch" : "metric");

/** The unit of the whole part, where just one is written in it. */
function onlyUnit(statements: readonly Statement[]): UnitWord | null {
  const units = new Set(statements.flat().flatMap(({ unit }) => unit ?? []));
  return units.size === 1 ? ([...units][0] ?? null) : null;
}

function withUnits(statement: Statement, other: UnitWord): (WrittenFigure & { unit: UnitWord })[] {
  let right = other;
  return statement
    .toReversed()
    .map((figure) => {
      right = figure.unit ?? right;
      return { ...figure, unit: right };
    })
    .toReversed();
}

/** Which figure is which: as said, the rest height first; null where that comes to no size. */
function axesOf(statement: Statement): Axis[] | null {
  if (statement.length === 1) return statement[0]?.axis ? [statement[0].axis] : null;
  const order: Axis[] = statement.length === 2 ? ["height", "width"] : ["height", "width", "depth"];
  const left = order.filter((axis) => !statement.some((figure) => figure.axis === axis));
  const axes = statement.map((figure) => figure.axis ?? left.shift() ?? "depth");
  return order.every((axis) => axes.includes(axis)) ? axes : null;
}

function together(part: Part, metric: readonly Figures[], inch: readonly Figures[]): TogetherRead {
  const sizes: Record<Measure, Size | null> = { metric: null, inch: null };
  let depth: WrittenLength | null = null;
  for (const [measure, list] of [["metric", metric] as const, ["inch", inch] as const]) {
    for (const { height, width, depth: deep } of list) {
      if (height === undefined || width === undefined) return refuse({ code: "one-figure", part });
      const size = { width, height };
      const before = sizes[measure];
      if (before !== null && !agree(before, size)) {
        return refuse({ code: "two-sizes", part, first: before, second: size });
      }
      sizes[measure] ??= size;
      depth ??= deep ?? null;
    }
  }
  const size = sizes.metric ?? sizes.inch;
  if (size === null) return refuse({ code: "one-figure", part });
  const differs =
    sizes.metric !== null && sizes.inch !== null && !agree(sizes.metric, sizes.inch)
      ? { metric: sizes.metric, inch: sizes.inch }
      : null;
  return { ok: true, size, depth, differs };
}

/** Two statements of one size, up to what rounding explains. */
export const agree = (a: Size, b: Size): boolean =>
  near(a.width.length, b.width.length) && near(a.height.length, b.height.length);

const near = (a: Length, b: Length): boolean => absolute(subtract(a, b)) <= AGREES_WITHIN;
