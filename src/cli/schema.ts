import {
  chopDocument,
  composeDocument,
  cutDocument,
  hangDocument,
  jsonSchemaOf,
  practiceDocument,
  seriesDocument,
  showDocument,
  stockDocument,
} from "../show/index.ts";
import { CLI } from "../words/cli.ts";
import { Unreadable } from "./input.ts";
import { SCHEMA_NAMES, type SchemaName } from "./schema-names.ts";

/** Every document by its name. */
export const SCHEMAS = {
  compose: composeDocument,
  show: showDocument,
  practice: practiceDocument,
  stock: stockDocument,
  cut: cutDocument,
  series: seriesDocument,
  chop: chopDocument,
  hang: hangDocument,
} as const satisfies Record<SchemaName, unknown>;

/** `margent schema`: the JSON Schema of one document, made from the code that validates. */
export function runSchema(name: string): void {
  if (!isSchema(name)) throw new Unreadable(CLI.problem("document", name, SCHEMA_NAMES.join(", ")));
  process.stdout.write(`${JSON.stringify(jsonSchemaOf(SCHEMAS[name]), null, 2)}\n`);
}

const isSchema = (name: string): name is SchemaName => Object.hasOwn(SCHEMAS, name);
