import { type Length, ZERO } from "../../lengths/index.ts";
import type { Stock, StockDocument } from "../../show/index.ts";
import { BOARDS, COPIES_OPTIONS } from "../../words/page.ts";
import type { DocumentField } from "../blanks/field.ts";

/** What the blanks of the rack are read from. */
export interface RackSaid {
  readonly document: StockDocument;
  readonly stock: Stock;
  /** Every board that some work is cut from. */
  readonly boards: readonly string[];
}

export type RackField = DocumentField<RackSaid, StockDocument>;
type Sheet = StockDocument["sheets"][number];

const changed = ({ document }: RackSaid, index: number, change: (sheet: Sheet) => Sheet): StockDocument => ({
  ...document,
  sheets: document.sheets.map((sheet, other) => (other === index ? change(sheet) : sheet)),
});

function without(sheet: Sheet, key: "board" | "copies"): Sheet {
  const { [key]: _, ...rest } = sheet;
  return rest;
}

const ANY = "any";

/** What stands behind a blank of the rack by its name, `rack.0.width`; null where there is none. */
export function rackField(blank: string): RackField | null {
  const [, at = "", part = ""] = blank.split(".");
  const index = Number(at);
  const own = ({ document }: RackSaid): Sheet | undefined => document.sheets[index];
  switch (part) {
    case "name":
      return {
        kind: "text",
        read: (said) => own(said)?.name ?? "",
        write: (said, name) => changed(said, index, (sheet) => ({ ...sheet, name })),
      };
    case "width":
    case "height":
      return {
        kind: "length",
        read: ({ stock }): Length => stock.sheets[index]?.[part] ?? ZERO,
        write: (said, text) => changed(said, index, (sheet) => ({ ...sheet, [part]: text })),
      };
    case "board":
      return {
        kind: "choice",
        options: (said) => {
          const board = own(said)?.board;
          const all =
            board === undefined || said.boards.includes(board) ? said.boards : [...said.boards, board];
          return [
            { key: ANY, words: BOARDS.anyBoard },
            ...all.map((name) => ({ key: `of ${name}`, words: name })),
          ];
        },
        read: (said) => {
          const board = own(said)?.board;
          return board === undefined ? ANY : `of ${board}`;
        },
        write: (said, key) =>
          changed(said, index, (sheet) =>
            key === ANY ? without(sheet, "board") : { ...sheet, board: key.slice(3) },
          ),
      };
    case "copies":
      return {
        kind: "choice",
        options: () => COPIES_OPTIONS,
        read: (said) => (typeof own(said)?.copies === "number" ? "held" : "bought"),
        write: (said, key) =>
          changed(said, index, (sheet) =>
            key === "held" ? { ...sheet, copies: 1, cost: 0 } : without(sheet, "copies"),
          ),
      };
    case "number":
      return {
        kind: "number",
        unit: "",
        step: 1,
        read: (said) => own(said)?.copies ?? 1,
        write: (said, copies) => changed(said, index, (sheet) => ({ ...sheet, copies })),
      };
    case "cost":
      return {
        kind: "number",
        unit: "",
        step: 1,
        read: ({ stock, document }) => document.sheets[index]?.cost ?? stock.sheets[index]?.cost ?? 0,
        write: (said, cost) => changed(said, index, (sheet) => ({ ...sheet, cost })),
      };
    default:
      return null;
  }
}
