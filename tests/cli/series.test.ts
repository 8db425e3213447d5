import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { folder, margent } from "./run.ts";

const DOCUMENT = {
  unit: "in",
  border: { least: "2", most: "4" },
  lift: { by: "1/4", least: "0", most: "1/2" },
  sizes: [
    { name: "11 x 14", width: "11", height: "14", cost: 1.9 },
    { name: "16 x 20", width: "16", height: "20", cost: 3.9 },
  ],
  works: [
    { title: "Ebb", width: "6 1/2", height: "9" },
    { title: "Ferry slip", width: "10", height: "13", n: 3 },
  ],
};

test("[SZ1] [SZ3] a series comes back as JSON and as text", () => {
  const json = margent(["series", "--json"], JSON.stringify(DOCUMENT));
  expect(json.status).toBe(0);
  expect(JSON.parse(json.out)).toMatchObject({
    fewest: 2,
    steps: [{ k: 2, cost: 13.6, saving: null, proven: true, sizes: [{ size: 0 }, { size: 1 }] }],
    checks: [],
  });
  const text = margent(["series"], JSON.stringify(DOCUMENT));
  expect(text.out).toContain("two sizes: 13.60; none cost less");
  expect(text.out).toContain("16 x 20, 3 works: Ferry slip");
});

test("[SZ2] a work that no size serves is a stop, and status 1", () => {
  const works = [...DOCUMENT.works, { title: "Mast", width: "1", height: "13" }];
  const ran = margent(["series"], JSON.stringify({ ...DOCUMENT, works }));
  expect(ran.status).toBe(1);
  expect(ran.out).toContain("STOP  Mast: on 11 in × 14 in");
});

test("[SZ6] what cannot be read is named by its field, on a line too", () => {
  const ran = margent(["series"], JSON.stringify({ ...DOCUMENT, lift: { by: "1", most: "1/2" } }));
  expect(ran.status).toBe(2);
  expect(ran.err).toContain("lift.by: found 1; wanted: a lift between its least and its most");
  const bad = { ...DOCUMENT, sizes: [{ width: "0", height: "14", cost: -1 }] };
  const lines = margent(["series", "--lines"], `${JSON.stringify(bad)}\n{\n${JSON.stringify(DOCUMENT)}\n`);
  expect(lines.status).toBe(1);
  const [first, second, third] = lines.out.trim().split("\n");
  expect(JSON.parse(first ?? "")).toMatchObject({ error: { field: "sizes.0.cost", found: "-1" } });
  expect(JSON.parse(second ?? "")).toMatchObject({ error: { wanted: "one JSON document" } });
  expect(JSON.parse(third ?? "")).toMatchObject({ fewest: 2 });
});

test("[SZ1] the windows of a show are taken from its works", () => {
  const sizes = join(folder(), "sizes.json");
  const { works: _, ...rest } = DOCUMENT;
  const many = [8, 11, 14, 18, 22].map((width) => ({ width, height: width + 4, cost: width / 4 }));
  writeFileSync(sizes, JSON.stringify({ ...rest, border: { least: "1" }, sizes: many }));
  const ran = margent(["series", sizes, "--works", "examples/slack-water/show.json", "--json"]);
  const plan = JSON.parse(ran.out) as { steps: { sizes: { works: unknown[] }[] }[] };
  // Twenty-four works, of which one cannot be cut on any size.
  expect(plan.steps[0]?.sizes.flatMap(({ works }) => works).length).toBe(23);
  expect(ran.err).toContain("Two Sheds, Rain: left out");
  expect(ran.status).toBe(1);
});
