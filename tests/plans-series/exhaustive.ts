import type { SeriesJob, SeriesSize, SeriesWork } from "../../src/plans/series/index.ts";

/** Whether a size serves a work: every way up and every head on the ruler's marks is tried. */
export function servesAtAll(job: SeriesJob, work: SeriesWork, size: SeriesSize): boolean {
  const { border, lift, graduation, turns } = job.limits;
  const ways = turns
    ? [
        [size.width, size.height],
        [size.height, size.width],
      ]
    : [[size.width, size.height]];
  const inLimits = (is: number, reach: number): boolean =>
    is >= border.least && is >= reach && (border.most === null || is <= border.most);
  return ways.some(([width = 0, height = 0]) => {
    const across = width - work.window.width;
    const down = height - work.window.height;
    if (across < 0 || down < 0) return false;
    const left = across / 2 - ((across / 2) % graduation);
    if (!inLimits(left, work.reach.left) || !inLimits(across - left, work.reach.right)) return false;
    for (let head = 0; head <= down; head += graduation) {
      // The lifts that come to this head when they are rounded down.
      const [above, upTo] = [down / 2 - head - graduation, down / 2 - head];
      const aLift = upTo >= lift.least && above < lift.most;
      if (aLift && inLimits(head, work.reach.head) && inLimits(down - head, work.reach.foot)) return true;
    }
    return false;
  });
}

/** The least cost of at most `most` sizes, by trying every choice; null where none serves all that can be served. */
export function leastCost(job: SeriesJob, most: number): number | null {
  const rows = job.works
    .map((work) => ({ work, by: job.sizes.map((size) => servesAtAll(job, work, size)) }))
    .filter(({ by }) => by.includes(true));
  let least: number | null = null;
  for (let chosen = 0; chosen < 2 ** job.sizes.length; chosen++) {
    const sizes = [...job.sizes.keys()].filter((place) => (chosen >> place) % 2 === 1);
    if (sizes.length > most) continue;
    const costs = rows.map(({ work, by }) =>
      Math.min(
        ...sizes.filter((place) => by[place]).map((place) => (job.sizes[place]?.cost ?? 0) * work.count),
      ),
    );
    const cost = costs.reduce((sum, one) => sum + one, 0);
    if (Number.isFinite(cost) && (least === null || cost < least)) least = cost;
  }
  return least;
}
