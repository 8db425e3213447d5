import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Composition } from "../../assembly/index.ts";
import { addressOf, goTo, lastOpened } from "../state/route.ts";
import type { Length } from "../../lengths/index.ts";
import {
  blankWords,
  fieldProblem,
  GRIPS,
  inSentence,
  keptSays,
  PAGE,
  workOfShow,
  workRemoved,
} from "../../words/page.ts";
import { act, file, following } from "../later.tsx";
import { saidLength } from "../blanks/set-length.ts";
import { UndoActs } from "../undo-acts.tsx";
import type { KeptShow, KeptWork } from "../state/change.ts";
import { chosenView, clearAll, draft, unread } from "../state/draft.ts";
import { madeOf } from "../state/made.ts";
import { language, make, practice, told } from "../state/session.ts";
import { Checks } from "./checks.tsx";
import { follow, keep, putBack } from "./editing.ts";
import type { GripEdit } from "./grip-edits.ts";
import { NameBlank } from "./name-blank.tsx";
import { Peek } from "./peek.tsx";
import { SaidSentences } from "./said-sentences.tsx";
import { Views } from "./views.tsx";
import type { Way } from "./ways.ts";

// Below the drawing: it comes while one reads the sentence.
const Reckoning = following(({ Reckoning: it }) => it);
// With all that frames are reckoned with.
const Framing = file(() => import("../framing/framing.tsx"))(({ Framing: it }) => it);

/** One work: said, seen, reckoned and checked, in that order. */
export function Work({ show, work }: { readonly show: KeptShow; readonly work: KeptWork }) {
  const made = madeOf(work.design, practice.value);
  const title = useRef<HTMLHeadingElement>(null);
  const number = show.works.findIndex(({ id }) => id === work.id);

  useEffect(() => {
    clearAll();
    window.scrollTo(0, 0);
    lastOpened.value = work.id;
    title.current?.focus({ preventScroll: true });
    return clearAll;
  }, [work.id]);

  return (
    <>
      <div class="head has-peek">
        <div>
          <h1 ref={title} tabIndex={-1}>
            {work.title}
          </h1>
          <p>
            <NameBlank work={work} />
          </p>
        </div>
        {made.ok && <Peek work={work} kept={made.composition} />}
        <div class="acts">
          <UndoActs />
          <Neighbours show={show} number={number} />
          <button
            type="button"
            class="main-act"
            onClick={() => void act(({ printBenchSheet }) => printBenchSheet(show, number))}
          >
            {PAGE.printBenchSheet}
          </button>
        </div>
      </div>
      {made.ok ? (
        <Composed show={show} work={work} number={number} composition={made.composition} />
      ) : (
        <ul class="checks">
          {made.problems.map(({ field, found, wanted }) => (
            <li key={field} class="check stop">
              <span class="level">stop</span>
              <p>{fieldProblem(field, found, wanted)}</p>
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

function remove(work: KeptWork, at: number): void {
  const said = workRemoved(work.title);
  if (!make({ kind: "remove", work, at, said })) return;
  told.value = keptSays(said, null);
  goTo({ at: "works" });
}

/** Which of the show it is, and the way to the ones before and after it. */
function Neighbours({ show, number }: { readonly show: KeptShow; readonly number: number }) {
  return (
    <span class="neighbours">
      <Neighbour work={show.works[number - 1]} words={PAGE.previous} rel="prev" />
      <span class="together">{workOfShow(number + 1, show.works.length)}</span>
      <Neighbour work={show.works[number + 1]} words={PAGE.next} rel="next" />
    </span>
  );
}

function Neighbour(props: {
  readonly work: KeptWork | undefined;
  readonly words: string;
  readonly rel: string;
}) {
  const { work, words, rel } = props;
  if (work === undefined) return null;
  const address = addressOf({ at: "work", id: work.id });
  return (
    <a class="button plain" href={address} rel={rel} aria-label={`${words}: ${work.title}`}>
      {words}
    </a>
  );
}

interface ComposedProps {
  readonly show: KeptShow;
  readonly work: KeptWork;
  readonly number: number;
  readonly composition: Composition;
}

function Composed({ show, work, number, composition }: ComposedProps) {
  const [moving, setMoving] = useState<GripEdit["key"] | null>(null);
  const latest = useRef<{ readonly edit: GripEdit; readonly value: Length; readonly free: boolean } | null>(
    null,
  );

  // The sentence shows what is dragged too: the blank follows the edge with the same number.
  const drafted = draft.value?.document ?? null;
  const drawnFrom = drafted === null ? null : madeOf(drafted, practice.value);
  const drawn = drawnFrom?.ok === true ? drawnFrom.composition : composition;
  const said = moving === null ? composition : drawn;
  const isUnread = unread.value.size > 0 || (draft.value !== null && draft.value.document === null);

  // A keystroke redraws the views alone: what waits until it is kept is the very same as before.
  const sentences = useMemo(() => <SaidSentences work={work} composition={said} />, [work, said]);
  const checks = useMemo(
    () => <Checks document={work.design} composition={composition} take={(way) => takeWay(work, way)} />,
    [work, composition],
  );
  const framing = useMemo(() => <Framing show={show} work={work} />, [show, work]);
  const sums = useMemo(() => <Reckoning composition={composition} />, [composition]);

  const letGo = (): void => {
    latest.current = null;
    setMoving(null);
  };
  const keepDrag = (): void => {
    const last = latest.current;
    letGo();
    if (last === null) return;
    const { edit, value, free } = last;
    const words =
      edit.blank === "liftBy"
        ? inSentence(GRIPS[edit.key])
        : inSentence(blankWords(edit.blank, 1, language.value).label);
    keep(
      work,
      edit.blank,
      edit.write(work.design, value, free),
      `${words} ${saidLength(value, composition.design.ruler.unit)}`,
    );
  };

  return (
    <div class="work">
      <div class="say">
        {sentences}
        {framing}
        <div class="weighed">
          <h2 class="unseen">{PAGE.checks}</h2>
          {checks}
        </div>
        <p>
          <button type="button" class="plain remove" onClick={() => remove(work, number)}>
            {PAGE.removeWork}
          </button>
        </p>
      </div>
      <div class="draw" id="drawing" data-view={chosenView.value}>
        <PickView />
        <Views
          composition={drawn}
          title={work.title}
          picture={work.picture}
          unread={isUnread}
          moving={moving}
          follow={(edit, value, free) => {
            latest.current = { edit, value, free };
            setMoving(edit.key);
            follow(work, edit.blank, edit.write(work.design, value, free));
          }}
          keep={keepDrag}
          putBack={() => {
            const last = latest.current;
            letGo();
            if (last !== null) putBack(last.edit.blank);
          }}
        />
        {sums}
      </div>
    </div>
  );
}

/** A check's button changes the blank it names and moves the focus there, which washes it once. */
function takeWay(work: KeptWork, way: Way): void {
  if (!keep(work, way.blank, way.document, inSentence(way.label))) return;
  requestAnimationFrame(() => {
    const blank = document.getElementById(`blank-${way.blank}`);
    blank?.focus();
    const shape = blank?.closest(".length") ?? blank;
    shape?.classList.add("washed-once");
    shape?.addEventListener("animationend", () => shape.classList.remove("washed-once"), { once: true });
  });
}

/** On a phone one view at a time; the choice is remembered while the page is open. */
function PickView() {
  return (
    <fieldset class="pick-view">
      <legend class="unseen">{PAGE.whichView}</legend>
      <div class="choose">
        {(["front", "back", "section"] as const).map((view) => (
          <label key={view}>
            <input
              type="radio"
              name="view"
              value={view}
              checked={chosenView.value === view}
              onChange={() => {
                chosenView.value = view;
              }}
            />
            <span>{view === "section" ? PAGE.section.short : PAGE[view].name}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
