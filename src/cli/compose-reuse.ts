import { partOf, type ReuseOfOne, reuseOfOne, reuseOfOneJson } from "../packet/index.ts";
import {
  cannotBeMade,
  composeDocument,
  type ComposedDocument,
  composeHeld,
  compositionJson,
  type PracticeDocument,
  problemJson,
  type Read,
  readStock,
  type Stock,
  stockDocument,
  unreadJson,
  validate,
} from "../show/index.ts";
import { sayComposition } from "../words/composition.ts";
import { sayHeld } from "../words/held.ts";
import type { Speech } from "../words/index.ts";
import { sayReuse } from "../words/reuse-text.ts";
import type { ComposeOptions } from "./compose.ts";
import { documentIn, readDocument, unreadable } from "./input.ts";
import { answerJsonLines } from "./lines.ts";

/** A composed work with what exists that it goes into. */
interface Reusing {
  readonly composed: ComposedDocument;
  readonly reuse: ReuseOfOne;
}

/** `margent compose --reuse`: one document, or one a line. The result is the exit status. */
export async function composeReusing(
  file: string | undefined,
  practice: PracticeDocument,
  options: ComposeOptions,
): Promise<number> {
  const stock = options.stock === undefined ? null : readStockFile(options.stock);
  const language = practice.language ?? "en-US";
  const jsonOf = ({ composed: { composition, held }, reuse }: Reusing): object => ({
    ...compositionJson(composition, language, held),
    ...reuseOfOneJson(reuse, language),
  });
  if (options.lines === true)
    return answerJsonLines((document) => {
      const read = reusingOf(document, practice, stock);
      return read.ok
        ? { json: jsonOf(read.value), stopped: cannotBeMade(read.value.composed) }
        : { json: unreadJson(read.problems.map(problemJson)), stopped: true };
    });
  const read = reusingOf(documentIn(file), practice, stock);
  if (!read.ok) throw unreadable(read.problems.map(problemJson));
  const { ruler } = read.value.composed.composition.design;
  const text =
    options.json === true
      ? JSON.stringify(jsonOf(read.value), null, 2)
      : linesOf(read.value, stock !== null, { ruler, language }).join("\n");
  process.stdout.write(`${text}\n`);
  return cannotBeMade(read.value.composed) ? 1 : 0;
}

function reusingOf(document: unknown, practice: PracticeDocument, stock: Stock | null): Read<Reusing> {
  const valid = validate(composeDocument, document);
  if (!valid.ok) return valid;
  const composed = composeHeld(valid.value, practice);
  if (!composed.ok) return composed;
  const reuse = reuseOfOne(valid.value, practice, stock);
  return reuse.ok ? { ok: true, value: { composed: composed.value, reuse: reuse.value } } : reuse;
}

function linesOf(
  { composed: { composition, held }, reuse }: Reusing,
  hasRack: boolean,
  speech: Speech,
): readonly string[] {
  const offcuts = reuse.offcuts.map(({ sheet, serves }) => ({
    name: sheet.name,
    serves: serves.map(({ use }) => partOf(reuse, use)),
  }));
  return [
    ...sayComposition(composition, speech),
    ...(held === null ? [] : sayHeld(held, speech)),
    ...sayReuse(reuse.frames, hasRack ? offcuts : null, speech.ruler),
  ];
}

function readStockFile(name: string): Stock {
  const stock = readStock(readDocument(stockDocument, name));
  if (stock.ok) return stock.value;
  throw unreadable(
    stock.problems.map(problemJson).map((problem) => ({ ...problem, field: `${name}: ${problem.field}` })),
  );
}
