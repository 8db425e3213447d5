import {
  cannotBeMade,
  composeHeld,
  Composer,
  compositionJson,
  type PracticeDocument,
  practiceDocument,
  problemJson,
} from "../show/index.ts";
import { sayComposition } from "../words/composition.ts";
import { sayHeld } from "../words/held.ts";
import { documentIn, readDocument, unreadable } from "./input.ts";
import { type AnswerOptions, answerLines } from "./lines.ts";

export interface ComposeOptions extends AnswerOptions {
  readonly practice?: string;
  /** Also what exists that the work goes into. */
  readonly reuse?: boolean;
  /** What lies in the rack; asks for its offcuts. */
  readonly stock?: string;
}

/** `margent compose`: one document, or one a line. The result is the exit status. */
export async function runCompose(file: string | undefined, options: ComposeOptions): Promise<number> {
  const practice = readPracticeFile(options.practice);
  if (options.reuse === true || options.stock !== undefined) {
    const { composeReusing } = await import("./compose-reuse.ts");
    return composeReusing(file, practice, options);
  }
  return options.lines === true
    ? answerLines((pen) => {
        const composer = new Composer(pen, practice);
        return (document) => composer.write(document);
      })
    : composeOne(file, practice, options.json === true);
}

/** The studio's habits from a file; none where no file is named. */
export const readPracticeFile = (name: string | undefined): PracticeDocument =>
  name === undefined ? {} : readDocument(practiceDocument, name);

function composeOne(file: string | undefined, practice: PracticeDocument, json: boolean): number {
  const composed = composeHeld(documentIn(file), practice);
  if (!composed.ok) {
    throw unreadable(composed.problems.map(problemJson));
  }
  const language = practice.language ?? "en-US";
  const { composition, held } = composed.value;
  const speech = { ruler: composition.design.ruler, language };
  const text = json
    ? JSON.stringify(compositionJson(composition, language, held), null, 2)
    : [...sayComposition(composition, speech), ...(held === null ? [] : sayHeld(held, speech))].join("\n");
  process.stdout.write(`${text}\n`);
  return cannotBeMade(composed.value) ? 1 : 0;
}
