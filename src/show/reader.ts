import { type Length, mm, readLength, type Unit, ZERO } from "../lengths/index.ts";
import { foundText, type Problem, type Wanted } from "./problem.ts";

/** Reads the lengths of one document in its unit and gathers every problem with its field, so that all are told at once. */
export class Reader {
  readonly problems: Problem[] = [];
  readonly unit: Unit;

  constructor(unit: Unit) {
    this.unit = unit;
  }

  /** A length of nought or more; nought stands in where it could not be read. */
  length(field: string, text: string | number): Length {
    return this.signed(field, text, false);
  }

  /** A length that may lie left of or above the origin, as points of an outline do. */
  place(field: string, text: string | number): Length {
    return this.signed(field, text, true);
  }

  /** A length above nought; a millimetre stands in where it could not be read, so that nothing is divided by nought. */
  size(field: string, text: string | number): Length {
    const before = this.problems.length;
    const length = this.length(field, text);
    if (length > 0) return length;
    if (this.problems.length === before) this.refuse(field, text, { kind: "size" });
    return mm(1);
  }

  /** A length where it is written, else what the practice has. */
  lengthOr(field: string, text: string | number | undefined, otherwise: Length): Length {
    return text === undefined ? otherwise : this.length(field, text);
  }

  sizeOr(field: string, text: string | number | undefined, otherwise: Length): Length {
    return text === undefined ? otherwise : this.size(field, text);
  }

  /** A number above `above` and not past `to`; `to` stands in where it is not. */
  number(
    field: string,
    value: number,
    above: number,
    to: number,
    what: "degrees" | "ratio" | "count",
  ): number {
    if (value > above && value <= to) return value;
    this.refuse(field, value, { kind: "number", above, to, what });
    return to;
  }

  /** A whole number from 1 up to `most`; 1 stands in where it is not. */
  count(field: string, value: number, most: number): number {
    if (Number.isInteger(value) && value >= 1 && value <= most) return value;
    this.refuse(field, value, { kind: "number", above: 0, to: most, what: "count" });
    return 1;
  }

  refuse(field: string, found: unknown, wanted: Wanted): void {
    this.problems.push({ field, found: foundText(found), wanted });
  }

  private signed(field: string, value: string | number, signed: boolean): Length {
    const text = typeof value === "number" ? numberText(value) : value;
    const read = readLength(text, this.unit, signed);
    if (read.ok) return read.length;
    this.refuse(field, value, { kind: "length", fault: read.fault });
    return ZERO;
  }
}

/** A JSON number as it would be typed; very small and very large ones are not written with an exponent. */
const numberText = (value: number): string =>
  Number.isFinite(value) && /e/.test(String(value)) ? value.toFixed(10) : String(value);
