import * as z from "zod/mini";
import { foundText, type Problem, type Wanted } from "./problem.ts";

export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Checks an unknown value against a schema of `schema.ts`; every fault becomes a problem that names its field. */
export function validate<T extends z.ZodMiniType>(schema: T, value: unknown): Read<z.infer<T>> {
  const result = schema.safeParse(value);
  if (result.success) return { ok: true, value: result.data };
  return { ok: false, problems: result.error.issues.map((issue) => problemOf(issue, value)) };
}

function problemOf(issue: z.core.$ZodIssue, document: unknown): Problem {
  return {
    field: issue.path.map(String).join("."),
    found: foundText(at(document, issue.path)),
    wanted: wantedOf(issue, String(issue.path.at(-1) ?? "")),
  };
}

function at(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (inner, key) => (typeof inner === "object" && inner !== null ? Reflect.get(inner, key) : undefined),
    value,
  );
}

function wantedOf(issue: z.core.$ZodIssue, key: string): Wanted {
  switch (issue.code) {
    case "invalid_value":
      return { kind: "one-of", options: issue.values.map(String) };
    case "invalid_union": {
      if (key === "outer") return { kind: "outer-shape" };
      if (key === "standard" || key === "smallest") return { kind: "size-list" };
      if (key === "frame") return { kind: "type", expected: "string" };
      const discriminated = issue.errors.length === 0 && "options" in issue && Array.isArray(issue.options);
      if (discriminated) return { kind: "one-of", options: (issue.options as unknown[]).map(String) };
      return { kind: "length", fault: { code: "not-a-length" } };
    }
    case "too_big":
      return { kind: "at-most", most: Number(issue.maximum) };
    case "too_small":
      return { kind: "at-least", least: Number(issue.minimum) };
    case "invalid_type":
      return { kind: "type", expected: issue.expected };
    default:
      return { kind: "type", expected: issue.code };
  }
}
