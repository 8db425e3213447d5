import { useLayoutEffect, useRef } from "preact/hooks";
import { figureOf, type Length, type Ruler } from "../../lengths/index.ts";
import { ladderAsks } from "../../words/page.ts";
import { FigureText } from "./figure.tsx";
import { rungsOf } from "./step.ts";

interface Props {
  readonly label: string;
  readonly length: Length;
  readonly ruler: Ruler;
  readonly otherWay: string;
  readonly take: (length: Length) => void;
}

/** Room kept between the ladder and the edge of the window. */
const CLEAR = 16;

/**
 * Five neighbouring marks of the ruler under an open blank. It follows typing and never takes the
 * focus: with the keys the arrows do the same, so its rungs are no stops for Tab.
 */
export function Ladder({ label, length, ruler, otherWay, take }: Props) {
  const self = useRef<HTMLSpanElement>(null);

  useLayoutEffect(() => {
    const ladder = self.current;
    if (ladder === null || getComputedStyle(ladder).position === "fixed") return;
    ladder.style.left = "";
    // It stays within its sentence, so that the drawing beside it is in sight while it answers.
    const { left, right } = ladder.getBoundingClientRect();
    const sentence = ladder.closest("form")?.getBoundingClientRect();
    const furthest = Math.min(sentence?.right ?? Infinity, document.documentElement.clientWidth - CLEAR);
    const over = Math.min(left - Math.min(CLEAR, sentence?.left ?? CLEAR), Math.max(0, right - furthest));
    ladder.style.left = `${-over}px`;
  }, []);

  return (
    <span
      class="ladder"
      ref={self}
      onPointerDown={(event) => event.preventDefault()}
      onMouseDown={(event) => event.preventDefault()}
    >
      <span class="asked">{ladderAsks(label)}</span>
      <span class="rungs" role="radiogroup" aria-label={label}>
        {rungsOf(length, ruler).map((rung, place) => (
          <button
            // The five rungs stay where they are; what stands on them follows.
            key={place}
            type="button"
            role="radio"
            tabIndex={-1}
            aria-checked={rung === length ? "true" : "false"}
            onClick={() => take(rung)}
          >
            <FigureText figure={figureOf(rung, ruler)} unit={false} />
          </button>
        ))}
      </span>
      <span class="other-way">{otherWay}</span>
    </span>
  );
}
