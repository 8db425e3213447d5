import { type Context, Hono } from "hono";
import { streamSSE } from "hono/streaming";
import * as z from "zod/mini";
import { ACTS, changeDocument, practiceDocument, showDocument, withIds } from "../show/index.ts";
import {
  beginShow,
  entriesSince,
  keepPicture,
  listPapers,
  listSheets,
  listShows,
  listWorks,
  makeChanges,
  MOST_PICTURE_BYTES,
  PICTURE_ADDRESS,
  readPicture,
  readPractice,
  readShow,
  redo,
  removeShow,
  type Sent,
  stacksOf,
  type Store,
  undo,
  type Undone,
  writePractice,
} from "../storage/index.ts";
import { SERVER } from "../words/server.ts";
import { atMost, readBody, readBytes } from "./body.ts";
import type { News } from "./news.ts";
import { refusal } from "./refusal.ts";

/** A show of many works with rough outlines comes to some tens of megabytes. */
const MOST = { show: 64_000_000, changes: 16_000_000, few: 1_000_000 } as const;
const MOST_LISTED = 500;

const word = z.string().check(z.minLength(1), z.maxLength(100));
const whole = z.int().check(z.minimum(0));
const begun = z.object({ id: word, show: showDocument });
const sent = z.object({
  base: whole,
  changes: z
    .array(
      z.object({
        stamp: word,
        window: word,
        act: z.enum(ACTS),
        of: z.nullable(word),
        change: changeDocument,
      }),
    )
    .check(z.maxLength(10_000)),
});
const undoing = z.object({ window: word, stamp: word });
const practised = z.object({ practice: practiceDocument, base: whole });

/** An open store, who tells the pages of its changes, and where new ids come from. */
export interface Studio {
  readonly store: Store;
  readonly news: News;
  readonly newId: () => string;
}

const none = (context: Context): Response =>
  refusal(context, 404, { field: "id", found: context.req.param("id") ?? "", wanted: SERVER.show });

/** What the studio keeps, by addresses below `/api`: every write is on the disk before it is answered. */
export function studioRoutes({ store, news, newId }: Studio): Hono {
  const routes = new Hono();
  routes.get("/shows", async (context) =>
    fresh(context, { kept: { kind: store.kind, place: store.place }, shows: await listShows(store) }),
  );
  routes.post("/shows", atMost(MOST.show), async (context) => {
    const body = await readBody(context, begun);
    if (!body.ok) return body.answer;
    const { id, show } = body.value;
    const stored = await beginShow(store, id, withIds(show, newId));
    if (stored !== null) return context.json(stored, 201);
    return context.json({ kind: "taken", theirs: await readShow(store, id) }, 409);
  });
  routes.get("/shows/:id", async (context) => {
    const stored = await readShow(store, context.req.param("id"));
    return stored === null ? none(context) : fresh(context, stored);
  });
  routes.delete("/shows/:id", async (context) =>
    (await removeShow(store, context.req.param("id"))) ? context.body(null, 204) : none(context),
  );

  routes.post("/shows/:id/changes", atMost(MOST.changes), async (context) => {
    const body = await readBody(context, sent);
    if (!body.ok) return body.answer;
    const { base, changes } = body.value;
    // Checked field by field just now.
    const outcome = await makeChanges(store, context.req.param("id"), base, changes as readonly Sent[]);
    return answered(context, outcome);
  });
  routes.get("/shows/:id/changes", async (context) => {
    const id = context.req.param("id");
    const since = Number(context.req.query("since") ?? "0");
    if (!Number.isSafeInteger(since) || since < 0) {
      return refusal(context, 400, {
        field: "since",
        found: context.req.query("since") ?? "",
        wanted: SERVER.number,
      });
    }
    const stored = await readShow(store, id);
    if (stored === null) return none(context);
    const entries = await entriesSince(store.db, id, since);
    return fresh(context, { number: entries.at(-1)?.number ?? stored.number, entries });
  });
  routes.get("/shows/:id/history", async (context) =>
    fresh(context, await stacksOf(store.db, context.req.param("id"), context.req.query("window") ?? "")),
  );
  for (const [name, act] of [
    ["undo", undo],
    ["redo", redo],
  ] as const) {
    routes.post(`/shows/:id/${name}`, atMost(MOST.few), async (context) => {
      const body = await readBody(context, undoing);
      if (!body.ok) return body.answer;
      return answered(context, await act(store, context.req.param("id"), body.value));
    });
  }
  routes.get("/shows/:id/papers", async (context) =>
    fresh(context, { papers: await listPapers(store, context.req.param("id")) }),
  );

  routes.get("/works", async (context) => {
    const { search, show, level } = context.req.query();
    return fresh(context, { works: await listWorks(store, { search, show, level, most: MOST_LISTED }) });
  });
  routes.get("/sheets", async (context) => {
    const { search, show } = context.req.query();
    return fresh(context, { sheets: await listSheets(store, { search, show, most: MOST_LISTED }) });
  });

  routes.get("/practice", async (context) => fresh(context, await readPractice(store)));
  routes.put("/practice", atMost(MOST.few), async (context) => {
    const body = await readBody(context, practised);
    if (!body.ok) return body.answer;
    const { kept, now } = await writePractice(store, body.value.practice, body.value.base);
    return context.json(now, kept ? 200 : 409);
  });

  routes.post("/pictures", atMost(MOST_PICTURE_BYTES), async (context) => {
    const body = await readBytes(context, /^image\/[\w.+-]+$/, SERVER.picture);
    if (!body.ok) return body.answer;
    const kept = await keepPicture(store, body.value);
    if (kept === null) {
      return refusal(context, 415, { field: "", found: SERVER.noPicture, wanted: SERVER.picture });
    }
    const { sum, width, height } = kept;
    return context.json({ picture: PICTURE_ADDRESS + sum, width, height }, 201);
  });
  const picture = (which: "preview" | "original") => async (context: Context) => {
    const sum = context.req.param("sum") ?? "";
    const tag = `"${sum.slice(0, 40)}-${which}"`;
    context.header("ETag", tag);
    context.header("Cache-Control", "private, max-age=31536000, immutable");
    if (context.req.header("if-none-match") === tag) return context.body(null, 304);
    const found = await readPicture(store, sum, which);
    if (found === null) return context.notFound();
    return context.body(new Uint8Array(found.bytes), 200, { "Content-Type": found.type });
  };
  routes.get("/pictures/:sum", picture("preview"));
  routes.get("/pictures/:sum/original", picture("original"));

  routes.get("/news", (context) =>
    streamSSE(context, async (stream) => {
      const stops: (() => void)[] = [];
      const ended = new Promise<void>((done) => {
        stream.onAbort(done);
        const stop = news.listen((told) => {
          if (told === null) done();
          else void stream.writeSSE({ event: "show", data: JSON.stringify(told) });
        });
        stops.push(stop);
      });
      await stream.writeSSE({ event: "here", data: "" });
      await ended;
      for (const stop of stops) stop();
    }),
  );
  return routes;
}

/** What is true now and may not be a moment later. */
function fresh(context: Context, value: object): Response {
  context.header("Cache-Control", "no-store");
  return context.json(value);
}

function answered(context: Context, outcome: Undone): Response {
  switch (outcome.kind) {
    case "none":
      return none(context);
    case "kept":
    case "nothing":
      return fresh(context, outcome);
    case "behind":
    case "against":
      return context.json(outcome, 409);
  }
}
