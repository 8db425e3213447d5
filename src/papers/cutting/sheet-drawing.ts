import type { Drawing, Typeface } from "../../drawings/index.ts";
import type { Size } from "../../geometry/index.ts";
import { mm, sum } from "../../lengths/index.ts";
import type { PlannedSheet } from "../../plans/cutting/index.ts";
import { placed } from "../block.ts";
import { deskOf, laidDown, outsIn } from "./cut-plan.ts";
import type { CutPlanJob, DrawnSheet } from "./desk.ts";
import { layoutDrawing } from "./drawing.ts";

/** One sheet of a plan by itself, as the cut plan draws it. */
export interface SheetDrawn {
  /** As it is drawn: laid down where it would stand upright. */
  readonly sheet: PlannedSheet;
  readonly drawing: Drawing;
  /** How many times smaller than the sheet it is. */
  readonly over: number;
  /** Numbers of the blanks at its placements. */
  readonly numbers: readonly number[];
  /** The blank out of whose window it is cut; null: a sheet of the stock. */
  readonly host: number | null;
}

/** Round a drawing, for the half of a line and of a ring that lie past its edge. */
const EDGE = mm(3);

/** Every sheet of a plan as large as `room` allows, for a page that shows them one below the other. */
export function sheetDrawings(job: CutPlanJob, room: Size, typeface: Typeface): readonly SheetDrawn[] {
  const desk = deskOf(job, "a4", typeface);
  const { plan, numbers } = desk.job;
  const all = plan.sheets.map(
    (sheet, index): DrawnSheet => ({ index, sheet, turned: false, numbers: numbers[index] ?? [] }),
  );
  return all.map((one): SheetDrawn => {
    const { from } = one.sheet;
    const host = from.kind === "stock" ? null : (numbers[from.sheet]?.[from.placement] ?? null);
    const drawn = laidDown(one);
    const { size } = drawn.sheet;
    const over = Math.max(1, Math.ceil(Math.max(size.width / room.width, size.height / room.height)));
    const { block } = layoutDrawing(desk, drawn, over, outsIn(all, drawn), host);
    return {
      sheet: drawn.sheet,
      drawing: {
        width: sum([block.width, EDGE, EDGE]),
        height: sum([block.height, EDGE, EDGE]),
        marks: placed(block, EDGE, EDGE),
      },
      over,
      numbers: drawn.numbers,
      host,
    };
  });
}
