import type { ComponentChildren } from "preact";
import { exactFigure, type Ruler } from "../lengths/index.ts";
import { dateWords } from "../words/dates.ts";
import { BLOCK, keptAt, LIGHT_OPTIONS, notKept, rulerSays, workCount, workOfShow } from "../words/page.ts";
import { FigureText } from "./blanks/figure.tsx";
import { Choice } from "./blanks/choice.tsx";
import { browserStore } from "./browser-store.ts";
import { light, lightNamed, setLight } from "./light.ts";
import type { KeptShow, KeptWork } from "./state/change.ts";
import { madeOf } from "./state/made.ts";
import { held, practice, told, trouble, whereKept } from "./state/session.ts";
import { habitsFor } from "../show/index.ts";

/** After the drawing-sheet habit; also the page's status region: nothing is announced anywhere else. */
export function TitleBlock({
  show,
  work,
}: {
  readonly show: KeptShow | null;
  readonly work: KeptWork | undefined;
}) {
  return (
    <footer>
      <div class="block">
        <dl>
          <Cell name={BLOCK.show}>{show?.name ?? BLOCK.notNamed}</Cell>
          {show !== null && work !== undefined ? (
            <Cell name={BLOCK.work}>{workOfShow(show.works.indexOf(work) + 1, show.works.length)}</Cell>
          ) : (
            <Cell name={BLOCK.works}>
              {show === null ? BLOCK.none : workCount(show.works.length, makers(show))}
            </Cell>
          )}
          <RulerCell work={work} />
          <Cell name={BLOCK.onWall}>{show?.date === undefined ? BLOCK.notSaid : dateWords(show.date)}</Cell>
          <Cell name={BLOCK.light}>
            <Choice
              id="light"
              label={BLOCK.light}
              options={LIGHT_OPTIONS}
              value={light.value}
              keep={(key) => setLight(lightNamed(key), browserStore())}
            />
          </Cell>
          <Cell name={BLOCK.kept}>{show === null ? BLOCK.none : kept()}</Cell>
        </dl>
        <p class="said" role="status">
          {told.value}
        </p>
      </div>
    </footer>
  );
}

function Cell({ name, children }: { readonly name: string; readonly children: ComponentChildren }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}

const makers = (show: KeptShow): number =>
  new Set(show.works.map(({ maker }) => maker).filter((maker) => maker !== undefined && maker !== "")).size;

const two = (value: number): string => String(value).padStart(2, "0");

function kept(): string {
  if (trouble.value?.kind === "refused" || held.value === null) return notKept;
  const time = new Date(held.value.at);
  return keptAt(`${two(time.getHours())}:${two(time.getMinutes())}`, whereKept.value);
}

function RulerCell({ work }: { readonly work: KeptWork | undefined }) {
  const made = work === undefined ? null : madeOf(work.design, practice.value);
  const habits = habitsFor(practice.value, practice.value.unit ?? "in");
  const ruler: Ruler | null =
    made?.ok === true ? made.composition.design.ruler : habits.ok ? habits.value.ruler : null;
  if (ruler === null) return null;
  return (
    <Cell name={BLOCK.ruler}>
      {rulerSays(ruler.unit)} <FigureText figure={exactFigure(ruler.graduation, ruler.unit)} unit={false} />
    </Cell>
  );
}
