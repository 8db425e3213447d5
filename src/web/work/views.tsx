import { useMemo } from "preact/hooks";
import type { Composition } from "../../assembly/index.ts";
import { backView, fitScale, frontView } from "../../drawings/index.ts";
import { type Length, printLength } from "../../lengths/index.ts";
import { BACK_WORDS, DRAWN, PAGE } from "../../words/page.ts";
import { following } from "../later.tsx";
import { Drawn } from "../drawing/marks.tsx";
import { partsOf } from "../drawing/parts.ts";
import { fromPx, px } from "../drawing/pixels.ts";
import { useWidth } from "../drawing/use-width.ts";
import { lit, pointed } from "../state/draft.ts";
import type { GripEdit } from "./grip-edits.ts";
import { Section } from "./section.tsx";

// Every drag can be typed instead: the grips come while one reads the sentence.
const Grips = following(({ Grips: it }) => it);

/** The tallest that front and back may stand, so that the section below them is still in sight. */
const TALLEST = 470;
/** Beside the front: its own margins. */
const FRONT_MARGIN = 20;
/** Left and right of a view on a phone, and its edges. */
const VIEW_PADDING = 26;

/** Before anything stands on the page there is no width to draw for. */
const LEAST_SCALE = 1 / 2000;

interface Props {
  readonly composition: Composition;
  readonly title: string;
  readonly picture: string | undefined;
  /** Whether a blank holds something that cannot be read: the drawing is the last good one. */
  readonly unread: boolean;
  readonly moving: GripEdit["key"] | null;
  readonly follow: (edit: GripEdit, value: Length, free: boolean) => void;
  readonly keep: () => void;
  readonly putBack: () => void;
}

/** Front, back and section of one work: projections of one thing, front and back at one scale with their heads level. */
export function Views(props: Props) {
  const { composition, title, picture, unread } = props;
  const [frontAt, frontWidth] = useWidth<HTMLDivElement>();
  const [backAt, backWidth] = useWidth<HTMLDivElement>();
  const [viewsAt, viewsWidth] = useWidth<HTMLDivElement>();
  const { ruler } = composition.design;
  const parts = lit.value === null ? [] : partsOf(lit.value);

  // A view that a phone does not show has no width of its own; all three keep the scale that it would have.
  const room = backWidth || frontWidth || Math.max(0, viewsWidth - VIEW_PADDING);
  const scale = useMemo(() => {
    const fit = fitScale(composition, { width: fromPx(room), height: fromPx(TALLEST) });
    const beside = fromPx((frontWidth || room) - FRONT_MARGIN) / Math.max(1, composition.outer.width);
    return Math.max(LEAST_SCALE, Math.min(fit, beside));
  }, [composition, frontWidth, room]);

  const front = useMemo(
    () => frontView(composition, { scale, ruler, ...(picture === undefined ? {} : { picture }) }),
    [composition, scale, picture],
  );
  const back = useMemo(
    () => backView(composition, { scale, ruler, words: BACK_WORDS }),
    [composition, scale],
  );
  const lower = Math.max(0, px(back.frame.top) - px(front.frame.top));
  const borders = composition.mats[0]?.borders;
  const window = composition.mats[0]?.back;
  const say = (length: Length | undefined): string =>
    length === undefined ? "" : printLength(length, ruler);

  return (
    <div class="drawn views" ref={viewsAt}>
      <figure class="view front">
        <figcaption>
          <b>{PAGE.front.name}</b> <span>{PAGE.front.gloss}</span>
        </figcaption>
        <div class="at-width" ref={frontAt}>
          {room > 0 && (
            <div class="level-with-back" style={{ paddingTop: `${lower}px` }}>
              <Drawn
                drawing={front}
                name="front"
                label={DRAWN.front(title)}
                lit={parts}
                unread={unread}
                point={(part) => {
                  pointed.value = part;
                }}
              >
                <Grips
                  composition={composition}
                  view={front}
                  scale={scale}
                  moving={props.moving}
                  follow={props.follow}
                  keep={props.keep}
                  putBack={props.putBack}
                />
              </Drawn>
            </div>
          )}
        </div>
      </figure>
      <figure class="view back">
        <figcaption>
          <b>{PAGE.back.name}</b> <span>{PAGE.back.gloss}</span>
        </figcaption>
        <div class="at-width" ref={backAt}>
          {room > 0 && (
            <Drawn
              drawing={back}
              name="back"
              label={DRAWN.back(
                {
                  head: say(borders?.head),
                  left: say(borders?.left),
                  right: say(borders?.right),
                  foot: say(borders?.foot),
                },
                `${say(window?.width)} × ${say(window?.height)}`,
              )}
              lit={parts}
              unread={unread}
              point={(part) => {
                pointed.value = part;
              }}
            />
          )}
        </div>
      </figure>
      <figure class="view section">
        <Section composition={composition} scale={scale} unread={unread} parts={parts} />
      </figure>
    </div>
  );
}
