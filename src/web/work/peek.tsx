import { useMemo } from "preact/hooks";
import type { Composition } from "../../assembly/index.ts";
import { packageView } from "../../drawings/index.ts";
import { PAGE } from "../../words/page.ts";
import { Drawn } from "../drawing/marks.tsx";
import { fromPx } from "../drawing/pixels.ts";
import { useNarrow } from "../drawing/use-width.ts";
import type { KeptWork } from "../state/change.ts";
import { draft } from "../state/draft.ts";
import { madeOf } from "../state/made.ts";
import { practice } from "../state/session.ts";

const WIDEST = 84;
const TALLEST = 100;

interface Props {
  readonly work: KeptWork;
  readonly kept: Composition;
}

/** On a phone a small front beside the title answers while the sentence is typed; it leads to the views. */
export function Peek(props: Props) {
  return useNarrow() ? <SmallFront {...props} /> : null;
}

function SmallFront({ work, kept }: Props) {
  const drafted = draft.value?.document ?? null;
  const made = drafted === null ? null : madeOf(drafted, practice.value);
  const composition = made?.ok === true ? made.composition : kept;
  const view = useMemo(() => {
    const { width, height } = composition.outer;
    const scale = Math.min(fromPx(WIDEST) / Math.max(1, width), fromPx(TALLEST) / Math.max(1, height));
    const picture = work.picture === undefined ? {} : { picture: work.picture };
    return packageView(composition, { scale, ruler: composition.design.ruler, ...picture });
  }, [composition, work.picture]);
  return (
    <a
      class="peek"
      href="#drawing"
      aria-label={PAGE.goToDrawing}
      onClick={(event) => {
        // The address names the place in the page; the drawing is only scrolled to.
        event.preventDefault();
        document.getElementById("drawing")?.scrollIntoView();
      }}
    >
      <Drawn drawing={view} name="peek" label="" hidden />
    </a>
  );
}
