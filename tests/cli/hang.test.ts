import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { folder, margent, refusedLines } from "./run.ts";

const wall = {
  unit: "in",
  studio: "Tidewater Print Room",
  wall: { name: "North wall", width: "144", height: "96" },
  hookDrop: "1/2",
  works: [
    {
      title: "Ebb",
      width: "16",
      height: "20",
      weight: "5 lb",
      hang: { kind: "wire", below: "5", apart: "12", length: "13" },
    },
  ],
};

test("[HG17] [HG22] a wall in, hooks and loads out as text or JSON, status 0", () => {
  const text = margent(["hang"], JSON.stringify(wall));
  expect([text.status, text.err]).toEqual([0, ""]);
  expect(text.out).toContain("hook 1: 72 in across, nail 65 in up");
  const json = margent(["hang", "--json"], JSON.stringify(wall));
  const { works } = JSON.parse(json.out) as { works: { hooks: object[] }[] };
  expect(works[0]?.hooks).toEqual([
    {
      x: { mm: 1828.8, text: "72 in" },
      bear: { mm: 1638.3, text: "64 1/2 in" },
      nail: { mm: 1651, text: "65 in" },
    },
  ]);
});

test("[HG14] [HG18] [HG22] status 1 where something cannot be hung as asked, 2 where nothing could be read", () => {
  const narrow = { ...wall, wall: { width: "12", height: "96" } };
  expect(margent(["hang"], JSON.stringify(narrow)).status).toBe(1);
  const bad = margent(["hang"], JSON.stringify({ ...wall, works: [{ ...wall.works[0], weight: "heavy" }] }));
  expect(bad.status).toBe(2);
  expect(bad.err).toContain("works.0.weight: found heavy; wanted: a weight above 0, such as 3.2 kg or 7 lb");
  const lines = margent(["hang", "--lines"], `${JSON.stringify(wall)}\n{"wall":{}}\n`);
  expect(lines.status).toBe(1);
  expect(refusedLines(lines.out)).toEqual([false, true]);
});

test("[HG22] the hanging sheet comes as a PDF beside the answer", () => {
  const sheet = join(folder(), "hanging.pdf");
  const run = margent(["hang", "--sheet", sheet, "--date", "2026-11-25"], JSON.stringify(wall));
  expect([run.status, run.err]).toEqual([0, ""]);
  expect(readFileSync(sheet).subarray(0, 5).toString()).toBe("%PDF-");
  expect(margent(["hang", "--sheet", sheet, "--paper", "a3"], JSON.stringify(wall)).status).toBe(2);
});
