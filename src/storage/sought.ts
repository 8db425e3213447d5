/** A text as it is searched in: without case and accents, and without what a database's text cannot hold. */
export const soughtText = (...parts: readonly (string | undefined)[]): string =>
  parts.map((part) => heldText(part).normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase()).join("\n");

/** A text as a column of both databases can hold it: neither a NUL nor half of a sign that takes two places. */
export const heldText = (text: string | undefined): string =>
  (text ?? "").replaceAll("\0", "").replace(/\p{Cs}/gu, "\uFFFD");

/** The pattern of LIKE that finds a text anywhere; its own signs mean themselves, after a backslash. */
export const likeText = (text: string): string => `%${soughtText(text).replace(/[\\%_]/g, "\\$&")}%`;
