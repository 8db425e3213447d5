import { inch, mm } from "../../lengths/index.ts";
import { readStock, type StockDocument } from "../../show/index.ts";
import { sayWanted } from "../../words/index.ts";
import {
  BOARDS,
  BOARDS_SAID,
  type BlankName,
  keptSays,
  moneyWords,
  packWords,
  rackBlankWords,
  rackSentence,
} from "../../words/page.ts";
import { FieldBlank, FieldFault, type FieldProps } from "../blanks/field-blank.tsx";
import { Sentence } from "../blanks/sentence.tsx";
import { type KeptShow, showChange } from "../state/change.ts";
import { setUnread } from "../state/draft.ts";
import { language, make, told } from "../state/session.ts";
import { rackField, type RackSaid } from "./fields.ts";
import type { ShowBoards } from "./jobs.ts";

/** Keeps a rack as a blank or an act has made it. False where it cannot be; then the blank says why. */
function keepRack(show: KeptShow, stock: StockDocument, said: string, blank: BlankName | null): boolean {
  const read = readStock(stock);
  if (!read.ok) {
    const [problem] = read.problems;
    if (blank !== null && problem !== undefined)
      setUnread(blank, { code: "wanted", wanted: sayWanted(problem.wanted) });
    return false;
  }
  const change = showChange(show, { stock }, said);
  if (blank !== null) setUnread(blank, null);
  if (change === null) return true;
  if (!make(change)) return false;
  told.value = keptSays(said, null);
  return true;
}

/** The longest side of the largest sheet, in pixels: all sheets of the rack are drawn at one scale. */
const LARGEST = 84;

/** What lies in the rack and what can be bought, a sentence each; those that serve the board that is looked at come first. */
export function Rack({
  show,
  boards,
  board,
}: {
  readonly show: KeptShow;
  readonly boards: ShowBoards;
  readonly board: string;
}) {
  const { document, stock, jobs } = boards;
  const said: RackSaid = { document, stock, boards: jobs.map((job) => job.board) };
  const longest = Math.max(1, ...stock.sheets.flatMap(({ width, height }) => [width, height]));
  const own = (index: number): boolean => (document.sheets[index]?.board ?? board) === board;
  const order = [...document.sheets.keys()].toSorted((a, b) => Number(own(b)) - Number(own(a)) || a - b);
  const unit = document.unit ?? "in";
  return (
    <section aria-labelledby="rack-title" class="rack-of">
      <h2 id="rack-title">{BOARDS.rack}</h2>
      <p class="quiet small">{BOARDS.rackLine}</p>
      <ul class="rack">
        {order.map((index) => {
          const sheet = document.sheets[index];
          const read = stock.sheets[index];
          if (sheet === undefined || read === undefined) return null;
          const [width, height] = [read.width, read.height].map((side) => (LARGEST * side) / longest) as [
            number,
            number,
          ];
          return (
            <li key={index}>
              <svg
                class="drawing"
                width={width + 2}
                height={height + 2}
                viewBox={`-1 -1 ${width + 2} ${height + 2}`}
                aria-hidden="true"
              >
                <rect class="line line-edge" width={width} height={height} />
              </svg>
              <div>
                <Sentence
                  class="facts"
                  label={sheet.name}
                  sentence={rackSentence(index, typeof sheet.copies === "number")}
                  blank={(name) => <FieldBlank key={name} {...fieldProps(name, show, said)} />}
                  fault={(name) => <FieldFault key={name} {...fieldProps(name, show, said)} />}
                />
                {read.pack !== null && (
                  <p class="quiet small">
                    {packWords(read.pack.of, moneyWords(read.pack.cost, stock.currency, language.value))}
                  </p>
                )}
                <button
                  type="button"
                  class="plain"
                  onClick={() =>
                    keepRack(
                      show,
                      { ...document, sheets: document.sheets.filter((_, other) => other !== index) },
                      BOARDS_SAID.removed(sheet.name),
                      null,
                    )
                  }
                >
                  {BOARDS.takeAway}
                </button>
              </div>
            </li>
          );
        })}
      </ul>
      <button
        type="button"
        onClick={() => {
          const size =
            unit === "in" ? { width: "32 in", height: "40 in" } : { width: "815 mm", height: "1015 mm" };
          const sheet = { name: BOARDS.newSheet, board, ...size, cost: 0, copies: 1 };
          keepRack(
            show,
            { ...document, sheets: [...document.sheets, sheet] },
            BOARDS_SAID.added(sheet.name),
            null,
          );
        }}
      >
        {BOARDS.add}
      </button>
    </section>
  );
}

function fieldProps(name: BlankName, show: KeptShow, said: RackSaid): FieldProps<RackSaid, StockDocument> {
  const [, index = ""] = name.split(".");
  const unit = said.document.unit ?? "in";
  return {
    name,
    field: rackField(name),
    said,
    words: rackBlankWords(name, said.document.sheets[Number(index)]?.name ?? ""),
    ruler: { unit, graduation: unit === "in" ? inch(1, 16) : mm(1) },
    keep: (stock, what) => keepRack(show, stock, what, name),
    putBack: () => setUnread(name, null),
  };
}
