import { writeFileSync } from "node:fs";
import { pdfTypeface, writePdf } from "../drawings/writers/pdf/index.ts";
import { negate } from "../lengths/index.ts";
import { isDay, noonOf } from "../packet/index.ts";
import { hangingSheet, type PaperSize } from "../papers/index.ts";
import { hangFor, hangProblemJson, hangResult, type HungWall, hungWallJson } from "../show/index.ts";
import { CLI } from "../words/cli.ts";
import { sayHungWall } from "../words/hang-text.ts";
import type { CutOptions } from "./cut.ts";
import { parseJson, readText, Unreadable } from "./input.ts";
import { answerLines } from "./lines.ts";

export interface HangOptions extends CutOptions {
  /** The PDF file that the hanging sheet is written to. */
  readonly sheet?: string;
  readonly paper: string;
  readonly date?: string;
}

/** `margent hang`: one wall, or one a line. The result is the exit status. */
export async function runHang(
  file: string | undefined,
  options: HangOptions,
  today: () => string,
): Promise<number> {
  if (options.lines === true)
    return answerLines((pen) => (document) => {
      const { json, stopped } = hangResult(document);
      pen.text(JSON.stringify(json));
      return stopped;
    });
  const { sheet, paper, date = today() } = options;
  if (paper !== "a4" && paper !== "letter")
    throw new Unreadable(CLI.problem("--paper", paper, "a4 or letter"));
  if (!isDay(date)) throw new Unreadable(CLI.problem("--date", date, CLI.hang.day));
  const hung = hangFor(parseJson(readText(file), file ?? "standard input"));
  if (!hung.ok) throw new Unreadable(hung.problems.map(hangProblemJson).map(CLI.say).join("\n"));
  if (sheet !== undefined) await writeSheet(sheet, hung.value, paper, date);
  const text =
    options.json === true
      ? JSON.stringify(hungWallJson(hung.value), null, 2)
      : sayHungWall(hung.value).join("\n");
  process.stdout.write(`${text}\n`);
  return hung.value.stopped ? 1 : 0;
}

async function writeSheet(
  name: string,
  { request, plan, works }: HungWall,
  paper: PaperSize,
  date: string,
): Promise<void> {
  const typeface = pdfTypeface();
  const { floor, hookDrop } = request.habits;
  const pages = hangingSheet(
    {
      wall: request.wall,
      job: request.job,
      plan,
      works: request.works,
      hung: works,
      level: floor === 0 ? null : negate(floor),
      hookDrop: request.hookKnown ? hookDrop : null,
      safety: request.safety,
      house: { studio: request.studio, show: request.show },
      planWords: { number: 1, date, makesVoid: null },
      ruler: request.ruler,
    },
    paper,
    typeface,
  );
  const title = CLI.hang.title(request.wall);
  writeFileSync(name, await writePdf(pages, { date: noonOf(date), title, language: "en-US", typeface }));
}
