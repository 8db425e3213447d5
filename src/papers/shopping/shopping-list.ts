import type { Typeface } from "../../drawings/index.ts";
import type { Length } from "../../lengths/index.ts";
import { unitWords } from "../../words/papers.ts";
import { moneyFact, rackFact, SHOPPING, shoppingLine, shoppingTitle } from "../../words/shopping.ts";
import type { Block } from "../block.ts";
import { flowingPaper } from "../flowing.ts";
import { type Page, paperOf, type PaperSize } from "../paper.ts";
import { printable, printableAll } from "../printable.ts";
import { type Fact } from "../tags.ts";
import { pageHead, voidFacts } from "../head.ts";
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
  return flowingPaper(desk, SHOPPING.paper, { house: desk.job.house, plan: desk.job.planWords }, head, rows);
}

function deskOf(job: ShoppingJob, size: PaperSize, typeface: Typeface): ShoppingDesk {
  const house = printableAll(job.house, typeface);
  const boards = job.boards.map((one) => ({ one, board: printable(one.board, typeface) }));
  return {
    paper: paperOf(size),
    typeface,
    missing: house.missing + boards.reduce((count, { board }) => count + board.missing, 0),
    job: {
      ...job,
      house: house.texts,
      currency: job.currency === null ? null : printable(job.currency, typeface).text,
      mouldings: job.mouldings.map((one) => ({ ...one, moulding: printable(one.moulding, typeface).text })),
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
  const sticks = lengthsToGet(job.mouldings);
  const fromRack = [...sheets, ...sticks]
    .filter((one) => one.fromRack)
    .reduce((count, one) => count + one.count, 0);
  const all: Fact[] = [{ name: SHOPPING.unit, value: unitWords(job.ruler) }];
  if (fromRack > 0) all.push({ name: SHOPPING.fromRackFact, value: rackFact(fromRack) });
  if (job.priced) all.push({ name: SHOPPING.money, value: moneyFact(job.currency) });
  all.push(...voidFacts(job.planWords));
  return pageHead(
    desk,
    { title: shoppingTitle(job.works), line: shoppingLine(job.priced, fromRack > 0), facts: all },
    width,
  );
}
