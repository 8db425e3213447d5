import {
  type Composition,
  type HoldFacts,
  type HoldHabits,
  type HoldPlan,
  KILOGRAMS_PER_POUND,
  planHold,
  USUAL_HOLD,
} from "../assembly/index.ts";
import { add, type Unit } from "../lengths/index.ts";
import type { HeldDocument, HeldHabitsDocument } from "./held-schema.ts";
import type { WorkDocument } from "./schema.ts";
import type { Practice } from "./practice.ts";
import { Reader } from "./reader.ts";
import type { Read } from "./validate.ts";

/** How a studio holds its works, and what it usually knows of them. */
export interface HeldPractice extends HoldHabits, Pick<HoldFacts, "humidity" | "use" | "board"> {}

/** A studio's holding with every choice made, in the round figures of `unit`. */
export function readHeldHabits(reader: Reader, document: HeldHabitsDocument, unit: Unit): HeldPractice {
  const usual = USUAL_HOLD[unit];
  const { hinge = {}, sink = {}, riser = {} } = document;
  const habits: HeldPractice = {
    tab: {
      width: reader.sizeOr("held.hinge.width", hinge.width, usual.tab.width),
      height: reader.sizeOr("held.hinge.height", hinge.height, usual.tab.height),
    },
    pasted: reader.sizeOr("held.hinge.pasted", hinge.pasted, usual.pasted),
    bare: reader.lengthOr("held.hinge.bare", hinge.bare, usual.bare),
    inset: reader.lengthOr("held.hinge.inset", hinge.inset, usual.inset),
    slit: reader.lengthOr("held.hinge.slit", hinge.slit, usual.slit),
    layer: reader.sizeOr("held.sink.thickness", sink.thickness, usual.layer),
    layerBoard: sink.board ?? usual.layerBoard,
    room: reader.lengthOr("held.sink.room", sink.room, usual.room),
    sinkFrom: reader.lengthOr("held.sink.from", sink.from, usual.sinkFrom),
    riser: reader.sizeOr("held.riser.height", riser.height, usual.riser),
    riserInset: reader.lengthOr("held.riser.inset", riser.inset, usual.riserInset),
    clear: reader.lengthOr("held.riser.clear", riser.clear, usual.clear),
    humidity: readHumidity(reader, document.humidity),
    use: document.use ?? "frame",
    board: document.board ?? null,
  };
  // What is pasted and bare is taken off a tab: something must be left of it to cross.
  for (const [field, off] of [
    ["held.hinge.bare", habits.bare],
    ["held.hinge.slit", habits.slit],
  ] as const)
    if (add(habits.pasted, off) >= habits.tab.height)
      reader.refuse(field, document.hinge, { kind: "below-tab" });
  return habits;
}

function readHumidity(reader: Reader, range: HeldDocument["humidity"]): HoldFacts["humidity"] {
  if (range === undefined) return null;
  const { from, to } = range;
  if (from >= 0 && from <= to && to <= 100) return { from, to };
  reader.refuse("held.humidity", range, { kind: "humidity" });
  return null;
}

/** How a work was made, as it or its print tells; empty where neither does. */
export const processOf = ({ process, design }: Pick<WorkDocument, "process" | "design">): string =>
  process ?? design.print?.process ?? "";

/** What of a practice, and of a work's frame, its holding is read with. */
type HeldBy = Pick<Practice, "held" | "glazing">;

/** What is known of one work's holding; `process` as it was told, empty where it was not. */
export function readHeld(
  document: HeldDocument,
  process: string,
  { held, glazing }: HeldBy,
): Read<HoldFacts> {
  const reader = new Reader("mm");
  const facts: HoldFacts = {
    never: document.never ?? [],
    process,
    grammage: null,
    grain: document.grain ?? null,
    humidity: document.humidity === undefined ? held.humidity : readHumidity(reader, document.humidity),
    bed: document.bed ?? null,
    use: document.use ?? held.use,
    board: document.board ?? held.board,
    glazing: glazing?.kind ?? null,
  };
  const grammage = document.grammage === undefined ? null : readGrammage(document.grammage);
  if (document.grammage !== undefined && grammage === null)
    reader.refuse("held.grammage", document.grammage, { kind: "grammage" });
  return reader.problems.length === 0
    ? { ok: true, value: { ...facts, grammage } }
    : { ok: false, problems: reader.problems };
}

/** How a composed work is held by a studio's habits; null for a mat without a print. */
export function holdWork(
  composition: Composition,
  document: HeldDocument,
  process: string,
  practice: HeldBy,
): Read<HoldPlan | null> {
  const facts = readHeld(document, process, practice);
  if (!facts.ok) return facts;
  const { mount, mats } = composition.design;
  const board = facts.value.board ?? boardAsNamed([mount, mats[0]?.board ?? ""]);
  return { ok: true, value: planHold(composition, { ...facts.value, board }, practice.held) };
}

/** What the names of all boards that touch a work say of a buffer; null where one of them says nothing. */
function boardAsNamed(names: readonly string[]): HoldFacts["board"] {
  const said = names.map((name) =>
    /unbuffered|no buffer/i.test(name) ? "unbuffered" : /buffered/i.test(name) ? "buffered" : null,
  );
  if (said.includes("buffered")) return "buffered";
  return said.includes(null) ? null : "unbuffered";
}

const WEIGHT = /^(\d+(?:[.,]\d+)?) ?(gsm|g\/m2|g\/m²|g|lb\.?|lbs\.?)?$/i;
/** Square metres of a ream of 500 sheets of 22 × 30 in. */
const REAM = 500 * (22 * 0.0254) * (30 * 0.0254);
/** Heavier than any sheet that is called paper or card. */
const MOST = 3000;

/**
 * A paper's weight as people write it, in grams a square metre: `300`, `300 gsm`, `300 g/m²`, or `140 lb`,
 * which counts as a ream of 500 sheets of 22 × 30 in. Null for anything else, and for nought.
 */
export function readGrammage(written: string | number): number | null {
  const match = WEIGHT.exec(
    String(written)
      .replace(/[\u00a0\u2009\u202f]/g, " ")
      .trim(),
  );
  if (match === null) return null;
  const value = Number((match[1] ?? "").replace(",", "."));
  const grams = /^l/i.test(match[2] ?? "") ? (value * KILOGRAMS_PER_POUND * 1000) / REAM : value;
  return grams > 0 && grams <= MOST ? grams : null;
}
