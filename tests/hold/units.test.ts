import { expect, test } from "vitest";
import { planHolds } from "../../src/packet/hold.ts";
import { composeWorks } from "../../src/packet/works.ts";
import { practiceFor, problemJson } from "../../src/show/index.ts";

test("[HO13] habits that can be made in one unit and not in a work's own are told with that work", () => {
  // What is pasted by default leaves some of this tab in millimetres, and none of it in inches.
  const practice = { unit: "mm" as const, held: { hinge: { height: "25 mm", bare: "12.5 mm" } } };
  expect(practiceFor(practice, "mm").ok).toBe(true);
  const design = { unit: "in" as const, print: { width: "8", height: "10" } };
  const { works } = composeWorks([{ row: 2, work: { title: "Ebb", design } }], practice);
  const { plans, problems } = planHolds(works, practice);
  expect(plans).toEqual([null]);
  expect(problems.map(({ row, problem }) => [row, problemJson(problem).field])).toEqual([
    [2, "practice.held.hinge.bare"],
  ]);
});
