/**
 * A studio of 50 shows with 10,000 works and 20,000 offcuts: how long the server takes from request to answer
 * for each of its lists and searches, for a show opened and a change kept, and to start. Seeded. Wanted: every
 * list and search within 100 ms, a start within 1 s. On SQLite, and on PostgreSQL where it is installed.
 *
 *   npm run bench -- studio
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chanceFrom } from "../examples/draw/chance.ts";
import { createApp, newId, newsOf } from "../src/server/index.ts";
import type { KeptShow } from "../src/show/index.ts";
import { beginShow, openStore } from "../src/storage/index.ts";
import { noPostgres, startCluster } from "../tests/storage/cluster.ts";
import { median, spread } from "./shared/timing.ts";

const [SHOWS, WORKS, OFFCUTS, TURNS] = [50, 200, 400, 15];
let changes = 0;
const HOST = "127.0.0.1:4817";
const TITLES = ["Ebb", "Weir", "Ferry slip", "Two sheds", "Eelgrass", "Bell", "Drying nets", "Bittern"];
const PROCESSES = ["cyanotype", "gelatin silver", "aquatint", "woodcut", "salted paper"];

function show(index: number): KeptShow {
  const chance = chanceFrom(`studio ${index}`);
  const one = (list: readonly string[]): string => list[Math.floor(chance() * list.length)] ?? "";
  const side = (least: number): string => `${least + Math.floor(chance() * 96) / 16} in`;
  return {
    format: "margent-show",
    version: 1,
    name: `Show ${index + 1}`,
    date: "2026-12-14",
    practice: { unit: "in" },
    stock: {
      sheets: Array.from({ length: OFFCUTS }, (_, at) => ({
        name: `offcut ${at + 1}`,
        width: side(8),
        height: side(10),
        copies: 1,
        board: one(["4-ply white rag", "8-ply cream rag", "2-ply black"]),
      })),
    },
    works: Array.from({ length: WORKS }, (_, at) => ({
      id: `w${at}`,
      title: `${one(TITLES)} ${at + 1}`,
      maker: `Maker ${Math.floor(chance() * 40)}`,
      process: one(PROCESSES),
      design: {
        unit: "in",
        print: { width: side(7), height: side(9) },
        outer: { smallest: "inch", border: "2" },
      },
    })),
  };
}

const report = (fault: unknown): void => {
  throw fault;
};
const none = async () => ({ ok: false, problems: [] }) as const;

async function measure(kind: string, database: string): Promise<void> {
  const home = mkdtempSync(join(tmpdir(), "margent-bench-"));
  const open = async () => openStore({ home, database, clock: () => new Date(), report });
  const filling = await open();
  const filled = performance.now();
  for (let index = 0; index < SHOWS; index++) await beginShow(filling, `show${index}`, show(index));
  console.log(`  ${kind}: filled in ${((performance.now() - filled) / 1000).toFixed(1)} s`);
  await filling.close();

  const starting = performance.now();
  const store = await open();
  const app = createApp({
    assets: new Map(),
    example: { show: { ...show(0), works: [] }, pictures: new Map() },
    clock: () => new Date(),
    papers: { benchSheet: none, paper: none, previews: none, packet: none },
    report,
    studio: { store, news: newsOf(store, report), newId },
  });
  const ask = async (path: string, body?: object): Promise<void> => {
    const answer = await app.request(`/api${path}`, {
      method: body === undefined ? "GET" : "POST",
      headers: { host: HOST, "content-type": "application/json" },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
    if (!answer.ok) throw new Error(`${path}: ${answer.status} ${await answer.text()}`);
    await answer.text();
  };
  await ask("/shows");
  const started = performance.now() - starting;
  console.log(`  ${kind}: start to first list ${started.toFixed(0)} ms; wanted 1000`);

  let number = 0;
  const asked: readonly (readonly [name: string, ask: () => Promise<void>])[] = [
    ["list of shows", () => ask("/shows")],
    ["list of works", () => ask("/works")],
    ["search in works, many", () => ask("/works?search=weir")],
    ["search in works, none", () => ask("/works?search=nowhere")],
    ["works by level", () => ask("/works?level=stop")],
    ["list of sheets", () => ask("/sheets")],
    ["search in sheets", () => ask("/sheets?search=cream")],
    ["a show, unlike the last ones", () => ask(`/shows/show${number++ % SHOWS}`)],
    [
      "a change kept",
      () => {
        const change = { kind: "move", said: "moved", work: "w0", from: 0, to: 1 + (changes % 100) };
        const sent = { stamp: newId(), window: "bench", act: "do", of: null, change };
        return ask("/shows/show7/changes", { base: changes++, changes: [sent] });
      },
    ],
  ];
  for (const [name, once] of asked) {
    const times: number[] = [];
    for (let turn = 0; turn < TURNS; turn++) {
      const from = performance.now();
      await once();
      times.push(performance.now() - from);
    }
    const wanted = median(times) <= 100 ? "" : "  MISSED";
    console.log(`  ${kind}: ${name.padEnd(30)} ${spread(times, 1)} ms; wanted 100${wanted}`);
  }
  await store.close();
  rmSync(home, { recursive: true });
}

await measure("SQLite", "");
if (noPostgres !== null) console.log(`  PostgreSQL: ${noPostgres}`);
else {
  changes = 0;
  const cluster = await startCluster();
  try {
    await measure("PostgreSQL", await cluster.fresh());
  } finally {
    await cluster.stop();
  }
}
