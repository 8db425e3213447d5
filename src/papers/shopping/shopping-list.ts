import type { Typeface } from "../../drawings/index.ts";
import { type Length, mm, subtract } from "../../lengths/index.ts";
import { dateWords } from "../../words/index.ts";
import { missingSigns, planWords, unitWords, voidWords } from "../../words/papers.ts";
import { moneyFact, rackFact, SHOPPING, shoppingLine, shoppingTitle } from "../../words/shopping.ts";
import { type Block, gap, rule, stack } from "../block.ts";
import { bodyHeight, pagesOf } from "../frame.ts";
import { type Page, paperOf, type PaperSize } from "../paper.ts";
import { printable, printableAll } from "../printable.ts";
import { flow } from "../table.ts";
import { type Fact, facts } from "../tags.ts";
import { paragraph } from "../text.ts";
import { TYPE } from "../type.ts";
import { lengthsToGet, sheetsToGet, type SheetsToGet } from "./items.ts";
import type { ShoppingDesk, ShoppingJob } from "./desk.ts";
import { rowsOf } from "./rows.ts";

/** What to buy for a list of works: sheets of board by what is asked for in the shop, what the rack gives, and small parts. */
export function shoppingList(job: ShoppingJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk = deskOf(job, size, typeface);
  const width = desk.paper.content.width;
  const sheets = sheetsToGet(desk.job.boards);
  const head = headOf(desk, sheets, width);
  const rows = rowsOf(desk, sheets, width);
  const room = bodyHeight(desk.paper);
  const pages = flow(rows, subtract(room, head.height), room);
  const { house, planWords: plan } = desk.job;
  return pagesOf(
    desk,
    {
      paper: SHOPPING.paper,
      house: [house.studio, house.show].filter((name) => name !== "").join(" · "),
      plan: planWords(plan.number, dateWords(plan.date)),
    },
    SHOPPING.paper,
    pages.map((page, index) => ({ block: index === 0 ? stack([head, page]) : page, tells: null })),
  );
}

function deskOf(job: ShoppingJob, size: PaperSize, typeface: Typeface): ShoppingDesk {
  const house = printableAll({ studio: job.house.studio, show: job.house.show }, typeface);
  const boards = job.boards.map((one) => ({ one, board: printable(one.board, typeface) }));
  return {
    paper: paperOf(size),
    typeface,
    missing: house.missing + boards.reduce((count, { board }) => count + board.missing, 0),
    job: {
      ...job,
      house: house.texts,
      currency: job.currency === null ? null : printable(job.currency, typeface).text,
      boards: boards.map(({ one, board }) => ({
        ...one,
        board: board.text,
        job: {
          ...one.job,
          sheets: one.job.sheets.map((sheet) => ({ ...sheet, name: printable(sheet.name, typeface).text })),
        },
      })),
    },
  };
}

function headOf(desk: ShoppingDesk, sheets: readonly SheetsToGet[], width: Length): Block {
  const { job } = desk;
  const sticks = lengthsToGet(job.moulding);
  const fromRack = [...sheets, ...sticks]
    .filter((one) => one.fromRack)
    .reduce((count, one) => count + one.count, 0);
  const all: Fact[] = [{ name: SHOPPING.unit, value: unitWords(job.ruler) }];
  if (fromRack > 0) all.push({ name: SHOPPING.fromRackFact, value: rackFact(fromRack) });
  if (job.priced) all.push({ name: SHOPPING.money, value: moneyFact(job.currency) });
  const { makesVoid } = job.planWords;
  if (makesVoid !== null) all.push({ name: SHOPPING.makesVoid, value: voidWords(makesVoid) });
  return stack([
    gap(mm(1.2)),
    paragraph(desk, shoppingTitle(job.works), TYPE.title, width),
    gap(mm(0.6)),
    paragraph(desk, shoppingLine(job.priced, fromRack > 0), TYPE.line, width),
    ...(desk.missing > 0
      ? [gap(mm(0.6)), paragraph(desk, missingSigns(desk.missing), TYPE.fact, width)]
      : []),
    gap(mm(1.2)),
    rule(width, "rule-thin"),
    gap(mm(0.4)),
    facts(desk, all, width),
    gap(mm(1)),
    rule(width, "rule"),
  ]);
}
