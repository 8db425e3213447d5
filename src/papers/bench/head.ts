import type { Length } from "../../lengths/index.ts";
import { larger, mm, subtract, sum, ZERO } from "../../lengths/index.ts";
import {
  boardFact,
  boardFactName,
  copies,
  degreesWords,
  FACTS,
  handednessWords,
  BENCH_SHEET,
  workLine,
} from "../../words/bench-sheet.ts";
import { briefRuns, shortDate } from "../../words/index.ts";
import { missingSigns, unitWords } from "../../words/papers.ts";
import { type Block, block, gap, placed, rule, stack } from "../block.ts";
import { points } from "../paper.ts";
import { type Fact, facts } from "../tags.ts";
import { brokenLines, fitting, paragraph, setLines, shortened } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { BenchDesk } from "./desk.ts";
import { frontThumbnail } from "./front.ts";
import { voidFacts } from "../head.ts";

const THUMBNAIL = mm(26);
const THUMBNAIL_LEAST = mm(25);
const TITLES: readonly TextStyle[] = [23, 20, 18, 16].map((size) => ({
  size: points(size),
  weight: "semibold",
  leading: points(size * 1.15),
}));
const BRIEF: TextStyle = { ...TYPE.brief, figures: { whole: points(13.5), stacked: points(14.5) } };
const LINE: TextStyle = { ...TYPE.line, figures: { whole: points(11), stacked: points(12) } };

/**
 * The head of a bench sheet: title, what it is and which blank, the brief, the facts on which its
 * figures stand, and the front beside them. `brief` false: a later page, which repeats only what
 * makes it stand alone.
 */
export function sheetHead(desk: BenchDesk, width: Length, brief: boolean): Block {
  const textWidth = brief ? subtract(width, sum([THUMBNAIL, mm(5)])) : width;
  const { work, composition } = desk.job;
  const text: Block[] = [
    gap(mm(1.2)),
    title(desk, work.title, textWidth),
    gap(mm(1)),
    paragraph(
      desk,
      workLine(work, composition.design.print?.sheet ?? null, blanksOf(desk), desk.speech),
      LINE,
      textWidth,
    ),
  ];
  if (desk.missing > 0) {
    text.push(gap(mm(1)), paragraph(desk, missingSigns(desk.missing), TYPE.fact, textWidth));
  }
  if (brief) text.push(gap(mm(1.2)), paragraph(desk, briefRuns(composition, desk.speech), BRIEF, textWidth));
  const column = stack(text);
  const high = brief ? larger(column.height, THUMBNAIL_LEAST) : column.height;
  const front = brief ? frontThumbnail(desk, THUMBNAIL, subtract(high, mm(1.8))) : block(ZERO, ZERO);
  return stack([
    block(width, high, [...column.marks, ...placed(front, subtract(width, THUMBNAIL), mm(1.8))]),
    gap(mm(1.6)),
    rule(width, "rule-thin"),
    gap(mm(0.5)),
    facts(desk, factsOf(desk), width),
    gap(mm(1.2)),
    rule(width, "rule"),
  ]);
}

/** On one line down to 16 points, then on two, then cut at a word; the back label holds it whole. */
function title(desk: BenchDesk, text: string, width: Length): Block {
  const one = fitting(desk, text, TITLES, width);
  if (one !== undefined) return paragraph(desk, text, one, width);
  const least = TITLES.at(-1) ?? TYPE.title;
  const lines = brokenLines(desk, text, least, width);
  if (lines.length <= 2) return setLines(lines, least, width);
  const [first] = lines;
  const used = first?.map((run) => (run.kind === "text" ? run.text : "")).join("") ?? "";
  const second = shortened(desk, text.slice(used.length).trimStart(), least, width);
  return setLines([first ?? [], [{ kind: "text", text: second }]], least, width);
}

function blanksOf(desk: BenchDesk): { readonly numbers: readonly number[]; readonly cutPlan: number } | null {
  const { blanks } = desk.job;
  return blanks === null ? null : { numbers: blanks.mats.toReversed().flat(), cutPlan: blanks.cutPlan };
}

function factsOf(desk: BenchDesk): readonly Fact[] {
  const { composition, bench, plan, work } = desk.job;
  const { ruler } = desk.speech;
  const boards = composition.design.mats;
  const bevels = boards.map(({ bevel }) => bevel);
  const all: Fact[] = [
    { name: FACTS.unit, value: unitWords(ruler) },
    { name: FACTS.bench, value: handednessWords(bench.hand) },
    { name: boardFactName(boards.length, desk.speech), value: boardFact(boards, desk.speech) },
    { name: FACTS.bevel, value: degreesWords(bevels) },
    {
      name: FACTS.tested,
      value: bench.scaleTested === null ? BENCH_SHEET.scaleUntested : shortDate(bench.scaleTested),
    },
  ];
  if (work.quantity > 1) all.push({ name: FACTS.make, value: copies(work.quantity) });
  all.push(...voidFacts(plan));
  return all;
}
