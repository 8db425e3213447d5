import { useMemo } from "preact/hooks";
import type { HangCheck, Level } from "../../assembly/index.ts";
import type { WallCheck } from "../../plans/index.ts";
import { sayHangCheck, sayWallCheck } from "../../words/hanging.ts";
import { LEVEL_WORDS, ofWork, WALL } from "../../words/page.ts";
import type { KeptShow } from "../state/change.ts";
import type { WallOnPage } from "./hung.ts";
import { type WallWay, waysOfWall } from "./ways.ts";

interface Said {
  readonly key: string;
  readonly level: Level;
  readonly says: string;
  readonly check: WallCheck | HangCheck;
  /** The work that it is about; null: the wall itself. */
  readonly whose: number | null;
}

const MOST_WITH_WAYS = 6;

const ORDER: Readonly<Record<Level, number>> = { stop: 0, warn: 1, note: 2 };

/** What stands against a wall and the works on it, heaviest first, each with the ways out that hold. */
export function WallChecks({
  wall,
  show,
  take,
}: {
  readonly wall: WallOnPage;
  readonly show: KeptShow;
  readonly take: (way: WallWay) => void;
}) {
  const said = useMemo(() => saidOf(wall), [wall.hung]);
  // Each way is laid out to see whether it holds: those of the heaviest checks are enough to begin with.
  const ways = useMemo(
    () =>
      said
        .slice(0, MOST_WITH_WAYS)
        .map(({ check, whose }) => waysOfWall(check, whose, show, wall.read.index, wall.hung.request)),
    [said, show],
  );
  if (wall.waiting) return <p class="quiet">{WALL.working}</p>;
  if (said.length === 0) return <p class="quiet">{WALL.noChecks}</p>;
  return (
    <ul class="checks" aria-label={WALL.checks}>
      {said.map(({ key, level, says }, index) => (
        <li key={key} class={`check ${level}`}>
          <span class="level">{LEVEL_WORDS[level]}</span>
          <div>
            <p>{says}</p>
            {(ways[index] ?? []).length > 0 && (
              <div class="way">
                {ways[index]?.map((way) => (
                  <button key={way.label} type="button" onClick={() => take(way)}>
                    {way.label}
                  </button>
                ))}
              </div>
            )}
          </div>
        </li>
      ))}
    </ul>
  );
}

function saidOf({ hung, works }: WallOnPage): readonly Said[] {
  const { request, plan } = hung;
  const speech = { ruler: request.ruler, job: request.job };
  const titled = (work: number, says: string): string => {
    const title = works[work]?.work.title ?? "";
    return title === "" ? says : ofWork(title, says);
  };
  const ofWall = plan.checks.map((check): Said => {
    const whose = "frame" in check ? check.frame : null;
    const says = sayWallCheck(check, speech);
    return {
      key: `${check.code} ${whose} ${"side" in check ? check.side : ""} ${"obstacle" in check ? check.obstacle : ""}`,
      level: check.level,
      says: whose === null ? says : titled(whose, says),
      check,
      whose,
    };
  });
  const ofWorks = hung.works.flatMap(({ checks }, work) =>
    checks.map(
      (check): Said => ({
        key: `${check.code} ${work}`,
        level: check.level,
        says: titled(work, sayHangCheck(check, speech)),
        check,
        whose: work,
      }),
    ),
  );
  return [...ofWall, ...ofWorks].toSorted((a, b) => ORDER[a.level] - ORDER[b.level]);
}
