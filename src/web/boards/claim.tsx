import { useEffect } from "preact/hooks";
import type { BoardJob } from "../../packet/reckoned/index.ts";
import {
  barLabel,
  BOARDS,
  claimWords,
  lookingWords,
  moneyWords,
  tookSeconds,
  unpriced,
} from "../../words/page.ts";
import { language, told } from "../state/session.ts";
import { lookFurther, type Planning, stopPlanning } from "./planning.ts";

interface Props {
  readonly board: BoardJob;
  readonly planning: Planning;
  readonly currency: string | null;
  readonly priced: boolean;
}

/** How much longer than what it shows the whole bar is, so that both marks can be told. */
const BAR = 1.3;

/** The claim first: what the plan costs, what any plan must cost, and how near they are; while it is looked for, how far. */
export function Claim({ board, planning, currency, priced }: Props) {
  const { plan, progress, state, seconds } = planning;
  const said = (cost: number): string =>
    priced ? moneyWords(cost, currency, language.value) : unpriced(cost);
  const words =
    plan === null
      ? []
      : claimWords(
          said(plan.cost),
          said(plan.bound.cost),
          plan.proven,
          plan.bound.cost > 0 ? plan.cost / plan.bound.cost - 1 : 1,
        );
  const claim = words.map(({ text }) => text).join("");
  const busy = state === "waiting" || state === "planning";
  // Told once, when the work has ended.
  useEffect(() => {
    if (state === "done" && claim !== "" && seconds > 2) told.value = claim;
  }, [state, claim]);
  return (
    <section class="claim" aria-label={BOARDS.claim}>
      {state === "failed" && <p>{BOARDS.failed}</p>}
      {plan === null && busy && <p>{BOARDS.first}</p>}
      {plan !== null && (
        <>
          <p>{words.map(({ text, strong }, index) => (strong ? <b key={index}>{text}</b> : text))}</p>
          {plan.cost > 0 && (
            <svg class="bound" role="img" aria-label={barLabel(said(plan.cost), said(plan.bound.cost))}>
              <rect class="whole" width="100%" height="12" y="4" />
              <rect class="plan-part" width={`${100 / BAR}%`} height="12" y="4" />
              <line
                x1={`${(100 * plan.bound.cost) / (BAR * plan.cost)}%`}
                x2={`${(100 * plan.bound.cost) / (BAR * plan.cost)}%`}
                y1="0"
                y2="20"
              />
            </svg>
          )}
          <p class="small quiet">
            {plan.cost > 0 && BOARDS.barWords} {!busy && tookSeconds(seconds)}
          </p>
        </>
      )}
      {busy && plan !== null && !plan.proven && (
        <p class="looking">
          <span>
            {lookingWords(
              progress?.complete === true ? said(progress.cost) : null,
              progress === null ? null : said(progress.bound),
            )}
          </span>
          <progress aria-label={BOARDS.claim} />
          <button type="button" onClick={() => stopPlanning(board.job)}>
            {BOARDS.stop}
          </button>
        </p>
      )}
      {!busy && plan !== null && !plan.proven && (
        <p class="looking">
          <button type="button" onClick={() => lookFurther(board.job)}>
            {BOARDS.further}
          </button>
        </p>
      )}
    </section>
  );
}
