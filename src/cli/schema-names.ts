/** The documents whose JSON Schema can be asked for. */
export const SCHEMA_NAMES = ["compose", "show", "practice", "stock", "cut", "series"] as const;

export type SchemaName = (typeof SCHEMA_NAMES)[number];
