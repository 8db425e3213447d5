import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { unzipSync } from "fflate";
import type { Hono } from "hono";
import sharp from "sharp";
import { afterAll, beforeAll, expect, test } from "vitest";
import { newsOf, usualHome } from "../../src/server/index.ts";
import { openStore, type Store } from "../../src/storage/index.ts";
import { appWith, HERE, SHOW } from "./app.ts";

let folder = "";
let store: Store;
let app: Hono;
let end = (): void => undefined;
const reported: unknown[] = [];
let ids = 0;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "margent-home-"));
  const report = (fault: unknown) => void reported.push(fault);
  store = await openStore({ home: folder, clock: () => new Date(), report });
  const news = newsOf(store, report);
  end = () => news.end();
  ({ app } = appWith({ studio: { store, news, newId: () => `id${++ids}` } }));
});
afterAll(async () => {
  end();
  await store.close();
  rmSync(folder, { recursive: true });
  expect(reported).toEqual([]);
});

const ask = async (path: string, method = "GET", body?: unknown, type = "application/json") =>
  app.request(`/api${path}`, {
    method,
    headers: { host: HERE, ...(body === undefined ? {} : { "content-type": type }) },
    ...(body === undefined
      ? {}
      : { body: body instanceof Uint8Array ? new Uint8Array(body) : JSON.stringify(body) }),
  });
const json = async (answer: Promise<Response>): Promise<unknown> => (await answer).json();
const works = SHOW.works.map((work, index) => ({ ...work, id: `w${index}` }));
const title = (stamp: string, from: string, to: string) => ({
  stamp,
  window: "left",
  act: "do",
  of: null,
  change: { kind: "facts", said: "title", work: "w0", before: { title: from }, after: { title: to } },
});
const begin = async (id: string) => {
  const answer = await ask("/shows", "POST", { id, show: { ...SHOW, works } });
  expect(answer.status).toBe(201);
};

test("[SV14] a show is begun once, listed, read, changed and taken off", async () => {
  await begin("one");
  const taken = await ask("/shows", "POST", { id: "one", show: SHOW });
  expect(taken.status).toBe(409);
  expect(await taken.json()).toMatchObject({ kind: "taken", theirs: { number: 0, show: { name: "Two" } } });
  expect(await json(ask("/shows"))).toMatchObject({
    kept: { kind: "sqlite" },
    shows: [{ id: "one", name: "Two", works: 2 }],
  });
  expect(await json(ask("/shows/one"))).toMatchObject({ id: "one", number: 0, show: { works } });
  const kept = await ask("/shows/one/changes", "POST", { base: 0, changes: [title("a", "First", "A")] });
  expect(kept.status).toBe(200);
  expect(await kept.json()).toMatchObject({ kind: "kept", number: 1, entries: [{ stamp: "a", number: 1 }] });
  expect(await json(ask("/works?search=second"))).toMatchObject({
    works: [{ show: "one", title: "Second" }],
  });
  expect((await ask("/shows/one", "DELETE")).status).toBe(204);
  for (const path of ["/shows/one", "/shows/one/changes"]) expect((await ask(path)).status).toBe(404);
});

test("[SV15] a change upon what has been overtaken is answered 409 with both sides to see", async () => {
  await begin("two");
  await ask("/shows/two/changes", "POST", { base: 0, changes: [title("t", "First", "Theirs")] });
  const mine = { base: 0, changes: [title("m", "First", "Mine")] };
  const behind = await ask("/shows/two/changes", "POST", mine);
  expect(behind.status).toBe(409);
  expect(await behind.json()).toMatchObject({ kind: "behind", number: 1, entries: [{ stamp: "t" }] });
  const against = await ask("/shows/two/changes", "POST", { ...mine, base: 1 });
  expect(against.status).toBe(409);
  expect(await against.json()).toMatchObject({ kind: "against", stamp: "m", theirs: "Theirs" });
  expect(await json(ask("/shows/two/changes?since=0"))).toMatchObject({ number: 1, entries: [{}] });
  expect(await json(ask("/shows/two/history?window=left"))).toMatchObject({ done: [{ stamp: "t" }] });
  const undone = await json(ask("/shows/two/undo", "POST", { window: "left", stamp: "u" }));
  expect(undone).toMatchObject({ kind: "kept", number: 2, entries: [{ act: "undo", of: "t" }] });
  expect(await json(ask("/shows/two/redo", "POST", { window: "left", stamp: "r" }))).toMatchObject({
    number: 3,
  });
  expect(await json(ask("/shows/two/redo", "POST", { window: "left", stamp: "x" }))).toEqual({
    kind: "nothing",
  });
});

test.each([
  ["/shows", { id: "", show: SHOW }, "id"],
  ["/shows", { id: "x", show: {} }, "show"],
  ["/shows/two/changes", { base: -1, changes: [] }, "base"],
  [
    "/shows/two/changes",
    { base: 0, changes: [{ stamp: "s", window: "w", act: "rub", of: null, change: {} }] },
    "changes.0.act",
  ],
  [
    "/shows/two/changes",
    { base: 0, changes: [{ ...title("s", "a", "b"), change: { kind: "facts" } }] },
    "changes.0.change",
  ],
  ["/shows/two/undo", {}, "window"],
  ["/shows/two/changes", [], ""],
])("[SV6] %s refuses what it cannot read by its field", async (path, body, field) => {
  const answer = await ask(path, "POST", body);
  expect(answer.status).toBe(400);
  const { error } = (await answer.json()) as { error: { field: string } };
  expect(error.field).toContain(field);
});

test("[SV16] every open page hears of a change, whoever made it", async () => {
  await begin("three");
  const answer = await ask("/news");
  expect(answer.headers.get("content-type")).toContain("text/event-stream");
  const reader = (answer.body ?? new ReadableStream()).pipeThrough(new TextDecoderStream()).getReader();
  let heard = "";
  const until = async (said: string) => {
    while (!heard.includes(said)) heard += (await reader.read()).value ?? "";
  };
  await until("event: here");
  await ask("/shows/three/changes", "POST", { base: 0, changes: [title("h", "First", "Heard")] });
  await until('{"show":"three","number":1}');
  end();
  expect((await reader.read()).done).toBe(true);
});

test("[SV17] a picture is taken in and given out, small and as it came; what is none is refused", async () => {
  const picture = new Uint8Array(
    await sharp({ create: { width: 20, height: 10, channels: 3, background: "#456" } })
      .png()
      .toBuffer(),
  );
  const kept = (await json(ask("/pictures", "POST", picture, "image/png"))) as { picture: string };
  expect(kept).toMatchObject({ width: 20, height: 10 });
  const address = kept.picture.replace(/^\/api/, "");
  const small = await ask(address);
  expect(small.headers.get("content-type")).toBe("image/jpeg");
  expect(small.headers.get("cache-control")).toContain("immutable");
  expect(new Uint8Array(await (await ask(`${address}/original`)).arrayBuffer())).toEqual(picture);
  expect((await ask("/pictures", "POST", new Uint8Array([1, 2]), "image/png")).status).toBe(415);
  expect((await ask("/pictures", "POST", picture, "text/html")).status).toBe(415);
  expect((await ask(`/pictures/${"0".repeat(64)}`)).status).toBe(404);
});

test("[SV18] the studio is carried out, in and backed up", async () => {
  const zip = new Uint8Array(await (await ask("/export?show=two")).arrayBuffer());
  expect(Object.keys(unzipSync(zip))).toContain("show.json");
  const imported = await ask("/import", "POST", zip, "application/zip");
  expect(imported.status).toBe(201);
  expect(await imported.json()).toMatchObject({ shows: [{ name: "Two", works: 2 }] });
  expect((await ask("/import", "POST", new Uint8Array([1, 2]), "application/zip")).status).toBe(400);
  expect((await ask("/export?show=none")).status).toBe(400);
  const copy = Buffer.from(await (await ask("/backup")).arrayBuffer());
  expect(copy.subarray(0, 15).toString()).toBe("SQLite format 3");
});

test("[SV19] the studio lies where each system keeps a program's data, unless told otherwise", () => {
  expect(usualHome("linux", {}, "/me")).toBe("/me/.local/share/margent");
  expect(usualHome("linux", { XDG_DATA_HOME: "/data" }, "/me")).toBe("/data/margent");
  expect(usualHome("darwin", {}, "/me")).toBe("/me/Library/Application Support/Margent");
});
