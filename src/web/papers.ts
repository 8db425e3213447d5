import type { PaperSize } from "../papers/index.ts";
import type { ShowDocument } from "../show/index.ts";
import { PAPERS, paperComing, paperHere, paperRefused } from "../words/page.ts";
import type { PaperName } from "../words/paper-names.ts";
import type { KeptShow } from "./state/change.ts";
import { withPictures } from "./pictures.ts";
import { now } from "./state/chance.ts";
import { making } from "./state/draft.ts";
import { told } from "./state/session.ts";

/** The same document in the shape in which everything outside the page reads it. */
export const documentOfShow = (show: KeptShow): ShowDocument => ({ ...show, works: [...show.works] });

const today = (): string => now().slice(0, 10);
const fileName = (title: string, end: string): string =>
  `${title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "")}-${end}`;

export async function printBenchSheet(show: KeptShow, work: number): Promise<void> {
  const title = show.works[work]?.title ?? "work";
  const body = { show: documentOfShow(show), work, date: today() };
  await fetchPaper("./api/papers/bench-sheet", body, PAPERS.benchSheet, fileName(title, "bench-sheet.pdf"));
}

/** One paper of the packet by itself. `title`: what it is called. */
export async function printPaper(
  show: KeptShow,
  name: PaperName,
  title: string,
  paper: PaperSize,
): Promise<void> {
  const body = { show: documentOfShow(show), name, paper, date: today() };
  await fetchPaper("./api/papers/one", body, title, fileName(show.name, `${name}.pdf`));
}

/** Every paper; without a size on the practice's. */
export async function printPacket(show: KeptShow, paper?: PaperSize): Promise<void> {
  const body = { show: documentOfShow(show), paper, date: today() };
  await fetchPaper("./api/papers/packet", body, PAPERS.packet, fileName(show.name, "packet.zip"));
}

/** Asks the server for a paper and saves it with the downloads; what stands in the way is told. */
async function fetchPaper(address: string, body: object, paper: string, name: string): Promise<void> {
  if (making.value) return;
  making.value = true;
  told.value = paperComing(paper);
  try {
    const answer = await fetch(address, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(body),
    });
    if (answer.ok) {
      save(await answer.blob(), name);
      told.value = paperHere(name);
    } else {
      told.value = await refusalOf(answer);
    }
  } catch (fault) {
    // A TypeError is how a browser says that nothing answered.
    if (!(fault instanceof TypeError)) throw fault;
    told.value = PAPERS.offline;
  } finally {
    making.value = false;
  }
}

async function refusalOf(answer: Response): Promise<string> {
  const text = await answer.text();
  if (!text.startsWith("{")) return PAPERS.refused(answer.status);
  const json: unknown = JSON.parse(text);
  const error: unknown = typeof json === "object" && json !== null ? Reflect.get(json, "error") : undefined;
  if (typeof error !== "object" || error === null) return PAPERS.refused(answer.status);
  const [found, wanted] = [Reflect.get(error, "found"), Reflect.get(error, "wanted")];
  return typeof found === "string" && typeof wanted === "string"
    ? paperRefused(found, wanted)
    : PAPERS.refused(answer.status);
}

/** Gives a file to the person, under a name. */
export function save(file: Blob, name: string): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** A copy holds everything: pictures that this browser keeps are inside it. */
export async function saveCopy(show: KeptShow): Promise<void> {
  const json = JSON.stringify(documentOfShow(await withPictures(show)), null, 2);
  const name = fileName(show.name, "show.json");
  save(new Blob([json], { type: "application/json" }), name);
  told.value = paperHere(name);
}
