import { useMemo } from "preact/hooks";
import type { FramePlan } from "../../assembly/index.ts";
import {
  absolute,
  figureOf,
  fineRuler,
  type Figure,
  type Length,
  type Rounding,
  type Ruler,
} from "../../lengths/index.ts";
import { practiceOfShow, worksInFrames } from "../../packet/reckoned/index.ts";
import { sayFrameCheck } from "../../words/frame.ts";
import {
  fieldProblem,
  FRAMING,
  framedIn,
  framedLine,
  keptSays,
  LEVEL_WORDS,
  SEAT_OPTIONS,
  seatSaid,
  underWords,
} from "../../words/page.ts";
import { massWords } from "../../words/weights.ts";
import { Choice } from "../blanks/choice.tsx";
import { figureInSentence, setFigure } from "../blanks/set-length.ts";
import { factsChange, type KeptShow, type KeptWork } from "../state/change.ts";
import { readOf } from "../state/framed.ts";
import { language, make, told } from "../state/session.ts";
import { askedFor, keyOf, kindsOf, namedKind } from "./kinds.ts";

/** What one work is framed in, with what comes of it; nothing where the show names no frame. */
export function Framing({ show, work }: { readonly show: KeptShow; readonly work: KeptWork }) {
  const { practice, frames } = show;
  const kinds = useMemo(() => kindsOf(show), [practice, frames]);
  const made = useMemo(() => {
    if (kinds.length === 0) return null;
    const read = readOf({ ...show, works: [work] });
    return worksInFrames(read.works, practiceOfShow(read));
  }, [work, practice, frames]);
  if (made === null) return null;
  const plan = made.framed[0] ?? null;
  const ruler = made.works[0]?.composition.design.ruler ?? null;
  const named = namedKind(work.frame);
  const problem = made.problems.find(({ problem: { field } }) => /^(frame|practice)/.test(field))?.problem;
  return (
    <>
      <form aria-label={FRAMING.label} onSubmit={(event) => event.preventDefault()}>
        <p class="facts keeping">
          Frame it in{" "}
          <Choice
            id="framed-in"
            label={FRAMING.kind}
            options={kinds}
            value={keyOf(work.frame, kinds)}
            keep={(key) =>
              keep(
                work,
                askedFor(key),
                framedIn(kinds.find((kind) => kind.key === key)?.words ?? FRAMING.nothing),
              )
            }
          />
          {plan !== null && named !== null && (
            <>
              , standing{" "}
              <Choice
                id="framed-seat"
                label={FRAMING.seat}
                options={SEAT_OPTIONS}
                value={plan.frame.seat}
                keep={(key) => {
                  const seat = key === "shimmed" ? "shimmed" : "foot";
                  keep(work, { ...whole(work, named), seat }, seatSaid(seat));
                }}
              />
            </>
          )}
          {plan !== null && `, ${underWords(plan.glazing?.board ?? null)}`}.
        </p>
      </form>
      {problem !== undefined && (
        <p class="facts">{fieldProblem(problem.field, problem.found, problem.wanted)}</p>
      )}
      {plan !== null && ruler !== null && <Framed plan={plan} ruler={ruler} />}
    </>
  );
}

/** What comes of a frame: sizes, weight, stack against rabbet, and what stands against it. */
function Framed({ plan, ruler }: { readonly plan: FramePlan; readonly ruler: Ruler }) {
  const fine = fineRuler(ruler);
  const set = (length: Length, rounding: Rounding): string =>
    figureInSentence(figureOf(length, fine, rounding));
  const { frame, sizes, mass, stack, left, checks } = plan;
  const line = framedLine(
    {
      outside: sizeInSentence(sizes.outer, ruler),
      mass: massWords(mass.total),
      stack: set(stack.depth, "up"),
      rabbet: frame.profile.depth === null ? null : set(frame.profile.depth, "down"),
      left: left === null ? "" : set(absolute(left), left < 0 ? "up" : "down"),
      over: left !== null && left < 0,
    },
    language.value,
  );
  const speech = { ruler, language: language.value, set: figureInSentence };
  return (
    <>
      <p class="quiet framed">{line}</p>
      {checks.length > 0 && (
        <ul class="checks" aria-label={FRAMING.checks}>
          {checks.map((check) => {
            const says = sayFrameCheck(check, speech);
            return (
              <li key={says} class={`check ${check.level}`}>
                <span class="level">{LEVEL_WORDS[check.level]}</span>
                <div>
                  <p>{says}</p>
                </div>
              </li>
            );
          })}
        </ul>
      )}
    </>
  );
}

/** A size to the ruler's marks, its unit once. */
function sizeInSentence({ width, height }: FramePlan["sizes"]["outer"], ruler: Ruler): string {
  const [across, down] = [figureOf(width, ruler), figureOf(height, ruler)];
  return `${withoutUnit(across)}\u00a0×\u00a0${figureInSentence(down)}`;
}

const withoutUnit = (figure: Figure): string => {
  const { whole, fraction } = setFigure(figure);
  return [whole, fraction].filter((part) => part !== "").join("\u2009");
};

/** A work's named frame as an object, to which a way of standing can be added. */
const whole = (work: KeptWork, kind: string): { readonly kind: string } =>
  typeof work.frame === "object" && work.frame !== null ? work.frame : { kind };

function keep(work: KeptWork, frame: KeptWork["frame"], said: string): void {
  const change = factsChange(work, { frame }, said);
  if (change !== null && make(change)) told.value = keptSays(said, null);
}
