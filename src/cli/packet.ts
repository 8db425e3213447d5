import { readFileSync } from "node:fs";
import { dirname, isAbsolute, relative, resolve } from "node:path";
import { makePacket, type Packet } from "../packet/index.ts";
import {
  DEFAULT_STOCK,
  isRecordColumn,
  problemJson,
  readShow,
  type ShowFault,
  stockDocument,
} from "../show/index.ts";
import { integerSolver } from "../solver/index.ts";
import { CLI } from "../words/cli.ts";
import { sayListNote, sayListProblem } from "../words/lists.ts";
import { PACKET, type PacketProgress } from "../words/packet.ts";
import { sayHabits } from "../words/practice.ts";
import { sayPictureNote } from "../words/records.ts";
import { readPracticeFile } from "./compose.ts";
import { earlierPlan, replaceFolder } from "./folder.ts";
import { readBytes, readDocument, unreadable, Unreadable } from "./input.ts";
import { givingBack } from "./memory.ts";
import { packetStops } from "./packet-stops.ts";
import { readDate, readPaper } from "./printing.ts";
import { statusOn } from "./status.ts";

export interface PacketOptions {
  readonly out: string;
  readonly practice?: string;
  readonly stock?: string;
  readonly paper?: string;
  readonly date?: string;
  readonly seconds?: string;
}

/** `margent packet`: a list or show to a folder of papers. The result is the exit status. */
export async function runPacket(
  showName: string,
  options: PacketOptions,
  today: () => string,
): Promise<number> {
  const practice = options.practice === undefined ? null : readPracticeFile(options.practice);
  const stock = options.stock === undefined ? null : readDocument(stockDocument, options.stock);
  const paper = readPaper(options.paper);
  const date = readDate(options.date ?? today());
  const before = earlierPlan(options.out);
  const read = await readShow(
    readBytes(showName),
    showName,
    practice === null ? null : (practice.unit ?? "in"),
  );
  if (!read.ok) throw new Unreadable(sayFault(read.fault));

  const { show } = read;
  const progress = progressOn(process.stderr);
  const made = await makePacket({
    show,
    practice,
    stock,
    date,
    plan: { number: (before?.number ?? 0) + 1, makesVoid: before },
    paper,
    picture: picturesBeside(showName),
    seconds: readSeconds(options.seconds),
    clock: () => performance.now(),
    solver: await integerSolver(),
    progress: progress.told,
  });
  if (!made.ok) throw unreadable(made.problems.map(problemJson));
  const files = await replaceFolder(options.out, givingBack(made.value.files));
  progress.done();

  const unread = show.unknownColumns.map(({ name }) => name).filter((name) => !isRecordColumn(name));
  const said = [
    ...(made.value.prepared.usesHabits ? sayHabits(made.value.prepared.practice) : []),
    ...show.notes.map(sayListNote),
    ...made.value.prepared.pictureNotes.map(sayPictureNote),
    ...(unread.length === 0 ? [] : [PACKET.unknownColumns(unread.join(", "))]),
    ...(stock === null && show.stock === null
      ? [PACKET.stockUsed(DEFAULT_STOCK.sheets.map(({ name }) => name).join(", "))]
      : []),
  ];
  const stops = packetStops(made.value);
  for (const line of [...said, ...stops, ...made.value.leftOut]) {
    process.stderr.write(`${line}\n`);
  }
  for (const line of summary(made.value, files, options.out)) process.stdout.write(`${line}\n`);
  const { works, problems } = made.value.prepared;
  if (works.length === 0 && problems.length > 0) return 2;
  return stops.length > 0 ? 1 : 0;
}

/** Why nothing of a show could be read. */
export function sayFault(fault: ShowFault): string {
  return fault.kind === "list"
    ? sayListProblem(fault.problem)
    : fault.problems.map(problemJson).map(CLI.say).join("\n");
}

function readSeconds(seconds: string | undefined): number {
  if (seconds === undefined) return USUAL_SECONDS;
  const value = Number(seconds);
  if (value >= 0 && value <= 3600) return value;
  throw new Unreadable(CLI.problem("--seconds", seconds, "seconds from 0 to 3600"));
}

/** For the plan of one board: long enough for a show, short enough to wait for. */
const USUAL_SECONDS = 5;

/** Pictures lie beside the list, and nowhere else: a path that leads out of its folder is not followed. */
function picturesBeside(showName: string): (address: string) => Uint8Array | undefined {
  const folder = dirname(resolve(showName));
  const known = new Map<string, Uint8Array | undefined>();
  return (address) => {
    if (!known.has(address)) known.set(address, pictureAt(folder, address));
    return known.get(address);
  };
}

function pictureAt(folder: string, address: string): Uint8Array | undefined {
  const path = resolve(folder, address);
  const inside = relative(folder, path);
  if (inside.startsWith("..") || isAbsolute(inside) || !/\.(jpe?g|png)$/i.test(inside)) return undefined;
  try {
    return readFileSync(path);
  } catch (error) {
    if (
      error instanceof Error &&
      "code" in error &&
      (error.code === "ENOENT" || error.code === "EISDIR" || error.code === "EACCES")
    )
      return undefined;
    throw error;
  }
}

function summary({ prepared, boards }: Packet, files: number, folder: string): string[] {
  const stopped = prepared.works.filter((work) => work.stopped).length;
  // A work whose light or holding alone could not be read is in the packet all the same.
  const taken = new Set(prepared.works.map(({ row }) => row));
  const leftOut = new Set(prepared.problems.map(({ row }) => row).filter((row) => !taken.has(row)));
  const currency = prepared.stock.currency ?? "";
  return [
    PACKET.counted(prepared.works.length, stopped, leftOut.size),
    ...boards.map(({ board, plan }) =>
      PACKET.cost(
        board,
        plan.sheetsUsed,
        prepared.stock.priced ? money(plan.cost, currency) : null,
        plan.proven,
        prepared.stock.priced ? money(plan.bound.cost, currency) : null,
      ),
    ),
    PACKET.wrote(files, folder),
  ];
}

const money = (amount: number, currency: string): string =>
  `${amount.toFixed(2)}${currency === "" ? "" : ` ${currency}`}`;

/** Progress on a terminal's one line; elsewhere nothing, so that logs stay clean. */
function progressOn(stream: NodeJS.WriteStream): {
  readonly told: (progress: PacketProgress) => void;
  readonly done: () => void;
} {
  const { show } = statusOn(stream);
  return {
    told: (progress) => show(PACKET.progress(progress)),
    done: () => show(""),
  };
}
