/**
 * The forms that most lengths are typed in, read sign by sign: `7`, `7.25`, `7 1/4`, `7-1/4 in`, `7¼"`,
 * `18,5 cm`. It refuses nothing and knows no fault: whatever else there is, it leaves to `readLength`,
 * which reads these forms too, to the same tick (a test holds the two together), and takes a few times as long.
 */

/** Ticks of a length in a plain form, real, not yet to the whole tick; NaN where `readLength` must look. */
export function typedTicks(text: string, perUnit: number, units: ReadonlyMap<string, number>): number {
  const { length } = text;
  if (length > MOST_SIGNS) return Number.NaN;
  let at = digitsFrom(text, 0);
  let over = 0;
  let under = 1;
  let decimals = 0;
  let point = 0;
  const whole = at > 0;
  let value = whole ? wholeOf(text, 0, at) : 0;
  if (whole && (signAt(text, at) === POINT || signAt(text, at) === COMMA)) {
    const end = digitsFrom(text, at + 1);
    // A comma without a unit may part thousands.
    if (end === at + 1 || (signAt(text, at) === COMMA && end === length)) return Number.NaN;
    point = 10 ** (end - at - 1);
    decimals = wholeOf(text, at + 1, end);
    at = end;
  } else if (whole && isSlash(signAt(text, at))) {
    const end = digitsFrom(text, at + 1);
    over = value;
    under = wholeOf(text, at + 1, end);
    value = 0;
    at = end;
  } else {
    // A whole number and a fraction: in one sign, with or without a space, or in digits past a space or hyphen.
    const sign = signAt(text, at);
    const from = whole && (isSpace(sign) || sign === HYPHEN) ? at + 1 : at;
    const vulgar = sign !== HYPHEN && signAt(text, from) > LAST_ASCII ? VULGAR[text.charAt(from)] : undefined;
    const slash = digitsFrom(text, from);
    if (vulgar !== undefined) {
      [over, under] = vulgar;
      at = from + 1;
    } else if (slash > from && isSlash(signAt(text, slash))) {
      at = digitsFrom(text, slash + 1);
      over = wholeOf(text, from, slash);
      under = wholeOf(text, slash + 1, at);
    } else if (!whole) return Number.NaN;
  }
  // Past a fraction without its lower figure, or one of a whole or more, `readLength` says what is wrong.
  if (!(over < under)) return Number.NaN;
  if (isSpace(signAt(text, at))) at += 1;
  const per = at === length ? perUnit : (units.get(text.slice(at)) ?? Number.NaN);
  return point === 0 ? value * per + (over * per) / under : value * per + (decimals * per) / point;
}

/** Longer texts are rare, and figures of so many digits stay whole. */
const MOST_SIGNS = 15;

const NOUGHT = 0x30;
const NINE = 0x39;
const POINT = 0x2e;
const COMMA = 0x2c;
const HYPHEN = 0x2d;
const LAST_ASCII = 0x7f;

/** A sign's number; 0 past the end, where the text itself would have NaN for an answer and compiled code start anew. */
const signAt = (text: string, at: number): number => (at < text.length ? text.charCodeAt(at) : 0);

/** Where the digits that begin at a place end. */
function digitsFrom(text: string, begin: number): number {
  let at = begin;
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (code < NOUGHT || code > NINE) break;
    at += 1;
  }
  return at;
}

/** The whole number that digits write; nought where there are none. */
function wholeOf(text: string, begin: number, end: number): number {
  let value = 0;
  for (let at = begin; at < end; at++) value = 10 * value + text.charCodeAt(at) - NOUGHT;
  return value;
}

/** The plain space, that which does not break, the thin one, and the thin one that does not break. */
const isSpace = (code: number): boolean =>
  code === 0x20 || code === 0xa0 || code === 0x2009 || code === 0x202f;

/** The slash, and that of fractions. */
const isSlash = (code: number): boolean => code === 0x2f || code === 0x2044;

/** Fractions in one sign. */
export const VULGAR: Readonly<Record<string, readonly [over: number, under: number]>> = {
  "½": [1, 2],
  "⅓": [1, 3],
  "⅔": [2, 3],
  "¼": [1, 4],
  "¾": [3, 4],
  "⅕": [1, 5],
  "⅖": [2, 5],
  "⅗": [3, 5],
  "⅘": [4, 5],
  "⅙": [1, 6],
  "⅚": [5, 6],
  "⅐": [1, 7],
  "⅛": [1, 8],
  "⅜": [3, 8],
  "⅝": [5, 8],
  "⅞": [7, 8],
  "⅑": [1, 9],
  "⅒": [1, 10],
};
