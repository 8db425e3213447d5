import { pdfTypeface, type PdfOptions, type PdfPage, streamPdf } from "../drawings/writers/pdf/index.ts";
import { benchOrder, type TableOut } from "./bench-order.ts";
import { benchSheetPages, type Packeted, workWords } from "./bench-sheets.ts";
import { type Blanks, numberBlanks } from "./blanks.ts";
import { type PlannedBoard, planBoards } from "./boards.ts";
import { cutTable } from "./cut-table.ts";
import { packetLabels } from "./labels.ts";
import { cutPlan } from "../papers/index.ts";
import { checkListRows } from "../words/index.ts";
import { compositionJson, cuttingPlanJson, type Problem, writeCsv } from "../show/index.ts";
import { PACKET } from "../words/packet.ts";
import type { PacketFile } from "./file.ts";
import { type PacketOrder, prepare, type Prepared } from "./order.ts";

/** A packet as it was made: its files, and all that must be said about it. */
export interface Packet {
  readonly files: readonly PacketFile[];
  readonly prepared: Prepared;
  readonly boards: readonly PlannedBoard[];
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
  const { practice, stock, works } = prepared.value;
  const plans = { seconds: order.seconds, seed: 1, clock: order.clock };
  const boards = planBoards(works, practice, stock, plans, (board) =>
    order.progress({ doing: "cutting", board }),
  );
  const blanks = numberBlanks(works, boards, order.plan.number);
  const files = await filesOf(order, prepared.value, boards, blanks);
  const cut = boards.length > 0;
  return {
    ok: true,
    value: {
      files,
      prepared: prepared.value,
      boards,
      leftOut: [...(cut ? [] : [PACKET.leftOut.boards]), PACKET.leftOut.frames, PACKET.leftOut.wall],
    },
  };
}

async function filesOf(
  order: PacketOrder,
  prepared: Prepared,
  boards: readonly PlannedBoard[],
  blanks: Blanks,
): Promise<PacketFile[]> {
  const { practice, works } = prepared;
  const typeface = pdfTypeface();
  const size = order.paper ?? practice.paper;
  const shared = packeted(order, prepared);
  const pdf = async (name: string, title: string, pages: Iterable<PdfPage>): Promise<PacketFile> => {
    const options = {
      date: new Date(`${order.date}T12:00:00Z`),
      title,
      language: practice.language,
      pictures: order.picture,
      typeface,
    };
    return { name, bytes: await pdfBytes(pages, options) };
  };
  const benchSheets = benchSheetPages(works, blanks, shared, size, typeface, (done) =>
    order.progress({ doing: "printing", done, of: works.length }),
  );
  const { house, plan } = shared;
  const cutPlans = boards.flatMap(({ board, job, plan: cut, ruler }, place) => {
    const numbers = blanks.numbers[place] ?? [];
    return cutPlan(
      {
        board,
        job,
        plan: cut,
        numbers,
        house,
        planWords: plan,
        ruler,
        language: practice.language,
      },
      size,
      typeface,
    );
  });
  const labelled = packetLabels(works, boards, blanks, shared, size, typeface);
  const checks = checkListRows(
    works.map((one) => ({ ...workWords(one), mark: String(one.row), composition: one.composition })),
    practice.language,
  );
  return [
    await pdf("bench-sheets.pdf", PACKET.titles.benchSheets, benchSheets),
    ...(cutPlans.length === 0 ? [] : [await pdf("cut-plan.pdf", PACKET.titles.cutPlan, cutPlans)]),
    csv("cut-plan.csv", cutTable(works, boards, blanks)),
    csv("bench-order.csv", benchOrder(works, blanks)),
    ...(labelled.length === 0 ? [] : [await pdf("labels.pdf", PACKET.titles.labels, labelled)]),
    csv("check-list.csv", { header: checks[0] ?? [], rows: checks.slice(1) }),
    { name: "packet.json", bytes: new TextEncoder().encode(packetJson(order, prepared, boards)) },
  ];
}

/** What the bench sheets of this order share. */
export const packeted = (order: PacketOrder, { practice }: Prepared): Packeted => ({
  practice,
  house: { studio: order.show.room === "" ? practice.studio : order.show.room, show: order.show.name },
  plan: { number: order.plan.number, date: order.date, makesVoid: order.plan.makesVoid },
  hasPicture: (address) => order.picture(address) !== undefined,
});

async function pdfBytes(pages: Iterable<PdfPage>, options: PdfOptions): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  await streamPdf(pages, options, (chunk) => chunks.push(chunk));
  return Buffer.concat(chunks);
}

/** For spreadsheets: with a byte-order mark, or some of them would garble every name that is not plain English. */
const csv = (name: string, { header, rows }: TableOut): PacketFile => ({
  name,
  bytes: new TextEncoder().encode(writeCsv(header, rows, { bom: true })),
});

function packetJson(
  order: PacketOrder,
  { practice, works, problems }: Prepared,
  boards: readonly PlannedBoard[],
): string {
  return `${JSON.stringify(
    {
      format: "margent-packet",
      version: 1,
      show: order.show.name,
      plan: order.plan.number,
      date: order.date,
      works: works.map(({ row, work, quantity, composition }) => ({
        row,
        title: work.title,
        quantity,
        ...compositionJson(composition, practice.language),
      })),
      cut: Object.fromEntries(
        boards.map(({ board, job, plan }) => [board, cuttingPlanJson(job, plan, practice.ruler.unit, 0)]),
      ),
      problems,
    },
    null,
    1,
  )}\n`;
}
