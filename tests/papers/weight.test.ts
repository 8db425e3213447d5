import { expect, test } from "vitest";
import { inch, mm } from "../../src/lengths/index.ts";
import { benchOrderPaper, cutPlan, type Page, points } from "../../src/papers/index.ts";
import { setFigure } from "../../src/papers/set-figure.ts";
import { flat } from "../../src/words/index.ts";
import { dayOf } from "../papers-bench-order/day.ts";
import { EIGHT, INCHES, paperJob, typeface } from "../papers-cutting/papers.ts";
import { flatMarks } from "./ink.ts";

/** Weights of all figures at least so large on some pages. */
const weightsFrom = (pages: readonly Page[], least: number): readonly (string | undefined)[] =>
  pages
    .flatMap((page) => flatMarks(page.marks))
    .flatMap((mark) =>
      mark.kind === "text"
        ? mark.runs.flatMap((run) =>
            run.kind === "fraction" && (run.size ?? mark.size) >= points(least)
              ? [run.weight ?? mark.weight]
              : [],
          )
        : [],
    );

test("[PP33] what a fence, a saw and a nail are set by is bold in its figure, its unit is not", () => {
  for (const [length, ruler] of [
    [inch(1041, 16), { unit: "in", graduation: inch(1, 16) }],
    [mm(52.5), { unit: "mm", graduation: mm(0.5) }],
  ] as const) {
    const runs = flat(setFigure(length, ruler));
    expect(runs.filter(({ kind }) => kind === "fraction").map(({ weight }) => weight)).toEqual(["bold"]);
    expect(runs.at(-1)?.weight).toBe("regular");
  }
});

test("[PP33] on a cut plan and on a day's order every large figure is bold", async () => {
  const { job } = await dayOf("examples/lists/evening-class.csv");
  const day = weightsFrom(benchOrderPaper(job, "letter", typeface), 28);
  expect(day.length).toBeGreaterThan(3);
  expect(new Set(day)).toEqual(new Set(["bold"]));
  const cuts = weightsFrom(cutPlan(paperJob(EIGHT, INCHES), "a4", typeface), 26);
  expect(cuts.length).toBeGreaterThan(2);
  expect(new Set(cuts)).toEqual(new Set(["bold"]));
});
