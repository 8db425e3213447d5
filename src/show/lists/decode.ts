import type { Encoding, FileFault } from "./records.ts";

export type Decoded =
  | { readonly kind: "text"; readonly text: string; readonly encoding: "utf-8" | Encoding }
  /** A ZIP archive: a workbook, by all likelihood. */
  | { readonly kind: "archive" }
  | { readonly kind: "fault"; readonly fault: FileFault };

const startsWith = (bytes: Uint8Array, ...start: number[]): boolean =>
  start.every((byte, index) => bytes[index] === byte);

/**
 * What a file's bytes are, by the bytes alone: its name may say anything. Text is UTF-8, or UTF-16 by its
 * byte-order mark or its pattern of noughts, else Windows-1252, in which no byte is wrong.
 */
export function decode(bytes: Uint8Array): Decoded {
  if (bytes.length === 0) return { kind: "fault", fault: "empty" };
  if (startsWith(bytes, 0x50, 0x4b, 0x03, 0x04)) return { kind: "archive" };
  if (startsWith(bytes, 0xd0, 0xcf, 0x11, 0xe0)) return { kind: "fault", fault: "old-or-locked-workbook" };
  if (startsWith(bytes, 0x25, 0x50, 0x44, 0x46)) return { kind: "fault", fault: "pdf" };
  if (startsWith(bytes, 0xff, 0xfe)) return text(bytes, "utf-16le");
  if (startsWith(bytes, 0xfe, 0xff)) return text(bytes, "utf-16be");
  const wide = wideOrder(bytes);
  if (wide !== null) return text(bytes, wide);
  if (isBinary(bytes)) return { kind: "fault", fault: "not-text" };
  return text(bytes, isUtf8(bytes) ? "utf-8" : "windows-1252");
}

type Label = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";

function text(bytes: Uint8Array, label: Label): Decoded {
  // The mark at the start is dropped by the decoder, but not where a stray byte further on made it Windows-1252.
  const body = label === "windows-1252" && startsWith(bytes, 0xef, 0xbb, 0xbf) ? bytes.subarray(3) : bytes;
  const raw = new TextDecoder(label).decode(body);
  const decoded = label === "windows-1252" ? raw.replace(/[\u0080-\u009f]/g, printed) : raw;
  if (/^\s*<(?:!doctype|html|table|\?xml)/i.test(decoded.slice(0, 200)))
    return { kind: "fault", fault: "web-page" };
  const encoding = label === "utf-16le" || label === "utf-16be" ? "utf-16" : label;
  return { kind: "text", text: decoded, encoding };
}

/** The letters of Windows-1252 from 0x80 to 0x9F (WHATWG Encoding Standard, index windows-1252); five of them are none. */
const UPPER = "€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ";

/** Some decoders leave these as control characters, as ISO 8859-1 has them. */
const printed = (control: string): string => UPPER[control.charCodeAt(0) - 0x80] ?? control;

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return true;
  } catch (error) {
    if (error instanceof TypeError) return false;
    throw error;
  }
}

/** Where every other byte of the start is nought, the text is UTF-16 that lacks its mark. */
function wideOrder(bytes: Uint8Array): "utf-16le" | "utf-16be" | null {
  const length = Math.min(bytes.length, 4096) & ~1;
  if (length < 8) return null;
  let even = 0;
  let odd = 0;
  for (let i = 0; i < length; i += 2) {
    if (bytes[i] === 0) even++;
    if (bytes[i + 1] === 0) odd++;
  }
  const half = length / 2;
  if (odd > half * 0.7 && even < half * 0.1) return "utf-16le";
  if (even > half * 0.7 && odd < half * 0.1) return "utf-16be";
  return null;
}

/** Whether the start holds more control bytes than a slip of the keyboard leaves. */
function isBinary(bytes: Uint8Array): boolean {
  const start = bytes.subarray(0, 4096);
  let control = 0;
  for (const byte of start) if (byte < 0x20 && byte !== 0x09 && byte !== 0x0a && byte !== 0x0d) control++;
  return control > Math.max(2, start.length * 0.02);
}
