import { compose, type Composition, type HoldPlan, holdStops, isStopped } from "../assembly/index.ts";
import { Pen } from "../lengths/index.ts";
import type { Language } from "../words/index.ts";
import { writeComposition } from "./composition-text.ts";
import { Writings } from "./composition-writing.ts";
import { problemJson, unreadJson } from "./json.ts";
import { heldJson } from "./held-json.ts";
import { sureOf } from "./everyday.ts";
import { inPractice, readDesign } from "./read-design.ts";
import { practiceFor } from "./read-practice.ts";
import { holdWork } from "./read-held.ts";
import { type ComposeDocument, composeDocument, type PracticeDocument } from "./schema.ts";
import { type Read, validate } from "./validate.ts";

/** One object for all who have no habits, so that they are read once. */
const NO_HABITS: PracticeDocument = {};

const surelyComposable = sureOf(composeDocument);
const isEveryday = (document: unknown): document is ComposeDocument => surelyComposable(document);

/** One work composed, with how it is held where its document asks. */
export interface ComposedDocument {
  readonly composition: Composition;
  readonly held: HoldPlan | null;
}

/** Validates, reads and composes one document. */
export function composeFrom(document: unknown, practice: PracticeDocument = NO_HABITS): Read<Composition> {
  const composed = composeHeld(document, practice);
  return composed.ok ? { ok: true, value: composed.value.composition } : composed;
}

/** The same, with how it is held where the document has `held`. */
export function composeHeld(
  document: unknown,
  practice: PracticeDocument = NO_HABITS,
): Read<ComposedDocument> {
  const valid = isEveryday(document)
    ? { ok: true as const, value: document }
    : validate(composeDocument, document);
  if (!valid.ok) return valid;
  const design = readDesign(valid.value, practice);
  if (!design.ok) return design;
  const composition = compose(design.value);
  const { held, print } = valid.value;
  if (held === undefined) return { ok: true, value: { composition, held: null } };
  const habits = practiceFor(practice, design.value.ruler.unit);
  if (!habits.ok) return inPractice(habits.problems);
  const plan = holdWork(composition, held, print?.process ?? "", habits.value);
  return plan.ok ? { ok: true, value: { composition, held: plan.value } } : plan;
}

/** Whether a work cannot be made as asked, or not held. */
export const cannotBeMade = ({ composition, held }: ComposedDocument): boolean =>
  isStopped(composition) || holdStops(held).length > 0;

/** One document in, the composed work or its problem out, as plain JSON. */
export const composeJson = (document: unknown, practice: PracticeDocument = NO_HABITS): object =>
  JSON.parse(composeResult(document, practice).text) as object;

/** As JSON text, with whether it cannot be made as asked (a check of level "stop", or a problem). */
export function composeResult(
  document: unknown,
  practice: PracticeDocument = NO_HABITS,
): { readonly text: string; readonly stopped: boolean } {
  const pen = new Pen();
  const stopped = new Composer(pen, practice).write(document);
  return { text: textOf(pen), stopped };
}

/** Composes one document after the other and writes each, or its problem, as JSON text. */
export class Composer {
  private readonly pen: Pen;
  private readonly practice: PracticeDocument;
  private readonly writings: Writings;

  constructor(pen: Pen, practice: PracticeDocument) {
    this.pen = pen;
    this.practice = practice;
    this.writings = new Writings(pen, practice.language ?? "en-US");
  }

  /** The result is whether it cannot be made as asked. */
  write(document: unknown): boolean {
    const composed = composeHeld(document, this.practice);
    if (!composed.ok) {
      this.pen.text(JSON.stringify(unreadJson(composed.problems.map(problemJson))));
      return true;
    }
    const { composition, held } = composed.value;
    const writing = this.writings.of(composition.design.ruler);
    writeComposition(writing, composition, held === null ? null : heldJson(held, writing.speech));
    return cannotBeMade(composed.value);
  }
}

/** A composition in the open format, with how it is held where that is given. */
export function compositionJson(
  composition: Composition,
  language: Language,
  held: HoldPlan | null = null,
): object {
  const pen = new Pen();
  const writing = new Writings(pen, language).of(composition.design.ruler);
  writeComposition(writing, composition, held === null ? null : heldJson(held, writing.speech));
  return JSON.parse(textOf(pen)) as object;
}

const textOf = (pen: Pen): string => new TextDecoder().decode(pen.written());
