import type { Typeface } from "../../drawings/index.ts";
import { type Length, mm, subtract, sum, fineRuler } from "../../lengths/index.ts";
import type { Crate } from "../../plans/index.ts";
import { sizeRuns, withUnit } from "../../words/index.ts";
import { unitWords } from "../../words/papers.ts";
import { boxLine, crateName, PACKING, packingTitle, roomRuns } from "../../words/travel.ts";
import { massWords } from "../../words/weights.ts";
import { beside, type Block, gap, rule, stack, restOf, columns } from "../block.ts";
import { flowingPaper } from "../flowing.ts";
import { pageHead, voidFacts } from "../head.ts";
import { type Desk, type Page, paperOf, type PaperSize, part, points } from "../paper.ts";
import { printable, printableAll } from "../printable.ts";
import { type Column, type Flowing, tableHead, tableRow } from "../table.ts";
import { caution, type Fact, ruledHead, tickBox } from "../tags.ts";
import { clampedLines, paragraph, setLines, textLine } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { PackingListJob } from "./job.ts";

const BETWEEN = mm(3);
const CRATE: TextStyle = { size: points(20), weight: "bold", leading: points(22) };
const BUILD: TextStyle = { ...TYPE.line, figures: { whole: points(15), stacked: points(16) } };
const SIZE: TextStyle = { ...TYPE.line, figures: { whole: points(12), stacked: points(13) } };
const TITLE: TextStyle = { ...TYPE.line, weight: "semibold" };
/** Kilograms (50 lb) above which one does not lift alone: common practice, no source. */
const ONE_LIFTS = 22;

interface PackingDesk extends Desk {
  readonly job: PackingListJob;
  readonly missing: number;
}

/** What travels in which crate and in which order, each crate's size to build and its weight; then how the mats lie in the store's boxes. */
export function packingList(job: PackingListJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk = deskOf(job, size, typeface);
  const { width } = desk.paper.content;
  const { plan } = desk.job;
  const head = headOf(desk, width);
  const rows: readonly Flowing[] = [
    ...plan.crates.flatMap((crate, index) => crateRows(desk, crate, index, width)),
    ...boxRows(desk, width),
  ];
  return flowingPaper(desk, PACKING.paper, { house: desk.job.house, plan: desk.job.planWords }, head, rows);
}

function headOf(desk: PackingDesk, width: Length): Block {
  const { plan, works, planWords, ruler } = desk.job;
  const facts: readonly Fact[] = [
    { name: PACKING.unit, value: unitWords(ruler) },
    { name: PACKING.load, value: massWords(plan.crates.reduce((all, { mass }) => all + mass, 0)) },
    ...voidFacts(planWords),
  ];
  const count = plan.crates.reduce((all, crate) => all + crate.works.length, 0);
  return pageHead(
    desk,
    {
      title: packingTitle(plan.crates.length, count),
      line: PACKING.line,
      cautions: [
        ...(works.some(({ glass }) => glass) ? [caution(desk, PACKING.glass, width)] : []),
        caution(desk, PACKING.assumed, width),
      ],
      facts,
    },
    width,
  );
}

function crateRows(desk: PackingDesk, crate: Crate, index: number, width: Length): readonly Flowing[] {
  const { job, plan, works, ruler } = desk.job;
  const widths = { order: mm(12), size: mm(56), weight: mm(26), tick: mm(9) };
  const title = restOf(width, BETWEEN, [...Object.values(widths), widths.tick]);
  const table: readonly Column[] = [
    { name: PACKING.order, width: widths.order, align: "start" },
    { name: PACKING.work, width: title, align: "start" },
    { name: PACKING.size, width: widths.size, align: "start" },
    { name: PACKING.weight, width: widths.weight, align: "end" },
    { name: PACKING.going, width: widths.tick, align: "middle" },
    { name: PACKING.back, width: widths.tick, align: "middle" },
  ];
  const head = tableHead(desk, table, BETWEEN);
  const name = paragraph(desk, crateName(index), CRATE, mm(38));
  const fact = (caption: string, value: Parameters<typeof paragraph>[1], wide: Length): Block =>
    stack([paragraph(desk, caption, TYPE.caption, wide), gap(mm(0.8)), paragraph(desk, value, BUILD, wide)]);
  const measures = part(subtract(width, mm(38)), 0.38);
  const cautions = [
    ...(crate.mass > ONE_LIFTS ? [PACKING.heavy] : []),
    ...(crate.works.some(({ work }) => plan.beyond.includes(work)) ? [PACKING.alone] : []),
  ];
  const titled = stack([
    gap(mm(4)),
    beside(
      [
        name,
        fact(PACKING.inside, roomRuns(crate.inner, ruler), measures),
        fact(PACKING.outside, roomRuns(crate.outer, ruler), measures),
        fact(PACKING.packed, massWords(crate.mass), subtract(width, sum([mm(38), measures, measures]))),
      ],
      mm(0),
      "foot",
    ),
    ...cautions.flatMap((one) => [gap(mm(1.4)), caution(desk, one, width)]),
    gap(mm(1.6)),
    rule(width, "rule"),
    head,
  ]);
  const again = stack([gap(mm(2)), paragraph(desk, crateName(index), TYPE.band, width), head]);
  return [
    { block: titled, withNext: true },
    ...crate.works.map(({ work }, place): Flowing => {
      const own = job.works[work];
      const mark = works[work]?.mark ?? "";
      return {
        block: tableRow(
          table,
          [
            textLine(desk, String(place + 1), TITLE),
            stack([
              setLines(clampedLines(desk, own?.title ?? "", TITLE, title, 2), TITLE, title),
              ...(mark === "" ? [] : [gap(mm(0.6)), paragraph(desk, mark, TYPE.caption, title)]),
            ]),
            own === undefined ? gap(mm(0)) : paragraph(desk, roomRuns(own, ruler), SIZE, widths.size),
            paragraph(desk, own === undefined ? "" : massWords(own.mass), TYPE.line, widths.weight, "end"),
            tickBox(),
            tickBox(),
          ],
          BETWEEN,
        ),
        again,
        ...(place === 0 && crate.works.length > 1 ? { withNext: true } : {}),
      };
    }),
  ];
}

function boxRows(desk: PackingDesk, width: Length): readonly Flowing[] {
  const { boxed, box, ruler } = desk.job;
  if (boxed.length === 0) return [];
  const names = [PACKING.boxSize, PACKING.count, PACKING.thick, PACKING.fit, PACKING.needed];
  const [each = width] = columns(
    width,
    BETWEEN,
    names.map(() => 1),
  );
  const table = names.map(
    (name, index): Column => ({ name, width: each, align: index === 0 ? "start" : "end" }),
  );
  const head = tableHead(desk, table, BETWEEN);
  const named = ruledHead(desk, PACKING.boxes, width);
  const cell = (words: Parameters<typeof paragraph>[1], align: "start" | "end" = "end"): Block =>
    paragraph(desk, words, SIZE, each, align);
  return [
    {
      block: stack([
        gap(mm(6)),
        named,
        gap(mm(1)),
        paragraph(desk, boxLine(box.name, box.depth, box.room, ruler), TYPE.line, width),
        head,
      ]),
      withNext: true,
    },
    ...boxed.map(
      (one): Flowing => ({
        block: tableRow(
          table,
          [
            cell(sizeRuns(one, ruler, "up"), "start"),
            cell(String(one.count)),
            cell(withUnit(one.each, fineRuler(ruler), "up")),
            cell(one.fit === 0 ? PACKING.tooThick : String(one.fit)),
            cell(one.fit === 0 ? "" : String(one.boxes)),
          ],
          BETWEEN,
        ),
        again: stack([gap(mm(2)), named, head]),
      }),
    ),
  ];
}

function deskOf(job: PackingListJob, size: PaperSize, typeface: Typeface): PackingDesk {
  const house = printableAll(job.house, typeface);
  const box = printable(job.box.name, typeface);
  const titles = job.job.works.map(({ title }) => printable(title, typeface, 300));
  const marks = job.works.map(({ mark }) => printable(mark, typeface));
  return {
    paper: paperOf(size),
    typeface,
    missing: [house, box, ...titles, ...marks].reduce((all, { missing }) => all + missing, 0),
    job: {
      ...job,
      house: house.texts,
      box: { ...job.box, name: box.text },
      works: job.works.map((one, index) => ({ ...one, mark: marks[index]?.text ?? "" })),
      job: {
        ...job.job,
        works: job.job.works.map((one, index) => ({ ...one, title: titles[index]?.text ?? "" })),
      },
    },
  };
}
