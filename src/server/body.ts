import { bodyLimit } from "hono/body-limit";
import type { Context, MiddlewareHandler } from "hono";
import { isDay } from "../packet/index.ts";
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

/** Reads `{show, date, …}`. Without a date it is `today`. */
export async function readAsked(context: Context, today: string): Promise<Asked> {
  const type = context.req.header("content-type") ?? "";
  if (type.split(";")[0]?.trim().toLowerCase() !== "application/json") {
    return refuse(
      refusal(context, 415, { field: "Content-Type", found: foundText(type), wanted: SERVER.json }),
    );
  }
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
