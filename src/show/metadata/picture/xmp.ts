import { DC } from "../dublin-core.ts";
import { readIptc } from "../iptc.ts";
import { descriptionsIn, valuesOf } from "../rdf.ts";
import { type PictureFields, saidBy } from "./fields.ts";

/** Where XMP keeps IPTC's credit line and the day on which the content was made; from memory. */
const CORE = "http://ns.adobe.com/photoshop/1.0/";

/**
 * What an XMP packet says: first of the artwork that the picture shows, then of the picture itself.
 * A text that is no such packet says nothing.
 */
export function xmpFields(text: string): PictureFields {
  const descriptions = descriptionsIn(text) ?? [];
  const of = (space: string, name: string): string =>
    descriptions.flatMap((one) => valuesOf(one, space, name)).join("; ");
  const [artwork = {}] = readIptc(text) ?? [];
  const own = saidBy("XMP", {
    title: of(DC, "title"),
    maker: of(DC, "creator"),
    year: /^\d{4}/.exec(of(CORE, "DateCreated"))?.[0] ?? "",
    description: of(DC, "description"),
    subject: of(DC, "subject"),
    rights: of(DC, "rights"),
    credit: of(CORE, "Credit"),
  });
  return {
    ...own,
    ...saidBy("XMP", {
      title: artwork.AOTitle ?? "",
      maker: artwork.AOCreator ?? "",
      year: artwork.AODateCreated ?? artwork.AOCircaDateCreated ?? "",
      description: artwork.AOContentDescription ?? "",
      rights: artwork.AOCopyrightNotice ?? "",
      credit: artwork.AOSource ?? "",
      inventoryNumber: artwork.AOSourceInvNo ?? "",
    }),
  };
}
