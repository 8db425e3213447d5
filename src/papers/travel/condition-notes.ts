import type { Mark, Typeface } from "../../drawings/index.ts";
import { add, larger, type Length, mm, subtract, ZERO } from "../../lengths/index.ts";
import { NBSP, sizeRuns } from "../../words/index.ts";
import { CONDITION, conditionTitle } from "../../words/travel.ts";
import { beside, type Block, block, cornersOf, gap, placed, rule, stack } from "../block.ts";
import { drawnPoint } from "../bench/front.ts";
import { bodyHeight, pagesOf, paperHead } from "../frame.ts";
import { sheetTitle } from "../labels/sheet.ts";
import { type Desk, type Page, paperOf, type PaperSize, part, points } from "../paper.ts";
import { printable, printableAll } from "../printable.ts";
import { fittingScale } from "../scale.ts";
import { tickLine } from "../tags.ts";
import { clampedLines, paragraph, setLines, shortened, textAt } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { ConditionNotesJob, NotedWork } from "./job.ts";

const TITLE: TextStyle = { size: points(15), weight: "semibold", leading: points(18) };
const SIZE: TextStyle = { ...TYPE.line, figures: { whole: points(12), stacked: points(13) } };
/** Two notes a page. */
const NOTES_A_PAGE = 2;
const GUTTER = mm(6);
const GRID = 4;

/** A note for every work, two a page: the sheet drawn with a grid to say where, what to look for, what is known, room to write. */
export function conditionNotes(job: ConditionNotesJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk: Desk = { paper: paperOf(size), typeface };
  const { width } = desk.paper.content;
  const house = printableAll(job.house, typeface).texts;
  let missing = 0;
  const works = job.works.map((own): NotedWork => {
    const { title, maker, year, process } = own.work;
    const words = printableAll({ title, maker, year, process, mark: own.mark }, typeface);
    const condition = printable(own.condition, typeface, MOST_KNOWN);
    missing += words.missing + condition.missing;
    const { mark, ...texts } = words.texts;
    return { ...own, work: { ...own.work, ...texts }, mark, condition: condition.text };
  });
  const title = sheetTitle(desk, conditionTitle(works.length), CONDITION.line, missing);
  const room = subtract(bodyHeight(desk.paper), title.height);
  const each = part(subtract(room, mm(6)), 1 / NOTES_A_PAGE);
  const bodies = works.flatMap((_, index) =>
    index % NOTES_A_PAGE === 0
      ? [
          stack([
            title,
            ...works
              .slice(index, index + NOTES_A_PAGE)
              .flatMap((own, place) => [
                ...(place === 0 ? [] : [gap(mm(2)), rule(width, "rule-thin"), gap(mm(4))]),
                note(desk, own, width, each),
              ]),
          ]),
        ]
      : [],
  );
  return pagesOf(
    desk,
    paperHead(CONDITION.paper, house, job.planWords),
    CONDITION.paper,
    bodies.map((body) => ({ block: body, tells: null })),
  );
}

/** What is known has so many signs at most: the note's lines hold no more. */
const MOST_KNOWN = 260;

function note(desk: Desk, own: NotedWork, width: Length, height: Length): Block {
  const left = part(width, 0.48);
  const right = subtract(width, add(left, GUTTER));
  return block(width, height, beside([drawing(own, left, height), side(desk, own, right)], GUTTER).marks);
}

/** The package from its front with its sheet and image, under a grid of letters and numbers. */
function drawing({ composition }: NotedWork, width: Length, height: Length): Block {
  const { outer, print, mats } = composition;
  const band = mm(5);
  const over = fittingScale(
    outer.width,
    outer.height,
    subtract(width, band),
    subtract(height, add(band, mm(6))),
  );
  const [wide, high] = [scaled(outer.width, over), scaled(outer.height, over)];
  const lowest = mats[0];
  const opening: readonly Mark[] =
    lowest === undefined || lowest.back.width <= 0 || lowest.back.height <= 0
      ? []
      : [
          {
            kind: "area",
            points: cornersOf({
              left: scaled(lowest.borders.left, over),
              top: scaled(lowest.borders.head, over),
              width: scaled(lowest.back.width, over),
              height: scaled(lowest.back.height, over),
            }),
            fill: "none",
            line: "edge",
          },
        ];
  const sheet: readonly Mark[] =
    print === null
      ? []
      : [
          {
            kind: "area",
            points: (print.sheetOutline ?? print.sheetCorners).map((point) => drawnPoint(point, over)),
            fill: "none",
            line: "hidden",
          },
        ];
  const steps = Array.from({ length: GRID + 1 }, (_, index) => index);
  const grid: readonly Mark[] = steps.slice(1, -1).flatMap((step): Mark[] => {
    const x = part(wide, step / GRID);
    const y = part(high, step / GRID);
    return [
      { kind: "line", from: { x, y: ZERO }, to: { x, y: high }, line: "thin" },
      { kind: "line", from: { x: ZERO, y }, to: { x: wide, y }, line: "thin" },
    ];
  });
  const names: readonly Mark[] = steps.slice(0, -1).flatMap((step): Mark[] => {
    const middle = (step + 0.5) / GRID;
    return [
      textAt(
        part(wide, middle),
        subtract(ZERO, mm(1.2)),
        String.fromCharCode(65 + step),
        TYPE.caption,
        "middle",
      ),
      textAt(
        subtract(ZERO, mm(1.6)),
        add(part(high, middle), mm(1.1)),
        String(step + 1),
        TYPE.caption,
        "end",
      ),
    ];
  });
  const frame: Mark = {
    kind: "area",
    points: cornersOf({ left: ZERO, top: ZERO, width: wide, height: high }),
    fill: "none",
    line: "outline",
  };
  return block(width, height, [
    ...placed(block(wide, high, [...grid, ...sheet, ...opening, frame, ...names]), band, band),
    textAt(band, add(add(band, high), mm(4.6)), CONDITION.fromFront, TYPE.caption),
  ]);
}

const scaled = (length: Length, over: number): Length => larger(part(length, 1 / over), ZERO);

/** What it is, what is known, what to look for, and who looked. */
function side(desk: Desk, { work, mark, composition, condition }: NotedWork, width: Length): Block {
  const { design } = composition;
  const said = [mark, work.maker, work.year].filter((text) => text !== "").join(", ");
  const half = part(width, 0.5);
  const faults = CONDITION.faults.map(([letter, name]) =>
    tickLine(desk, `${letter}${NBSP}${NBSP}${name}`, TYPE.line, half),
  );
  const pairs = faults.flatMap((_, index) =>
    index % 2 === 0 ? [beside(faults.slice(index, index + 2))] : [],
  );
  const known = clampedLines(
    desk,
    `${CONDITION.known}: ${condition === "" ? CONDITION.nothing : condition}`,
    TYPE.line,
    width,
    4,
  );
  return stack([
    setLines(clampedLines(desk, work.title, TITLE, width, 2), TITLE, width),
    gap(mm(0.8)),
    ...(said === "" ? [] : [paragraph(desk, shortened(desk, said, TYPE.line, width), TYPE.line, width)]),
    gap(mm(0.8)),
    paragraph(desk, sizeRuns(design.print?.sheet ?? composition.outer, design.ruler), SIZE, width),
    gap(mm(1.6)),
    setLines(known, TYPE.line, width),
    gap(mm(1.6)),
    stack(pairs, mm(1.5)),
    line(width, CONDITION.notes),
    line(width, ""),
    beside([line(subtract(half, mm(4)), CONDITION.by), block(mm(4), ZERO), line(half, CONDITION.day)]),
    line(width, CONDITION.where),
  ]);
}

/** A line to write on, what is written there in small below. */
const line = (width: Length, name: string): Block =>
  block(width, mm(8.6), [
    ...placed(rule(width, "edge"), ZERO, mm(5.4)),
    textAt(ZERO, mm(8.4), name, TYPE.fine),
  ]);
