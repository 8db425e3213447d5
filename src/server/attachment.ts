import type { Context } from "hono";

/** The headers of a file that is made for whoever asks, and for nobody else. */
export const fileHeaders = (type: string, place: "inline" | "attachment", name: string) => ({
  "Content-Type": type,
  "Content-Disposition": `${place}; filename="${name}"`,
  "Cache-Control": "no-store",
});

/** Such a file. */
export const file = (
  context: Context,
  bytes: Uint8Array,
  ...headers: Parameters<typeof fileHeaders>
): Response => context.body(new Uint8Array(bytes), 200, fileHeaders(...headers));
