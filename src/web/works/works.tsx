import { useEffect, useRef } from "preact/hooks";
import { signal } from "../state/signal.ts";
import type { Level } from "../../assembly/index.ts";
import { printExact } from "../../lengths/index.ts";
import { habitsFor } from "../../show/index.ts";
import { keptSays, PAGE, ALL_WORKS, workAdded, worksState, worksTitle } from "../../words/page.ts";
import { FileAct, LIST_FILES } from "../file-act.tsx";
import { act, whenOpened } from "../later.tsx";
import { making } from "../state/draft.ts";
import { newId } from "../state/chance.ts";
import type { KeptShow, KeptWork } from "../state/change.ts";
import { type Made, madeOf } from "../state/made.ts";
import { addressOf, goTo, lastOpened } from "../state/route.ts";
import { make, practice, told } from "../state/session.ts";
import { UndoActs } from "../undo-acts.tsx";
import { Table } from "./table.tsx";

const List = whenOpened(({ List: it }) => it);

const shown = signal<"table" | "list">("table");

export interface Laid {
  readonly work: KeptWork;
  readonly made: Made;
  /** The heaviest check's level, notes left aside; "stop" where the work cannot be read. */
  readonly level: Level | null;
}

/** All works of a show: on the table at one scale, or as a list. */
export function Works({ show }: { readonly show: KeptShow }) {
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    const left = lastOpened.value === null ? null : document.getElementById(`laid-${lastOpened.value}`);
    window.scrollTo(0, 0);
    if (left === null) title.current?.focus({ preventScroll: true });
    else left.focus();
  }, []);
  const works = show.works.map(laidOf);
  const stops = works.filter(({ made, level }) => made.ok && level === "stop").length;
  const warns = works.filter(({ level }) => level === "warn").length;
  const unread = works.filter(({ made }) => !made.ok).length;
  return (
    <div class="works">
      <div class="head">
        <div>
          <h1 ref={title} tabIndex={-1}>
            {worksTitle(works.length, show.date)}
          </h1>
          {works.length > 0 && <p>{worksState(stops, warns, unread)}</p>}
        </div>
        <div class="acts">
          <UndoActs />
          <HowShown />
          <FileAct
            words={PAGE.bringList}
            accept={LIST_FILES}
            take={(file) => void act(({ bringInList }) => bringInList(file))}
          />
          <button
            type="button"
            aria-busy={making.value ? "true" : undefined}
            onClick={() => void act(({ printPacket }) => printPacket(show))}
          >
            {PAGE.printPacket}
          </button>
          <button type="button" class="main-act" onClick={() => addWork(show)}>
            {ALL_WORKS.addWork}
          </button>
        </div>
      </div>
      {shown.value === "table" ? <Table works={works} /> : <List works={works} />}
      <p class="after-works">
        <button type="button" class="plain" onClick={() => void act(({ saveCopy }) => saveCopy(show))}>
          {ALL_WORKS.saveCopy}
        </button>
        <a class="button plain" href={addressOf({ at: "first" })}>
          {ALL_WORKS.anotherShow}
        </a>
      </p>
    </div>
  );
}

function laidOf(work: KeptWork): Laid {
  const made = madeOf(work.design, practice.value);
  if (!made.ok) return { work, made, level: "stop" };
  const first = made.composition.checks[0]?.level ?? null;
  return { work, made, level: first === "note" ? null : first };
}

function HowShown() {
  return (
    <fieldset class="choose">
      <legend class="unseen">{ALL_WORKS.howShown}</legend>
      {(["table", "list"] as const).map((way) => (
        <label key={way}>
          <input
            type="radio"
            name="shown"
            checked={shown.value === way}
            onChange={() => {
              shown.value = way;
            }}
          />
          <span>{way === "table" ? ALL_WORKS.onTable : ALL_WORKS.asList}</span>
        </label>
      ))}
    </fieldset>
  );
}

/** A new work takes the sheet of the one before it: a show's prints are often alike, and every blank can be changed. */
function addWork(show: KeptShow): void {
  const last = show.works.at(-1);
  const unit = practice.value.unit ?? "in";
  const habits = habitsFor(practice.value, unit);
  const side = (inches: string, millimetres: string): string => (unit === "in" ? inches : millimetres);
  const print = last?.design.print ?? { width: side("8 1/2 in", "210 mm"), height: side("11 in", "297 mm") };
  const { width, height, image, thickness } = print;
  const sized = {
    ...(width === undefined ? {} : { width }),
    ...(height === undefined ? {} : { height }),
    ...(image === undefined ? {} : { image }),
    ...(thickness === undefined ? {} : { thickness }),
  };
  const graduation = habits.ok ? { graduation: printExact(habits.value.ruler.graduation, unit) } : {};
  const work: KeptWork = {
    id: newId(),
    title: PAGE.untitled,
    design: { unit: last?.design.unit ?? unit, ...(last === undefined ? graduation : {}), print: sized },
  };
  const said = workAdded(work.title);
  if (!make({ kind: "add", work, at: show.works.length, said })) return;
  told.value = keptSays(said, null);
  goTo({ at: "work", id: work.id });
}
