import { describe, expect, test } from "vitest";
import { filesIn, textOf, titlesOf } from "./sources.ts";

const rules = filesIn("docs/rules", ".md").flatMap((file) =>
  [...textOf(file).matchAll(/^\s*- \*\*([A-Z]{1,3}\d+[a-z]?)\*\*/gm)].map(([, id = ""]) => ({ id, file })),
);
const quoted = filesIn("tests", ".test.ts").flatMap((file) =>
  titlesOf(file).flatMap((title) =>
    [...title.matchAll(/\[((?:[A-Z]{1,3}\d+[a-z]?)(?:,? [A-Z]{1,3}\d+[a-z]?)*)\]/g)].flatMap(([, ids = ""]) =>
      ids.split(/,? /).map((id) => ({ id, file })),
    ),
  ),
);

describe("the rules and their tests", () => {
  test("[H8] there are rules, and tests that quote them", () => {
    expect(rules.length).toBeGreaterThan(30);
    expect(quoted.length).toBeGreaterThan(30);
  });

  test("[H8] no two rules share a number", () => {
    const twice = rules.filter(({ id }, i) => rules.findIndex((other) => other.id === id) !== i);
    expect(twice).toEqual([]);
  });

  test("[H8] every rule is quoted by a test", () => {
    const seen = new Set(quoted.map(({ id }) => id));
    expect(rules.filter(({ id }) => !seen.has(id)).map(({ id, file }) => `${file}: ${id}`)).toEqual([]);
  });

  test("[H8] every number quoted is a rule", () => {
    const known = new Set(rules.map(({ id }) => id));
    expect(quoted.filter(({ id }) => !known.has(id)).map(({ id, file }) => `${file}: ${id}`)).toEqual([]);
  });

  test("[H8] every rule is one sentence or more, not a heading", () => {
    for (const file of filesIn("docs/rules", ".md")) {
      for (const line of textOf(file)
        .split("\n")
        .filter((one) => /^\s*- \*\*[A-Z]/.test(one))) {
        expect(line, file).toMatch(/[.)`:]$/);
      }
    }
  });
});
