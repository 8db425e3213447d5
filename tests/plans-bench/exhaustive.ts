import type { BenchJob } from "../../src/plans/bench/index.ts";

/**
 * The fewest settings of the stop, by trying every order: breadth first over what is still to be cut,
 * cut by cut, with nothing taken for granted but the rules. For a handful of mats.
 */
export function fewestRuns({ mats }: BenchJob): number {
  const cuts = mats.flatMap(({ settings }, mat) => settings.map((setting) => ({ mat, setting })));
  const whole = (done: number, mat: number): boolean =>
    cuts.every((cut, place) => cut.mat !== mat || (done & (1 << place)) !== 0);
  const late = mats.map(() => false);
  for (let round = 0; round < mats.length; round++)
    mats.forEach(
      ({ after, dries }, mat) => (late[mat] = dries || after.some((other) => late[other] === true)),
    );
  const may = (done: number, mat: number): boolean =>
    (mats[mat]?.after ?? []).every((other) => whole(done, other)) &&
    (mats[mat]?.dries !== true || mats.every((_, other) => late[other] === true || whole(done, other)));
  const all = 2 ** cuts.length - 1;
  /** Everything that can be reached with the stop at a figure, one cut at a time, whatever is left out. */
  const reach = (done: number, setting: number, found: Set<number>): void => {
    cuts.forEach((cut, place) => {
      const next = done | (1 << place);
      if (cut.setting !== setting || next === done || !may(done, cut.mat) || found.has(next)) return;
      found.add(next);
      reach(next, setting, found);
    });
  };
  let front = new Set([0]);
  const seen = new Set([0]);
  const settings = [...new Set(cuts.map(({ setting }) => setting))];
  for (let runs = 0; ; runs++) {
    if (front.has(all)) return runs;
    const next = new Set<number>();
    for (const done of front) {
      for (const setting of settings) {
        const found = new Set<number>();
        reach(done, setting, found);
        for (const one of found) {
          if (seen.has(one)) continue;
          seen.add(one);
          next.add(one);
        }
      }
    }
    if (next.size === 0) throw new Error("a batch that nothing can finish");
    front = next;
  }
}
