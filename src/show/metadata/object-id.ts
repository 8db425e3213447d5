import type { WorkRecord } from "./record.ts";

/**
 * The categories of Object ID (ICOM and Getty), in their order: photographs, nine categories, a short description,
 * and the five that are recommended besides. Beside each what it is filled from.
 */
export const OBJECT_ID: readonly (readonly [category: string, of: (record: WorkRecord) => string])[] = [
  ["Photographs", ({ picture }) => picture],
  ["Type of object", ({ type }) => type],
  [
    "Materials and techniques",
    ({ process, edition }) => [process, edition].filter((text) => text !== "").join(", "),
  ],
  ["Measurements", ({ measurements }) => measurements],
  ["Inscriptions and markings", ({ inscriptions }) => inscriptions],
  ["Distinguishing features", ({ features }) => features],
  ["Title", ({ title }) => title],
  ["Subject", ({ subject }) => subject],
  ["Date or period", ({ date }) => date],
  ["Maker", ({ maker }) => maker],
  ["Short description", ({ description }) => description],
  ["Inventory number", ({ number }) => number],
  ["Related written material", ({ related }) => related],
  ["Place of origin or discovery", ({ place }) => place],
  ["Cross-reference to related objects", ({ crossReference }) => crossReference],
  ["Date documented", ({ documented }) => documented],
];

/** A record as a row beside the categories of `OBJECT_ID`. */
export const objectIdRow = (record: WorkRecord): readonly string[] => OBJECT_ID.map(([, of]) => of(record));
