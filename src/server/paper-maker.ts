import { pdfTypeface, writePdf } from "../drawings/writers/pdf/index.ts";
import { benchSheet } from "../papers/index.ts";
import { showReadOf } from "../show/index.ts";
import { integerSolver } from "../solver/index.ts";
import { PAPER_NAMES } from "../words/paper-names.ts";
import type { PaperAsked, PaperOrder, PaperPreviews, Papers } from "./papers.ts";
import {
  benchSheetJob,
  filesByName,
  leftOutOf,
  makePacket,
  noonOf,
  packeted,
  paperFile,
  paperPages,
  planPacket,
  type PacketOrder,
  prepare,
} from "../packet/index.ts";

/** For the plan of one board, while a person waits at a page. */
const SECONDS = 2;
/** For a look at the papers: what they are shows before the last saving is found. */
const PREVIEW_SECONDS = 0.2;

/** The papers that the page asks for, made from the show it holds. */
export function papersOf(clock: () => number): Papers {
  const orderOf = ({ show, date, picture }: PaperOrder, paper: PaperAsked["paper"] = null): PacketOrder => ({
    show: showReadOf(show),
    practice: null,
    stock: null,
    date,
    plan: { number: 1, makesVoid: null },
    paper,
    picture,
    seconds: SECONDS,
    clock,
    progress: () => undefined,
  });
  return {
    async benchSheet(asked) {
      const { show } = asked;
      const one = show.works[asked.work];
      const order = orderOf({ ...asked, show: { ...show, works: one === undefined ? [] : [one] } });
      const prepared = prepare(order);
      if (!prepared.ok) return prepared;
      const { works, practice, documentProblems } = prepared.value;
      const [work] = works;
      if (work === undefined) return { ok: false, problems: documentProblems };
      const shared = packeted(order, prepared.value);
      const typeface = pdfTypeface();
      const pages = benchSheet(benchSheetJob(work, null, shared), practice.paper, typeface);
      const value = await writePdf(pages, {
        date: noonOf(asked.date),
        title: work.work.title,
        language: practice.language,
        pictures: asked.picture,
        typeface,
      });
      return { ok: true, value };
    },
    async paper(asked) {
      const order = { ...orderOf(asked, asked.paper), solver: await integerSolver() };
      const planned = planPacket(order);
      if (!planned.ok) return planned;
      return { ok: true, value: await paperFile(asked.name, order, planned.value) };
    },
    async previews(asked) {
      const order = { ...orderOf(asked, asked.paper), seconds: PREVIEW_SECONDS };
      const planned = planPacket(order);
      if (!planned.ok) return planned;
      const size = asked.paper ?? planned.value.prepared.practice.paper;
      const typeface = pdfTypeface();
      const papers: PaperPreviews["papers"][number][] = [];
      for (const name of PAPER_NAMES) {
        // Whoever else asks is answered between two papers.
        await new Promise((next) => setImmediate(next));
        // The pages after the first are never made.
        const [page = null] = paperPages(name, planned.value, size, typeface);
        papers.push({ name, page });
      }
      return { ok: true, value: { papers, leftOut: leftOutOf(planned.value), plan: order.plan.number } };
    },
    async packet(asked) {
      const made = await makePacket({ ...orderOf(asked, asked.paper), solver: await integerSolver() });
      return made.ok ? { ok: true, value: await filesByName(made.value.files) } : made;
    },
  };
}
