import { Fraction } from "./fraction.ts";
import { readMillimetres } from "./read-length.ts";

/** A value in millimetres to some power: 0 a number, 1 a length, 2 an area. `exact` is null where a root or a tangent makes it. */
interface Value {
  readonly exact: Fraction | null;
  readonly real: number;
  readonly power: number;
}

const FIGURE = /^(-?)((?:\d+ )?\d+\/\d+|\d+(?:\.\d+)?)(?: (in|mm))?/;

/** The millimetres of one printed figure, `≈` set aside, and whether it was there. */
export function figure(text: string): {
  readonly mm: Fraction;
  readonly unit: string;
  readonly about: boolean;
} {
  const about = text.startsWith("≈ ");
  const match = FIGURE.exec(about ? text.slice(2) : text);
  const unit = match?.[3];
  if (match === null || unit === undefined || match[0].length !== text.length - (about ? 2 : 0)) {
    throw new Error(`not a printed figure: ${text}`);
  }
  const size = readMillimetres(match[2] ?? "", unit);
  return { mm: match[1] === "-" ? Fraction.zero.minus(size) : size, unit, about };
}

/** What is wrong with one pencilled sum, or null when every part of it is true. `mark` is the ruler's graduation. */
export function faultOf(sum: string, is: Fraction, mark: Fraction): string | null {
  const [body = "", ...tail] = sum.split(", ");
  const equals = body.match(/^(.*) (=|≈) (.*)$/);
  const value = evaluate(equals?.[1] ?? body);
  if (value.power !== 1) return "it does not make a length";
  const made = equals === null ? null : figure(`${equals[2] === "≈" ? "≈ " : ""}${equals[3]}`);
  if (made !== null) {
    if (!made.about && !(value.exact?.same(made.mm) ?? false)) return "the two sides are not equal";
    // Four decimals of an inch or three of a millimetre.
    const close = made.unit === "in" ? 0.00005 * 25.4 : 0.0005;
    if (made.about && Math.abs(value.real - made.mm.toNumber()) > close * 1.000001) return "not even nearly";
  }
  const ending = /^(down|up|to the nearest)(?: to)? (.*)$/.exec(tail[0] ?? "");
  if (tail.length > 1 || (tail.length === 1 && ending === null)) return "an ending nobody can read";
  const kept = ending === null ? made : figure(ending[2] ?? "");
  const whole = value.exact ?? Fraction.near(value.real);
  if (ending !== null && kept !== null) {
    const rounded =
      ending[1] === "down"
        ? whole.floorTo(mark)
        : ending[1] === "up"
          ? whole.ceilTo(mark)
          : whole.nearTo(mark);
    if (kept.about || !rounded.same(kept.mm)) return "rounded to another graduation";
  }
  if (kept !== null && !kept.about && !kept.mm.same(is)) return "another result than was kept";
  if (Math.abs((kept?.mm ?? whole).minus(is).toNumber()) > 0.0013) return "far from what was kept";
  return null;
}

/** The value of `(11 in + 7 in) × (14 in - 10 in) / (4 × 11 in)` and the like. */
export function evaluate(text: string): Value {
  let rest = text;
  const take = (sign: string): boolean => {
    if (!rest.startsWith(sign)) return false;
    rest = rest.slice(sign.length);
    return true;
  };
  const sum = (): Value => {
    let left = product();
    for (;;) {
      if (take(" + ")) left = combine(left, product(), "+");
      else if (take(" - ")) left = combine(left, product(), "-");
      else return left;
    }
  };
  const product = (): Value => {
    let left = part();
    for (;;) {
      if (take(" × ")) left = combine(left, part(), "×");
      else if (take(" / ")) left = combine(left, part(), "/");
      else return left;
    }
  };
  const part = (): Value => {
    if (take("√(")) {
      const inside = closed(sum());
      const exact = inside.exact?.root() ?? null;
      return { exact, real: exact?.toNumber() ?? Math.sqrt(inside.real), power: inside.power / 2 };
    }
    if (take("tan ")) {
      const degrees = rest.match(/^[\d.]+/)?.[0] ?? "";
      if (!take(`${degrees}°`)) throw new Error(`no degrees in ${text}`);
      // Over an endless tangent nothing is left: a cut square to the face has no bevel.
      if (degrees === "90") return { exact: null, real: Number.POSITIVE_INFINITY, power: 0 };
      return degrees === "45"
        ? { exact: Fraction.one, real: 1, power: 0 }
        : { exact: null, real: Math.tan((Number(degrees) * Math.PI) / 180), power: 0 };
    }
    if (take("(")) {
      const inside = closed(sum());
      return take("²") ? combine(inside, inside, "×") : inside;
    }
    const match = FIGURE.exec(rest);
    if (match === null) throw new Error(`cannot read ${rest} in ${text}`);
    rest = rest.slice(match[0].length);
    const size = readMillimetres(match[2] ?? "", match[3] ?? "mm");
    const exact = match[1] === "-" ? Fraction.zero.minus(size) : size;
    return { exact, real: exact.toNumber(), power: match[3] === undefined ? 0 : 1 };
  };
  const closed = (inside: Value): Value => {
    if (!take(")")) throw new Error(`a bracket is open in ${text}`);
    return inside;
  };
  const value = sum();
  if (rest !== "") throw new Error(`${rest} is left over in ${text}`);
  return value;
}

function combine(a: Value, b: Value, sign: "+" | "-" | "×" | "/"): Value {
  const both = a.exact !== null && b.exact !== null ? ([a.exact, b.exact] as const) : null;
  switch (sign) {
    case "+":
    case "-":
      if (a.power !== b.power) throw new Error("a length and a number cannot be added");
      return {
        exact: both === null ? null : sign === "+" ? both[0].plus(both[1]) : both[0].minus(both[1]),
        real: sign === "+" ? a.real + b.real : a.real - b.real,
        power: a.power,
      };
    case "×":
      return { exact: both?.[0].times(both[1]) ?? null, real: a.real * b.real, power: a.power + b.power };
    case "/":
      if (b.real === Number.POSITIVE_INFINITY) return { exact: Fraction.zero, real: 0, power: a.power };
      return { exact: both?.[0].over(both[1]) ?? null, real: a.real / b.real, power: a.power - b.power };
  }
}
