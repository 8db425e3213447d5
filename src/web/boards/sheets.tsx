import { useMemo } from "preact/hooks";
import { estimateText, type Typeface } from "../../drawings/index.ts";
import { figureOf, type Length, type Ruler, subtract } from "../../lengths/index.ts";
import { type CutPlanJob, type SheetDrawn, sheetDrawings } from "../../papers/index.ts";
import type { Cut } from "../../plans/index.ts";
import type { BoardJob } from "../../packet/reckoned/index.ts";
import {
  BOARDS,
  cutActLabel,
  longWords,
  outHead,
  sheetGloss,
  sheetHead,
  sheetSeen,
} from "../../words/page.ts";
import { FigureText, OnRuler } from "../blanks/figure.tsx";
import { Drawn } from "../drawing/marks.tsx";
import { fromPx } from "../drawing/pixels.ts";
import { useWidth } from "../drawing/use-width.ts";

/** The page's own letters, measured closely enough for what is laid out by them. */
const TYPEFACE: Typeface = {
  // No line breaks at a space that keeps together, and a times sign is as wide as a figure.
  measure: (text, weight, size) =>
    estimateText(text.replaceAll("\u00a0", " ").replaceAll("×", "+"), weight, size),
  has: () => true,
};

/** The cut plan's smallest letters are 8 points on paper: so much larger they are 14 pixels here. */
const LARGER = 1.32;
const TALLEST = 560;
const WIDEST = 760;
/** Beside the drawing, the list of cuts; below it on a narrow page. */
const BESIDE = 300;
const NARROW = 700;

interface Props {
  readonly board: BoardJob;
  readonly job: CutPlanJob;
  /** A sheet of the stock, by its place in the plan, has been cut. */
  readonly isCut: (index: number, head: string) => void;
}

/** Every sheet as it is cut, with its cuts in order and the fence's settings. */
export function Sheets({ board, job, isCut }: Props) {
  const [ref, width] = useWidth<HTMLDivElement>();
  const room = Math.min(WIDEST, width - 34 - (width < NARROW ? 0 : BESIDE));
  const sheets = useMemo(
    () =>
      width === 0
        ? []
        : sheetDrawings(
            job,
            {
              width: fromPx(Math.max(40, room) / LARGER),
              height: fromPx(TALLEST / LARGER),
            },
            TYPEFACE,
          ),
    [job, room],
  );
  let number = 0;
  return (
    <div ref={ref}>
      {sheets.map((sheet, index) => {
        if (sheet.host === null) number += 1;
        return (
          <OneSheet
            key={index}
            sheet={sheet}
            index={index}
            number={number}
            board={board}
            job={job}
            isCut={isCut}
          />
        );
      })}
    </div>
  );
}

function OneSheet({
  sheet: drawn,
  index,
  number,
  board,
  job,
  isCut,
}: Props & { readonly sheet: SheetDrawn; readonly index: number; readonly number: number }) {
  const { sheet, host } = drawn;
  const { ruler } = board;
  const pieces = board.job.pieces;
  const used =
    sheet.placements.reduce((all, { width, height }) => all + width * height, 0) /
    (sheet.size.width * sheet.size.height);
  const head = host === null ? sheetHead(number) : outHead(host, hostTitle(job, index));
  const name = sheet.from.kind === "stock" ? (board.job.sheets[sheet.from.sheet]?.name ?? "") : "";
  const kept = sheet.left.filter(({ keep }) => keep);
  return (
    <section class="plan" aria-label={head}>
      <div>
        <h2>
          {head} <span class="quiet">{sheetGloss(name, sheet.placements.length, used, drawn.over)}</span>
        </h2>
        <Drawn
          drawing={drawn.drawing}
          name={`sheet-${index}`}
          label={sheetSeen(head, sheet.placements.length, sheet.cuts.length)}
          class="cut-sheet"
          larger={LARGER}
        />
        <p class="small gives">
          {BOARDS.gives}{" "}
          {sheet.placements.map((lies, place) => (
            <span key={place}>
              <b>{drawn.numbers[place]}</b> {pieces[lies.piece]?.name}, <Size of={lies} ruler={ruler} />
              {place < sheet.placements.length - 1 ? "; " : "."}
            </span>
          ))}
          {kept.length > 0 && (
            <>
              {" "}
              {BOARDS.keep}:{" "}
              {kept.map((left, place) => (
                <span key={place}>
                  <Size of={left} ruler={ruler} down />
                  {place < kept.length - 1 ? "; " : "."}
                </span>
              ))}
            </>
          )}
        </p>
      </div>
      <div>
        <h2>{BOARDS.cuts}</h2>
        {sheet.cuts.length === 0 ? (
          <p class="quiet small">{BOARDS.noCut}</p>
        ) : (
          <ol class="cuts">
            {sheet.cuts.map((cut, place) => (
              <CutRow key={place} cut={cut} before={sheet.cuts[place - 1]} number={place + 1} ruler={ruler} />
            ))}
          </ol>
        )}
        {host === null && (
          <p class="way">
            <button type="button" aria-label={cutActLabel(head)} onClick={() => isCut(index, head)}>
              {BOARDS.isCut}
            </button>
          </p>
        )}
      </div>
    </section>
  );
}

/** The title of the work out of whose window a layout is cut. */
function hostTitle({ plan, job }: CutPlanJob, index: number): string {
  const from = plan.sheets[index]?.from;
  if (from?.kind !== "drop-out") return "";
  const host = plan.sheets[from.sheet]?.placements[from.placement];
  return job.pieces[host?.piece ?? -1]?.name ?? "";
}

function CutRow({
  cut,
  before,
  number,
  ruler,
}: {
  readonly cut: Cut;
  readonly before: Cut | undefined;
  readonly number: number;
  readonly ruler: Ruler;
}) {
  const upright = cut.across === "x";
  const long = upright ? subtract(cut.to.y, cut.from.y) : subtract(cut.to.x, cut.from.x);
  return (
    <li>
      <span>{number}</span>
      <span>
        {upright ? BOARDS.down : BOARDS.across}{" "}
        <span class="quiet">
          <OnRuler length={long} ruler={ruler} unit={false} /> {longWords}
        </span>
      </span>
      {before?.setting === cut.setting ? (
        <span class="again">{BOARDS.same}</span>
      ) : (
        <span>
          <OnRuler length={cut.setting} ruler={ruler} />
        </span>
      )}
    </li>
  );
}

function Size({
  of,
  ruler,
  down = false,
}: {
  readonly of: { readonly width: Length; readonly height: Length };
  readonly ruler: Ruler;
  readonly down?: boolean;
}) {
  const rounding = down ? "down" : "nearest";
  const figure = (length: Length) => {
    const found = figureOf(length, ruler, rounding);
    return down ? { ...found, approximate: false } : found;
  };
  return (
    <span class="together">
      <FigureText figure={figure(of.width)} unit={false} /> ×{" "}
      <FigureText figure={figure(of.height)} unit={false} />
    </span>
  );
}
