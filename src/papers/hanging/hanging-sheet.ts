import type { Typeface } from "../../drawings/index.ts";
import { type Length, mm, smaller, subtract, sum } from "../../lengths/index.ts";
import { sayHangCheck, sayWallCheck } from "../../words/hanging.ts";
import {
  balanceFact,
  fallFact,
  HANGING_SHEET,
  levelFact,
  notHung,
  notHungCount,
  ruleLine,
  sizeOfWall,
  tapeFact,
  wallTitle,
} from "../../words/hanging-sheet.ts";
import { withUnit } from "../../words/index.ts";
import { unitWords } from "../../words/papers.ts";
import { type Block, gap, rule, stack } from "../block.ts";
import { type Body, bodyHeight, pagesOf, paperHead } from "../frame.ts";
import { type Page, paperOf, type PaperSize, part } from "../paper.ts";
import { cannotHang } from "../../plans/index.ts";
import { printable, printableAll } from "../printable.ts";
import { type Flowing, flow } from "../table.ts";
import { caution } from "../tags.ts";
import { paragraph } from "../text.ts";
import { TYPE } from "../type.ts";
import { pageHead, voidFacts } from "../head.ts";
import { type HangingDesk, type HangingSheetJob, letteredHooks } from "./desk.ts";
import { elevation, partElevation, wallIsLegible } from "./elevation.ts";
import { footBand } from "./foot.ts";
import { inOneRow } from "./frames.ts";
import { hookRows } from "./hook-rows.ts";
import { workRows } from "./work-rows.ts";

/** The elevation's height: larger where few hooks leave the page free. */
const LEAST_ELEVATION = mm(78);
const MOST_ELEVATION = mm(120);

/**
 * The hanging sheet of one wall: the wall to scale, one row for each hook with two tape measures, nail,
 * wire and cautions, then one row for each work with what goes on the back of its frame. All of it on one
 * page where it fits; else nail, wire and cautions come first, so that they are read before the first
 * nail, and a wall too full to be read whole comes again in parts, each with its hooks. A work that
 * cannot be hung as asked has no row; why is said at the top, or in a list of its own.
 */
export function hangingSheet(job: HangingSheetJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk = deskOf(job, size, typeface);
  const title = wallTitle(desk.job.wall, job.works.length);
  return pagesOf(
    desk,
    paperHead(HANGING_SHEET.paper, desk.job.house, desk.job.planWords),
    title,
    bodiesOf(desk, title),
  );
}

function bodiesOf(desk: HangingDesk, title: string): readonly Body[] {
  const width = desk.paper.content.width;
  const room = bodyHeight(desk.paper);
  const stops = stopLines(desk, width);
  const head = headOf(desk, title, stops, width);
  const foot: Flowing = { block: stack([gap(mm(2.4)), footBand(desk, width), gap(mm(2))]) };
  const works = workRows(desk, width);
  const rows = hookRows(desk, desk.hooks, width);
  const line: Flowing = { block: rule(width, "rule") };
  const heights = [...rows, ...works, foot].map(({ block }) => block.height);
  const spare = subtract(room, sum([head.height, ...heights, mm(1)]));
  const told = (tells: string, ...pages: readonly (readonly Flowing[])[]): readonly Body[] =>
    pages.flatMap((all) => flow(all, room, room).map((block) => ({ block, tells })));
  const high = spare >= LEAST_ELEVATION ? smaller(MOST_ELEVATION, spare) : MOST_ELEVATION;
  const top = [head, elevation(desk, width, high)].map((block): Flowing => ({ block, withNext: true }));
  if (stops.listed.length === 0 && spare >= LEAST_ELEVATION)
    return told(HANGING_SHEET.wallTells, [...top, line, ...rows, foot, ...works]);
  const whole = wallIsLegible(desk, width, high);
  return [
    ...told(HANGING_SHEET.wallTells, [...top, line, foot, ...(whole ? rows : [])]),
    ...(whole ? [] : told(HANGING_SHEET.hooksTells, ...partsOf(desk, width, room))),
    ...(works.length === 0 ? [] : told(HANGING_SHEET.worksTells, works)),
    ...(stops.listed.length === 0 ? [] : told(HANGING_SHEET.stopTells, stops.listed)),
  ];
}

/** How high a part of the wall is drawn over its hooks: rows are long, groups high. */
const PART = { row: mm(64), group: mm(108) };

/** Works in their order, each time as many as have their hooks on one page and about as many on each, with their part of the wall. */
function partsOf(desk: HangingDesk, width: Length, room: Length): readonly (readonly Flowing[])[] {
  const high = inOneRow(desk) ? PART.row : PART.group;
  const free = subtract(room, high);
  const rowsOf = (works: readonly number[]): readonly Flowing[] =>
    hookRows(
      desk,
      desk.hooks.filter((hook) => works.includes(hook.work)),
      width,
    );
  const heightOf = (works: readonly number[]): Length => sum(rowsOf(works).map(({ block }) => block.height));
  const shared = (most: Length): readonly (readonly number[])[] => {
    const parts: number[][] = [];
    for (const work of desk.job.plan.order) {
      const last = parts.at(-1);
      if (last !== undefined && heightOf([...last, work]) <= most) last.push(work);
      else parts.push([work]);
    }
    return parts;
  };
  const fewest = shared(free).length;
  // As many pages as must be, and the last of them no emptier than the others.
  const even = SHARES.map((share) => part(free, share)).find((most) => shared(most).length === fewest);
  return shared(even ?? free).map((works) => {
    const drawing = partElevation(desk, works, width, high);
    return drawing === null ? rowsOf(works) : [{ block: drawing, withNext: true }, ...rowsOf(works)];
  });
}

/** Parts of a page that are tried, the emptiest first. */
const SHARES = [0.5, 0.6, 0.7, 0.8, 0.9];

function headOf(desk: HangingDesk, title: string, stops: StopLines, width: Length): Block {
  const { job, plan, level, hookDrop, measuring, ruler, planWords } = desk.job;
  const { tape, fall } = measuring;
  const head = pageHead(
    desk,
    {
      title,
      line: ruleLine(
        job.rule,
        plan.checks.some(({ code }) => code === "parted"),
        job.eyeLine,
        level,
        ruler,
      ),
      cautions: stops.head,
      facts: [
        { name: HANGING_SHEET.unit, value: unitWords(ruler) },
        { name: HANGING_SHEET.wallSize, value: sizeOfWall(job.wall.width, job.wall.height, ruler) },
        ...(level === null ? [] : [{ name: HANGING_SHEET.level, value: levelFact(level, ruler) }]),
        {
          name: HANGING_SHEET.drop,
          value: hookDrop === null ? HANGING_SHEET.notMeasured : withUnit(hookDrop, ruler),
        },
        ...(plan.rowBalance === null
          ? []
          : [{ name: HANGING_SHEET.balance, value: balanceFact(plan.balance.share, plan.rowBalance.share) }]),
        ...(tape === null
          ? []
          : [{ name: HANGING_SHEET.tape, value: tapeFact(tape.over, tape.span, ruler) }]),
        ...(fall === 0 ? [] : [{ name: HANGING_SHEET.falls, value: fallFact(fall, ruler) }]),
        ...voidFacts(planWords),
      ],
    },
    width,
  );
  const floors = level === null ? HANGING_SHEET.markLine : HANGING_SHEET.floorsFall;
  return stack([head, gap(mm(1.6)), paragraph(desk, floors, TYPE.wordsBeside, width)]);
}

/** As many as a head holds; more are a list of their own. */
const MOST_STOPS = 5;

/** What cannot be hung as asked, at the sheet's head, and where that is too much for it as a list at its end. */
interface StopLines {
  readonly head: readonly Block[];
  readonly listed: readonly Flowing[];
}

function stopLines(desk: HangingDesk, width: Length): StopLines {
  const { job, plan, hung, works, ruler } = desk.job;
  const speech = { ruler, job };
  const line = (words: string): Block => caution(desk, words, width);
  const wall = plan.checks
    .filter((check) => check.level === "stop" && !("frame" in check))
    .map((check) => line(sayWallCheck(check, speech)));
  const all = plan.order.flatMap((work): readonly Block[] => {
    const one = hung[work];
    if (one === undefined || !cannotHang(one, work, plan)) return [];
    const [reason = ""] = [
      ...plan.checks
        .filter((check) => check.level === "stop" && "frame" in check && check.frame === work)
        .map((check) => sayWallCheck(check, speech)),
      ...one.checks.filter(({ level }) => level === "stop").map((check) => sayHangCheck(check, speech)),
    ];
    return [line(notHung(desk.numbers[work] ?? 0, works[work]?.title ?? "", reason))];
  });
  if (all.length === 0) return { head: wall, listed: [] };
  const title = line(HANGING_SHEET.notHung);
  if (all.length <= MOST_STOPS) return { head: [...wall, title, ...all], listed: [] };
  return {
    head: [...wall, line(notHungCount(all.length, works.length))],
    listed: [
      { block: title, withNext: true },
      ...all.map((block): Flowing => ({ block: stack([gap(mm(1.4)), block]), again: title })),
    ],
  };
}

function deskOf(job: HangingSheetJob, size: PaperSize, typeface: Typeface): HangingDesk {
  const house = printableAll(job.house, typeface);
  const wall = printable(job.wall, typeface);
  const titles = job.works.map(({ title }) => printable(title, typeface));
  const names = job.job.avoid.map(({ name }) => printable(name, typeface));
  const numbers: number[] = [];
  job.plan.order.forEach((work, turn) => {
    numbers[work] = turn + 1;
  });
  const title = (index: number): string => titles[index]?.text ?? "";
  const clean: HangingSheetJob = {
    ...job,
    wall: wall.text,
    house: house.texts,
    works: job.works.map((work, index) => ({ ...work, title: title(index) })),
    job: {
      ...job.job,
      frames: job.job.frames.map((frame, index) => ({ ...frame, title: title(index) })),
      avoid: job.job.avoid.map((box, index) => ({ ...box, name: names[index]?.text ?? "" })),
    },
  };
  return {
    paper: paperOf(size),
    typeface,
    job: clean,
    hooks: letteredHooks(clean),
    numbers,
    missing:
      house.missing + wall.missing + [...titles, ...names].reduce((all, { missing }) => all + missing, 0),
  };
}
