import type { Composed, LengthOut } from "./composed.ts";
import type { Design } from "./document.ts";
import { Fraction } from "./fraction.ts";
import { readMillimetres } from "./read-length.ts";
import { figure } from "./sums.ts";

const exact = (length: LengthOut): Fraction => Fraction.decimal(String(length.mm));

/** Every place in which the borders and the opening do not make up the outer size to the last digit. */
export function looseSums(composed: Composed): string[] {
  const { width, height } = composed.outer;
  return composed.mats.flatMap(({ borders, back }, number) => {
    const across = exact(borders.left).plus(exact(back.width)).plus(exact(borders.right));
    const down = exact(borders.head).plus(exact(back.height)).plus(exact(borders.foot));
    return [
      ...(across.same(exact(width)) ? [] : [`mat ${number} across: ${across.toNumber()} mm of ${width.mm}`]),
      ...(down.same(exact(height)) ? [] : [`mat ${number} down: ${down.toNumber()} mm of ${height.mm}`]),
    ];
  });
}

/** Every printed text that is not its length on the document's ruler; a maximum is printed rounded down. */
export function wrongTexts(design: Design, composed: Composed): string[] {
  const mark = readMillimetres(design.graduation, design.unit);
  const found: string[] = [];
  const visit = (value: unknown, path: string): void => {
    if (typeof value !== "object" || value === null) return;
    if (isLength(value)) {
      const way = /^\.(cover|pockets|paper under|largest pocket)/.test(path) ? "down" : "nearest";
      const fault = textFault(value, design.unit, mark, way);
      if (fault !== null) found.push(`${path}: "${value.text}" for ${value.mm} mm: ${fault}`);
      return;
    }
    for (const [key, inner] of Object.entries(value)) visit(inner, `${path}.${key}`);
  };
  const { reckoning, ...figures } = composed;
  visit(figures, "");
  // A step is printed the way the figure that it finds is printed.
  for (const { name, is } of reckoning) visit(is, `.${name}`);
  return found;
}

const isLength = (value: object): value is LengthOut =>
  "mm" in value && typeof value.mm === "number" && "text" in value && typeof value.text === "string";

function textFault(length: LengthOut, unit: string, mark: Fraction, way: "down" | "nearest"): string | null {
  if (!/^-?\d+(\.\d{1,7})?$/.test(String(length.mm))) return "more digits than a tick has";
  const actual = exact(length);
  const rounded = way === "down" ? actual.floorTo(mark) : actual.nearTo(mark);
  const printed = figure(length.text);
  if (printed.unit !== unit) return "another unit than the document's";
  const isExact = rounded.same(actual) && printed.mm.same(actual);
  if (printed.about === isExact) return isExact ? "marked ≈, yet exact" : "not exact, and no ≈";
  // Decimals go to a hundredth of a millimetre or a thousandth of an inch; a ruler of another unit may need more.
  const digit = printed.about ? (unit === "mm" ? 0.005 : 0.0127) : 0;
  const off = Math.abs(printed.mm.minus(rounded).toNumber());
  return off <= digit * 1.000001 ? null : `expected ${rounded.toNumber()} mm`;
}
