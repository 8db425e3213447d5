import { writeFileSync } from "node:fs";
import { pdfTypeface, writePdf } from "../drawings/writers/pdf/index.ts";
import { noonOf, wallSheetJob } from "../packet/index.ts";
import { hangingSheet, type PaperSize } from "../papers/index.ts";
import {
  hangFor,
  hangProblemJson,
  hangResult,
  hookRowsOf,
  type HungWall,
  hungWallJson,
} from "../show/index.ts";
import { CLI } from "../words/cli.ts";
import { sayHungWall } from "../words/hang-text.ts";
import { documentIn, unreadable } from "./input.ts";
import { type AnswerOptions, answerJsonLines } from "./lines.ts";
import { readDate, readPaper } from "./printing.ts";

export interface HangOptions extends AnswerOptions {
  /** The PDF file that the hanging sheet is written to. */
  readonly sheet?: string;
  readonly paper?: string;
  readonly date?: string;
}

/** `margent hang`: one wall, or one a line. The result is the exit status. */
export async function runHang(
  file: string | undefined,
  options: HangOptions,
  today: () => string,
): Promise<number> {
  if (options.lines === true) return answerJsonLines(hangResult);
  const paper = readPaper(options.paper) ?? "a4";
  const date = readDate(options.date ?? today());
  const hung = hangFor(documentIn(file));
  if (!hung.ok) throw unreadable(hung.problems.map(hangProblemJson));
  if (options.sheet !== undefined) await writeSheet(options.sheet, hung.value, paper, date);
  const text =
    options.json === true
      ? JSON.stringify(hungWallJson(hung.value), null, 2)
      : sayHungWall(hung.value, hookRowsOf(hung.value)).join("\n");
  process.stdout.write(`${text}\n`);
  return hung.value.stopped ? 1 : 0;
}

async function writeSheet(name: string, hung: HungWall, paper: PaperSize, date: string): Promise<void> {
  const typeface = pdfTypeface();
  const { studio, show, wall } = hung.request;
  const job = wallSheetJob(hung, { studio, show }, { number: 1, date, makesVoid: null });
  const title = CLI.hang.title(wall);
  const options = { date: noonOf(date), title, language: "en-US", typeface };
  writeFileSync(name, await writePdf(hangingSheet(job, paper, typeface), options));
}
