import { half } from "../../lengths/index.ts";
import type { WallDocument } from "../../show/index.ts";
import { hangingSentence, laidDown, WALL, WALL_SAID, wallFacts } from "../../words/page.ts";
import type { KeptShow } from "../state/change.ts";
import { unread } from "../state/draft.ts";
import { told } from "../state/session.ts";
import { signal } from "../state/signal.ts";
import { carriedTo, withTitles, withWall } from "./edits.ts";
import { keepWalls } from "./editing.ts";
import { Elevation } from "./elevation.tsx";
import type { WallSaid } from "./fields.ts";
import { Free } from "./free.tsx";
import { onPage, type ShowWalls, type WallOnPage, wallsOf } from "./hung.ts";
import { Nails } from "./nails.tsx";
import { carriedFrame, putBack, wallDraft } from "./state.ts";
import { WallSums } from "./sums.tsx";
import { Unhung } from "./unhung.tsx";
import { WallSentence } from "./wall-blank.tsx";
import { WallChecks } from "./wall-checks.tsx";

const ordering = signal(false);

interface One {
  readonly show: KeptShow;
  readonly index: number;
  readonly wall: WallOnPage;
  readonly read: ShowWalls;
}

/** One wall: its sentences over its elevation, below them the nails, the checks, the sums. */
export function OneWall({ show, index, wall, read }: One) {
  const walls = show.walls ?? [];
  const document = walls[index] ?? { width: "1", height: "1" };
  const { request, plan } = wall.hung;
  const said: WallSaid = {
    wall: document,
    request,
    centre: wall.works.length === 0 ? half(request.job.wall.width, "nearest") : plan.centre,
  };
  const titles = wall.works.map(({ work }) => work.title);
  const inOrder = (from: number, to: number): WallDocument[] =>
    withWall(walls, index, (own) => withTitles(own, carriedTo(titles, from, to)));
  const carry = (from: number, to: number): void => {
    carriedFrame.value = { from, to };
    wallDraft.value = inOrder(from, to);
  };
  const layDown = (from: number, to: number): void => {
    const title = titles[from] ?? "";
    carriedFrame.value = null;
    if (from === to) wallDraft.value = null;
    else keepWalls(show, inOrder(from, to), WALL_SAID.moved(title, to + 1));
    told.value = laidDown(title, to + 1, titles.length);
    requestAnimationFrame(() => globalThis.document.getElementById(`frame-${to}`)?.focus());
  };
  const takeOff = (work: number): void => {
    const left = titles.filter((_, other) => other !== work);
    keepWalls(
      show,
      withWall(walls, index, (own) => withTitles(own, left)),
      WALL_SAID.off(titles[work] ?? ""),
    );
  };
  // The drawing follows what is typed or carried; sentence, list and checks wait until it is kept.
  const drafted = wallDraft.value === null ? read : (wallsOf(show, wallDraft.value) ?? read);
  const followed = drafted.walls.find((one) => one.index === index);
  const drawn = followed === undefined || drafted === read ? wall : onPage(followed, drafted.composed);
  const isUnread = [...unread.value.keys()].some((name) => name.startsWith("wall."));
  const level = request.job.floor !== 0;
  const sentence = { show, index, said };
  return (
    <>
      <div class="wall-said">
        <WallSentence
          {...sentence}
          class="brief"
          label={WALL.hanging}
          sentence={hangingSentence(request.job.rule, level)}
        />
        <WallSentence
          {...sentence}
          class="facts"
          label={WALL.facts}
          sentence={wallFacts(level, request.measuring.fall !== 0)}
        />
      </div>
      <Elevation wall={drawn} unread={isUnread} carry={carry} layDown={layDown} putBack={putBack} />
      <p class="scale-line">
        <span id="wall-hint">{WALL.hint}</span>
        <button
          type="button"
          class="plain"
          aria-pressed={ordering.value ? "true" : "false"}
          onClick={() => {
            ordering.value = !ordering.value;
          }}
        >
          {WALL.order}
        </button>
        {request.job.rule.kind === "cluster" && (
          <button
            type="button"
            class="plain"
            onClick={() =>
              keepWalls(
                show,
                withWall(walls, index, (own) => ({ ...own, seed: request.seed + 1 })),
                WALL_SAID.anew,
              )
            }
          >
            {WALL.anew}
          </button>
        )}
      </p>
      <div class="wall-lists">
        <section aria-labelledby="nails-title">
          <h2 id="nails-title">{WALL.nails}</h2>
          {wall.works.length === 0 ? (
            <p class="quiet">{WALL.empty}</p>
          ) : (
            <Nails wall={wall} ordering={ordering.value} layDown={layDown} takeOff={takeOff} />
          )}
          <p class="quiet small">{WALL.caution}</p>
        </section>
        <div class="wall-beside">
          <section aria-labelledby="wall-checks">
            <h2 id="wall-checks">{WALL.checks}</h2>
            <WallChecks
              wall={wall}
              show={show}
              take={(way) => {
                keepWalls(show, way.walls, way.label);
              }}
            />
          </section>
          <WallSums wall={wall} />
          <Free {...sentence} />
          <Unhung show={show} index={index} read={read} titles={titles} />
        </div>
      </div>
    </>
  );
}
