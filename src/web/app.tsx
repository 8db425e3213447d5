import { useEffect } from "preact/hooks";
import { PAGE } from "../words/page.ts";
import { First } from "./first/first.tsx";
import { whenOpened } from "./later.tsx";
import { addressOf, place } from "./state/route.ts";
import { leftOut } from "./state/draft.ts";
import { language, show, trouble } from "./state/session.ts";
import { TitleBlock } from "./title-block.tsx";
import { Work } from "./work/work.tsx";
import { Works } from "./works/works.tsx";

const LeftOut = whenOpened(({ LeftOut: it }) => it);
const Strip = whenOpened(({ Strip: it }) => it);

/** The frame of every place: head line, the place itself, the title block at the foot. */
export function App() {
  const open = show.value;
  const at = place.value;
  const work = open !== null && at.at === "work" ? open.works.find(({ id }) => id === at.id) : undefined;
  const first = open === null || at.at === "first";

  useEffect(() => {
    const name = work?.title ?? (first ? PAGE.newShow : (open?.name ?? PAGE.newShow));
    document.title = `${name} · ${PAGE.tool}`;
    document.documentElement.lang = language.value;
  }, [work?.title, open?.name, first, language.value]);

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
          <a href={addressOf(open === null ? { at: "first" } : { at: "works" })} aria-current="page">
            {PAGE.works}
          </a>
        </nav>
      </header>
      {trouble.value !== null && <Strip />}
      {leftOut.value.length > 0 && <LeftOut />}
      <main id="main" tabIndex={-1}>
        {first ? <First /> : work === undefined ? <Works show={open} /> : <Work show={open} work={work} />}
      </main>
      <TitleBlock show={first ? null : open} work={work} />
    </div>
  );
}
