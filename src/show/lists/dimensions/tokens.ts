/** The pieces of a museum's text of dimensions. A unit is written here in the form that `readLength` knows. */
export type Token =
  | { readonly kind: "number"; readonly text: string }
  | { readonly kind: "unit"; readonly text: UnitWord }
  | { readonly kind: "word"; readonly text: string }
  | { readonly kind: Sign }
  /** A sign that has no place here. */
  | { readonly kind: "other"; readonly text: string };

/** `by` parts a height from a width; `break` is a semicolon or a new line. */
export type Sign = "by" | "open" | "close" | "colon" | "break" | "comma" | "stop" | "slash" | "and";

export type UnitWord = "mm" | "cm" | "m" | "in" | "ft";

const UNIT_WORDS: ReadonlyMap<string, UnitWord> = new Map(
  Object.entries({
    mm: ["mm", "millimetre", "millimetres", "millimeter", "millimeters"],
    cm: ["cm", "cms", "centimetre", "centimetres", "centimeter", "centimeters"],
    m: ["m", "metre", "metres", "meter", "meters"],
    in: ["in", "ins", "inch", "inches", '"'],
    ft: ["ft", "foot", "feet", "'"],
  } satisfies Record<UnitWord, string[]>).flatMap(([unit, words]) =>
    words.map((word): [string, UnitWord] => [word, unit as UnitWord]),
  ),
);

/** The unit that a word stands for; null where it stands for none. */
export const unitWord = (word: string): UnitWord | null =>
  UNIT_WORDS.get(word.toLowerCase().replace(/\.$/, "").replace(/[′’]/, "'").replace(/[″”]/, '"')) ?? null;

const SIGNS: Readonly<Record<string, Sign>> = {
  "×": "by",
  "(": "open",
  "[": "open",
  ")": "close",
  "]": "close",
  ":": "colon",
  ";": "break",
  "\n": "break",
  "|": "break",
  ",": "comma",
  ".": "stop",
  "/": "slash",
  "=": "slash",
  "&": "and",
  "+": "and",
};

const VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒";

// One alternative for each kind of token. A number is whole or decimal, with a fraction after a space or
// a hyphen where there is one: `241`, `19,1`, `7 1/2`, `9-1/2`, `9½`, `3/4`.
const PIECE = new RegExp(
  [
    `(?<number>\\d+(?:[.,]\\d+)?(?:[ -]\\d+/\\d+| ?[${VULGAR}])|\\d+/\\d+|\\d+(?:[.,]\\d+)?|[${VULGAR}])`,
    `(?<mark>["'])`,
    `(?<word>[\\p{L}\\p{M}]+)`,
    `(?<sign>[×()\\[\\]:;\\n|,./=&+])`,
    `(?<space>[ \\t]+)`,
    `(?<other>.)`,
  ].join("|"),
  "gsu",
);

/** The text with every printed variant of a sign written one way. */
const plain = (text: string): string =>
  text
    .replace(/[\u00a0\u2000-\u200a\u202f\u205f\u3000]/g, " ")
    .replace(/\r\n?/g, "\n")
    .replace(/[\u2044\u2215]/g, "/")
    .replace(/[\u00d7\u2715\u2716\u2a2f]/g, "×")
    .replace(/[\u2032\u2018\u2019]/g, "'")
    .replace(/[\u2033\u201c\u201d]|''/g, '"')
    .replace(/(\d)[\u2010\u2011\u2013](?=\d+\/\d)/g, "$1-")
    .toLowerCase();

/** Cuts a text into tokens; what belongs nowhere comes out as "other". In one pass over the text. */
export function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  for (const { groups = {} } of plain(text).matchAll(PIECE)) {
    if (groups["number"] !== undefined) tokens.push({ kind: "number", text: groups["number"] });
    else if (groups["mark"] !== undefined) pushUnit(tokens, groups["mark"]);
    else if (groups["word"] !== undefined) pushWord(tokens, groups["word"]);
    else if (groups["sign"] !== undefined) pushSign(tokens, groups["sign"]);
    else if (groups["other"] !== undefined) tokens.push({ kind: "other", text: groups["other"] });
  }
  return tokens;
}

/** A unit is one only behind a figure: "in" is also a word. */
function pushUnit(tokens: Token[], word: string): void {
  const unit = UNIT_WORDS.get(word);
  if (unit !== undefined && tokens.at(-1)?.kind === "number") tokens.push({ kind: "unit", text: unit });
  else if (unit !== undefined && isAxisAfterNumber(tokens)) tokens.push({ kind: "unit", text: unit });
  else tokens.push({ kind: "word", text: word });
}

/** `20 h cm`: the axis stands between the figure and its unit. */
function isAxisAfterNumber(tokens: readonly Token[]): boolean {
  const last = tokens.at(-1);
  return tokens.at(-2)?.kind === "number" && last?.kind === "word" && /^[hwd]$/.test(last.text);
}

function pushWord(tokens: Token[], word: string): void {
  if (word === "x" || word === "by" || word === "\u0445") tokens.push({ kind: "by" });
  else if (word === "and") tokens.push({ kind: "and" });
  else if (/^x\p{L}/u.test(word) && tokens.at(-1)?.kind === "number") {
    tokens.push({ kind: "by" });
    pushWord(tokens, word.slice(1));
  } else if (word.endsWith("x") && UNIT_WORDS.has(word.slice(0, -1))) {
    pushUnit(tokens, word.slice(0, -1));
    tokens.push({ kind: "by" });
  } else pushUnit(tokens, word);
}

function pushSign(tokens: Token[], sign: string): void {
  const last = tokens.at(-1);
  // "in." and "cm." end with their own point.
  if (sign === "." && last?.kind === "unit") return;
  const kind = SIGNS[sign];
  if (kind !== undefined) tokens.push({ kind });
}

/** A token as it was written, for saying what was not understood. */
export function tokenText(token: Token): string {
  return "text" in token ? token.text : TEXT_OF_SIGN[token.kind];
}

const TEXT_OF_SIGN: Readonly<Record<Sign, string>> = {
  by: "x",
  open: "(",
  close: ")",
  colon: ":",
  break: ";",
  comma: ",",
  stop: ".",
  slash: "/",
  and: "&",
};
