/** The documents whose JSON Schema can be asked for. */
export const SCHEMA_NAMES = [
  "compose",
  "show",
  "practice",
  "stock",
  "cut",
  "chop",
  "hang",
  "series",
] as const;

export type SchemaName = (typeof SCHEMA_NAMES)[number];
