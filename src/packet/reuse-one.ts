import { bestFitting, type Fit, planFrame } from "../assembly/index.ts";
import { type PieceWanted, usableOf } from "../plans/index.ts";
import {
  type ComposeDocument,
  fitJson,
  type FrameKind,
  inPractice,
  practiceFor,
  type PracticeDocument,
  type Read,
  type Stock,
  type StockBoard,
} from "../show/index.ts";
import type { Language } from "../words/index.ts";
import { CUT_TABLE } from "../words/packet.ts";
import { type PieceUse, servesFor, wantedOf } from "./boards.ts";
import { withFrameStops } from "./framed.ts";
import { fitOf } from "./reuse.ts";
import { type ComposedWork, composeWorks } from "./works.ts";

/** A sheet that is there, and for which layers of a work it is large enough, either way up. */
export interface Offcut {
  readonly sheet: StockBoard;
  readonly serves: readonly { readonly board: string; readonly use: PieceUse }[];
}

/** What exists that one work can use. */
export interface ReuseOfOne {
  readonly work: ComposedWork;
  /** Frames and mats, the best one first. */
  readonly frames: readonly { readonly kind: FrameKind; readonly fit: Fit }[];
  /** Those that serve for something, in the stock's order. */
  readonly offcuts: readonly Offcut[];
}

/** What of a practice's frames and mats, and of a stock's offcuts, one work goes into. `stock` null: no rack is told. */
export function reuseOfOne(
  design: ComposeDocument,
  practice: PracticeDocument,
  stock: Stock | null,
): Read<ReuseOfOne> {
  const { works, problems } = composeWorks([{ row: 1, work: { title: "", design } }], practice);
  const [read] = works;
  if (read === undefined) return { ok: false, problems: problems.map(({ problem }) => problem) };
  const habits = practiceFor(practice, read.composition.design.ruler.unit);
  if (!habits.ok) return inPractice(habits.problems);
  const { frame, composition } = read;
  const [work] = withFrameStops([read], [frame === null ? null : planFrame(composition, frame.frame)]);
  if (work === undefined) throw new RangeError("one work in, one out");
  const fits = habits.value.frames
    .filter(({ opening, mat }) => opening !== null || mat !== null)
    .flatMap((kind) => {
      const fit = fitOf(work, kind.name, practice);
      return fit === null ? [] : [{ kind, fit }];
    });
  const pieces = [...wantedOf([work], habits.value)].flatMap(([board, { anySheet, entries }]) =>
    entries.map(({ piece, use }) => ({ board, anySheet, piece, use })),
  );
  const offcuts = (stock?.sheets ?? [])
    .filter(({ copies }) => copies !== null)
    .map((sheet): Offcut => {
      const serves = pieces.filter(
        ({ board, anySheet, piece }) =>
          servesFor(sheet, board, anySheet, habits.value) && isLargeEnough(sheet, piece),
      );
      return { sheet, serves: serves.map(({ board, use }) => ({ board, use })) };
    });
  return {
    ok: true,
    value: {
      work,
      frames: bestFitting(fits.map(({ fit }) => fit)).flatMap((index) => fits[index] ?? []),
      offcuts: offcuts.filter(({ serves }) => serves.length > 0),
    },
  };
}

/** Whether a piece can be cut from what is left of a sheet when its edges are trimmed. */
function isLargeEnough(sheet: StockBoard, piece: PieceWanted): boolean {
  const { width, height } = usableOf(sheet);
  const fits = (w: number, h: number): boolean => w <= width && h <= height;
  return fits(piece.width, piece.height) || (piece.turns && fits(piece.height, piece.width));
}

/** The part that an offcut can be, as the cut table calls it. */
export const partOf = ({ work }: ReuseOfOne, { layer, mat }: PieceUse): string =>
  CUT_TABLE.part(layer, mat, work.composition.mats.length);

/** In the open format, `{"reuse": {"frames", "offcuts"}}`. */
export function reuseOfOneJson(reuse: ReuseOfOne, language: Language): { readonly reuse: object } {
  const { ruler } = reuse.work.composition.design;
  return {
    reuse: {
      frames: reuse.frames.map(({ kind, fit }) => ({
        kind: kind.name,
        copies: kind.copies,
        ...fitJson(fit, { ruler, language }),
      })),
      offcuts: reuse.offcuts.map(({ sheet, serves }) => ({
        name: sheet.name,
        copies: sheet.copies,
        serves: serves.map(({ board, use }) => ({ part: partOf(reuse, use), board })),
      })),
    },
  };
}
