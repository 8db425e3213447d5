/** Bytes read from one place on; past the end everything reads as nothing, never as something else. */
export class Bytes {
  readonly view: DataView;
  readonly length: number;

  constructor(readonly bytes: Uint8Array) {
    this.view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    this.length = bytes.byteLength;
  }

  /** A whole number of 1, 2 or 4 bytes; null past the end. */
  number(at: number, size: 1 | 2 | 4, little = false): number | null {
    if (at < 0 || at + size > this.length) return null;
    switch (size) {
      case 1:
        return this.view.getUint8(at);
      case 2:
        return this.view.getUint16(at, little);
      case 4:
        return this.view.getUint32(at, little);
    }
  }

  /** Some of the bytes; null where they do not all lie within. */
  part(at: number, length: number): Bytes | null {
    return at < 0 || length < 0 || at + length > this.length
      ? null
      : new Bytes(this.bytes.subarray(at, at + length));
  }

  /** Whether the bytes from a place on are these signs of plain English. */
  says(at: number, signs: string): boolean {
    return [...signs].every((sign, index) => this.bytes[at + index] === sign.charCodeAt(0));
  }

  /** Where the next byte of this value stands; null where there is none. */
  find(value: number, from: number): number | null {
    const at = this.bytes.indexOf(value, from);
    return at < 0 ? null : at;
  }

  /** As UTF-8; where it is none, as Windows-1252, which every byte is. Up to the first nought, ends trimmed. */
  text(): string {
    const end = this.find(0, 0) ?? this.length;
    const own = this.bytes.subarray(0, end);
    const utf8 = new TextDecoder("utf-8").decode(own);
    return (utf8.includes("\ufffd") ? new TextDecoder("windows-1252").decode(own) : utf8).trim();
  }
}
