import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Parser from "dxf-parser";
import { expect, test } from "vitest";
import { folder, margent } from "./run.ts";

const work = {
  print: { width: "8 1/2", height: "11", image: { left: "3/4", top: "3/4", width: "7", height: "9 1/2" } },
  outer: { width: "11", height: "14" },
};

test("[K1] a work in, its figures out as text or JSON, status 0", () => {
  const text = margent(["compose"], JSON.stringify(work));
  expect([text.status, text.err]).toEqual([0, ""]);
  expect(text.out).toContain("borders head 2 1/8 in, left 2 1/8 in, right 2 1/8 in, foot 2 5/8 in");
  expect(text.out).toContain("stop 2       2 5/8 in: foot, next to you");
  const json = margent(["compose", "--json"], JSON.stringify(work));
  expect(json.status).toBe(0);
  const result = JSON.parse(json.out) as { mats: { borders: { head: { mm: number; text: string } } }[] };
  expect(result.mats[0]?.borders.head).toEqual({ mm: 53.975, text: "2 1/8 in" });
});

test("[K1] status 1 where it cannot be made as asked, with every figure still there", () => {
  const short = margent(
    ["compose", "--json"],
    JSON.stringify({ ...work, window: { show: "margins", top: "1", side: "1", foot: "1" } }),
  );
  expect(short.status).toBe(1);
  const result = JSON.parse(short.out) as { checks: { code: string; level: string }[]; cover: object };
  expect(result.checks[0]).toMatchObject({ code: "paper-ends", level: "stop" });
  expect(Object.keys(result.cover)).toEqual(["head", "left", "right", "foot"]);
});

test("[K1][K3] status 2 and a sentence where nothing could be read", () => {
  const bad: [string, RegExp][] = [
    ["", /^margent: .*found nothing; wanted: one JSON document/],
    ["{", /wanted: one JSON document/],
    ["[1]", /wanted: an object/],
    [
      JSON.stringify({ ...work, print: { width: "71/4", height: "11" } }),
      /^margent: print\.width: found 71\/4; wanted: .*7 1\/4 or 17 3\/4/,
    ],
    [
      JSON.stringify({ ...work, window: { show: "sideways" } }),
      /window\.show: found sideways; wanted: overlap, margins, sheet or typed/,
    ],
    [
      JSON.stringify({ outer: work.outer }),
      /print: found nothing; wanted: the print's width and height, or a typed window/,
    ],
  ];
  for (const [input, message] of bad) {
    const ran = margent(["compose"], input);
    expect([input, ran.status, ran.out]).toEqual([input, 2, ""]);
    expect(ran.err).toMatch(message);
    expect(ran.err).not.toMatch(/\n\s+at /);
  }
  expect(margent(["compose", "/nowhere/at/all.json"]).err).toMatch(
    /cannot be read \(there is no such file\)/,
  );
  expect(margent(["compase"]).status).toBe(2);
});

test("[K2] a line a document, a result a line, a bad line in its place", () => {
  const lines = [
    JSON.stringify(work),
    "nonsense",
    JSON.stringify({ print: { width: "-3", height: "2" } }),
    JSON.stringify(work),
  ];
  const { status, out } = margent(["compose", "--lines"], `${lines.join("\r\n")}\n`);
  const results = out
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line) as { error?: { field: string; wanted: string }; outer?: object });
  expect(status).toBe(1);
  expect(results.length).toBe(4);
  expect(results.map(({ error }) => error?.field)).toEqual([undefined, "", "print.width", undefined]);
  expect(results[0]).toEqual(results[3]);
});

test("[K1] the documents' JSON Schema can be had", () => {
  const schema = JSON.parse(margent(["schema", "compose"]).out) as { properties: Record<string, unknown> };
  expect(Object.keys(schema.properties)).toEqual(
    expect.arrayContaining(["print", "window", "outer", "mats"]),
  );
  expect(margent(["schema", "nothing"]).status).toBe(2);
});

test("[K1] one mat is drawn at full size: 11 x 14 in measures 279.4 x 355.6 mm in every format", () => {
  const place = folder();
  for (const format of ["svg", "dxf", "pdf"]) {
    const out = join(place, `mat.${format}`);
    const ran = margent(["draw", "--out", out], JSON.stringify(work));
    expect([format, ran.status, ran.err]).toEqual([format, 0, ""]);
  }
  const dxf = new Parser().parseSync(readFileSync(join(place, "mat.dxf"), "utf8"));
  const outline =
    dxf?.entities
      .filter(({ layer }) => layer === "OUTLINE")
      .flatMap((entity) => ("vertices" in entity ? (entity.vertices as { x: number; y: number }[]) : [])) ??
    [];
  const span = (axis: "x" | "y"): number =>
    Math.max(...outline.map((at) => at[axis])) - Math.min(...outline.map((at) => at[axis]));
  expect([span("x"), span("y")].map((length) => Number(length.toFixed(6)))).toEqual([279.4, 355.6]);
  expect(readFileSync(join(place, "mat.svg"), "utf8")).toMatch(/^<svg [^>]*width="[\d.]+mm"/);
  const wrong = margent(["draw", "--out", join(place, "mat.doc")], JSON.stringify(work));
  expect([wrong.status, wrong.err]).toEqual([
    2,
    expect.stringContaining("wanted: a file name that ends in .svg, .dxf, .pdf"),
  ]);
  expect(margent(["draw", "--out", join(place, "x.svg"), "--mat", "2"], JSON.stringify(work)).err).toContain(
    "--mat: found 2; wanted: 1",
  );
});

test("[FR21] --reuse and --stock tell what exists, as text, as JSON and a line for a line", () => {
  const place = folder();
  const practice = join(place, "practice.json");
  const stock = join(place, "stock.json");
  const frame = { name: "old ash", opening: { width: "11 1/8", height: "14 1/8" }, copies: 1 };
  const moulding = { name: "ash", overall: "3/4", rabbet: "1/4", allowance: "1/8" };
  writeFileSync(practice, JSON.stringify({ unit: "in", moulding, frames: [frame] }));
  writeFileSync(
    stock,
    JSON.stringify({ unit: "in", sheets: [{ name: "offcut 15", width: 15, height: 15, copies: 1 }] }),
  );
  const given = ["compose", "--practice", practice, "--reuse", "--stock", stock];
  const text = margent(given, JSON.stringify(work));
  expect(text.err).toBe("");
  expect(text.out).toContain(
    "frames and mats that exist, the best one first\n  old ash: as given, package 11 in × 14 in",
  );
  expect(text.out).toMatch(/offcuts that serve\n {2}offcut 15: /);
  const one = JSON.parse(margent([...given, "--json"], JSON.stringify(work)).out) as {
    outer: object;
    reuse: { frames: { kind: string }[]; offcuts: { name: string }[] };
  };
  expect(one.reuse.frames.map(({ kind }) => kind)).toEqual(["old ash"]);
  expect(one.reuse.offcuts.map(({ name }) => name)).toEqual(["offcut 15"]);
  const lines = margent([...given, "--lines"], `${JSON.stringify(work)}\nnonsense\n`);
  expect(lines.status).toBe(1);
  expect(JSON.parse(lines.out.split("\n")[0] ?? "")).toEqual(one);
});
