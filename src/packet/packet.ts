import type { Typeface } from "../drawings/index.ts";
import { sum, times } from "../lengths/index.ts";
import { pdfTypeface, type PdfOptions, type PdfPage, writePdf } from "../drawings/writers/pdf/index.ts";
import { benchDay } from "./bench-day.ts";
import { benchOrder, benchOrderJob } from "./bench-order.ts";
import { benchSheetPages, type Packeted, workWords, houseOf } from "./bench-sheets.ts";
import { type Blanks, numberBlanks } from "./blanks.ts";
import { type PlannedBoard, planBoards } from "./boards.ts";
import { cutTable } from "./cut-table.ts";
import { frameSheetPages } from "./frame-sheets.ts";
import { chopListPages, chopTable, type PlannedFrames, planFrames } from "./frames.ts";
import { labelsJob } from "./labels.ts";
import {
  backLabels,
  benchOrderPaper,
  boardLabels,
  cutPlan,
  type PaperSize,
  shoppingList,
  type ShoppingJob,
  shoppingRows,
  wallLabels,
} from "../papers/index.ts";
import { type CheckListWork, checkListRows } from "../words/index.ts";
import type { Problem } from "../show/index.ts";
import { PACKET } from "../words/packet.ts";
import { hangingPages, leftOffWalls } from "./hang.ts";
import { type Quoted, quotePacket } from "./money.ts";
import { mountingPages } from "./mounting.ts";
import { noonOf } from "./days.ts";
import { csvFile, type PacketFile, type TableOut, textFile } from "./file.ts";
import { lightPages, lightWords } from "./light.ts";
import { packetJson } from "./packet-json.ts";
import { type PacketOrder, prepare, type Prepared } from "./order.ts";
import { isPriced, quotePages, quoteTable } from "./quote.ts";
import { recordFiles } from "./records.ts";
import { reuseTable } from "./reuse.ts";
import { conditionPages, loanPages, packingPages } from "./travel.ts";
import type { ComposedWork } from "./works.ts";

/** A packet as it was made: its files, and all that must be said about it. */
export interface Packet {
  /** Each made when it is asked for, so that a long packet's papers never lie in memory together; to be taken once. */
  readonly files: AsyncIterable<PacketFile>;
  readonly prepared: Prepared;
  readonly boards: readonly PlannedBoard[];
  /** For each moulding that frames are made of. */
  readonly frames: readonly PlannedFrames[];
  /** Papers that the show has no part for, each as a sentence. */
  readonly leftOut: readonly string[];
}

export type PacketMade =
  | { readonly ok: true; readonly value: Packet }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Makes every paper and list of a show's packet. The same order makes the same bytes, as long as its plans fit in their time. */
export async function makePacket(order: PacketOrder): Promise<PacketMade> {
  order.progress({ doing: "composing" });
  const prepared = prepare(order);
  if (!prepared.ok) return prepared;
  const { practice, stock, works, framed, lights } = prepared.value;
  const plans = { seconds: order.seconds, seed: 1, clock: order.clock, solver: order.solver ?? null };
  const boards = planBoards(
    works,
    practice,
    stock,
    plans,
    (board) => order.progress({ doing: "cutting", board }),
    prepared.value.cut,
  );
  const blanks = numberBlanks(works, boards, order.plan.number);
  const frames = planFrames(prepared.value, plans, (moulding) =>
    order.progress({ doing: "cutting", board: moulding }),
  );
  const quoted = isPriced(prepared.value) ? quotePacket(prepared.value, boards, blanks, frames, plans) : null;
  const files = filesOf(order, prepared.value, boards, blanks, frames, quoted);
  const cut = boards.length > 0;
  return {
    ok: true,
    value: {
      files,
      prepared: prepared.value,
      boards,
      frames,
      leftOut: [
        ...(cut ? [] : [PACKET.leftOut.boards]),
        ...(frames.length === 0 ? [PACKET.leftOut.frames] : []),
        ...(framed.every((plan) => plan === null) ? [PACKET.leftOut.framed] : []),
        ...leftOffWalls(prepared.value.walls),
        ...(lights.every((plan) => plan === null) ? [PACKET.leftOut.light] : []),
        ...(quoted === null ? [PACKET.leftOut.quote] : []),
      ],
    },
  };
}

async function* filesOf(
  order: PacketOrder,
  prepared: Prepared,
  boards: readonly PlannedBoard[],
  blanks: Blanks,
  frames: readonly PlannedFrames[],
  quoted: Quoted | null,
): AsyncGenerator<PacketFile> {
  const { practice, works } = prepared;
  const typeface = pdfTypeface();
  const size = order.paper ?? practice.paper;
  const shared = packeted(order, prepared);
  const { titles } = PACKET;
  /** A paper without a page is left out. */
  const pdf = async (name: string, title: string, pages: Iterable<PdfPage>): Promise<PacketFile[]> => {
    const bytes = await pdfBytes(pages, {
      date: noonOf(order.date),
      title,
      language: practice.language,
      pictures: order.picture,
      typeface,
    });
    return bytes === null ? [] : [{ name, bytes }];
  };
  const told = (done: number): void => order.progress({ doing: "printing", done, of: works.length });
  yield* await pdf(
    "bench-sheets.pdf",
    titles.benchSheets,
    benchSheetPages(works, blanks, shared, size, typeface, prepared.holds, told),
  );
  yield* await pdf(
    "mounting-sheets.pdf",
    titles.mountingSheets,
    mountingPages(prepared, shared, size, typeface),
  );
  yield* await pdf("frame-sheets.pdf", titles.frameSheets, frameSheetPages(prepared, shared, size, typeface));
  if (prepared.reuse.length > 0) yield csvFile("frame-fits.csv", reuseTable(prepared.reuse));
  yield* await pdf("cut-plan.pdf", titles.cutPlan, cutPlanPages(boards, blanks, shared, size, typeface));
  yield csvFile("cut-plan.csv", cutTable(blanks.all));
  if (frames.length > 0) {
    yield* await pdf("chop-list.pdf", titles.chopList, chopListPages(frames, shared, size, typeface));
    yield csvFile("chop-list.csv", chopTable(frames, shared));
  }
  if (boards.length > 0) {
    const shopping = shoppingJob(works, boards, frames, prepared, shared);
    yield* await pdf("shopping-list.pdf", titles.shoppingList, shoppingList(shopping, size, typeface));
    yield csvFile(
      "shopping-list.csv",
      tableOf(shoppingRows(boards, shopping.mouldings, practice.ruler, shopping.priced, shopping.tape)),
    );
  }
  yield* await pdf("hanging.pdf", titles.hanging, hangingPages(prepared.walls, shared, size, typeface));
  yield* await pdf("light.pdf", titles.light, lightPages(prepared, shared, size, typeface));
  const day = benchDay(works, blanks);
  yield* await pdf(
    "bench-order.pdf",
    titles.benchOrder,
    benchOrderPaper(benchOrderJob(day, blanks, shared), size, typeface),
  );
  yield csvFile("bench-order.csv", benchOrder(day));
  const labelling = labelsJob(prepared, blanks, shared);
  yield* await pdf("labels.pdf", titles.boardLabels, boardLabels(labelling, size, typeface));
  yield* await pdf("back-labels.pdf", titles.backLabels, backLabels(labelling, size, typeface));
  yield* await pdf("wall-labels.pdf", titles.wallLabels, wallLabels(labelling, size, typeface));
  yield* await pdf("packing-list.pdf", titles.packingList, packingPages(prepared, shared, size, typeface));
  yield* await pdf("loan-list.pdf", titles.loanList, loanPages(prepared, shared, size, typeface));
  yield* await pdf("condition-notes.pdf", titles.condition, conditionPages(prepared, shared, size, typeface));
  yield csvFile(
    "check-list.csv",
    tableOf(checkListRows(works.map(checkListWork(prepared)), practice.language)),
  );
  if (quoted !== null) {
    yield* await pdf("quote.pdf", titles.quote, quotePages(quoted, prepared, shared, size, typeface));
    yield csvFile("quote.csv", quoteTable(quoted, prepared));
  }
  if (works.length > 0) yield* await recordFiles(prepared, shared);
  yield textFile("packet.json", packetJson(order, prepared, boards, frames, quoted));
}

const tableOf = ([header = [], ...rows]: readonly (readonly string[])[]): TableOut => ({ header, rows });

const checkListWork =
  ({ lights }: Prepared) =>
  (one: ComposedWork, index: number): CheckListWork => ({
    ...workWords(one),
    mark: String(one.row),
    composition: one.composition,
    light: lightWords(lights[index]),
  });

function* cutPlanPages(
  boards: readonly PlannedBoard[],
  blanks: Blanks,
  { house, plan: planWords, practice }: Packeted,
  size: PaperSize,
  typeface: Typeface,
): Generator<PdfPage> {
  for (const [place, { board, material, job, plan, ruler }] of boards.entries()) {
    const numbers = blanks.numbers[place] ?? [];
    yield* cutPlan(
      { board, material, job, plan, numbers, house, planWords, ruler, language: practice.language },
      size,
      typeface,
    );
  }
}

function shoppingJob(
  works: readonly ComposedWork[],
  boards: readonly PlannedBoard[],
  frames: readonly PlannedFrames[],
  { practice, stock, holds }: Prepared,
  { house, plan: planWords }: Packeted,
): ShoppingJob {
  const cut = works.filter(({ stopped }) => !stopped);
  // Each mat is hinged to its mount along one side.
  const hinged = works.flatMap(({ composition, quantity, stopped }, index) =>
    stopped ? [] : [times(holds[index]?.boards.length ?? composition.outer.width, quantity)],
  );
  return {
    boards,
    mouldings: frames.map((one) => ({ ...one, moulding: one.moulding.name })),
    works: cut.length,
    tape: hinged.length === 0 ? null : sum(hinged),
    currency: stock.currency,
    priced: stock.priced,
    house,
    planWords,
    ruler: practice.ruler,
    language: practice.language,
  };
}

/** What the bench sheets of this order share. */
export const packeted = (order: PacketOrder, { practice }: Prepared): Packeted => ({
  practice,
  house: houseOf(order.show, practice),
  plan: { number: order.plan.number, date: order.date, makesVoid: order.plan.makesVoid },
  hasPicture: (address) => order.picture(address) !== undefined,
});

/** A whole file of pages, or null where there is none to write. */
async function pdfBytes(pages: Iterable<PdfPage>, options: PdfOptions): Promise<Uint8Array | null> {
  let written = 0;
  function* counted(): Generator<PdfPage> {
    for (const page of pages) {
      written += 1;
      yield page;
    }
  }
  const bytes = await writePdf(counted(), options);
  return written === 0 ? null : bytes;
}
