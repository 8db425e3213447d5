import type { PaperSize } from "../papers/index.ts";
import { type IntegerSolver, readPrice } from "../plans/index.ts";
import type { FramePlan, HoldPlan, LightPlan } from "../assembly/index.ts";
import { framesShort } from "./framed.ts";
import { type Reuse, reuseOf } from "./reuse.ts";
import { type PlannedWalls, planWalls } from "./hang.ts";
import { planLights } from "./light.ts";
import { type PictureNote, withPictures } from "./pictures.ts";
import { practiceOfShow, worksInFrames } from "./in-frames.ts";
import type { ComposedWork, RowProblem } from "./works.ts";
import {
  type CutBlank,
  DEFAULT_STOCK,
  type PracticeDocument,
  practiceFor,
  type Practice,
  type Problem,
  readCutBlanks,
  readShowLight,
  readStock,
  type ShowRead,
  type Stock,
  type StockDocument,
} from "../show/index.ts";
import type { PacketProgress } from "../words/packet.ts";
import { sayHangWanted } from "../words/hanging.ts";
import { sayWanted } from "../words/index.ts";
import { sayListWanted } from "../words/lists.ts";

/** Something in the list that could not be taken, as it leaves: where, what, and a sentence. */
export interface PacketProblem {
  readonly row: number;
  readonly column: string;
  readonly found: string;
  readonly wanted: string;
}

/** What a packet is made from. */
export interface PacketOrder {
  readonly show: ShowRead;
  /** Instead of the show's own. */
  readonly practice: PracticeDocument | null;
  readonly stock: StockDocument | null;
  /** The day printed on the papers, ISO 8601. */
  readonly date: string;
  readonly plan: {
    readonly number: number;
    readonly makesVoid: { readonly number: number; readonly date: string } | null;
  };
  readonly paper: PaperSize | null;
  /** The bytes of a work's picture, by what the work says; undefined where there are none. */
  readonly picture: (address: string) => Uint8Array | undefined;
  /** How long each board's plan may take. */
  readonly seconds: number;
  readonly clock: () => number;
  /** Brings the plans nearer to their bounds; absent: they are made without. */
  readonly solver?: IntegerSolver;
  readonly progress: (what: PacketProgress) => void;
}

/** The order with its habits and stock read, and every work composed. */
export interface Prepared {
  readonly practiceDocument: PracticeDocument;
  readonly practice: Practice;
  readonly stock: Stock;
  /** Blanks that are cut already, and not planned again. */
  readonly cut: readonly CutBlank[];
  readonly works: readonly ComposedWork[];
  readonly problems: readonly PacketProblem[];
  /** What the show's light does to each work, in their order; null where that cannot be told. */
  readonly lights: readonly (LightPlan | null)[];
  /** How each work is held, in their order; null for a mat without a print. */
  readonly holds: readonly (HoldPlan | null)[];
  /** Each work in its frame, in their order; null where it is not framed. */
  readonly framed: readonly (FramePlan | null)[];
  /** What exists of frames and mats, with the works that go into it. */
  readonly reuse: readonly Reuse[];
  readonly walls: PlannedWalls;
  /** What works took from their pictures. */
  readonly pictureNotes: readonly PictureNote[];
  /** Whether some work leaves its outer size to the practice, which must then be named. */
  readonly usesHabits: boolean;
  /** Those of the works alone, as they were found. */
  readonly documentProblems: readonly Problem[];
}

/** Reads habits and stock and composes every work, or tells why the habits or the stock cannot be read. */
export function prepare(
  order: PacketOrder,
):
  | { readonly ok: true; readonly value: Prepared }
  | { readonly ok: false; readonly problems: readonly Problem[] } {
  const practiceDocument = practiceOfShow(order.show, order.practice);
  const practice = practiceFor(practiceDocument, practiceDocument.unit ?? order.show.unit);
  if (!practice.ok) return within("practice", practice.problems);
  const stock = readStock(order.stock ?? order.show.stock ?? DEFAULT_STOCK);
  if (!stock.ok) return within("stock", stock.problems);
  const cut = readCutBlanks(order.show.cut, practiceDocument.unit ?? order.show.unit);
  if (!cut.ok) return within("cut", cut.problems);
  const { currency } = practice.value.money;
  if (currency !== null && stock.value.currency !== null && currency !== stock.value.currency)
    return within("practice", [
      {
        field: "money.currency",
        found: currency,
        wanted: { kind: "one-of", options: [stock.value.currency] },
      },
    ]);
  const { date, light } = order.show;
  const showLight = light === null ? null : readShowLight(light, date);
  if (showLight?.ok === false) return showLight;
  const pictured = withPictures(order);
  const { works, holds, framed, problems: unread } = worksInFrames(pictured.works, practiceDocument);
  const lights = planLights(works, showLight?.value ?? null, practiceDocument);
  const walls = planWalls(order.show, works, framed, practice.value, practiceDocument);
  const problems = [...unread, ...lights.problems, ...framesShort(works), ...unreadValues(works)];
  return {
    ok: true,
    value: {
      practiceDocument,
      practice: practice.value,
      stock: stock.value,
      cut: cut.value,
      works,
      lights: lights.plans,
      holds,
      framed,
      reuse: reuseOf(works, practiceDocument),
      walls,
      pictureNotes: pictured.notes,
      usesHabits: works.some(({ work }) => work.design.outer === undefined),
      documentProblems: problems.map(({ problem }) => problem),
      problems: [
        ...order.show.listProblems.map(({ row, column, found, wanted }) => ({
          row: row ?? 1,
          column: column ?? "",
          found,
          wanted: sayListWanted(wanted),
        })),
        ...order.show.documentProblems.map(problemOfRow),
        ...problems.map(problemOfRow),
        ...walls.problems.map(({ row, problem }) => ({
          row,
          column: problem.field,
          found: problem.found,
          wanted: sayHangWanted(problem.wanted),
        })),
      ].toSorted((a, b) => a.row - b.row),
    },
  };
}

/** What a work is worth where that is no price, by row. */
const unreadValues = (works: readonly ComposedWork[]): readonly RowProblem[] =>
  works.flatMap(({ row, work: { record = {} } }) =>
    record.value === undefined || readPrice(record.value) !== null
      ? []
      : [
          {
            row,
            problem: {
              field: "record.value",
              found: String(record.value),
              wanted: { kind: "type", expected: "number" },
            },
          },
        ],
  );

const within = (
  what: string,
  problems: readonly Problem[],
): { readonly ok: false; readonly problems: readonly Problem[] } => ({
  ok: false,
  problems: problems.map((problem) => ({ ...problem, field: `${what}.${problem.field}` })),
});

const problemOfRow = ({ row, problem }: RowProblem): PacketProblem => ({
  row,
  column: problem.field,
  found: problem.found,
  wanted: sayWanted(problem.wanted),
});
