import type { Context } from "hono";
import type { ContentfulStatusCode } from "hono/utils/http-status";
import { type Problem, type ProblemJson, problemJson, unreadJson } from "../show/index.ts";

/** Why there is no result, in the one shape that every refusal has. */
export function refusal(
  context: Context,
  status: ContentfulStatusCode,
  error: ProblemJson,
  more: readonly ProblemJson[] = [],
): Response {
  return context.json(unreadJson([error, ...more]), status);
}

/** A document's problems, the first one foremost. */
export function refuseProblems(context: Context, problems: readonly Problem[]): Response {
  const [first, ...more] = problems.map(problemJson);
  return first === undefined
    ? refusal(context, 400, { field: "", found: "", wanted: "" })
    : refusal(context, 400, first, more);
}
