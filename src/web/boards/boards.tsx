import { useEffect, useMemo, useRef } from "preact/hooks";
import { afterCutting, type BoardJob } from "../../packet/reckoned/index.ts";
import type { CutPlanJob } from "../../papers/index.ts";
import { sayCuttingCheck } from "../../words/cutting.ts";
import {
  BOARDS,
  BOARDS_SAID,
  boardsHead,
  boardsLine,
  keptSays,
  LEVEL_WORDS,
  PAGE,
} from "../../words/page.ts";
import { act } from "../later.tsx";
import { type KeptShow, showChange } from "../state/change.ts";
import { making } from "../state/draft.ts";
import { language, make, told } from "../state/session.ts";
import { signal } from "../state/signal.ts";
import { UndoActs } from "../undo-acts.tsx";
import { Claim } from "./claim.tsx";
import { boardsOf, type ShowBoards } from "./jobs.ts";
import { askFor, type Planning, planningOf } from "./planning.ts";
import { Rack } from "./rack.tsx";
import { Sheets } from "./sheets.tsx";

/** The board that is looked at, by its name; kept while one goes elsewhere. */
const shownBoard = signal<string | null>(null);

/** What the works are cut from: the plan's claim, its sheets, and the rack. */
export function Boards({ show }: { readonly show: KeptShow }) {
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    window.scrollTo(0, 0);
    title.current?.focus({ preventScroll: true });
  }, []);
  const boards = useMemo(() => boardsOf(show), [show]);
  const jobs = boards?.jobs ?? [];
  const index = Math.max(
    0,
    jobs.findIndex(({ board }) => board === shownBoard.value),
  );
  const board = jobs[index];
  useEffect(() => {
    // What is looked at is planned first.
    if (board !== undefined)
      askFor([board.job, ...jobs.filter((other) => other !== board).map(({ job }) => job)]);
  }, [boards, index]);
  if (boards === null || board === undefined)
    return (
      <div class="head">
        <div>
          <h1 ref={title} tabIndex={-1}>
            {boards === null ? BOARDS.unread : (show.cut ?? []).length > 0 ? BOARDS.allCut : BOARDS.none}
          </h1>
          <p>{BOARDS.noneLine}</p>
        </div>
        <div class="acts">
          <UndoActs />
        </div>
      </div>
    );
  const planning = planningOf(board.job);
  const { plan } = planning;
  const missing = plan?.missing.reduce((all, count) => all + count, 0) ?? 0;
  return (
    <div
      class="boards"
      data-done={planning.state === "done" || planning.state === "stopped" ? "" : undefined}
    >
      <div class="head">
        <div>
          <h1 ref={title} tabIndex={-1}>
            {boardsHead(plan?.sheetsUsed ?? null, board.board)}
          </h1>
          {plan !== null && (
            <p>
              {boardsLine(
                plan.sheets.reduce((all, { placements }) => all + placements.length, 0),
                plan.sheets.reduce(
                  (all, { from, placements }) => all + (from.kind === "stock" ? 0 : placements.length),
                  0,
                ),
                missing,
              )}
            </p>
          )}
        </div>
        <div class="acts">
          <UndoActs />
          <button
            type="button"
            class="main-act"
            aria-busy={making.value ? "true" : undefined}
            onClick={() => void act(({ printPacket }) => printPacket(show))}
          >
            {PAGE.printPacket}
          </button>
        </div>
      </div>
      {jobs.length > 1 && <WhichBoard jobs={jobs} index={index} />}
      <div class="boards-beside">
        <div class="drawn">
          <Claim
            board={board}
            planning={planning}
            currency={boards.stock.currency}
            priced={boards.stock.priced}
          />
          <Planned show={show} boards={boards} board={board} index={index} planning={planning} />
        </div>
        <Rack show={show} boards={boards} board={board.board} />
      </div>
    </div>
  );
}

function WhichBoard({ jobs, index }: { readonly jobs: readonly BoardJob[]; readonly index: number }) {
  return (
    <fieldset class="choose which-wall">
      <legend class="unseen">{BOARDS.which}</legend>
      {jobs.map(({ board }, place) => (
        <label key={board}>
          <input
            type="radio"
            name="which-board"
            checked={place === index}
            onChange={() => {
              shownBoard.value = board;
            }}
          />
          <span>{board}</span>
        </label>
      ))}
    </fieldset>
  );
}

/** The checks of a plan and its sheets. */
function Planned({
  show,
  boards,
  board,
  index,
  planning: { plan },
}: {
  readonly show: KeptShow;
  readonly boards: ShowBoards;
  readonly board: BoardJob;
  readonly index: number;
  readonly planning: Planning;
}) {
  const job = useMemo((): CutPlanJob | null => {
    if (plan === null) return null;
    let next = (boards.offset[index] ?? 0) + 1;
    return {
      board: board.board,
      material: board.material,
      job: board.job,
      plan,
      numbers: plan.sheets.map(({ placements }) => placements.map(() => next++)),
      house: { studio: "", show: "" },
      planWords: { number: 1, date: "", makesVoid: null },
      ruler: board.ruler,
      language: language.value,
    };
  }, [plan, board]);
  if (plan === null || job === null) return null;
  return (
    <>
      {plan.checks.length > 0 && (
        <ul class="checks" aria-label={BOARDS.checks}>
          {plan.checks.map((check, place) => (
            <li key={place} class={`check ${check.level}`}>
              <span class="level">{LEVEL_WORDS[check.level]}</span>
              <div>
                <p>{sayCuttingCheck(check, { job: board.job, unit: board.ruler.unit })}</p>
              </div>
            </li>
          ))}
        </ul>
      )}
      <Sheets
        board={board}
        job={job}
        isCut={(sheet, head) => {
          const { works, stock, document } = boards;
          const before = { stock: document, cut: show.cut ?? [] };
          const { stock: rack, cut } = afterCutting(board, plan, sheet, works, stock, before);
          const said = BOARDS_SAID.cut(head, board.board);
          const change = showChange(show, { stock: rack, cut: [...cut] }, said);
          if (change !== null && make(change)) told.value = keptSays(said, null);
        }}
      />
    </>
  );
}
