import { signal } from "../state/signal.ts";
import { useLayoutEffect, useMemo, useRef } from "preact/hooks";
import { type Composition } from "../../assembly/index.ts";
import { packageView } from "../../drawings/index.ts";
import { inch, mm } from "../../lengths/index.ts";
import {
  carried,
  laidDown,
  LEVEL_WORDS,
  openWork,
  ORDER,
  putBackSays,
  SCALE_BAR,
  TABLE_HINT,
  takenUp,
  workMoved,
} from "../../words/page.ts";
import { Drawn } from "../drawing/marks.tsx";
import { fromPx, px } from "../drawing/pixels.ts";
import { useWidth } from "../drawing/use-width.ts";
import type { KeptWork } from "../state/change.ts";
import { addressOf } from "../state/route.ts";
import { make, practice, show, told } from "../state/session.ts";
import { sizeText } from "../blanks/set-length.ts";
import type { Laid } from "./works.tsx";

/** A work that is taken up, and the place to which it has been carried. */
const carrying = signal<{ readonly id: string; readonly from: number; readonly to: number } | null>(null);

/** Whether each work stands with two acts that move it one place: for a thumb, a switch, a voice. */
const ordering = signal(false);

/** The largest side of the largest package, in pixels, on a wide page and on a narrow one. */
const LARGEST = { wide: 140, narrow: 112 };
const NARROW = 620;

/** Every work's package at one scale, feet on one line, like prints laid on a table. */
export function Table({ works }: { readonly works: readonly Laid[] }) {
  const [at, width] = useWidth<HTMLDivElement>();
  const list = useRef<HTMLOListElement>(null);
  const drag = useRef<{ readonly id: string; readonly x: number; readonly y: number; moved: boolean } | null>(
    null,
  );
  const ordered = inOrder(works);
  const largest = Math.max(
    1,
    ...works.flatMap(({ made }) =>
      made.ok ? [made.composition.outer.width, made.composition.outer.height] : [],
    ),
  );
  const scale = fromPx(width < NARROW ? LARGEST.narrow : LARGEST.wide) / largest;
  const lifted = carrying.value;

  // A work that is carried by the keys keeps the focus when it moves in the document.
  useLayoutEffect(() => {
    if (lifted !== null && drag.current === null) focusOn(list.current, lifted.id);
  }, [lifted?.to]);

  return (
    <div ref={at}>
      <div class="scale-line">
        <ScaleBar scale={scale} />
        <span id="table-hint">{TABLE_HINT}</span>
        <button
          type="button"
          class="plain"
          aria-pressed={ordering.value ? "true" : "false"}
          onClick={() => {
            ordering.value = !ordering.value;
          }}
        >
          {ORDER.act}
        </button>
      </div>
      <ol
        class="laid"
        ref={list}
        onPointerMove={(event) => {
          const held = drag.current;
          if (held === null) return;
          if (!held.moved && Math.hypot(event.clientX - held.x, event.clientY - held.y) < 6) return;
          held.moved = true;
          const over = document.elementFromPoint(event.clientX, event.clientY)?.closest("li[data-work]");
          const id = over?.getAttribute("data-work");
          const from = works.findIndex(({ work }) => work.id === held.id);
          const to = inOrder(works).findIndex(({ work }) => work.id === id);
          carrying.value = {
            id: held.id,
            from,
            to: id === held.id || to < 0 ? (carrying.value?.to ?? from) : to,
          };
        }}
        onPointerUp={() => {
          if (drag.current?.moved === true) layDown(works);
          // The click that follows a drag opens nothing; it is told apart by what was held.
          setTimeout(() => {
            drag.current = null;
          });
        }}
        onPointerCancel={() => {
          drag.current = null;
          carrying.value = null;
        }}
      >
        {ordered.map((laid) => (
          <li
            key={laid.work.id}
            data-work={laid.work.id}
            class={lifted?.id === laid.work.id ? "carried" : undefined}
            onPointerDown={(event) => {
              if (event.button !== 0 || event.pointerType === "touch") return;
              drag.current = { id: laid.work.id, x: event.clientX, y: event.clientY, moved: false };
            }}
          >
            <Package
              laid={laid}
              scale={scale}
              works={works}
              opens={(event) => {
                if (drag.current?.moved === true) event.preventDefault();
              }}
            />
            {ordering.value && <OrderActs work={laid.work} works={works} />}
          </li>
        ))}
      </ol>
    </div>
  );
}

/** The order as it would be if what is carried were laid down now. */
function inOrder(works: readonly Laid[]): readonly Laid[] {
  const held = carrying.value;
  const work = held === null ? undefined : works[held.from];
  if (held === null || work === undefined || work.work.id !== held.id) return works;
  const rest = works.filter((other) => other !== work);
  return [...rest.slice(0, held.to), work, ...rest.slice(held.to)];
}

const focusOn = (list: Element | null, id: string): void => {
  const link = list?.querySelector(`li[data-work="${CSS.escape(id)}"] a`);
  if (link instanceof HTMLElement && document.activeElement !== link) link.focus();
};

function layDown(works: readonly Laid[]): void {
  const held = carrying.value;
  carrying.value = null;
  const work = held === null ? undefined : works[held.from]?.work;
  if (held === null || work === undefined) return;
  if (held.to !== held.from) {
    make({
      kind: "move",
      work: work.id,
      from: held.from,
      to: held.to,
      said: workMoved(work.title, held.to + 1),
    });
  }
  told.value = laidDown(work.title, held.to + 1, works.length);
}

/** One place earlier, one place later; the act keeps the focus as the work moves. */
function OrderActs({ work, works }: { readonly work: KeptWork; readonly works: readonly Laid[] }) {
  const from = works.findIndex((laid) => laid.work.id === work.id);
  return (
    <span class="order">
      {([-1, 1] as const).map((way) => (
        <button
          key={way}
          id={`order${way}-${work.id}`}
          type="button"
          aria-label={`${work.title}: ${ORDER[way].long}`}
          aria-disabled={works[from + way] === undefined ? "true" : undefined}
          onClick={() => {
            if (works[from + way] === undefined) return;
            carrying.value = { id: work.id, from, to: from + way };
            layDown(works);
            requestAnimationFrame(() => document.getElementById(`order${way}-${work.id}`)?.focus());
          }}
        >
          {ORDER[way].short}
        </button>
      ))}
    </span>
  );
}

function Package(props: {
  readonly laid: Laid;
  readonly scale: number;
  readonly works: readonly Laid[];
  readonly opens: (event: MouseEvent) => void;
}) {
  const { laid, scale, works } = props;
  const { work, made, level } = laid;
  const size = made.ok ? sizeText(made.composition.outer, made.composition.design.ruler.unit) : "";
  return (
    <a
      id={`laid-${work.id}`}
      href={addressOf({ at: "work", id: work.id })}
      draggable={false}
      aria-label={openWork(work.title, size, level)}
      aria-describedby="table-hint"
      onClick={props.opens}
      onBlur={() => {
        // Focus that only follows the carried work as it moves does not lay it down.
        if (carrying.value?.id === work.id && document.hasFocus()) requestAnimationFrame(() => leave(work));
      }}
      onKeyDown={(event) => keyOn(event, work, works)}
    >
      {made.ok ? (
        <Small composition={made.composition} scale={scale} picture={work.picture} id={work.id} />
      ) : (
        <span class="unread-work" />
      )}
      <span class="name">
        <b>{work.title}</b>
        <span class="quiet">
          {size} {level !== null && <span class={`mark ${level}`}>{LEVEL_WORDS[level]}</span>}
        </span>
      </span>
    </a>
  );
}

/** Going elsewhere puts back what was only carried. */
function leave(work: KeptWork): void {
  const focused = document.activeElement?.closest("li[data-work]")?.getAttribute("data-work");
  if (carrying.value?.id !== work.id || focused === work.id) return;
  carrying.value = null;
  told.value = putBackSays(work.title);
}

function keyOn(event: KeyboardEvent, work: KeptWork, works: readonly Laid[]): void {
  const held = carrying.value;
  if (event.key === " ") {
    event.preventDefault();
    if (held?.id === work.id) layDown(works);
    else {
      const from = works.findIndex((laid) => laid.work.id === work.id);
      carrying.value = { id: work.id, from, to: from };
      told.value = takenUp(work.title);
    }
    return;
  }
  if (held?.id !== work.id) return;
  const way = STEPS[event.key];
  if (way !== undefined) {
    event.preventDefault();
    const to = Math.min(works.length - 1, Math.max(0, held.to + way));
    carrying.value = { ...held, to };
    told.value = carried(work.title, to + 1, works.length);
  } else if (event.key === "Escape") {
    event.preventDefault();
    carrying.value = null;
    told.value = putBackSays(work.title);
  }
}

const STEPS: Readonly<Record<string, number>> = { ArrowLeft: -1, ArrowUp: -1, ArrowRight: 1, ArrowDown: 1 };

export function Small(props: {
  readonly composition: Composition;
  readonly scale: number;
  readonly picture: string | undefined;
  readonly id: string;
}) {
  const { composition, scale, picture, id } = props;
  const view = useMemo(
    () =>
      packageView(composition, {
        scale,
        ruler: composition.design.ruler,
        ...(picture === undefined ? {} : { picture }),
      }),
    [composition, scale, picture],
  );
  return <Drawn drawing={view} name={`small-${id}`} label="" class="lying" hidden />;
}

/** Twelve inches or three hundred millimetres at the table's scale, halved. */
function ScaleBar({ scale }: { readonly scale: number }) {
  const unit = practice.value.unit ?? show.value?.works[0]?.design.unit ?? "in";
  const length = px((unit === "in" ? inch(12) : mm(300)) * scale);
  return (
    <span class="scale-bar">
      <svg class="drawing" width={length + 2} height={10} viewBox={`0 0 ${length + 2} 10`} aria-hidden="true">
        <path class="line line-edge" d={`M1 9V2H${length + 1}V9M${1 + length / 2} 2V6`} />
      </svg>
      {SCALE_BAR[unit]}
    </span>
  );
}
