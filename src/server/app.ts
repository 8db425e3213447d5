import { zipSync } from "fflate";
import { type Context, Hono } from "hono";
import { localDay } from "../packet/index.ts";
import { foundText, type ShowDocument } from "../show/index.ts";
import { SERVER } from "../words/server.ts";
import type { Asset, Assets } from "./assets.ts";
import { atMost, readAsked } from "./body.ts";
import { guard, headers } from "./guard.ts";
import type { Papers } from "./papers.ts";
import { refusal, refuseProblems } from "./refusal.ts";

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
  /** Where a fault of our own is told; the one who asked only learns that there was one. */
  readonly report: (fault: unknown) => void;
  /** The port listened on, for the Host check; null where any will do. */
  readonly port?: () => number | null;
}

/** A work's longest outlines come to about 2 MB of JSON. */
export const MOST_BYTES = { benchSheet: 8_000_000, packet: 64_000_000 } as const;

const EXAMPLE_PICTURES = "/api/example/pictures/";

/** The whole server as one function from request to answer. It reckons nothing itself. */
export function createApp({ assets, example, clock, papers, report, port = () => null }: AppParts): Hono {
  const app = new Hono();
  const today = () => localDay(clock());
  const picture = (address: string) =>
    address.startsWith(EXAMPLE_PICTURES)
      ? example.pictures.get(address.slice(EXAMPLE_PICTURES.length))?.bytes
      : undefined;
  const exampleShow = withAddresses(example.show);

  app.use(headers);
  app.use(guard(port));

  app.get("/health", (context) => context.json({ ok: true }));

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
    const work = rest["work"];
    if (typeof work !== "number" || !Number.isInteger(work) || show.works[work] === undefined) {
      return refusal(context, 400, {
        field: "work",
        found: foundText(work),
        wanted: SERVER.work(show.works.length),
      });
    }
    const made = await papers.benchSheet({ show, date, picture, work });
    return made.ok
      ? file(context, made.value, "application/pdf", "inline", "bench-sheet.pdf")
      : refuseProblems(context, made.problems);
  });

  app.post("/api/papers/packet", atMost(MOST_BYTES.packet), async (context) => {
    const asked = await readAsked(context, today());
    if (!asked.ok) return asked.answer;
    const { show, date } = asked;
    const made = await papers.packet({ show, date, picture });
    if (!made.ok) return refuseProblems(context, made.problems);
    // PDFs are compressed already; the date inside is the one asked for, so that equal packets are equal files.
    const zipped = zipSync(Object.fromEntries(made.value), {
      level: 1,
      mtime: `${date}T12:00:00`,
    });
    return file(context, zipped, "application/zip", "attachment", "packet.zip");
  });

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

function file(
  context: Context,
  bytes: Uint8Array,
  type: string,
  place: "inline" | "attachment",
  name: string,
): Response {
  return context.body(new Uint8Array(bytes), 200, {
    "Content-Type": type,
    "Content-Disposition": `${place}; filename="${name}"`,
    "Cache-Control": "no-store",
  });
}
