import type { WallDocument } from "../../show/index.ts";
import { obstacleSentence, seatSentence, WALL, WALL_SAID } from "../../words/page.ts";
import type { KeptShow } from "../state/change.ts";
import { newObstacle, newSeat, withWall } from "./edits.ts";
import { keepWalls } from "./editing.ts";
import type { WallSaid } from "./fields.ts";
import { WallSentence } from "./wall-blank.tsx";

/** What must stay free and where people sit, a sentence each. */
export function Free({
  show,
  index,
  said,
}: {
  readonly show: KeptShow;
  readonly index: number;
  readonly said: WallSaid;
}) {
  const { wall } = said;
  const { unit } = said.request.ruler;
  const change = (next: WallDocument, what: string): void => {
    keepWalls(
      show,
      withWall(show.walls ?? [], index, () => next),
      what,
    );
  };
  const [avoid, seats] = [wall.avoid ?? [], wall.seats ?? []];
  return (
    <section aria-labelledby="free-title">
      <h2 id="free-title">{WALL.free}</h2>
      <ul class="free">
        {avoid.map((box, place) => (
          <li key={`avoid-${place}`}>
            <WallSentence
              show={show}
              index={index}
              said={said}
              class="facts"
              label={box.name ?? WALL.free}
              sentence={obstacleSentence(place)}
            />
            <button
              type="button"
              class="plain"
              onClick={() =>
                change(
                  { ...wall, avoid: avoid.filter((_, other) => other !== place) },
                  WALL_SAID.removed(box.name ?? WALL.obstacle),
                )
              }
            >
              {WALL.takeAway}
            </button>
          </li>
        ))}
        {seats.map((seat, place) => (
          <li key={`seat-${place}`}>
            <WallSentence
              show={show}
              index={index}
              said={said}
              class="facts"
              label={seat.name ?? WALL.seat}
              sentence={seatSentence(place)}
            />
            <button
              type="button"
              class="plain"
              onClick={() =>
                change(
                  { ...wall, seats: seats.filter((_, other) => other !== place) },
                  WALL_SAID.removed(seat.name ?? WALL.seat),
                )
              }
            >
              {WALL.takeAway}
            </button>
          </li>
        ))}
      </ul>
      <p class="way">
        <button
          type="button"
          onClick={() =>
            change(
              { ...wall, avoid: [...avoid, newObstacle(WALL.obstacle, said.request.job.floor, unit)] },
              WALL_SAID.added(WALL.obstacle),
            )
          }
        >
          {WALL.addObstacle}
        </button>
        <button
          type="button"
          onClick={() =>
            change({ ...wall, seats: [...seats, newSeat(WALL.seat, unit)] }, WALL_SAID.added(WALL.seat))
          }
        >
          {WALL.addSeat}
        </button>
      </p>
    </section>
  );
}
