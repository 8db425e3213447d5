import type { RecordDocument } from "../record-schema.ts";

/** Columns that say what is written down of a work, after the categories of Object ID; they are kept under their own names too. */
const RECORD_COLUMNS: Readonly<Record<keyof RecordDocument, readonly string[]>> = {
  inventoryNumber: ["inventory number"],
  typeOfObject: ["type of object"],
  inscriptions: ["inscriptions and markings", "inscriptions"],
  features: ["distinguishing features"],
  subject: ["subject"],
  description: ["short description", "description"],
  place: ["place of origin or discovery", "place of origin"],
  related: ["related written material"],
  crossReference: ["cross-reference to related objects", "cross-reference"],
  documented: ["date documented"],
  rights: ["rights", "copyright notice"],
  credit: ["credit line", "credit"],
  label: ["wall label", "label"],
  condition: ["condition"],
  value: ["insured value", "value"],
  lender: ["lender"],
};

const squash = (text: string): string => text.toLowerCase().replace(/[\s_\-.:]+/g, "");

const FIELD_OF: ReadonlyMap<string, string> = new Map(
  Object.entries(RECORD_COLUMNS).flatMap(([field, names]) =>
    names.map((name) => [squash(name), field] as const),
  ),
);

/** Whether a column is read into a work's record. */
export const isRecordColumn = (name: string): boolean => FIELD_OF.has(squash(name));

/** What a row's kept columns say of the work's record; the first of two that say the same field. */
export function recordOfColumns(kept: Readonly<Record<string, string>>): RecordDocument | null {
  const found = new Map<string, string>();
  for (const [name, text] of Object.entries(kept)) {
    const field = FIELD_OF.get(squash(name));
    if (field !== undefined && !found.has(field)) found.set(field, text);
  }
  return found.size === 0 ? null : Object.fromEntries(found);
}
