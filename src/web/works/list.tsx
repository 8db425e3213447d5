import { useState } from "preact/hooks";
import { fromPx } from "../drawing/pixels.ts";
import { LEVEL_WORDS, LIST_COLUMNS } from "../../words/page.ts";
import { addressOf } from "../state/route.ts";
import { sizeText } from "../blanks/set-length.ts";
import { Small } from "./table.tsx";
import type { Laid } from "./works.tsx";

type Column = keyof typeof LIST_COLUMNS;
const COLUMNS: readonly Column[] = ["place", "title", "maker", "window", "board", "checks"];
const TALLEST = 30;

/** A row for each work, to be sorted by any column; the order on the wall stays as it is. */
export function List({ works }: { readonly works: readonly Laid[] }) {
  const [by, setBy] = useState<{ readonly column: Column; readonly up: boolean }>({
    column: "place",
    up: true,
  });
  const rows = works
    .map((laid, index) => ({ laid, place: index + 1 }))
    .toSorted((a, b) => (by.up ? 1 : -1) * compare(by.column, a, b));
  return (
    <table class="list works-list">
      <thead>
        <tr>
          <td class="pic" />
          {COLUMNS.map((column) => (
            <th
              key={column}
              scope="col"
              class={`column-${column}`}
              aria-sort={by.column === column ? (by.up ? "ascending" : "descending") : undefined}
            >
              <button
                type="button"
                class="plain sort"
                onClick={() => setBy({ column, up: by.column === column ? !by.up : true })}
              >
                {LIST_COLUMNS[column]}
              </button>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <Row key={row.laid.work.id} laid={row.laid} place={row.place} />
        ))}
      </tbody>
    </table>
  );
}

function Row({ laid, place }: { readonly laid: Laid; readonly place: number }) {
  const { work, made, level } = laid;
  const composition = made.ok ? made.composition : null;
  const unit = composition?.design.ruler.unit ?? "in";
  const window = composition?.mats[0]?.back;
  return (
    <tr>
      <td class="pic">
        {composition !== null && (
          <Small
            composition={composition}
            scale={fromPx(TALLEST) / Math.max(composition.outer.width, composition.outer.height, 1)}
            picture={work.picture}
            id={`row-${work.id}`}
          />
        )}
      </td>
      <td class="column-place">{place}</td>
      <th scope="row" class="column-title">
        <a id={`laid-${work.id}`} href={addressOf({ at: "work", id: work.id })}>
          {work.title}
        </a>
      </th>
      <td class="column-maker">{work.maker}</td>
      <td class="column-window">{window !== undefined && sizeText(window, unit)}</td>
      <td class="column-board">{composition !== null && sizeText(composition.outer, unit)}</td>
      <td class="column-checks">
        {level !== null && <span class={`mark ${level}`}>{LEVEL_WORDS[level]}</span>}
      </td>
    </tr>
  );
}

const WEIGHTS = { stop: 0, warn: 1, note: 2 } as const;

interface Placed {
  readonly laid: Laid;
  readonly place: number;
}

function compare(column: Column, a: Placed, b: Placed): number {
  const area = ({ laid }: Placed, which: "outer" | "window"): number => {
    if (!laid.made.ok) return 0;
    const { outer, mats } = laid.made.composition;
    const size = which === "outer" ? outer : (mats[0]?.back ?? outer);
    return size.width * size.height;
  };
  const weight = ({ laid: { level } }: Placed): number => (level === null ? 3 : WEIGHTS[level]);
  switch (column) {
    case "place":
      return a.place - b.place;
    case "title":
      return a.laid.work.title.localeCompare(b.laid.work.title) || a.place - b.place;
    case "maker":
      return (a.laid.work.maker ?? "").localeCompare(b.laid.work.maker ?? "") || a.place - b.place;
    case "window":
      return area(a, "window") - area(b, "window") || a.place - b.place;
    case "board":
      return area(a, "outer") - area(b, "outer") || a.place - b.place;
    case "checks":
      return weight(a) - weight(b) || a.place - b.place;
  }
}
