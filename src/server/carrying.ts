import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Context, Hono } from "hono";
import { backup, CannotKeep, type Elsewhere, exported, importArchive, type Store } from "../storage/index.ts";
import { SERVER } from "../words/server.ts";
import { file, fileHeaders } from "./attachment.ts";
import { atMost, readBytes } from "./body.ts";
import { refusal } from "./refusal.ts";

const MOST_IMPORTED = 1_000_000_000;
const ZIP = /^application\/(zip|octet-stream|x-zip-compressed)$/;

/** Exports, imports and backups, by addresses below `/api`. */
export function carryingRoutes(store: Store, elsewhere: Elsewhere, newId: () => string): Hono {
  const routes = new Hono();
  routes.get("/export", async (context) => {
    const show = context.req.query("show");
    const parts = exported(store, show === undefined ? "studio" : { show }, elsewhere);
    // The first part is made before the answer begins, so that what cannot be exported is refused.
    const first = await parts.next().catch((error: unknown) => refuse(context, error));
    if (first instanceof Response) return first;
    return stream(context, first, parts, show === undefined ? "studio.zip" : "show.zip");
  });
  routes.post("/import", atMost(MOST_IMPORTED), async (context) => {
    const body = await readBytes(context, ZIP, SERVER.export);
    if (!body.ok) return body.answer;
    try {
      return context.json(await importArchive(store, body.value, { newId }), 201);
    } catch (error) {
      return refuse(context, error);
    }
  });
  routes.get("/backup", async (context) => {
    const folder = await mkdtemp(join(tmpdir(), "margent-backup-"));
    try {
      const name = store.copyTo === null ? "studio.zip" : "studio.db";
      await backup(store, elsewhere, join(folder, name));
      const bytes = await readFile(join(folder, name));
      return file(context, bytes, "application/octet-stream", "attachment", name);
    } finally {
      await rm(folder, { recursive: true });
    }
  });
  return routes;
}

function refuse(context: Context, error: unknown): Response {
  if (!(error instanceof CannotKeep)) throw error;
  return refusal(context, 400, { field: "", found: error.message, wanted: SERVER.export });
}

function stream(
  context: Context,
  first: IteratorResult<Uint8Array>,
  parts: AsyncIterator<Uint8Array>,
  name: string,
): Response {
  let next: Promise<IteratorResult<Uint8Array>> = Promise.resolve(first);
  const body = new ReadableStream<Uint8Array>({
    async pull(controller) {
      const { done, value } = await next;
      if (done === true) return controller.close();
      controller.enqueue(value);
      next = parts.next();
      return undefined;
    },
  });
  return context.body(body, 200, fileHeaders("application/zip", "attachment", name));
}
