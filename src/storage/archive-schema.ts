import * as z from "zod/mini";
import { ACTS, changeDocument, practiceDocument } from "../show/index.ts";
import { EXPORT_FORMAT } from "./archive-names.ts";

const whole = z.int().check(z.minimum(0));
const word = z.string().check(z.maxLength(200));

/** What an export says of itself. */
export const headDocument = z.object({
  format: z.literal(EXPORT_FORMAT),
  version: whole,
  made: z.optional(word),
  practice: z.optional(practiceDocument),
  shows: z.array(z.object({ id: word, folder: word })).check(z.maxLength(10_000)),
});

export const historyDocument = z.array(
  z.object({
    number: whole,
    stamp: word,
    window: word,
    at: word,
    act: z.enum(ACTS),
    of: z.nullable(word),
    change: changeDocument,
    inverse: changeDocument,
  }),
);

export const papersDocument = z.array(
  z.object({ stamp: word, paper: word, number: whole, work: z.nullable(word), rests: word, at: word }),
);
