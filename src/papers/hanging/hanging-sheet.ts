import type { Typeface } from "../../drawings/index.ts";
import { type Length, mm, smaller, subtract, sum } from "../../lengths/index.ts";
import { sayHangCheck, sayWallCheck } from "../../words/hanging.ts";
import {
  HANGING_SHEET,
  levelFact,
  notHung,
  ruleLine,
  sizeOfWall,
  wallTitle,
} from "../../words/hanging-sheet.ts";
import { withUnit } from "../../words/index.ts";
import { unitWords, voidWords } from "../../words/papers.ts";
import { type Block, gap, rule, stack } from "../block.ts";
import { bodyHeight, pagesOf, paperHead } from "../frame.ts";
import { type Page, paperOf, type PaperSize } from "../paper.ts";
import { printable, printableAll } from "../printable.ts";
import { type Flowing, flow } from "../table.ts";
import { caution } from "../tags.ts";
import { paragraph } from "../text.ts";
import { TYPE } from "../type.ts";
import { pageHead } from "../head.ts";
import { cannotHang, type HangingDesk, type HangingSheetJob, letteredHooks } from "./desk.ts";
import { elevation } from "./elevation.ts";
import { footBand } from "./foot.ts";
import { hookRows } from "./hook-rows.ts";

/** The elevation's height: larger where few hooks leave the page free. */
const LEAST_ELEVATION = mm(78);
const MOST_ELEVATION = mm(120);

/**
 * The hanging sheet of one wall: the wall to scale, then one row for each hook with two tape measures,
 * then nail, wire and cautions. A work that cannot be hung as asked has no row; why is said at the top.
 * Nail, wire and cautions close a single page; where there are more they stand before the rows.
 */
export function hangingSheet(job: HangingSheetJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk = deskOf(job, size, typeface);
  const width = desk.paper.content.width;
  const room = bodyHeight(desk.paper);
  const title = wallTitle(desk.job.wall, job.works.length);
  const head = headOf(desk, title, width);
  const rows = hookRows(desk, width);
  const foot = stack([gap(mm(2.4)), footBand(desk, width)]);
  const taken = sum([head.height, ...rows.map(({ block }) => block.height), foot.height, mm(1)]);
  const spare = subtract(room, taken);
  const onePage = spare >= LEAST_ELEVATION;
  const high = onePage ? smaller(MOST_ELEVATION, spare) : MOST_ELEVATION;
  const line: Flowing = { block: rule(width, "rule") };
  const top = [head, elevation(desk, width, high)].map((block): Flowing => ({ block, withNext: true }));
  // On several pages the cautions stand before the rows: they are read before the first nail.
  const rest = onePage ? [line, ...rows, { block: foot }] : [line, { block: foot }, ...rows];
  const bodies = flow([...top, ...rest], room, room);
  return pagesOf(
    desk,
    paperHead(HANGING_SHEET.paper, desk.job.house, desk.job.planWords),
    title,
    bodies.map((block, index) => ({
      block,
      tells: index === 0 ? HANGING_SHEET.wallTells : HANGING_SHEET.hooksTells,
    })),
  );
}

function headOf(desk: HangingDesk, title: string, width: Length): Block {
  const { job, level, hookDrop, ruler, planWords: plan } = desk.job;
  const head = pageHead(
    desk,
    {
      title,
      line: ruleLine(job.rule, job.eyeLine, level, ruler),
      cautions: stopLines(desk).map((words) => caution(desk, words, width)),
      facts: [
        { name: HANGING_SHEET.unit, value: unitWords(ruler) },
        { name: HANGING_SHEET.wallSize, value: sizeOfWall(job.wall.width, job.wall.height, ruler) },
        ...(level === null ? [] : [{ name: HANGING_SHEET.level, value: levelFact(level, ruler) }]),
        {
          name: HANGING_SHEET.drop,
          value: hookDrop === null ? HANGING_SHEET.notMeasured : withUnit(hookDrop, ruler),
        },
        ...(plan.makesVoid === null
          ? []
          : [{ name: HANGING_SHEET.makesVoid, value: voidWords(plan.makesVoid) }]),
      ],
    },
    width,
  );
  const floors = level === null ? HANGING_SHEET.markLine : HANGING_SHEET.floorsFall;
  return stack([head, gap(mm(1.6)), paragraph(desk, floors, TYPE.wordsBeside, width)]);
}

/** As many as a head holds; the command line names them all. */
const MOST_STOPS = 5;

/** Works that are not on the sheet, with why. */
function stopLines(desk: HangingDesk): readonly string[] {
  const { job, plan, hung, works, ruler } = desk.job;
  const speech = { ruler, job };
  const all = plan.order.flatMap((work) => {
    const one = hung[work];
    if (one === undefined || !cannotHang(one, work, plan)) return [];
    const reasons = [
      ...plan.checks
        .filter((check) => check.level === "stop" && "frame" in check && check.frame === work)
        .map((check) => sayWallCheck(check, speech)),
      ...one.checks.filter(({ level }) => level === "stop").map((check) => sayHangCheck(check, speech)),
    ];
    return [notHung(desk.numbers[work] ?? 0, works[work]?.title ?? "", reasons[0] ?? "")];
  });
  if (all.length === 0) return [];
  return [
    HANGING_SHEET.notHung,
    ...all.slice(0, MOST_STOPS),
    ...(all.length > MOST_STOPS ? [`… ${all.length}`] : []),
  ];
}

function deskOf(job: HangingSheetJob, size: PaperSize, typeface: Typeface): HangingDesk {
  const house = printableAll({ studio: job.house.studio, show: job.house.show }, typeface);
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
