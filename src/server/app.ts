import { zipSync } from "fflate";
import { type Context, Hono } from "hono";
import { localDay } from "../packet/index.ts";
import { foundText, type ShowDocument, withIds } from "../show/index.ts";
import { answers, type Elsewhere, notePaper } from "../storage/index.ts";
import { SERVER } from "../words/server.ts";
import type { Asset, Assets } from "./assets.ts";
import { file } from "./attachment.ts";
import { atMost, readAsked } from "./body.ts";
import { guard, headers } from "./guard.ts";
import { carryingRoutes } from "./carrying.ts";
import { keptPictures } from "./kept-pictures.ts";
import { paperRoutes, readPaperOrder } from "./paper-routes.ts";
import type { Papers } from "./papers.ts";
import { refusal, refuseProblems } from "./refusal.ts";
import { type Studio, studioRoutes } from "./studio-routes.ts";

/** The show to try everything on, its pictures by their file names. */
export interface Example {
  readonly show: ShowDocument;
  readonly pictures: Assets;
}

export interface AppParts {
  readonly assets: Assets;
  readonly example: Example;
  readonly clock: () => Date;
  readonly papers: Papers;
  /** What the studio keeps; null: nothing is kept here, and the page keeps its shows itself. */
  readonly studio?: Studio | null;
  /** Where a fault of our own is told; the one who asked only learns that there was one. */
  readonly report: (fault: unknown) => void;
  /** The port listened on, for the Host check; null where any will do. */
  readonly port?: () => number | null;
}

/** A work's longest outlines come to about 2 MB of JSON. */
export const MOST_BYTES = { benchSheet: 8_000_000, packet: 64_000_000 } as const;

const EXAMPLE_PICTURES = "/api/example/pictures/";

/** The whole server as one function from request to answer. It reckons nothing itself. */
export function createApp(parts: AppParts): Hono {
  const { assets, example, clock, papers, report, port = () => null, studio = null } = parts;
  const app = new Hono();
  const today = () => localDay(clock());
  const ofExample = picturesOf(example);
  /** The bytes behind a picture's address, of the example or of what is kept. */
  const picturesFor = async (show: ShowDocument) => {
    const kept = studio === null ? new Map<string, Uint8Array>() : await keptPictures(studio.store, show);
    return (address: string) => ofExample(address) ?? kept.get(address);
  };
  /** Notes a paper that was made of a show that is kept, where the asker says which one it is. */
  const note = async (show: ShowDocument, id: unknown, paper: string, work?: number): Promise<void> => {
    if (studio === null || typeof id !== "string") return;
    const { store, newId } = studio;
    const from = withIds(show, newId);
    const of = work === undefined ? null : (from.works[work]?.id ?? null);
    await notePaper(store, id, { stamp: newId(), paper, work: of }, from);
  };
  const exampleShow = withAddresses(example.show);

  app.use(headers);
  app.use(guard(port));

  app.get("/health", async (context) => {
    if (studio !== null && !(await answers(studio.store))) return context.json({ ok: false }, 503);
    return context.json({ ok: true });
  });

  app.get("/api/example", (context) => {
    context.header("Cache-Control", "no-cache");
    return context.json(exampleShow);
  });
  app.get(`${EXAMPLE_PICTURES}:name`, (context) =>
    send(context, example.pictures.get(context.req.param("name"))),
  );

  app.post("/api/papers/bench-sheet", atMost(MOST_BYTES.benchSheet), async (context) => {
    const asked = await readAsked(context, today());
    if (!asked.ok) return asked.answer;
    const { show, date, rest } = asked;
    const picture = await picturesFor(show);
    const work = rest["work"];
    if (typeof work !== "number" || !Number.isInteger(work) || show.works[work] === undefined) {
      return refusal(context, 400, {
        field: "work",
        found: foundText(work),
        wanted: SERVER.work(show.works.length),
      });
    }
    const made = await papers.benchSheet({ show, date, picture, work });
    if (made.ok) await note(show, rest["id"], "bench-sheet", work);
    return made.ok
      ? file(context, made.value, "application/pdf", "inline", "bench-sheet.pdf")
      : refuseProblems(context, made.problems);
  });

  app.post("/api/papers/packet", atMost(MOST_BYTES.packet), async (context) => {
    const asked = await readPaperOrder(context, { today, picturesFor });
    if (!asked.ok) return asked.answer;
    const { show, date } = asked.order;
    const made = await papers.packet(asked.order);
    if (!made.ok) return refuseProblems(context, made.problems);
    await note(show, asked.rest["id"], "packet");
    // PDFs are compressed already; the date inside is the one asked for, so that equal packets are equal files.
    const zipped = zipSync(Object.fromEntries(made.value), {
      level: 1,
      mtime: `${date}T12:00:00`,
    });
    return file(context, zipped, "application/zip", "attachment", "packet.zip");
  });

  if (studio !== null) {
    app.route("/api", studioRoutes(studio));
    app.route("/api", carryingRoutes(studio.store, ofExample, studio.newId));
  }
  app.route("/api/papers", paperRoutes({ papers, today, picturesFor, note, mostBytes: MOST_BYTES.packet }));

  app.get("*", (context) => {
    const path = context.req.path.slice(1);
    return send(context, assets.get(path === "" ? "index.html" : path));
  });

  app.notFound((context) =>
    refusal(context, 404, {
      field: "",
      found: foundText(`${context.req.method} ${context.req.path}`),
      wanted: SERVER.path,
    }),
  );
  app.onError((fault, context) => {
    report(fault);
    return refusal(context, 500, { field: "", found: "a fault", wanted: SERVER.fault });
  });
  return app;
}

/** The bytes behind the address of one of the example's pictures. */
export const picturesOf =
  ({ pictures }: Example): Elsewhere =>
  (address) =>
    address.startsWith(EXAMPLE_PICTURES)
      ? pictures.get(address.slice(EXAMPLE_PICTURES.length))?.bytes
      : undefined;

/** The example with its pictures' addresses here instead of their places beside the document. */
function withAddresses(show: ShowDocument): ShowDocument {
  return {
    ...show,
    works: show.works.map((work) =>
      work.picture === undefined
        ? work
        : { ...work, picture: `${EXAMPLE_PICTURES}${work.picture.split("/").at(-1) ?? ""}` },
    ),
  };
}

/** A file of ours, or only the news that the asker's copy still holds. */
function send(context: Context, asset: Asset | undefined): Response | Promise<Response> {
  if (asset === undefined) return context.notFound();
  context.header("ETag", asset.etag);
  context.header("Cache-Control", asset.immutable ? "public, max-age=31536000, immutable" : "no-cache");
  const held = (context.req.header("if-none-match") ?? "")
    .split(",")
    .map((tag) => tag.trim().replace(/^W\//, ""));
  if (held.includes(asset.etag) || held.includes("*")) return context.body(null, 304);
  return context.body(asset.bytes, 200, { "Content-Type": asset.type });
}
