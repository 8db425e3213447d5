import { useEffect, useRef } from "preact/hooks";
import {
  firstPageOf,
  PAGE,
  PAPER_WORDS,
  PAPERS as MAKING,
  papersHead,
  planLine,
  printThis,
  PRINTING,
  SIZE_OPTIONS,
} from "../../words/page.ts";
import type { PaperSize } from "../../papers/index.ts";
import { Drawn } from "../drawing/marks.tsx";
import { act } from "../later.tsx";
import type { KeptShow } from "../state/change.ts";
import { making } from "../state/draft.ts";
import { UndoActs } from "../undo-acts.tsx";
import { chosenSize, chosenWorks, look, type Looked, lookAt, printed } from "./looking.ts";

/** The size at which first pages stand: a quarter of the paper. */
const SHOWN = 0.25;

/** Everything that prints: each paper's first page at one scale, for all works or some. */
export function Papers({ show }: { readonly show: KeptShow }) {
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    window.scrollTo(0, 0);
    title.current?.focus({ preventScroll: true });
  }, []);
  const { practice = {} } = show;
  const size: PaperSize = chosenSize.value ?? practice.paper ?? (practice.unit === "mm" ? "a4" : "letter");
  const chosen = printed(show);
  useEffect(() => {
    if (chosen.works.length > 0) void lookAt(chosen, size);
  }, [show, size, chosenWorks.value]);
  const now = look.value;
  const pages = now.state === "here" ? now.looked.papers.filter(({ page }) => page !== null) : [];
  const some = chosen.works.length > 0;
  return (
    <div class="papers" data-looked={now.state === "here" ? "" : undefined}>
      <div class="head">
        <div>
          <h1 ref={title} tabIndex={-1}>
            {papersHead(some ? pages.length : 0)}
          </h1>
          {some && now.state === "here" && <p>{planLine(now.looked.plan, chosen.works.length)}</p>}
        </div>
        <div class="acts">
          <UndoActs />
          {some && (
            <button
              type="button"
              class="main-act"
              aria-busy={making.value ? "true" : undefined}
              onClick={() => void act(({ printPacket }) => printPacket(chosen, size))}
            >
              {PAGE.printPacket}
            </button>
          )}
        </div>
      </div>
      <div class="papers-asked">
        <Choose
          legend={PRINTING.size}
          name="paper-size"
          options={SIZE_OPTIONS}
          value={size}
          choose={(key) => {
            chosenSize.value = key;
          }}
        />
        <Choose
          legend={PRINTING.works}
          name="paper-works"
          options={[
            { key: "all", words: PRINTING.all },
            { key: "some", words: PRINTING.some },
          ]}
          value={chosenWorks.value === null ? "all" : "some"}
          choose={(key) => {
            chosenWorks.value = key === "all" ? null : new Set(show.works.slice(0, 1).map(({ id }) => id));
          }}
        />
      </div>
      {chosenWorks.value !== null && <WhichWorks show={show} chosen={chosenWorks.value} />}
      <Shown some={some} show={chosen} size={size} />
    </div>
  );
}

interface ChooseProps<Key extends string> {
  readonly legend: string;
  readonly name: string;
  readonly options: readonly { readonly key: Key; readonly words: string }[];
  readonly value: Key;
  readonly choose: (key: Key) => void;
}

function Choose<Key extends string>({ legend, name, options, value, choose }: ChooseProps<Key>) {
  return (
    <fieldset class="choose">
      <legend class="unseen">{legend}</legend>
      {options.map(({ key, words }) => (
        <label key={key}>
          <input type="radio" name={name} checked={key === value} onChange={() => choose(key)} />
          <span>{words}</span>
        </label>
      ))}
    </fieldset>
  );
}

function WhichWorks({ show, chosen }: { readonly show: KeptShow; readonly chosen: ReadonlySet<string> }) {
  return (
    <fieldset class="which-works">
      <legend>{PRINTING.choose}</legend>
      {show.works.map(({ id, title }) => (
        <label key={id}>
          <input
            type="checkbox"
            checked={chosen.has(id)}
            onChange={({ currentTarget }) => {
              const next = new Set(chosen);
              if (currentTarget.checked) next.add(id);
              else next.delete(id);
              chosenWorks.value = next;
            }}
          />
          <span>{title}</span>
        </label>
      ))}
    </fieldset>
  );
}

/** The papers, or why there is none to see. */
function Shown({
  some,
  show,
  size,
}: {
  readonly some: boolean;
  readonly show: KeptShow;
  readonly size: PaperSize;
}) {
  const now = look.value;
  if (!some) return <p>{PRINTING.none}</p>;
  if (now.state === "looking") return <p class="quiet">{PRINTING.looking}</p>;
  if (now.state === "none")
    return (
      <div class="papers-none">
        <p>{now.refused === null ? PRINTING.noAnswer : MAKING.refused(now.refused)}</p>
        <button type="button" onClick={() => void lookAt(show, size)}>
          {PRINTING.again}
        </button>
      </div>
    );
  return (
    <>
      <p class="quiet small">{PRINTING.line}</p>
      <PaperList looked={now.looked} show={show} size={size} />
    </>
  );
}

function PaperList({
  looked,
  show,
  size,
}: {
  readonly looked: Looked;
  readonly show: KeptShow;
  readonly size: PaperSize;
}) {
  return (
    <>
      <ul class="paper-list">
        {looked.papers.map(({ name, page }) => {
          if (page === null) return null;
          const { title, use, covers } = PAPER_WORDS[name];
          return (
            <li key={name}>
              <Drawn
                drawing={page}
                name={`paper-${name}`}
                label={firstPageOf(title)}
                class="paper-page"
                larger={SHOWN}
              />
              <div>
                <h2>{title}</h2>
                <p>{use}</p>
                <p class="quiet small">{covers}</p>
                <button
                  type="button"
                  aria-label={printThis(title)}
                  onClick={() => void act(({ printPaper }) => printPaper(show, name, title, size))}
                >
                  {PRINTING.print}
                </button>
              </div>
            </li>
          );
        })}
      </ul>
      {looked.leftOut.length > 0 && (
        <section aria-labelledby="papers-left-out">
          <h2 id="papers-left-out">{PRINTING.leftOut}</h2>
          <ul class="papers-left-out">
            {looked.leftOut.map((why) => (
              <li key={why}>{why}</li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
