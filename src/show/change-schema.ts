import * as z from "zod/mini";
import { composeDocument, practiceDocument, showDocument, workDocument } from "./schema.ts";

const text = z.string().check(z.maxLength(2000));
const place = z.int().check(z.minimum(0), z.maximum(100_000));
const id = z.string().check(z.minLength(1), z.maxLength(100));

/** A patch: each key with its whole value, absent where nothing stands there. */
const sides = <Part extends z.ZodMiniObject>(part: Part) => ({
  before: z.partial(part),
  after: z.partial(part),
});

const work = z.extend(workDocument, { id });

/** A change as it goes from the page to the server and into the history; its type is that of `change.ts`. */
export const changeDocument = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("design"), said: text, work: id, ...sides(composeDocument) }),
  z.object({
    kind: z.literal("facts"),
    said: text,
    work: id,
    ...sides(z.omit(workDocument, { id: true, design: true })),
  }),
  z.object({
    kind: z.literal("show"),
    said: text,
    ...sides(z.omit(showDocument, { works: true, format: true, version: true })),
  }),
  z.object({ kind: z.literal("practice"), said: text, ...sides(practiceDocument) }),
  z.object({ kind: z.literal("add"), said: text, work, at: place }),
  z.object({ kind: z.literal("remove"), said: text, work, at: place }),
  z.object({ kind: z.literal("move"), said: text, work: id, from: place, to: place }),
]);
