import { hangFor, hangProblemJson, hangResult, hungWallJson } from "../show/index.ts";
import { CLI } from "../words/cli.ts";
import { sayHungWall } from "../words/hang-text.ts";
import type { CutOptions } from "./cut.ts";
import { parseJson, readText, Unreadable } from "./input.ts";
import { answerLines } from "./lines.ts";

/** `margent hang`: one wall, or one a line. The result is the exit status. */
export async function runHang(file: string | undefined, options: CutOptions): Promise<number> {
  if (options.lines === true)
    return answerLines((pen) => (document) => {
      const { json, stopped } = hangResult(document);
      pen.text(JSON.stringify(json));
      return stopped;
    });
  const hung = hangFor(parseJson(readText(file), file ?? "standard input"));
  if (!hung.ok) throw new Unreadable(hung.problems.map(hangProblemJson).map(CLI.say).join("\n"));
  const text =
    options.json === true
      ? JSON.stringify(hungWallJson(hung.value), null, 2)
      : sayHungWall(hung.value).join("\n");
  process.stdout.write(`${text}\n`);
  return hung.value.stopped ? 1 : 0;
}
