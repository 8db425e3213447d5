import { useEffect } from "preact/hooks";
import { PAGE, PLACE_WORDS } from "../words/page.ts";
import { whenOpened } from "./later.tsx";
import { First, PLACES, Work } from "./places.tsx";
import type { KeptShow, KeptWork } from "./state/change.ts";
import { addressOf, place, type PlaceName } from "./state/route.ts";
import { leftOut } from "./state/draft.ts";
import { language, show, trouble } from "./state/session.ts";
import { TitleBlock } from "./title-block.tsx";

const LeftOut = whenOpened(({ LeftOut: it }) => it);
const Strip = whenOpened(({ Strip: it }) => it);

/** The frame of every place: head line, the place itself, the title block at the foot. */
export function App() {
  const open = show.value;
  const at = place.value;
  const work = open !== null && at.at === "work" ? open.works.find(({ id }) => id === at.id) : undefined;
  const first = open === null || at.at === "first";
  // What is not there, or not any more, is looked for among the works.
  const name: PlaceName = first ? "first" : (PLACES.find((one) => one.at === at.at)?.at ?? "works");

  useEffect(() => {
    const named = name === "works" || first ? "" : `${PLACE_WORDS[name]} · `;
    document.title = `${work?.title ?? named + (first ? PAGE.newShow : open.name)} · ${PAGE.tool}`;
    document.documentElement.lang = language.value;
  }, [work?.title, open?.name, name, language.value]);

  return (
    <div class="page">
      <a
        class="button to-content"
        href="#main"
        onClick={(event) => {
          event.preventDefault();
          document.getElementById("main")?.focus();
        }}
      >
        {PAGE.toContent}
      </a>
      <header class="top">
        <div class="show">
          <span class="tool">{PAGE.tool}</span>
          <span>{first ? PAGE.newShow : open.name}</span>
          {!first && open.room !== undefined && <span class="room">{open.room}</span>}
        </div>
        <nav class="places" aria-label={PAGE.places}>
          {(open === null ? PLACES.slice(0, 1) : PLACES).map(({ at: one }) => (
            <a
              key={one}
              href={addressOf({ at: open === null ? "first" : one })}
              aria-current={name === one || open === null ? "page" : undefined}
            >
              {PLACE_WORDS[one]}
            </a>
          ))}
        </nav>
      </header>
      {trouble.value !== null && <Strip />}
      {leftOut.value.length > 0 && <LeftOut />}
      <main id="main" tabIndex={-1}>
        {first ? <First /> : <OpenPlace name={name} show={open} work={work} />}
      </main>
      <TitleBlock show={first ? null : open} work={work} />
    </div>
  );
}

function OpenPlace(props: {
  readonly name: PlaceName;
  readonly show: KeptShow;
  readonly work: KeptWork | undefined;
}) {
  const { name, show: open, work } = props;
  if (work !== undefined) return <Work show={open} work={work} />;
  const Shown = PLACES.find(({ at }) => at === name)?.Shown;
  return Shown === undefined ? null : <Shown key={name} show={open} />;
}
