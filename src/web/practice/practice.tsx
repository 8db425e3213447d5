import { useEffect, useMemo, useRef } from "preact/hooks";
import type { PracticeDocument } from "../../show/index.ts";
import {
  type BlankName,
  type Habit,
  habitBlankWords,
  habitsSaid,
  movesSay,
  PRACTICE,
} from "../../words/page.ts";
import { FieldBlank, FieldFault, type FieldProps } from "../blanks/field-blank.tsx";
import { Sentence } from "../blanks/sentence.tsx";
import type { KeptShow } from "../state/change.ts";
import { clearDrafts, setUnread } from "../state/draft.ts";
import { UndoActs } from "../undo-acts.tsx";
import { keepPractice, readHabitsSaid } from "./editing.ts";
import { habitsNow, type HabitsSaid } from "./fields.ts";
import { habitField } from "./habit-field.ts";
import { movedBy } from "./moves.ts";

/** One's own habits: a sentence each, and at its side why, from where, and whom a change moves. */
export function Practice({ show }: { readonly show: KeptShow }) {
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    window.scrollTo(0, 0);
    title.current?.focus({ preventScroll: true });
    return clearDrafts;
  }, []);
  const read = useMemo(() => readHabitsSaid(show.practice ?? {}), [show.practice]);
  return (
    <div class="practice">
      <div class="head">
        <div>
          <h1 ref={title} tabIndex={-1}>
            {read.ok ? PRACTICE.title : PRACTICE.unread}
          </h1>
          <p>{read.ok ? PRACTICE.line : `${read.field}: ${read.wanted}`}</p>
        </div>
        <div class="acts">
          <UndoActs />
        </div>
      </div>
      {read.ok && (
        <div class="habits">
          {habitsSaid(habitsNow(read.said)).map((habit) => (
            <HabitSaid key={habit.name} habit={habit} show={show} said={read.said} />
          ))}
        </div>
      )}
    </div>
  );
}

interface Props {
  readonly habit: Habit;
  readonly show: KeptShow;
  readonly said: HabitsSaid;
}

function HabitSaid({ habit, show, said }: Props) {
  const moves = movedBy(habit.name, show.works, said.document);
  const heading = `habit-${habit.name}`;
  return (
    <section class="habit" aria-labelledby={heading}>
      <h2 id={heading}>{habit.title}</h2>
      <Sentence
        class="habit-said"
        label={habit.title}
        sentence={habit.sentence}
        blank={(name) => <FieldBlank key={name} {...fieldProps(name, show, said)} />}
        fault={(name) => <FieldFault key={name} {...fieldProps(name, show, said)} />}
      />
      <div class="beside">
        <p>{habit.why}</p>
        {moves !== null && <p class="moves">{movesSay(moves, show.works.length)}</p>}
      </div>
    </section>
  );
}

function fieldProps(
  name: BlankName,
  show: KeptShow,
  said: HabitsSaid,
): FieldProps<HabitsSaid, PracticeDocument> {
  return {
    name,
    field: habitField(name),
    said,
    words: habitBlankWords(name, said.habits.mats.length, said.language),
    ruler: said.habits.ruler,
    keep: (next, what) => keepPractice(show, next, what, name),
    putBack: () => setUnread(name, null),
  };
}
