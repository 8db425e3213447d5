import { wallName } from "../../show/index.ts";
import { hangIt, WALL, WALL_SAID } from "../../words/page.ts";
import type { KeptShow } from "../state/change.ts";
import { withTitles, withWall } from "./edits.ts";
import { keepWalls } from "./editing.ts";
import type { ShowWalls } from "./hung.ts";

/** Works that hang on no wall, each with an act that hangs it here. */
export function Unhung({
  show,
  index,
  read,
  titles,
}: {
  readonly show: KeptShow;
  readonly index: number;
  readonly read: ShowWalls;
  readonly titles: readonly string[];
}) {
  if (read.unhung.length === 0) return null;
  const walls = show.walls ?? [];
  const name = wallName(walls, index);
  const left = read.unhung.map(({ work }) => work.title);
  const hang = (more: readonly string[], said: string): void => {
    keepWalls(
      show,
      withWall(walls, index, (own) => withTitles(own, [...titles, ...more])),
      said,
    );
  };
  return (
    <section aria-labelledby="unhung-title">
      <h2 id="unhung-title">{WALL.unhung}</h2>
      <div class="way">
        {left.map((title) => (
          <button
            key={title}
            type="button"
            aria-label={hangIt(title)}
            onClick={() => hang([title], WALL_SAID.hung(title, name))}
          >
            {title}
          </button>
        ))}
        {left.length > 1 && (
          <button type="button" class="plain" onClick={() => hang(left, WALL_SAID.hungAll(name))}>
            {WALL.hangAll}
          </button>
        )}
      </div>
    </section>
  );
}
