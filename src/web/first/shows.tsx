import { useEffect, useState } from "preact/hooks";
import { FIRST, keptDay, openShow, PAGE, worksKept } from "../../words/page.ts";
import { browserStore } from "../browser-store.ts";
import { type Held, readHeld } from "../state/keeping.ts";
import { keptShows } from "../state/keeping-later.ts";
import { goTo } from "../state/route.ts";
import { openKept, openNew, told } from "../state/session.ts";
import { takeIn } from "../state/settling.ts";
import { type Listed, listed, stored } from "../state/studio.ts";

/** The shows that can be opened: the studio's, and those that this browser keeps alone. */
export function Shows() {
  const [studio, setStudio] = useState<readonly Listed[] | null>(null);
  useEffect(() => {
    void listed().then(setStudio, (fault: unknown) => {
      // A TypeError is how a browser says that nothing answered: what lies here can be opened.
      if (!(fault instanceof TypeError)) throw fault;
    });
  }, []);
  const store = browserStore();
  const there = new Set((studio ?? []).map(({ id }) => id));
  const here = (store === null ? [] : keptShows(store)).filter(({ id }) => !there.has(id));
  return (
    <>
      {studio !== null && studio.length > 0 && (
        <>
          <h2>{FIRST.studio}</h2>
          <ul class="ways">
            {studio.map((one) => (
              <li key={one.id}>
                <button type="button" onClick={() => void openStored(one)}>
                  {openShow(one.name)}
                </button>
                <span>{worksKept(one.works, keptDay(one.at))}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      {here.length > 0 && (
        <>
          <h2>{FIRST.kept}</h2>
          <ul class="ways">
            {here.map((one) => (
              <li key={one.id}>
                <button type="button" onClick={() => open(one)}>
                  {openShow(one.show.name)}
                </button>
                <span>{worksKept(one.show.works.length, keptDay(one.at))}</span>
                {studio !== null && one.base === "browser" && (
                  <button
                    type="button"
                    class="plain"
                    onClick={() => {
                      open(one);
                      takeIn();
                    }}
                  >
                    {PAGE.takeIn}
                  </button>
                )}
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

function open(one: Held): void {
  openKept(one);
  goTo({ at: "works" });
}

/** Opens a show of the studio: as this browser holds it, with what it has not sent yet, or fetched whole. */
async function openStored({ id }: Listed): Promise<void> {
  const store = browserStore();
  const here = store === null ? null : readHeld(store, id);
  if (here?.kind === "held" && here.held.base !== "browser") return open(here.held);
  try {
    const found = await stored(id);
    if (found === null) {
      told.value = FIRST.gone;
      return;
    }
    openNew(found.show, found.number, id);
    goTo({ at: "works" });
  } catch (fault) {
    if (!(fault instanceof TypeError)) throw fault;
    told.value = PAGE.notHere;
  }
}
