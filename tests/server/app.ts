import { fileURLToPath } from "node:url";
import type { Hono } from "hono";
import {
  assetOf,
  createApp,
  type PaperOrder,
  type Papers,
  readExample,
  type Studio,
} from "../../src/server/index.ts";
import type { Problem, ShowDocument } from "../../src/show/index.ts";

export const HERE = "127.0.0.1:4817";

const design = { print: { width: "8 1/2", height: "11" }, outer: { width: "11", height: "14" } };
export const SHOW: ShowDocument = {
  format: "margent-show",
  version: 1,
  name: "Two",
  works: [
    { title: "First", design },
    { title: "Second", design },
  ],
};

const text = (said: string): Uint8Array => new TextEncoder().encode(said);
const example = readExample(fileURLToPath(new URL("../../examples/slack-water", import.meta.url)));

/** An app whose papers are plain texts that say what was ordered; with `problems` or a `fault` it makes none. */
export function appWith({
  problems,
  fault,
  studio = null,
}: {
  problems?: readonly Problem[];
  fault?: Error;
  studio?: Studio | null;
} = {}): {
  app: Hono;
  orders: (PaperOrder & { work?: number })[];
  reported: unknown[];
} {
  const orders: (PaperOrder & { work?: number })[] = [];
  const reported: unknown[] = [];
  const made = <T>(value: T): { ok: true; value: T } | { ok: false; problems: readonly Problem[] } => {
    if (fault) throw fault;
    return problems ? { ok: false, problems } : { ok: true, value };
  };
  const papers: Papers = {
    benchSheet: async (order) => {
      orders.push(order);
      return made(text(`%PDF work ${order.work}`));
    },
    paper: async (order) => {
      orders.push(order);
      return made(order.name === "light" ? null : text(`%PDF ${order.name}`));
    },
    previews: async (order) => {
      orders.push(order);
      return made({ papers: [{ name: "light", page: null }], leftOut: ["No light is said."], plan: 1 });
    },
    packet: async (order) => {
      orders.push(order);
      return made(
        new Map([
          ["packet.json", text(JSON.stringify({ works: order.show.works.length }))],
          ["check-list.csv", text("title\n")],
        ]),
      );
    },
  };
  const app = createApp({
    studio,
    assets: new Map([
      ["index.html", assetOf("index.html", text("<!doctype html>"))],
      ["assets/page-abc123.js", assetOf("assets/page-abc123.js", text("export {};"))],
    ]),
    example,
    // Late on a winter evening by the machine's own clock: the day is the local one.
    clock: () => new Date(2026, 2, 4, 23, 30),
    papers,
    report: (told) => reported.push(told),
    port: () => 4817,
  });
  return { app, orders, reported };
}

export const postJson = async (
  app: Hono,
  paper: "bench-sheet" | "packet" | "one" | "previews",
  body: unknown,
  headers: Record<string, string> = {},
): Promise<Response> =>
  app.request(`/api/papers/${paper}`, {
    method: "POST",
    body: typeof body === "string" ? body : JSON.stringify(body),
    headers: { host: HERE, "content-type": "application/json", ...headers },
  });
