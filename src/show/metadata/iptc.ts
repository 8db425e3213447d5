import { descriptionsIn, itemsOf, RDF, valuesOf } from "./rdf.ts";
import type { WorkRecord } from "./record.ts";
import { escapeXml, type XmlElement } from "./xml.ts";

/** IPTC's extension schema, from memory. */
const IPTC_EXTENSION = "http://iptc.org/std/Iptc4xmpExt/2008-02-29/";

type Shape = "text" | "list" | "languages";

/**
 * The fields of IPTC's structure "Artwork or object": title, creator, date, source, inventory number and copyright
 * notice, and of its later ones those that a record here fills (public documentation; names in the file and their
 * shapes from memory). A date that is no calendar's goes under "circa".
 */
export const IPTC_ARTWORK = [
  ["AOTitle", "languages", ({ title }) => title],
  ["AOCreator", "list", ({ maker }) => maker],
  ["AODateCreated", "text", ({ date }) => (isDate(date) ? date : "")],
  ["AOCircaDateCreated", "text", ({ date }) => (isDate(date) ? "" : date)],
  ["AOSource", "text", ({ credit }) => credit],
  ["AOSourceInvNo", "text", ({ number }) => number],
  ["AOCopyrightNotice", "text", ({ rights }) => rights],
  ["AOContentDescription", "languages", ({ description }) => description],
  [
    "AOPhysicalDescription",
    "languages",
    ({ process, measurements }) => [process, measurements].filter((text) => text !== "").join("; "),
  ],
] as const satisfies readonly (readonly [string, Shape, (record: WorkRecord) => string])[];

type IptcField = (typeof IPTC_ARTWORK)[number][0];

/** A work under IPTC's names; what is not told is absent. */
export type IptcArtwork = Readonly<Partial<Record<IptcField, string>>>;

/** A year, a month or a day as ISO 8601 has them. */
const isDate = (date: string): boolean => /^\d{4}(-\d{2}){0,2}$/.test(date);

export const iptcArtworkOf = (record: WorkRecord): IptcArtwork =>
  Object.fromEntries(
    IPTC_ARTWORK.map(([name, , of]) => [name, of(record)] as const).filter(([, value]) => value !== ""),
  );

function property(name: IptcField, shape: Shape, value: string): string {
  const said = escapeXml(value);
  const inside =
    shape === "text"
      ? said
      : shape === "list"
        ? `<rdf:Seq><rdf:li>${said}</rdf:li></rdf:Seq>`
        : `<rdf:Alt><rdf:li xml:lang="x-default">${said}</rdf:li></rdf:Alt>`;
  return `      <Iptc4xmpExt:${name}>${inside}</Iptc4xmpExt:${name}>\n`;
}

/** One work as an item of the bag. */
function itemOf(record: WorkRecord): string {
  const artwork = iptcArtworkOf(record);
  const lines = IPTC_ARTWORK.flatMap(([name, shape]) => {
    const value = artwork[name];
    return value === undefined ? [] : [property(name, shape, value)];
  });
  return `     <rdf:li rdf:parseType="Resource">\n${lines.join("")}     </rdf:li>\n`;
}

/** Records as an XMP packet whose artworks or objects they are, in their order. */
export function writeIptc(records: readonly WorkRecord[]): string {
  return `<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/">
 <rdf:RDF xmlns:rdf="${RDF}">
  <rdf:Description rdf:about="" xmlns:Iptc4xmpExt="${IPTC_EXTENSION}">
   <Iptc4xmpExt:ArtworkOrObject>
    <rdf:Bag>
${records.map(itemOf).join("")}    </rdf:Bag>
   </Iptc4xmpExt:ArtworkOrObject>
  </rdf:Description>
 </rdf:RDF>
</x:xmpmeta>
<?xpacket end="w"?>
`;
}

/** The artworks or objects of an XMP packet; null where the text is no such document. */
export function readIptc(text: string): readonly IptcArtwork[] | null {
  const descriptions = descriptionsIn(text);
  return (
    descriptions?.flatMap(({ elements }) =>
      elements
        .filter(({ space, name }) => space === IPTC_EXTENSION && name === "ArtworkOrObject")
        .flatMap(itemsOf)
        .map(artworkIn),
    ) ?? null
  );
}

/** An item may hold its fields itself, or a description that does. */
function artworkIn(item: XmlElement): IptcArtwork {
  const inner = item.elements.find(({ space, name }) => space === RDF && name === "Description") ?? item;
  return Object.fromEntries(
    IPTC_ARTWORK.map(([name]) => [name, valuesOf(inner, IPTC_EXTENSION, name).join("; ")] as const).filter(
      ([, value]) => value !== "",
    ),
  );
}
