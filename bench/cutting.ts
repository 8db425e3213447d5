/**
 * Cutting and chop plans, held against their own proven bounds, against what is best known, and
 * against a general packer of rectangles that is given the same jobs and the same time. All jobs are
 * seeded; all times are seconds of processor time.
 *
 *   npm run bench -- cutting [--quick] [--only classes,shows] [--instances FOLDER] [--seconds 0.1,1]
 *
 * `--quick` takes a few jobs of each kind; `--only` some of the parts; `--instances` adds the files of
 * a folder, one job a line, each planned for every one of `--seconds`.
 */
import { parseArgs } from "node:util";
import { classes } from "./shared/cutting-classes.ts";
import { instanceFiles, oneDimension } from "./shared/cutting-rest.ts";
import { largest, severalSheets, shows } from "./shared/cutting-shows.ts";
import { type Goal, printGoals } from "./shared/measure.ts";

const { values: asked } = parseArgs({
  options: {
    quick: { type: "boolean", default: false },
    only: { type: "string" },
    instances: { type: "string" },
    seconds: { type: "string", default: "1" },
  },
});
const { quick, instances, only } = asked;
const budgets = asked.seconds.split(",").map(Number);
if (!budgets.every((seconds) => seconds > 0)) throw new RangeError(`no seconds: ${asked.seconds}`);

const parts: Record<string, () => Goal[]> = {
  largest,
  classes: () => classes(quick),
  several: () => severalSheets(quick),
  shows: () => shows(quick),
  chopping: () => oneDimension(quick),
  ...(instances === undefined ? {} : { instances: () => instanceFiles(instances, budgets, quick) }),
};
const named = only?.split(",") ?? Object.keys(parts);
const unknown = named.filter((name) => parts[name] === undefined);
if (unknown.length > 0)
  throw new RangeError(`no part ${unknown.join(", ")}; there are ${Object.keys(parts).join(", ")}`);

// The largest job comes first, for the sake of its memory, and so pays for compiling the planner too.
printGoals(named.flatMap((name) => parts[name]?.() ?? []));
