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
  expect(text.out).toContain(
    [
      "hook  across  nail, up from the floor  from the right  work",
      "A     72 in   65 in                    72 in           Ebb",
    ].join("\n"),
  );
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

test("[HG24] [HG35] the text has a row for each hook in the order of hanging, and what a sagging tape reads below it", () => {
  const [ebb] = wall.works;
  const rings = { kind: "rings", below: "4", apart: "8" };
  const works = [
    ebb,
    { ...ebb, title: "Flow", hang: rings },
    { ...ebb, title: "Neap", with: "Ebb", hang: rings },
  ];
  const document = { ...wall, works, tape: { span: "100", over: "1/8" }, wall: { ...wall.wall, fall: "1" } };
  const text = margent(["hang"], JSON.stringify(document)).out;
  const rows = text.split("\n").filter((line) => /^[A-E] {2}|as the tape reads/.test(line));
  expect(rows.map((line) => line.split(/ {2,}/).at(-1))).toEqual(
    ["Ebb", "Neap", "Neap", "Flow", "Flow"].flatMap((title) => [title, "as the tape reads"]),
  );
  const { works: hung } = JSON.parse(margent(["hang", "--json"], JSON.stringify(document)).out) as {
    works: { hooks: { x: { text: string }; tape: Record<"across" | "up" | "back", { text: string }> }[] }[];
  };
  const [hook] = hung[0]?.hooks ?? [];
  expect(rows[0]).toContain(hook?.x.text);
  for (const read of ["across", "up", "back"] as const) expect(rows[1]).toContain(hook?.tape[read].text);
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
