import { useEffect, useMemo, useRef } from "preact/hooks";
import { type WallDocument, wallName } from "../../show/index.ts";
import { sayHangWanted } from "../../words/hanging.ts";
import { PAGE, WALL, WALL_SAID, wallHead } from "../../words/page.ts";
import { act } from "../later.tsx";
import type { KeptShow } from "../state/change.ts";
import { making } from "../state/draft.ts";
import { UndoActs } from "../undo-acts.tsx";
import { newWall } from "./edits.ts";
import { keepWalls } from "./editing.ts";
import { onPage, type ShowWalls, wallsOf } from "./hung.ts";
import { OneWall } from "./one-wall.tsx";
import { putBack, shownWall } from "./state.ts";

/** Where works hang: each wall said, drawn with two tapes, and listed nail by nail. */
export function Wall({ show }: { readonly show: KeptShow }) {
  const walls = show.walls ?? [];
  const index = Math.min(shownWall.value, Math.max(0, walls.length - 1));
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    window.scrollTo(0, 0);
    title.current?.focus({ preventScroll: true });
    return putBack;
  }, []);
  const read = useMemo(() => wallsOf(show), [show]);
  const kept = read?.walls.find((wall) => wall.index === index);
  const wall = read === null || kept === undefined ? null : onPage(kept, read.composed);
  const name = wallName(walls, index);
  const unit = show.practice?.unit ?? "in";

  const add = (): void => {
    const wanted = newWall(walls, WALL.stem, unit);
    shownWall.value = walls.length;
    keepWalls(show, [...walls, wanted], WALL_SAID.added(wanted.name ?? WALL.stem));
  };
  const remove = (): void => {
    shownWall.value = Math.max(0, index - 1);
    keepWalls(
      show,
      walls.filter((_, other) => other !== index),
      WALL_SAID.removed(name),
    );
  };
  if (walls.length === 0)
    return (
      <div class="head">
        <div>
          <h1 ref={title} tabIndex={-1}>
            {WALL.none}
          </h1>
          <p>{WALL.noneLine}</p>
        </div>
        <div class="acts">
          <UndoActs />
          <button type="button" class="main-act" onClick={add}>
            {WALL.first}
          </button>
        </div>
      </div>
    );
  return (
    <div class="wall">
      <div class="head">
        <div>
          <h1 ref={title} tabIndex={-1}>
            {wallHead(name, wall?.works.length ?? 0, wall?.hung.request.job.rule.kind ?? "gap")}
          </h1>
        </div>
        <div class="acts">
          <UndoActs />
          <button type="button" onClick={add}>
            {WALL.newWall}
          </button>
          <button
            type="button"
            class="main-act"
            aria-busy={making.value ? "true" : undefined}
            onClick={() => void act(({ printPacket }) => printPacket(show))}
          >
            {PAGE.printPacket}
          </button>
        </div>
      </div>
      {walls.length > 1 && <WhichWall walls={walls} index={index} />}
      {wall === null || read === null ? (
        <UnreadWall index={index} read={read} />
      ) : (
        <OneWall show={show} index={index} wall={wall} read={read} />
      )}
      <p class="after-works">
        <button type="button" class="plain remove" onClick={remove}>
          {WALL.removeWall}
        </button>
      </p>
    </div>
  );
}

function WhichWall({ walls, index }: { readonly walls: readonly WallDocument[]; readonly index: number }) {
  return (
    <fieldset class="choose which-wall">
      <legend class="unseen">{WALL.which}</legend>
      {walls.map((_, place) => (
        <label key={place}>
          <input
            type="radio"
            name="which-wall"
            checked={place === index}
            onChange={() => {
              shownWall.value = place;
              putBack();
            }}
          />
          <span>{wallName(walls, place)}</span>
        </label>
      ))}
    </fieldset>
  );
}

/** A wall whose document holds what cannot be: each such field, by what is wanted there. */
function UnreadWall({ index, read }: { readonly index: number; readonly read: ShowWalls | null }) {
  const problems = read?.problems.filter(({ problem }) => problem.field.startsWith(`walls.${index}.`)) ?? [];
  return (
    <>
      <p>{WALL.unread}</p>
      <ul>
        {problems.map(({ problem }) => (
          <li key={problem.field}>
            {problem.field}: {problem.found}; {sayHangWanted(problem.wanted)}
          </li>
        ))}
      </ul>
    </>
  );
}
