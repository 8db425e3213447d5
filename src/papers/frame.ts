import type { Mark } from "../drawings/index.ts";
import { add, inch, type Length, mm, subtract, times, ZERO } from "../lengths/index.ts";
import { dateWords } from "../words/dates.ts";
import { EVERY_PAPER, pageOf, planWords } from "../words/papers.ts";
import { type Block, placed } from "./block.ts";
import type { House, PlanWords } from "./job.ts";
import { type Desk, type Page, type Paper, RULE_FOOT, RULE_LEFT } from "./paper.ts";
import { shortened, textAt, widthOf } from "./text.ts";
import { TYPE } from "./type.ts";

/** What the head line of every page says. */
export interface PaperHead {
  /** What paper this is, as in BENCH SHEET. */
  readonly paper: string;
  /** Whose it is: the room and its show. */
  readonly house: string;
  /** Plan and date: `plan 3 · 25 Nov 2026`. */
  readonly plan: string;
}

/** The head of a paper that belongs to a plan. */
export const paperHead = (paper: string, house: House, plan: PlanWords): PaperHead => ({
  paper,
  house: [house.studio, house.show].filter((name) => name !== "").join(" · "),
  plan: planWords(plan.number, dateWords(plan.date)),
});

/** What stands on one page under its head line. */
export interface Body {
  readonly block: Block;
  /** What is on it, told in the page's number where there are several: `page 1 of 2: cut`. */
  readonly tells: string | null;
}

/** The head line with its strong rule; bodies start below it. */
const HEAD_LINE = mm(7.6);

/** How high a body may be on a paper. */
export const bodyHeight = (paper: Paper): Length => subtract(paper.content.height, HEAD_LINE);

/**
 * The pages of one paper: every body under the head line, pages numbered, the corner rule on each,
 * so that every page stands alone. Throws RangeError when a body is higher than its page: what flows
 * over pages is parted before it comes here.
 */
export function pagesOf(
  desk: Desk,
  head: PaperHead,
  bookmark: string,
  bodies: readonly Body[],
): readonly Page[] {
  const { paper } = desk;
  return bodies.map(({ block, tells }, index) => {
    if (block.height > bodyHeight(paper)) {
      throw new RangeError(`a page of ${head.paper} is higher than its ${paper.name} sheet`);
    }
    const { left, top } = paper.content;
    return {
      width: paper.width,
      height: paper.height,
      bookmark: bodies.length === 1 ? bookmark : `${bookmark}, ${index + 1}`,
      marks: [
        ...headLine(desk, head, pageOf(index + 1, bodies.length, tells)),
        ...placed(block, left, add(top, HEAD_LINE)),
        { kind: "group", name: CORNER_RULE, marks: cornerRule(desk) },
      ],
    };
  });
}

function headLine(desk: Desk, head: PaperHead, page: string): readonly Mark[] {
  const { left, top, width } = desk.paper.content;
  const right = add(left, width);
  const baseline = add(top, mm(4.7));
  const line = add(top, mm(7.15));
  const pageWidth = widthOf(desk, page, TYPE.headLine);
  const planRight = subtract(right, add(pageWidth, mm(5.5)));
  const houseLeft = add(left, add(widthOf(desk, head.paper, TYPE.paperName), mm(5.5)));
  const room = subtract(
    subtract(planRight, widthOf(desk, head.plan, TYPE.headLineStrong)),
    add(houseLeft, mm(5)),
  );
  return [
    textAt(left, baseline, head.paper, TYPE.paperName),
    textAt(houseLeft, baseline, shortened(desk, head.house, TYPE.headLine, room), TYPE.headLine),
    textAt(planRight, baseline, head.plan, TYPE.headLineStrong, "end"),
    textAt(right, baseline, page, TYPE.headLine, "end"),
    { kind: "line", from: { x: left, y: line }, to: { x: right, y: line }, line: "rule-strong" },
  ];
}

/** The group that holds the corner rule: the only marks outside a page's content box. */
export const CORNER_RULE = "corner rule";

const LONG_MM = mm(150);
const LONG_INCH = inch(6);

/**
 * Two bars that meet at 0 in the lower left corner, millimetres inside and inches outside, on both
 * axes, since a printer may stretch only one. Lengths on it are true: 150 mm and 6 in.
 */
function cornerRule(desk: Desk): readonly Mark[] {
  const { paper } = desk;
  const origin = { x: RULE_LEFT, y: subtract(paper.height, RULE_FOOT) };
  const end = LONG_INCH;
  /** A point `along` the axis and `inside` it, towards the page's middle. */
  const point = (axis: "x" | "y", along: Length, inside: Length): { x: Length; y: Length } =>
    axis === "x"
      ? { x: add(origin.x, along), y: subtract(origin.y, inside) }
      : { x: add(origin.x, inside), y: subtract(origin.y, along) };
  const marks: Mark[] = [];
  for (const axis of ["x", "y"] as const) {
    marks.push({ kind: "line", from: point(axis, ZERO, ZERO), to: point(axis, end, ZERO), line: "edge" });
    for (let millimetres = 0; millimetres <= 150; millimetres += 10) {
      const along = mm(millimetres);
      const long = along === LONG_MM ? mm(3.2) : millimetres % 50 === 0 ? mm(2.6) : mm(1.5);
      marks.push({
        kind: "line",
        from: point(axis, along, ZERO),
        to: point(axis, along, long),
        line: "thin",
      });
    }
    for (let inches = 0; inches <= 6; inches++) {
      const along = times(inch(1), inches);
      const long = along === LONG_INCH ? mm(-2.6) : mm(-1.7);
      marks.push({
        kind: "line",
        from: point(axis, along, ZERO),
        to: point(axis, along, long),
        line: "thin",
      });
    }
  }
  const fine = TYPE.fine;
  const strong = { ...fine, weight: "semibold" as const };
  const below = add(origin.y, mm(4.6));
  return [
    ...marks,
    textAt(subtract(origin.x, mm(2.8)), add(origin.y, mm(3.2)), EVERY_PAPER.nought, fine),
    textAt(add(origin.x, mm(4)), below, EVERY_PAPER.measureMe, strong),
    textAt(subtract(add(origin.x, LONG_INCH), mm(0.9)), below, EVERY_PAPER.inches, strong, "end"),
    textAt(
      subtract(add(origin.x, LONG_MM), mm(0.9)),
      subtract(origin.y, mm(3.9)),
      EVERY_PAPER.millimetres,
      strong,
      "end",
    ),
    textAt(
      subtract(origin.x, mm(3.4)),
      subtract(origin.y, mm(5)),
      EVERY_PAPER.measureMeShort,
      strong,
      "start",
      { degrees: -90 },
    ),
    textAt(subtract(origin.x, mm(3.4)), subtract(origin.y, LONG_INCH), EVERY_PAPER.inches, strong, "middle", {
      degrees: -90,
    }),
    textAt(
      add(origin.x, mm(5.2)),
      subtract(origin.y, subtract(LONG_MM, mm(0.4))),
      EVERY_PAPER.millimetres,
      strong,
      "end",
      { degrees: -90 },
    ),
  ];
}
