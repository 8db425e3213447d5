import { pdfTypeface, type PdfOptions, type PdfPage, writePdf } from "../drawings/writers/pdf/index.ts";
import { shoppingRows } from "../papers/index.ts";
import type { Problem } from "../show/index.ts";
import { type CheckListWork, checkListRows } from "../words/index.ts";
import type { PaperName } from "../words/paper-names.ts";
import { type BenchDay, benchDay } from "./bench-day.ts";
import { benchOrder } from "./bench-order.ts";
import { houseOf, type Packeted, workWords } from "./bench-sheets.ts";
import { numberBlanks } from "./blanks.ts";
import { type PlannedBoard, planBoards } from "./boards.ts";
import { cutTable } from "./cut-table.ts";
import { noonOf } from "./days.ts";
import { csvFile, type PacketFile, type TableOut, textFile } from "./file.ts";
import { chopTable, type PlannedFrames, planFrames } from "./frames.ts";
import { lightWords } from "./light.ts";
import { quotePacket } from "./money.ts";
import { type PacketOrder, prepare, type Prepared } from "./order.ts";
import { packetJson } from "./packet-json.ts";
import { leftOutOf, PAPER_TITLES, paperPages, type Planned, shoppingJob } from "./papers.ts";
import { isPriced, quoteTable } from "./quote.ts";
import { recordFiles } from "./records.ts";
import { reuseTable } from "./reuse.ts";
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

/** Reads an order and plans what its papers need, or tells why its habits or its stock cannot be read. */
export function planPacket(
  order: PacketOrder,
):
  | { readonly ok: true; readonly value: Planned }
  | { readonly ok: false; readonly problems: readonly Problem[] } {
  order.progress({ doing: "composing" });
  const prepared = prepare(order);
  if (!prepared.ok) return prepared;
  const { practice, stock, works } = prepared.value;
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
  const shared = packeted(order, prepared.value);
  let found: BenchDay | null = null;
  const day = (): BenchDay => (found ??= benchDay(works, blanks));
  return { ok: true, value: { prepared: prepared.value, shared, boards, blanks, frames, quoted, day } };
}

/** Makes every paper and list of a show's packet. The same order makes the same bytes, as long as its plans fit in their time. */
export async function makePacket(order: PacketOrder): Promise<PacketMade> {
  const planned = planPacket(order);
  if (!planned.ok) return planned;
  const { prepared, boards, frames } = planned.value;
  const files = filesOf(order, planned.value);
  return { ok: true, value: { files, prepared, boards, frames, leftOut: leftOutOf(planned.value) } };
}

/** One paper of a packet as PDF, without the others; null where the show has no part for it. A typeface that is shared remembers the words it has measured. */
export function paperFile(
  name: PaperName,
  order: PacketOrder,
  planned: Planned,
  typeface = pdfTypeface(),
): Promise<Uint8Array | null> {
  const { practice, works } = planned.prepared;
  const told = (done: number): void => order.progress({ doing: "printing", done, of: works.length });
  return pdfBytes(paperPages(name, planned, order.paper ?? practice.paper, typeface, told), {
    date: noonOf(order.date),
    title: PAPER_TITLES[name],
    language: practice.language,
    pictures: order.picture,
    typeface,
  });
}

async function* filesOf(order: PacketOrder, planned: Planned): AsyncGenerator<PacketFile> {
  const { prepared, shared, boards, blanks, frames, quoted, day } = planned;
  const { practice, works } = prepared;
  const typeface = pdfTypeface();
  /** A paper without a page is left out. */
  const pdf = async (name: PaperName): Promise<PacketFile[]> => {
    const bytes = await paperFile(name, order, planned, typeface);
    return bytes === null ? [] : [{ name: `${name}.pdf`, bytes }];
  };
  yield* await pdf("bench-sheets");
  yield* await pdf("mounting-sheets");
  yield* await pdf("frame-sheets");
  if (prepared.reuse.length > 0) yield csvFile("frame-fits.csv", reuseTable(prepared.reuse));
  yield* await pdf("cut-plan");
  yield csvFile("cut-plan.csv", cutTable(blanks.all));
  if (frames.length > 0) {
    yield* await pdf("chop-list");
    yield csvFile("chop-list.csv", chopTable(frames, shared));
  }
  if (boards.length > 0) {
    yield* await pdf("shopping-list");
    const { mouldings, priced, tape } = shoppingJob(planned);
    yield csvFile(
      "shopping-list.csv",
      tableOf(shoppingRows(boards, mouldings, practice.ruler, priced, tape)),
    );
  }
  yield* await pdf("hanging");
  yield* await pdf("light");
  yield* await pdf("bench-order");
  yield csvFile("bench-order.csv", benchOrder(day()));
  yield* await pdf("labels");
  yield* await pdf("back-labels");
  yield* await pdf("wall-labels");
  yield* await pdf("packing-list");
  yield* await pdf("loan-list");
  yield* await pdf("condition-notes");
  yield csvFile(
    "check-list.csv",
    tableOf(checkListRows(works.map(checkListWork(prepared)), practice.language)),
  );
  if (quoted !== null) {
    yield* await pdf("quote");
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
