/** One element of a document: names with their namespaces resolved, its elements, and its own text. */
export interface XmlElement {
  /** The namespace's address; empty where it has none. */
  readonly space: string;
  readonly name: string;
  readonly attributes: readonly { readonly space: string; readonly name: string; readonly value: string }[];
  readonly elements: readonly XmlElement[];
  readonly text: string;
}

/** A text as it may stand in an element or an attribute; signs that no document may hold are left out. */
export const escapeXml = (text: string): string =>
  text
    .replace(/[\p{Cc}\p{Cs}\ufffe\uffff]/gu, (sign) => (/[\t\n\r]/.test(sign) ? sign : ""))
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
    .replace(/[\r\n\t]/g, (sign) => `&#${sign.charCodeAt(0)};`);

const ENTITIES: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/** A text without its escapes; an entity that is not known stays as it stands. */
const unescapeXml = (text: string): string =>
  text.replace(/&(#x[0-9a-f]{1,6}|#\d{1,7}|[a-z]{2,5});/gi, (whole, body: string) => {
    if (!body.startsWith("#")) return ENTITIES[body] ?? whole;
    const code = /^#x/i.test(body) ? Number.parseInt(body.slice(2), 16) : Number(body.slice(1));
    return code > 0 && code <= 0x10ffff && !(code >= 0xd800 && code <= 0xdfff)
      ? String.fromCodePoint(code)
      : whole;
  });

/** Deeper than any record nests. */
const DEEPEST = 60;
const PIECE =
  /<!--[\s\S]*?-->|<\?[\s\S]*?\?>|<!\[CDATA\[([\s\S]*?)\]\]>|<\/([^\s>]+)\s*>|<([^\s/>!?]+)((?:\s+[^\s=/>]+\s*=\s*(?:"[^"]*"|'[^']*'))*)\s*(\/?)>|([^<]+)/y;
const ATTRIBUTE = /([^\s=/>]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;

type Spaces = ReadonlyMap<string, string>;

interface Open {
  readonly tag: string;
  readonly element: {
    space: string;
    name: string;
    attributes: XmlElement["attributes"];
    elements: XmlElement[];
    text: string;
  };
  readonly spaces: Spaces;
}

const XML_SPACE = "http://www.w3.org/XML/1998/namespace";

/**
 * Reads a small XML document of elements, attributes and texts. Null where it is not well-formed, nests too deep,
 * or has a document type, which no record needs and which could make it grow without end.
 */
export function parseXml(text: string): XmlElement | null {
  const open: Open[] = [];
  let root: XmlElement | null = null;
  PIECE.lastIndex = 0;
  const source = text.replace(/^\ufeff/, "");
  while (PIECE.lastIndex < source.length) {
    const match = PIECE.exec(source);
    if (match === null) return null;
    const [, cdata, end, tag, attributes = "", closed, written] = match;
    const top = open.at(-1);
    if (cdata !== undefined || written !== undefined) {
      const said = cdata ?? unescapeXml(written ?? "");
      if (top !== undefined) top.element.text += said;
      else if (said.trim() !== "") return null;
    } else if (end !== undefined) {
      if (top === undefined || top.tag !== end) return null;
      open.pop();
    } else if (tag !== undefined) {
      if ((top === undefined && root !== null) || open.length >= DEEPEST) return null;
      const own = opened(tag, attributes, top?.spaces ?? new Map([["xml", XML_SPACE]]));
      if (top === undefined) root = own.element;
      else top.element.elements.push(own.element);
      if (closed === "") open.push(own);
    }
  }
  return open.length === 0 ? root : null;
}

function opened(tag: string, written: string, outer: Spaces): Open {
  const pairs = [...written.matchAll(ATTRIBUTE)].map(([, name = "", one, other]) => ({
    name,
    value: unescapeXml(one ?? other ?? ""),
  }));
  const spaces = new Map(outer);
  for (const { name, value } of pairs) {
    if (name === "xmlns") spaces.set("", value);
    else if (name.startsWith("xmlns:")) spaces.set(name.slice(6), value);
  }
  const named = (full: string, plain: string): { space: string; name: string } => {
    const at = full.indexOf(":");
    return at < 0
      ? { space: plain, name: full }
      : { space: spaces.get(full.slice(0, at)) ?? "", name: full.slice(at + 1) };
  };
  return {
    tag,
    spaces,
    element: {
      ...named(tag, spaces.get("") ?? ""),
      attributes: pairs
        .filter(({ name }) => name !== "xmlns" && !name.startsWith("xmlns:"))
        .map(({ name, value }) => ({ ...named(name, ""), value })),
      elements: [],
      text: "",
    },
  };
}
