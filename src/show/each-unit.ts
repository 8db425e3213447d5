import type { Unit } from "../lengths/index.ts";

/** What is read of a document once for each unit, not at every work of a show; kept as long as the document is. */
export function onceEachUnit<Document extends object, Value>(
  read: (document: Document, unit: Unit) => Value,
): (document: Document, unit: Unit) => Value {
  const known = new WeakMap<Document, Partial<Record<Unit, Value>>>();
  return (document, unit) => {
    const units = known.get(document) ?? {};
    known.set(document, units);
    return (units[unit] ??= read(document, unit));
  };
}
