import type { PracticeDocument, WorkDocument } from "../../show/index.ts";
import type { HabitName } from "../../words/page.ts";

type Moves = (work: WorkDocument, practice: PracticeDocument) => boolean;

const hasPrint: Moves = ({ design }) => design.print !== undefined;
const showsSheet: Moves = ({ design }) => design.window?.show === "sheet";
const isFramed: Moves = ({ frame }, { moulding }) =>
  frame === undefined || (frame !== null && typeof frame === "object" && frame.kind === undefined)
    ? moulding !== undefined
    : frame !== null;
/** What no kind of frame that it names decides for it. */
const leftOpen =
  (key: "moulding" | "glazing" | "backing"): Moves =>
  ({ frame }, { frames = [] }) => {
    if (frame === null) return false;
    const name = typeof frame === "string" ? frame : frame?.kind;
    if (name === undefined) return true;
    return frames.find((kind) => kind.name === name)?.[key] === undefined;
  };

/** Whether a change of a habit moves a work: where the work says it itself, or has no need of it, it does not. */
export const MOVES: Readonly<Record<HabitName, Moves | null>> = {
  measuring: ({ design }, { unit = "in" }) =>
    design.graduation === undefined && (design.unit ?? unit) === unit,
  windows: ({ design: { window = { show: "overlap" } } }) => {
    switch (window.show) {
      case "overlap":
        return window.overlap === undefined;
      case "margins":
        return window.top === undefined || window.side === undefined || window.foot === undefined;
      case "sheet":
        return window.gap === undefined;
      case "typed":
        return false;
    }
  },
  raising: ({ design: { lift, outer } }, practice) => {
    const size = outer ?? practice.outer;
    if (size !== undefined && "borders" in size) return false;
    return lift === undefined || (lift.rule === "fixed" && lift.by === undefined);
  },
  size: ({ design: { outer } }) => outer === undefined || ("smallest" in outer && outer.border === undefined),
  mats: ({ design: { mats } }) =>
    mats === undefined ||
    mats.some(
      ({ board, thickness, bevel, reveal }, index) =>
        board === undefined ||
        thickness === undefined ||
        bevel === undefined ||
        (index > 0 && reveal === undefined),
    ),
  paper: (work) =>
    work.design.mount === undefined ||
    (work.design.print !== undefined && work.design.print.thickness === undefined),
  holding: (work, practice) =>
    hasPrint(work, practice) &&
    (work.design.hold === undefined ||
      work.design.play === undefined ||
      (work.design.holding === undefined && !showsSheet(work, practice))),
  bench: () => true,
  moulding: leftOpen("moulding"),
  glazing: leftOpen("glazing"),
  backing: leftOpen("backing"),
  closing: isFramed,
  hanging: ({ hang }) => hang === undefined,
  light: null,
  money: null,
  papers: null,
};

/** How many works of a show a change of the habit moves; null where it is no matter of one work. */
export function movedBy(
  habit: HabitName,
  works: readonly WorkDocument[],
  practice: PracticeDocument,
): number | null {
  const moves = MOVES[habit];
  return moves === null ? null : works.filter((work) => moves(work, practice)).length;
}
