import type { CheckCode, Composition } from "../assembly/index.ts";
import { composeWorks } from "../packet/index.ts";
import { larger, ZERO } from "../lengths/index.ts";
import type { SeriesWork } from "../plans/index.ts";
import { problemJson, readShow, seriesFor, seriesPlanJson, seriesResult } from "../show/index.ts";
import { CLI } from "../words/cli.ts";
import { sayListProblem } from "../words/lists.ts";
import { saySeries } from "../words/series.ts";
import { readPracticeFile } from "./compose.ts";
import { documentIn, readBytes, unreadable, Unreadable } from "./input.ts";
import { type AnswerOptions, answerJsonLines } from "./lines.ts";
import { sayFault } from "./packet.ts";

export interface SeriesOptions extends AnswerOptions {
  readonly works?: string;
  readonly practice?: string;
}

/** `margent series`: the sizes for one show, or one a line. The result is the exit status. */
export async function runSeries(file: string | undefined, options: SeriesOptions): Promise<number> {
  if (options.lines === true) return answerJsonLines(seriesResult);
  const listed = options.works === undefined ? null : await worksOf(options.works, options.practice);
  const document = documentIn(file);
  const planned = seriesFor(document, listed?.works ?? null);
  if (!planned.ok) throw unreadable(planned.problems.map(problemJson));
  const { request, plan, stopped } = planned.value;
  const text =
    options.json === true
      ? JSON.stringify(seriesPlanJson(planned.value), null, 2)
      : saySeries(plan, request).join("\n");
  process.stdout.write(`${text}\n`);
  for (const problem of listed?.problems ?? []) process.stderr.write(`${problem}\n`);
  return stopped || (listed !== null && listed.problems.length > 0) ? 1 : 0;
}

/** The windows of a list or a show, each composed by the habits; what cannot be read is told and left out. */
async function worksOf(
  name: string,
  practiceName: string | undefined,
): Promise<{ readonly works: readonly SeriesWork[]; readonly problems: readonly string[] }> {
  const habits = practiceName === undefined ? null : readPracticeFile(practiceName);
  const read = await readShow(readBytes(name), name, habits === null ? null : (habits.unit ?? "in"));
  if (!read.ok) throw new Unreadable(sayFault(read.fault));
  const { show } = read;
  const { works, problems } = composeWorks(show.works, habits ?? show.practice ?? { unit: show.unit });
  return {
    works: works.flatMap(({ work, composition, quantity }): SeriesWork[] => {
      const window = composition.mats[0]?.back;
      if (window === undefined || isHopeless(composition)) return [];
      const cover = composition.print?.cover;
      const reach = {
        head: larger(ZERO, cover?.head ?? ZERO),
        left: larger(ZERO, cover?.left ?? ZERO),
        right: larger(ZERO, cover?.right ?? ZERO),
        foot: larger(ZERO, cover?.foot ?? ZERO),
      };
      return [{ name: work.title, window, count: quantity, reach }];
    }),
    problems: [
      ...show.listProblems.map(sayListProblem),
      ...problems.map(({ row, problem }) =>
        CLI.say({ ...problemJson(problem), field: `row ${row}, ${problem.field}` }),
      ),
      ...works
        .filter(({ composition }) => isHopeless(composition))
        .map(({ row, work }) => CLI.series.hopeless(row, work.title)),
    ],
  };
}

/** What stops a work only because of the outer size that it was composed on. */
const OF_THE_SIZE: readonly CheckCode[] = ["no-size", "border-negative", "border-small", "sheet-past-board"];

/** Whether no outer size helps: its window does not hold its paper, or nothing is left of it. */
const isHopeless = ({ checks }: Composition): boolean =>
  checks.some(({ level, code }) => level === "stop" && !OF_THE_SIZE.includes(code));
