import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { SCHEMAS } from "../../src/cli/schema.ts";
import { type SchemaName, SCHEMA_NAMES } from "../../src/cli/schema-names.ts";
import {
  chopResult,
  composeResult,
  cutResult,
  hangResult,
  jsonSchemaOf,
  seriesResult,
  validate,
} from "../../src/show/index.ts";

const at = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const jsonAt = (path: string): unknown => JSON.parse(readFileSync(at(path), "utf8"));

/** Where each document's example lies. */
const exampleOf = (name: SchemaName): string =>
  `examples/${["show", "practice", "stock"].includes(name) ? "slack-water" : "documents"}/${name}.json`;

const COMMANDS: readonly (readonly [
  SchemaName,
  (document: unknown) => { readonly json: object; readonly stopped: boolean },
])[] = [
  [
    "compose",
    (document) => {
      const { text, stopped } = composeResult(document);
      return { json: JSON.parse(text) as object, stopped };
    },
  ],
  ["cut", (document) => cutResult(document, () => performance.now())],
  ["chop", (document) => chopResult(document, () => performance.now())],
  ["hang", hangResult],
  ["series", seriesResult],
];

describe("every document", () => {
  test("[EX11] has its schema in the folder as the code makes it, and no other lies there", () => {
    expect(readdirSync(at("docs/schemas")).toSorted()).toEqual(
      SCHEMA_NAMES.map((name) => `${name}.json`).toSorted(),
    );
    for (const name of SCHEMA_NAMES)
      expect(jsonAt(`docs/schemas/${name}.json`)).toEqual(
        JSON.parse(JSON.stringify(jsonSchemaOf(SCHEMAS[name]))),
      );
  });

  test.each(SCHEMA_NAMES)("[EX11] %s has an example that its schema takes", (name) => {
    expect(validate(SCHEMAS[name], jsonAt(exampleOf(name))).ok).toBe(true);
  });

  test.each(COMMANDS)("[EX11] %s answers its example without a stop", (name, answer) => {
    const { json, stopped } = answer(jsonAt(exampleOf(name)));
    expect(stopped).toBe(false);
    expect(json).not.toHaveProperty("error");
  });
});
