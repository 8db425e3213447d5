import {
  daysOf,
  GUIDANCE_NAMES,
  LIGHT_GUIDANCE,
  MOST_ULTRAVIOLET,
  SENSITIVITIES,
} from "../../assembly/index.ts";
import type { Typeface } from "../../drawings/index.ts";
import { type Length, mm } from "../../lengths/index.ts";
import { sourceOf, whole } from "../../words/light.ts";
import {
  className,
  daysWords,
  hangsLine,
  LIGHT_SHEET,
  lightRowWords,
  lightTitle,
  limitWords,
  luxWords,
  openWords,
  standsWords,
  ultravioletWords,
  yearWords,
} from "../../words/light-sheet.ts";
import { dateWords } from "../../words/dates.ts";
import { type Block, columns, gap, restOf, stack } from "../block.ts";
import { flowingPaper } from "../flowing.ts";
import { pageHead, voidFacts } from "../head.ts";
import { type Page, paperOf, type PaperSize, points } from "../paper.ts";
import { printableAll } from "../printable.ts";
import { type Column, type Flowing, tableHead, tableRow } from "../table.ts";
import { caution, ruledHead, tickBox } from "../tags.ts";
import { clampedLines, paragraph, setLines, textLine } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { LightDesk, LightSheetJob, LitWork } from "./job.ts";

const BETWEEN = mm(3);
const TITLE: TextStyle = { ...TYPE.line, weight: "semibold" };
/** The day on which a hand goes to the wall. */
const DOWN: TextStyle = { size: points(15), weight: "bold", leading: points(17) };
const REST: TextStyle = { size: points(14), weight: "regular", leading: points(16) };
const DOSE: TextStyle = { size: points(11), weight: "regular", leading: points(13) };
const SAYS: TextStyle = { ...TYPE.caption, weight: "semibold" };

/**
 * How long each work of a show may hang in its light: the day to take it down large, those first that come down first, its
 * dose, when it has rested; then what each published guidance allows, since they disagree.
 */
export function lightSheet(job: LightSheetJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk = deskOf(job, size, typeface);
  const { width } = desk.paper.content;
  const rows: readonly Flowing[] = [
    ...workRows(desk, width),
    ...unknownRows(desk, width),
    ...guidanceRows(desk, width),
  ];
  const { house, planWords: plan } = desk.job;
  return flowingPaper(desk, LIGHT_SHEET.paper, { house, plan }, headOf(desk, width), rows);
}

function headOf(desk: LightDesk, width: Length): Block {
  const { hanging, ultraviolet, guidance, works, isoOf, planWords } = desk.job;
  const filtered = ultraviolet !== null && ultraviolet <= MOST_ULTRAVIOLET;
  const filter = ultraviolet === null ? LIGHT_SHEET.unmeasured : LIGHT_SHEET.filter;
  return pageHead(
    desk,
    {
      title: lightTitle(works.length),
      line: hangsLine(isoOf(hanging.first), isoOf(hanging.last), daysOf(hanging)),
      cautions: [LIGHT_SHEET.measure, ...(filtered ? [] : [filter])].map((words) =>
        caution(desk, words, width),
      ),
      facts: [
        { name: LIGHT_SHEET.light, value: luxWords(hanging.lux) },
        { name: LIGHT_SHEET.open, value: openWords(hanging) },
        { name: LIGHT_SHEET.ultraviolet, value: ultravioletWords(ultraviolet) },
        { name: LIGHT_SHEET.kept, value: sourceOf(LIGHT_GUIDANCE[guidance]) },
        ...voidFacts(planWords),
      ],
    },
    width,
  );
}

const isKnown = ({ plan }: LitWork): boolean => plan.job.sensitivity !== null;

/** Those that come down first stand first. */
function inOrder(works: readonly LitWork[]): readonly LitWork[] {
  return works.filter(isKnown).toSorted((a, b) => lastDay(a) - lastDay(b));
}

const lastDay = ({ plan: { until, job } }: LitWork): number => until ?? job.hanging.last;

function workRows(desk: LightDesk, width: Length): readonly Flowing[] {
  const widths = { tick: mm(5), dose: mm(36), down: mm(46), rest: mm(31) };
  const title = restOf(width, BETWEEN, Object.values(widths));
  const table: readonly Column[] = [
    { name: "", width: widths.tick, align: "start" },
    { name: LIGHT_SHEET.work, width: title, align: "start" },
    { name: LIGHT_SHEET.dose, width: widths.dose, align: "end" },
    { name: LIGHT_SHEET.down, width: widths.down, align: "start" },
    { name: LIGHT_SHEET.rest, width: widths.rest, align: "start" },
  ];
  const head = tableHead(desk, table, BETWEEN);
  const caption = (words: string, wide: Length, align: "start" | "end" = "start"): Block =>
    paragraph(desk, words, TYPE.caption, wide, align);
  const row = (one: LitWork): Block => {
    const { plan, process, mark } = one;
    const { sensitivity } = plan.job;
    const says = plan.checks.flatMap((check) => lightRowWords(check) ?? []);
    const named = [mark, standsWords(process, sensitivity)].filter((words) => words !== "").join(" · ");
    return tableRow(
      table,
      [
        tickBox(),
        stack([
          setLines(clampedLines(desk, one.title, TITLE, title, 2), TITLE, title),
          gap(mm(0.6)),
          caption(named, title),
          ...says.flatMap((words) => [gap(mm(0.8)), paragraph(desk, words, SAYS, title)]),
        ]),
        stack([
          paragraph(desk, whole(plan.dose), DOSE, widths.dose, "end"),
          gap(mm(0.6)),
          caption(yearWords(plan), widths.dose, "end"),
        ]),
        downCell(desk, one, widths.down),
        paragraph(desk, restWords(desk, one), REST, widths.rest),
      ],
      BETWEEN,
    );
  };
  const works = inOrder(desk.job.works);
  if (works.length === 0) return [];
  return [
    { block: head, withNext: true },
    ...works.map((one): Flowing => ({ block: row(one), again: head })),
  ];
}

/** The last day on which it may hang, and how many days that are. */
function downCell(desk: LightDesk, one: LitWork, width: Length): Block {
  const last = lastDay(one);
  const { job } = one.plan;
  const days = daysOf(job.hanging);
  const hangs = Math.max(0, last - job.hanging.first + 1);
  return stack([
    textLine(desk, hangs === 0 ? LIGHT_SHEET.now : dateWords(desk.job.isoOf(last)), DOWN),
    gap(mm(0.6)),
    paragraph(desk, daysWords(hangs, days), TYPE.caption, width),
  ]);
}

function restWords({ job: { isoOf } }: LightDesk, { plan }: LitWork): string {
  if (plan.budget === null) return "";
  return plan.rested === null ? LIGHT_SHEET.never : dateWords(isoOf(plan.rested));
}

/** Works of which nobody has said how much light they stand: no day is made up for them. */
function unknownRows(desk: LightDesk, width: Length): readonly Flowing[] {
  const unknown = desk.job.works.filter((one) => !isKnown(one));
  if (unknown.length === 0) return [];
  const named = ruledHead(desk, LIGHT_SHEET.unknown, width);
  const [each = width, ...more] = columns(width, BETWEEN, [1, 1]);
  const widths = [each, ...more];
  const cell = ({ title, process, mark }: LitWork, wide: Length): Block => {
    const words = [mark, title, process].filter((one) => one !== "").join(", ");
    return setLines(clampedLines(desk, words, TYPE.line, wide, 1), TYPE.line, wide);
  };
  const again = stack([gap(mm(2)), named]);
  return [
    {
      block: stack([gap(mm(5)), named, gap(mm(1)), caution(desk, LIGHT_SHEET.ask, width), gap(mm(1))]),
      withNext: true,
    },
    ...Array.from({ length: Math.ceil(unknown.length / 2) }, (_, pair): Flowing => {
      const two = unknown.slice(2 * pair, 2 * pair + 2);
      const cells = two.map((one, at) => cell(one, widths[at] ?? each));
      const line = tableRow(
        widths.map((wide): Column => ({ name: "", width: wide, align: "start" })),
        cells,
        BETWEEN,
        { above: mm(0.6), below: mm(0.6), line: null },
      );
      return { block: line, again };
    }),
  ];
}

/** What each published guidance allows each class, side by side. */
function guidanceRows(desk: LightDesk, width: Length): readonly Flowing[] {
  const [first = width, ...others] = columns(width, BETWEEN, [1, ...GUIDANCE_NAMES.map(() => 2)]);
  const table: readonly Column[] = [
    { name: LIGHT_SHEET.aClass, width: first, align: "start" },
    ...GUIDANCE_NAMES.map((name, index): Column => {
      const kept = name === desk.job.guidance ? `, ${LIGHT_SHEET.chosen}` : "";
      return {
        name: `${sourceOf(LIGHT_GUIDANCE[name])}${kept}`,
        width: others[index] ?? first,
        align: "start",
      };
    }),
  ];
  const rows = SENSITIVITIES.map((sensitivity) =>
    tableRow(
      table,
      [
        paragraph(desk, className(sensitivity), TITLE, first),
        ...GUIDANCE_NAMES.map((name, index) => {
          const { brightest, year } = LIGHT_GUIDANCE[name].budgets[sensitivity];
          return paragraph(desk, limitWords(brightest, year), TYPE.line, others[index] ?? first);
        }),
      ],
      BETWEEN,
    ),
  );
  // All of it together: half of a disagreement misleads.
  return [
    {
      block: stack([
        gap(mm(6)),
        ruledHead(desk, LIGHT_SHEET.guidances, width),
        gap(mm(1)),
        paragraph(desk, LIGHT_SHEET.disagree, TYPE.line, width),
        gap(mm(1)),
        paragraph(desk, LIGHT_SHEET.yearIs, TYPE.line, width),
        tableHead(desk, table, BETWEEN),
        ...rows,
      ]),
    },
  ];
}

function deskOf(job: LightSheetJob, size: PaperSize, typeface: Typeface): LightDesk {
  const house = printableAll(job.house, typeface);
  let missing = house.missing;
  const works = job.works.map((one): LitWork => {
    const words = printableAll({ title: one.title, process: one.process, mark: one.mark }, typeface);
    missing += words.missing;
    return { ...one, ...words.texts };
  });
  return { paper: paperOf(size), typeface, missing, job: { ...job, works, house: house.texts } };
}
