import * as z from "zod/mini";
import { type Read, showDocument, validate } from "../../show/index.ts";
import type { KeptShow } from "./change.ts";
import { withIds } from "./kept-show.ts";

// The page runs where no text may become code.
z.config({ jitless: true });

/** Reads a show from a file of any origin, every field of it. Works without an id are given one. */
export function readShow(json: unknown): Read<KeptShow> {
  const read = validate(showDocument, json);
  return read.ok ? { ok: true, value: withIds(read.value) } : read;
}
