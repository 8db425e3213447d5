import { bodyLimit } from "hono/body-limit";
import type { Context, MiddlewareHandler } from "hono";
import { isDay } from "../packet/index.ts";
import type * as z from "zod/mini";
import { foundText, type ShowDocument, showDocument, validate } from "../show/index.ts";
import { SERVER } from "../words/server.ts";
import { refusal, refuseProblems } from "./refusal.ts";

/** Stops a body that is longer, also one that does not say its length. */
export const atMost = (bytes: number): MiddlewareHandler =>
  bodyLimit({
    maxSize: bytes,
    onError: (context) =>
      refusal(context, 413, {
        field: "",
        found: `more than ${bytes / 1_000_000} MB`,
        wanted: SERVER.bytes(bytes),
      }),
  });

/** What a request for a paper asks for; `answer` is the refusal where it cannot be read. */
export type Asked =
  | {
      readonly ok: true;
      readonly show: ShowDocument;
      readonly date: string;
      readonly rest: Readonly<Record<string, unknown>>;
    }
  | { readonly ok: false; readonly answer: Response };

const refuse = (answer: Response): Asked => ({ ok: false, answer });

type BodyRead<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly answer: Response };

/** The media type of a body, without what it says besides. */
const typeOf = (context: Context): string =>
  (context.req.header("content-type") ?? "").split(";")[0]?.trim().toLowerCase() ?? "";

const refuseType = (context: Context, wanted: string): Response =>
  refusal(context, 415, {
    field: "Content-Type",
    found: foundText(context.req.header("content-type") ?? ""),
    wanted,
  });

/** A body of JSON, checked against its schema. */
export async function readBody<Schema extends z.ZodMiniType>(
  context: Context,
  schema: Schema,
): Promise<BodyRead<z.infer<Schema>>> {
  if (typeOf(context) !== "application/json") return { ok: false, answer: refuseType(context, SERVER.json) };
  const read = validate(schema, parsed(await context.req.text()));
  return read.ok ? read : { ok: false, answer: refuseProblems(context, read.problems) };
}

/** A body of bytes of a type that is taken. */
export async function readBytes(
  context: Context,
  type: RegExp,
  wanted: string,
): Promise<BodyRead<Uint8Array>> {
  if (!type.test(typeOf(context))) return { ok: false, answer: refuseType(context, wanted) };
  return { ok: true, value: new Uint8Array(await context.req.arrayBuffer()) };
}

/** Reads `{show, date, …}`. Without a date it is `today`. */
export async function readAsked(context: Context, today: string): Promise<Asked> {
  if (typeOf(context) !== "application/json") return refuse(refuseType(context, SERVER.json));
  const body = parsed(await context.req.text());
  if (!isRecord(body)) {
    return refuse(refuseProblems(context, [{ field: "", found: foundText(body), wanted: { kind: "json" } }]));
  }
  const { show, date = today, ...rest } = body;
  const read = validate(showDocument, show);
  if (!read.ok) {
    return refuse(
      refuseProblems(
        context,
        read.problems.map((problem) => ({
          ...problem,
          field: problem.field === "" ? "show" : `show.${problem.field}`,
        })),
      ),
    );
  }
  if (typeof date !== "string" || !isDay(date)) {
    return refuse(refusal(context, 400, { field: "date", found: foundText(date), wanted: SERVER.date }));
  }
  return { ok: true, show: read.value, date, rest };
}

/** The value, or the text itself where it is no JSON. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    // Only a syntax error can come; the text is what was found.
    if (!(error instanceof SyntaxError)) throw error;
    return text;
  }
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);
