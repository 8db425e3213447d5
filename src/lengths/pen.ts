/**
 * Writes text as UTF-8 into bytes that grow as they fill. A run of thousands of works writes hundreds of
 * thousands of lengths; as bytes they are written once, where texts joined to texts are copied again
 * and again.
 */
export class Pen {
  private bytes: Uint8Array;
  private end = 0;
  /** Bytes written and cleared away before those that are kept. */
  private cleared = 0;

  constructor(room = 1 << 16) {
    this.bytes = new Uint8Array(room);
  }

  /** How many bytes have been written. */
  get length(): number {
    return this.end;
  }

  /** What has been written, until the next writing: the bytes themselves, no copy. */
  written(): Uint8Array {
    return this.bytes.subarray(0, this.end);
  }

  /** Begins anew; what `written` gave before is no longer kept. */
  clear(): void {
    this.cleared += this.end;
    this.end = 0;
  }

  /** How many bytes have been written, those cleared away among them. */
  get place(): number {
    return this.cleared + this.end;
  }

  /** Whether what was written at a place is still there to be copied. */
  keeps(place: number): boolean {
    return place >= this.cleared;
  }

  /** What was written from one place to another, once more. */
  again(from: number, to: number): void {
    this.makeRoom(to - from);
    this.bytes.copyWithin(this.end, from - this.cleared, to - this.cleared);
    this.end += to - from;
  }

  /** Bytes that are text already; see `inBytes`. */
  piece(bytes: Uint8Array): void {
    this.makeRoom(bytes.length);
    this.bytes.set(bytes, this.end);
    this.end += bytes.length;
  }

  /** Any text; half of a surrogate pair is written as the sign for what cannot be written, U+FFFD. */
  text(text: string): void {
    const { length } = text;
    this.makeRoom(3 * length);
    const { bytes } = this;
    let { end } = this;
    for (let at = 0; at < length; at++) {
      const code = text.charCodeAt(at);
      if (code < 0x80) bytes[end++] = code;
      else {
        this.end = end;
        at += this.beyondAscii(text, at) > 0xffff ? 1 : 0;
        end = this.end;
      }
    }
    this.end = end;
  }

  /** A text as JSON has it, in its marks. */
  quoted(text: string): void {
    if (isPlain(text)) {
      this.text('"');
      this.text(text);
      this.text('"');
    } else this.text(JSON.stringify(text));
  }

  /** A whole number of nought or more in decimal digits. */
  whole(value: number): void {
    if (value > MOST_BY_DIGITS) this.text(String(value));
    else this.digits(value, digitsOf(value));
  }

  /**
   * `whole` and `rest` / 10^places, both nought or more, in as few decimals as are exact: 44 and 450
   * with 3 places is `44.45`.
   */
  decimal(whole: number, rest: number, places: number): void {
    this.whole(whole);
    if (rest === 0) return;
    // In 32 bits: a remainder is found by a multiplication there, by a call where a real may stand.
    let decimals = rest | 0;
    let digits = places;
    while (decimals % 10 === 0) {
      decimals /= 10;
      digits -= 1;
    }
    this.text(".");
    this.digits(decimals, digits);
  }

  /** A whole number in just so many digits, with noughts before it. */
  private digits(value: number, digits: number): void {
    this.makeRoom(digits);
    const { bytes, end } = this;
    let rest = value | 0;
    for (let place = end + digits - 1; place >= end; place--) {
      const tenth = (rest / 10) | 0;
      bytes[place] = NOUGHT + rest - 10 * tenth;
      rest = tenth;
    }
    this.end = end + digits;
  }

  /** One sign past ASCII, from its place in the text; gives its number. */
  private beyondAscii(text: string, at: number): number {
    const found = text.codePointAt(at) ?? REPLACEMENT;
    const code = found >= 0xd800 && found <= 0xdfff ? REPLACEMENT : found;
    const { bytes } = this;
    if (code < 0x800) bytes[this.end++] = 0xc0 | (code >> 6);
    else {
      if (code < 0x10000) bytes[this.end++] = 0xe0 | (code >> 12);
      else {
        bytes[this.end++] = 0xf0 | (code >> 18);
        bytes[this.end++] = 0x80 | ((code >> 12) & 0x3f);
      }
      bytes[this.end++] = 0x80 | ((code >> 6) & 0x3f);
    }
    bytes[this.end++] = 0x80 | (code & 0x3f);
    return code;
  }

  private makeRoom(more: number): void {
    if (this.end + more <= this.bytes.length) return;
    const wider = new Uint8Array(2 * (this.end + more));
    wider.set(this.written());
    this.bytes = wider;
  }
}

/** A text in bytes, for what is written often. */
export function inBytes(text: string): Uint8Array {
  const pen = new Pen(3 * text.length);
  pen.text(text);
  return pen.written();
}

/** Whether JSON writes every sign of a text as it is; no half of a surrogate pair is looked at twice. */
function isPlain(text: string): boolean {
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code < 0x20 || code === 0x22 || code === 0x5c || (code >= 0xd800 && code <= 0xdfff)) return false;
  }
  return true;
}

const NOUGHT = 0x30;
const REPLACEMENT = 0xfffd;
/** Up to here digits are found by whole-number division in 32 bits. */
const MOST_BY_DIGITS = 0x7fffffff;

function digitsOf(value: number): number {
  let digits = 1;
  for (let most = 10; value >= most; most *= 10) digits += 1;
  return digits;
}
