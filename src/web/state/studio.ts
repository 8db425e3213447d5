import type { KeptShow } from "./change.ts";
import type { Pending } from "./keeping.ts";

/** What the page asks of the server about what the studio keeps. Each rejects with TypeError where nothing answers. */

/** A change as the studio has made it. */
export interface Entry extends Pending {
  readonly number: number;
  readonly at: string;
}

export interface Listed {
  readonly id: string;
  readonly name: string;
  readonly works: number;
  readonly at: string;
}

export interface Stored {
  readonly id: string;
  readonly number: number;
  readonly show: KeptShow;
}

/** Changes that are on the disk (`kept`), or why they are not; `entries` tells what has happened since in every case. */
export type Sending =
  | { readonly kind: "kept" | "behind"; readonly entries: readonly Entry[] }
  | { readonly kind: "against"; readonly entries: readonly Entry[]; readonly stamp: string }
  | { readonly kind: "none" };

async function ask(path: string, body?: object): Promise<Response> {
  if (body === undefined) return fetch(`./api${path}`);
  return fetch(`./api${path}`, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(body),
  });
}

/** A server that is there and cannot answer is as good as none. */
class NoAnswer extends TypeError {}

async function answer<Value>(asked: Promise<Response>, ...refusals: readonly number[]): Promise<Value> {
  const given = await asked;
  if (!given.ok && !refusals.includes(given.status)) throw new NoAnswer(String(given.status));
  // Our own server's answer, in the shape that its tests hold.
  return (await given.json()) as Value;
}

const of = (id: string): string => `/shows/${encodeURIComponent(id)}`;

/** Every show of the studio. */
export const listed = async (): Promise<readonly Listed[]> =>
  (await answer<{ shows: readonly Listed[] }>(ask("/shows"))).shows;

export async function stored(id: string): Promise<Stored | null> {
  const found = await answer<Stored | { error: unknown }>(ask(of(id)), 404);
  return "show" in found ? found : null;
}

/** Begins a show; one that was begun before stays as it is. */
export const begin = (id: string, show: KeptShow): Promise<unknown> =>
  answer(ask("/shows", { id, show }), 409);

export async function send(id: string, base: number, changes: readonly Pending[]): Promise<Sending> {
  const given = await ask(`${of(id)}/changes`, { base, changes });
  return given.status === 404 ? { kind: "none" } : answer<Sending>(Promise.resolve(given), 409);
}

/** What has happened to a show since a number; null: the studio has it no longer. */
export async function since(id: string, base: number): Promise<readonly Entry[] | null> {
  const found = await answer<{ entries?: readonly Entry[] }>(ask(`${of(id)}/changes?since=${base}`), 404);
  return found.entries ?? null;
}

/** What a window can undo and do again. */
export const recall = (
  id: string,
  window: string,
): Promise<{ readonly done: readonly Entry[]; readonly undone: readonly Entry[] }> =>
  answer(ask(`${of(id)}/history?window=${encodeURIComponent(window)}`));

/** Keeps a picture; null where the studio takes it for none. */
export async function sendPicture(picture: Blob): Promise<string | null> {
  const given = await fetch("./api/pictures", { method: "POST", body: picture });
  if (given.status === 413 || given.status === 415) return null;
  return (await answer<{ picture: string }>(Promise.resolve(given))).picture;
}
