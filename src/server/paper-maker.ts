import { pdfTypeface, writePdf } from "../drawings/writers/pdf/index.ts";
import { benchSheet } from "../papers/index.ts";
import { showReadOf } from "../show/index.ts";
import { integerSolver } from "../solver/index.ts";
import type { PaperOrder, Papers } from "./papers.ts";
import {
  benchSheetJob,
  filesByName,
  makePacket,
  noonOf,
  packeted,
  type PacketOrder,
  prepare,
} from "../packet/index.ts";

/** For the plan of one board, while a person waits at a page. */
const SECONDS = 2;

/** The papers that the page asks for, made from the show it holds. */
export function papersOf(clock: () => number): Papers {
  const orderOf = ({ show, date, picture }: PaperOrder): PacketOrder => ({
    show: showReadOf(show),
    practice: null,
    stock: null,
    date,
    plan: { number: 1, makesVoid: null },
    paper: null,
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
    async packet(asked) {
      const made = await makePacket({ ...orderOf(asked), solver: await integerSolver() });
      return made.ok ? { ok: true, value: await filesByName(made.value.files) } : made;
    },
  };
}
