import { compose, type Composition, isStopped } from "../assembly/index.ts";
import { Pen } from "../lengths/index.ts";
import type { Language } from "../words/index.ts";
import { writeComposition } from "./composition-text.ts";
import { Writings } from "./composition-writing.ts";
import { problemJson, unreadJson } from "./json.ts";
import { readDesign } from "./read-design.ts";
import { composeDocument, type PracticeDocument } from "./schema.ts";
import { type Read, validate } from "./validate.ts";

/** One object for all who have no habits, so that they are read once. */
const NO_HABITS: PracticeDocument = {};

/** Validates, reads and composes one document. */
export function composeFrom(document: unknown, practice: PracticeDocument = NO_HABITS): Read<Composition> {
  const valid = validate(composeDocument, document);
  if (!valid.ok) return valid;
  const design = readDesign(valid.value, practice);
  return design.ok ? { ok: true, value: compose(design.value) } : design;
}

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
    const composed = composeFrom(document, this.practice);
    if (!composed.ok) {
      this.pen.text(JSON.stringify(unreadJson(composed.problems.map(problemJson))));
      return true;
    }
    const { value } = composed;
    writeComposition(this.writings.of(value.design.ruler), value);
    return isStopped(value);
  }
}

/** A composition in the open format. */
export function compositionJson(composition: Composition, language: Language): object {
  const pen = new Pen();
  writeComposition(new Writings(pen, language).of(composition.design.ruler), composition);
  return JSON.parse(textOf(pen)) as object;
}

const textOf = (pen: Pen): string => new TextDecoder().decode(pen.written());
