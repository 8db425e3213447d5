import { parseXml, type XmlElement } from "./xml.ts";

export const RDF = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";

/** Every description of an RDF document, wherever it lies; null where the text is no document. */
export function descriptionsIn(text: string): readonly XmlElement[] | null {
  const root = parseXml(text);
  return root === null ? null : found(root);
}

const found = (element: XmlElement): readonly XmlElement[] =>
  element.space === RDF && element.name === "Description" ? [element] : element.elements.flatMap(found);

/** The values of one property of a description: an attribute, a plain text, or the items of a bag, list or choice of languages. */
export function valuesOf(description: XmlElement, space: string, name: string): readonly string[] {
  const attribute = description.attributes.find((one) => one.space === space && one.name === name);
  if (attribute !== undefined) return nonEmpty([attribute.value]);
  return nonEmpty(
    description.elements
      .filter((one) => one.space === space && one.name === name)
      .flatMap((one) => {
        const items = itemsOf(one);
        return items.length === 0 ? [one.text] : byLanguage(items).map(({ text }) => text);
      }),
  );
}

/** The items of a bag, a list or a choice below a property. */
export const itemsOf = (property: XmlElement): readonly XmlElement[] =>
  property.elements
    .filter(({ space, name }) => space === RDF && (name === "Bag" || name === "Seq" || name === "Alt"))
    .flatMap((list) => list.elements.filter(({ space, name }) => space === RDF && name === "li"));

/** Of a choice of languages the one that stands for all where there is such. */
function byLanguage(items: readonly XmlElement[]): readonly XmlElement[] {
  const plain = items.filter(({ attributes }) =>
    attributes.some(({ name, value }) => name === "lang" && value === "x-default"),
  );
  return plain.length > 0 ? plain.slice(0, 1) : items;
}

const nonEmpty = (texts: readonly string[]): readonly string[] =>
  texts.map((text) => text.replace(/\s+/g, " ").trim()).filter((text) => text !== "");
