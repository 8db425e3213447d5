import type { Unit } from "../lengths/index.ts";
import { capital, FILES, FIRST, listBrought, PAPERS } from "../words/page.ts";
import { asKept, newShow, withIds } from "./state/kept-show.ts";
import type { KeptShow } from "./state/change.ts";
import type { Base } from "./state/keeping.ts";
import { newId } from "./state/chance.ts";
import { leftOut } from "./state/draft.ts";
import { make, openNew, practice, show as openShow, told } from "./state/session.ts";
import { picturesKept } from "./pictures.ts";
import { goTo } from "./state/route.ts";

/** Opens the example show, which the server gives out. */
export async function openExample(): Promise<void> {
  try {
    const answer = await fetch("./api/example");
    if (!answer.ok) {
      told.value = PAPERS.refused(answer.status);
      return;
    }
    // Looked at alone it is none of the studio's shows; with the first change it is.
    openOr(asKept(await answer.json()), "with-a-change");
  } catch (fault) {
    // A TypeError is how a browser says that nothing answered.
    if (!(fault instanceof TypeError)) throw fault;
    told.value = FIRST.noExample;
  }
}

/** Opens a show from a file that was saved from here. */
export async function openCopy(file: File): Promise<void> {
  const text = await file.text();
  // Only who opens a file from elsewhere loads what reads every field of it.
  const { readShow } = await import("./state/read-show.ts");
  try {
    const read = readShow(JSON.parse(text));
    openOr(read.ok ? await picturesKept(read.value) : null);
  } catch (fault) {
    if (!(fault instanceof SyntaxError)) throw fault;
    told.value = FILES.notAShow;
  }
}

function openOr(show: KeptShow | null, base: Base = "new"): void {
  if (show === null) {
    told.value = FILES.notAShow;
    return;
  }
  openNew(show, base);
  goTo({ at: "works" });
}

/** Works of a list, into the open show or into a new one that is named after the file. */
export async function bringInList(file: File): Promise<void> {
  // Only who brings in a list loads what reads one.
  const { listToWorks, readTable, sayListProblem } = await import("./lists.ts");
  const table = await readTable(new Uint8Array(await file.arrayBuffer()), file.name);
  if (!table.ok) {
    told.value = FILES.noList;
    leftOut.value = [capital(sayListProblem(table.problem))];
    return;
  }
  const unit: Unit = practice.value.unit ?? "in";
  const { works, problems } = listToWorks(table.table, { unit });
  const documents = works.map(({ work }) => work);
  const open = openShow.value;
  if (works.length > 0 && open === null) {
    const name = file.name.replace(/\.[^.]+$/, "");
    openNew(withIds(newShow(name, unit, documents)));
  } else if (open !== null) {
    for (const [index, work] of documents.entries()) {
      make({ kind: "add", work: { ...work, id: newId() }, at: open.works.length + index, said: work.title });
    }
  }
  if (works.length > 0) goTo({ at: "works" });
  told.value = listBrought(works.length, problems.length);
  leftOut.value = problems.map((problem) => `${capital(sayListProblem(problem))}.`);
}
