import { readingsOf } from "../../assembly/index.ts";
import { figureOf, type Length, type Ruler } from "../../lengths/index.ts";
import { beforeEach, hookSays, NAILS, nailsSay, ORDER, takeOffWall, WALL, weighs } from "../../words/page.ts";
import { kilograms, massWords } from "../../words/weights.ts";
import { FigureText, OnRuler } from "../blanks/figure.tsx";
import { addressOf } from "../state/route.ts";
import type { WallOnPage } from "./hung.ts";

interface Props {
  readonly wall: WallOnPage;
  /** Whether each work stands with two acts that move it one place. */
  readonly ordering: boolean;
  readonly layDown: (from: number, to: number) => void;
  readonly takeOff: (index: number) => void;
}

/** Every work with the places of its nails, in the order of hanging: all that the drawing shows. */
export function Nails(props: Props) {
  const { wall } = props;
  return (
    <ol class="nails">
      {wall.hung.plan.order.map((index, turn) => (
        <NailRow key={wall.works[index]?.work.id ?? index} index={index} turn={turn} {...props} />
      ))}
    </ol>
  );
}

function NailRow({
  wall,
  index,
  turn,
  ordering,
  layDown,
  takeOff,
}: Props & { readonly index: number; readonly turn: number }) {
  const { request, works: hung, hardware } = wall.hung;
  const [own, one, work] = [request.works[index], hung[index], wall.works[index]?.work];
  if (own === undefined || one === undefined || work === undefined) return null;
  const { ruler, measuring } = request;
  const reads = one.hooks.map((hook) => readingsOf(hook, measuring, ruler.graduation));
  const said = nailsSay(reads.length, request.job.floor !== 0, own.hanging.kind);
  const load = one.loads?.hook ?? null;
  const count = wall.works.length;
  return (
    <li>
      <span class="number">{turn + 1}</span>
      <div>
        <a href={addressOf({ at: "work", id: work.id ?? "" })}>
          <b>{work.title}</b>
        </a>
        <p>
          {said.before} <Several lengths={reads.map(({ across }) => across)} ruler={ruler} /> {said.between}{" "}
          <Several lengths={[...new Set(reads.map(({ up }) => up))]} ruler={ruler} /> {said.after}{" "}
          <span class="quiet">
            {NAILS.frame} <OnRuler length={own.width} ruler={ruler} unit={false} /> ×{" "}
            <OnRuler length={own.height} ruler={ruler} />,{" "}
            {weighs(own.mass === null ? null : massWords(own.mass))}{" "}
            {load !== null && hookSays(hardware[index]?.hook?.name ?? "", kilograms(load))}
          </span>
        </p>
        {ordering && (
          <span class="order">
            {([-1, 1] as const).map((way) => {
              const to = index + way;
              const none = to < 0 || to >= count;
              return (
                <button
                  key={way}
                  id={`hang${way}-${work.id}`}
                  type="button"
                  aria-label={`${work.title}: ${ORDER[way].long}`}
                  aria-disabled={none ? "true" : undefined}
                  onClick={() => {
                    if (none) return;
                    layDown(index, to);
                    requestAnimationFrame(() => document.getElementById(`hang${way}-${work.id}`)?.focus());
                  }}
                >
                  {ORDER[way].short}
                </button>
              );
            })}
            <button type="button" aria-label={takeOffWall(work.title)} onClick={() => takeOff(index)}>
              {WALL.takeOff}
            </button>
          </span>
        )}
      </div>
    </li>
  );
}

/** Figures on the wall's ruler with one unit after the last: "45 13/16 and 52 9/16 in". */
function Several({ lengths, ruler }: { readonly lengths: readonly Length[]; readonly ruler: Ruler }) {
  return (
    <>
      {lengths.map((length, index) => (
        <span key={index}>
          {beforeEach(index, lengths.length)}
          <b>
            <FigureText figure={figureOf(length, ruler)} unit={index === lengths.length - 1} />
          </b>
        </span>
      ))}
    </>
  );
}
