import type { Length } from "../../lengths/index.ts";
import { at } from "../at.ts";
import type { ChoppingCheck } from "./checks.ts";
import type { ChoppingJob } from "./job.ts";
import type { WholeChopping } from "./whole.ts";

/** What a plan has to say: the rails that it could not make, each by name. */
export function choppingChecks(
  job: ChoppingJob,
  whole: WholeChopping,
  missing: readonly number[],
): ChoppingCheck[] {
  const spaces = job.lengths
    .filter(({ copies }) => copies !== 0)
    .map(({ length }) => Math.max(0, length - 2 * job.waste) as Length);
  const longest = spaces.reduce<Length | null>(
    (most, space) => (most === null || space > most ? space : most),
    null,
  );
  const tooLong = new Set(whole.tooLong);
  return job.rails.flatMap(({ count }, rail): ChoppingCheck[] => {
    if (at(missing, rail) === 0) return [];
    if (tooLong.has(rail)) return [{ level: "stop", code: "rail-too-long", rail, longest }];
    return [{ level: "stop", code: "lengths-short", rail, missing: at(missing, rail), wanted: count }];
  });
}
