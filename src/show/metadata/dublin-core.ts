import { descriptionsIn, RDF, valuesOf } from "./rdf.ts";
import type { WorkRecord } from "./record.ts";
import { escapeXml } from "./xml.ts";

export const DC = "http://purl.org/dc/elements/1.1/";

/** The fifteen elements of Dublin Core 1.1 (ISO 15836), in the order of their names. */
export const DUBLIN_CORE = [
  "contributor",
  "coverage",
  "creator",
  "date",
  "description",
  "format",
  "identifier",
  "language",
  "publisher",
  "relation",
  "rights",
  "source",
  "subject",
  "title",
  "type",
] as const;
export type DublinCoreElement = (typeof DUBLIN_CORE)[number];

/** A record under Dublin Core's names, each as often as it is filled. */
export type DublinCore = Readonly<Partial<Record<DublinCoreElement, readonly string[]>>>;

const told = (...texts: readonly string[]): readonly string[] => texts.filter((text) => text !== "");

/** What is known of a work under Dublin Core's names. */
export function dublinCoreOf(record: WorkRecord): DublinCore {
  const all: Record<DublinCoreElement, readonly string[]> = {
    contributor: [],
    coverage: told(record.place),
    creator: told(record.maker),
    date: told(record.date),
    description: told(record.description, record.inscriptions, record.features),
    format: told(record.process, record.measurements, record.edition),
    identifier: told(record.number),
    language: [],
    publisher: [],
    relation: told(record.related, record.crossReference),
    rights: told(record.rights),
    source: told(record.credit),
    subject: told(record.subject),
    title: told(record.title),
    // The work itself, whatever else it is called, is an image that does not move (DCMI Type Vocabulary, from memory).
    type: ["StillImage", ...told(record.type)],
  };
  return Object.fromEntries(Object.entries(all).filter(([, values]) => values.length > 0));
}

function descriptionOf(record: WorkRecord): string {
  const core = dublinCoreOf(record);
  const lines = DUBLIN_CORE.flatMap((element) =>
    (core[element] ?? []).map((value) => `    <dc:${element}>${escapeXml(value)}</dc:${element}>\n`),
  );
  return `  <rdf:Description>\n${lines.join("")}  </rdf:Description>\n`;
}

/** Records as simple Dublin Core in RDF/XML: one description a work, in their order. */
export const writeDublinCore = (records: readonly WorkRecord[]): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<rdf:RDF xmlns:rdf="${RDF}" xmlns:dc="${DC}">\n${records.map(descriptionOf).join("")}</rdf:RDF>\n`;

/** The same read back; null where the text is no such document. */
export function readDublinCore(text: string): readonly DublinCore[] | null {
  const descriptions = descriptionsIn(text);
  return (
    descriptions?.map((description) =>
      Object.fromEntries(
        DUBLIN_CORE.map((element) => [element, valuesOf(description, DC, element)] as const).filter(
          ([, values]) => values.length > 0,
        ),
      ),
    ) ?? null
  );
}
