import { useLayoutEffect, useMemo, useRef } from "preact/hooks";
import { type WallSeen, type WallView, wallView } from "../../drawings/index.ts";
import { half, subtract } from "../../lengths/index.ts";
import { carried, frameOnWallSays, putBackSays, takenUp, WALL, wallSeenSays } from "../../words/page.ts";
import { Drawn } from "../drawing/marks.tsx";
import { fromPx, px } from "../drawing/pixels.ts";
import { useWidth } from "../drawing/use-width.ts";
import { lit, pointed } from "../state/draft.ts";
import { practice, told } from "../state/session.ts";
import type { WallOnPage } from "./hung.ts";
import { orderPlaces, placeUnder } from "./order.ts";
import { carriedFrame } from "./state.ts";
import { wallParts } from "./wall-blank.tsx";

interface Props {
  readonly wall: WallOnPage;
  readonly unread: boolean;
  /** The drawing follows an order that is not kept yet. */
  readonly carry: (from: number, to: number) => void;
  readonly layDown: (from: number, to: number) => void;
  readonly putBack: () => void;
}

/** In pixels: what the upright tape and the wall's own edges take, the least shorter side of a frame, how high a wall may stand. */
const BESIDE = 104 + 28;
const LEAST_FRAME = 36;
const BEFORE_FIRST = 40;
const TALLEST = 430;

/** The wall as it is seen from the room. On a narrow page it slides, and the upright tape stays. */
export function Elevation(props: Props) {
  const { wall } = props;
  const [ref, width] = useWidth<HTMLDivElement>();
  const { request, plan, works: hung } = wall.hung;
  const seen = useMemo(
    (): WallSeen => ({
      job: request.job,
      plan,
      hung,
      fronts: wall.works.map(({ composition, work, frame }, index) => {
        const own = request.works[index]?.width ?? composition.outer.width;
        const beside = half(subtract(own, composition.outer.width), "nearest");
        return { composition, picture: work.picture, face: frame?.kind.moulding.overall ?? beside };
      }),
      measuring: request.measuring,
      seats: request.habits.seats,
      level: request.job.floor !== 0,
    }),
    [wall.hung, wall.works, practice.value],
  );
  const scale = scaleOf(seen, width);
  const view = useMemo(
    () =>
      width === 0
        ? null
        : wallView(seen, {
            scale,
            ruler: request.ruler,
            words: { eyeLine: WALL.eyeLine, levelLine: WALL.levelLine, floor: WALL.floor },
          }),
    [seen, scale, width === 0],
  );
  const slides = useRef<HTMLDivElement>(null);
  // Where the wall slides, what hangs on it is seen first.
  useLayoutEffect(() => {
    const lefts = (view?.boxes ?? []).map(({ left }) => px(left));
    if (slides.current !== null) slides.current.scrollLeft = Math.max(0, Math.min(...lefts) - BEFORE_FIRST);
  }, [view === null, wall.read.index]);
  const parts = lit.value === null ? [] : wallParts(lit.value);
  return (
    <div class="drawn wall-sheet" ref={ref}>
      {view !== null && (
        <>
          <Drawn drawing={view.upright} name="upright" label="" class="upright" hidden />
          <div
            class="slides"
            ref={slides}
            {...(px(view.wall.width) > width - px(view.upright.width)
              ? { role: "region", tabIndex: 0, "aria-label": WALL.slides }
              : {})}
          >
            <Drawn
              drawing={view.wall}
              name="wall"
              label={wallSeenSays(wall.read.name, wall.works.length)}
              lit={parts}
              unread={props.unread || wall.waiting}
              point={(part) => {
                pointed.value = part;
              }}
            >
              <Frames {...props} boxes={view.boxes} />
            </Drawn>
          </div>
        </>
      )}
    </div>
  );
}

/** As large as the page is wide; never so small that no frame can be told, never higher than a screen takes. */
function scaleOf({ job, plan }: WallSeen, width: number): number {
  const room = Math.max(1, fromPx(width - BESIDE));
  const smallest = Math.min(
    ...job.frames.flatMap((frame) => [frame.width, frame.height]),
    job.wall.width / 4,
  );
  const tops = job.frames.map((frame, index) => (plan.places[index]?.y ?? 0) + frame.height);
  const feet = plan.places.map(({ y }) => y);
  const high = Math.max(job.eyeLine, ...tops) - Math.min(job.eyeLine - 1, ...feet);
  const least = fromPx(LEAST_FRAME) / smallest;
  return Math.max(least, Math.min(room / job.wall.width, fromPx(TALLEST) / high));
}

type Carrying = Props & { readonly boxes: WallView["boxes"] };

/** Carries a frame with the pointer until it is let go: the drawing is laid anew under it, so what it meets is asked for each time. */
function drag(
  svg: SVGSVGElement,
  index: number,
  start: { readonly x: number; readonly y: number },
  latest: { readonly current: Carrying },
): void {
  const ends = new AbortController();
  let moved = false;
  const on = { signal: ends.signal };
  const move = ({ clientX, clientY }: PointerEvent): void => {
    if (!moved && Math.hypot(clientX - start.x, clientY - start.y) < 6) return;
    moved = true;
    const { left, top } = svg.getBoundingClientRect();
    const at = { x: fromPx(clientX - left), y: fromPx(clientY - top) };
    const { boxes, carry } = latest.current;
    carry(index, placeUnder(at, boxes, carriedFrame.value?.to ?? index));
  };
  const up = (): void => {
    ends.abort();
    const now = carriedFrame.value;
    if (moved && now !== null) latest.current.layDown(now.from, now.to);
  };
  const cancel = (): void => {
    ends.abort();
    latest.current.putBack();
  };
  addEventListener("pointermove", move, on);
  addEventListener("pointerup", up, on);
  addEventListener("pointercancel", cancel, on);
}

/** Over each frame what takes it up: with the mouse, or with Space and the arrows. */
function Frames(props: Carrying) {
  const { wall, boxes, carry, layDown, putBack } = props;
  const latest = useRef(props);
  latest.current = props;
  const lifted = carriedFrame.value;
  const places = orderPlaces(wall.hung.plan.order);
  const count = wall.works.length;
  // A place in the order is said as it hangs, from the left; the wall lays out by its own list.
  return (
    <>
      {wall.works.map(({ work }, index) => {
        const box = boxes[index];
        if (box === undefined) return null;
        const isLifted = lifted?.to === index;
        return (
          <g
            key={work.id ?? work.title}
            id={`frame-${index}`}
            class={isLifted ? "frame-of lifted" : "frame-of"}
            role="button"
            tabIndex={0}
            aria-label={frameOnWallSays(work.title, (places[index] ?? 0) + 1, count)}
            aria-describedby="wall-hint"
            aria-pressed={isLifted ? "true" : "false"}
            onPointerDown={(event) => {
              if (event.button !== 0 || event.pointerType === "touch") return;
              event.preventDefault();
              event.currentTarget.focus();
              const svg = event.currentTarget.ownerSVGElement;
              if (svg !== null) drag(svg, index, { x: event.clientX, y: event.clientY }, latest);
            }}
            onBlur={() => {
              if (isLifted) requestAnimationFrame(() => leave(work.title, putBack));
            }}
            onKeyDown={(event) => {
              if (event.key === " ") {
                event.preventDefault();
                if (lifted === null) {
                  carry(index, index);
                  told.value = takenUp(work.title);
                } else layDown(lifted.from, lifted.to);
                return;
              }
              if (lifted === null) return;
              const way = STEPS[event.key];
              if (way !== undefined) {
                event.preventDefault();
                const to = Math.min(count - 1, Math.max(0, lifted.to + way));
                carry(lifted.from, to);
                told.value = carried(work.title, to + 1, count);
                requestAnimationFrame(() => document.getElementById(`frame-${to}`)?.focus());
              } else if (event.key === "Escape") {
                event.preventDefault();
                putBack();
                told.value = putBackSays(work.title);
                requestAnimationFrame(() => document.getElementById(`frame-${lifted.from}`)?.focus());
              }
            }}
          >
            <rect
              x={px(box.left) - 3}
              y={px(box.top) - 3}
              width={px(box.right - box.left) + 6}
              height={px(box.bottom - box.top) + 6}
            />
          </g>
        );
      })}
    </>
  );
}

/** Going elsewhere puts back what was only carried. */
function leave(title: string, putBack: () => void): void {
  if (carriedFrame.value === null || document.activeElement?.closest(".frame-of") !== null) return;
  putBack();
  told.value = putBackSays(title);
}

const STEPS: Readonly<Record<string, number>> = { ArrowLeft: -1, ArrowUp: -1, ArrowRight: 1, ArrowDown: 1 };
