import type { Chance } from "./chance.ts";
import type { Written } from "./document.ts";

type Unit = "in" | "mm";

/** A length somebody wrote down, and about what it is. */
export interface Drawn {
  readonly said: Written;
  /** Near enough to build a sensible design from; the text is what counts. */
  readonly mm: number;
}

const VULGAR: Readonly<Record<string, string>> = {
  "1/2": "½",
  "1/4": "¼",
  "3/4": "¾",
  "1/8": "⅛",
  "3/8": "⅜",
  "5/8": "⅝",
  "7/8": "⅞",
};

/** A length between two, in millimetres, written as one of the many ways people write it in a document of this unit. */
export function drawLength(chance: Chance, unit: Unit, least: number, most: number): Drawn {
  const written = chance.happens(0.12) ? (unit === "in" ? "mm" : "in") : unit;
  return written === "in"
    ? drawInches(chance, least, most, unit === "in")
    : drawMetric(chance, least, most, unit === "mm");
}

function drawInches(chance: Chance, least: number, most: number, own: boolean): Drawn {
  if (chance.happens(0.15)) {
    const thousandths = within(chance, least, most, 0.0254);
    const text = decimals(thousandths, 3);
    return { said: decorated(chance, text, text, own, ["in", '"', "inches"]), mm: thousandths * 0.0254 };
  }
  const parts = chance.pick([8, 16, 16, 32, 64, 64, 128]);
  const marks = within(chance, least, most, 25.4 / parts);
  const whole = Math.floor(marks / parts);
  const [over, under] = lowest(marks % parts, parts);
  const mm = (marks * 25.4) / parts;
  if (over === 0) return { said: feetOr(chance, whole, "", own), mm };
  if (chance.happens(0.15)) {
    const text = String(marks / parts);
    return { said: decorated(chance, text, text, own, ["in", '"']), mm };
  }
  const fraction = `${over}/${under}`;
  return { said: feetOr(chance, whole, fraction, own), mm };
}

/** Inches with a fraction, in one of its printed shapes, now and then with feet before them. */
function feetOr(chance: Chance, whole: number, fraction: string, own: boolean): Written {
  if (whole >= 12 && chance.happens(0.08)) {
    const rest = whole % 12;
    const inches = [rest === 0 && fraction !== "" ? "" : String(rest), fraction].filter(Boolean).join(" ");
    const marks = chance.pick([`'"`, "′″", "’”"]);
    return `${Math.floor(whole / 12)}${marks[0]} ${inches}${marks[1]}`;
  }
  if (fraction === "") {
    return decorated(chance, String(whole), whole, own, ["in", '"', "in."]);
  }
  const sign = VULGAR[fraction];
  const shapes = [fraction, fraction.replace("/", "⁄"), sign ?? fraction];
  const shape = shapes[chance.whole(0, 2)] ?? fraction;
  const gap = shape === sign ? chance.pick(["", " "]) : chance.pick([" ", " ", "-", "\u00a0", "\u2009"]);
  const text = whole === 0 ? shape : `${whole}${gap}${shape}`;
  return decorated(chance, text, text, own, ["in", '"', "”", "″", "inches"]);
}

function drawMetric(chance: Chance, least: number, most: number, own: boolean): Drawn {
  const tenths = within(chance, least, most, 0.1);
  const mm = tenths * 0.1;
  if (chance.happens(0.3)) {
    const centimetres = decimals(tenths, 2);
    const comma = chance.happens(0.3) ? centimetres.replace(".", ",") : centimetres;
    return { said: `${comma}${chance.pick([" ", "", "\u202f"])}cm`, mm };
  }
  const text = decimals(tenths, 1);
  const bare = chance.happens(0.15) ? Number(text) : text;
  return { said: decorated(chance, text, bare, own, ["mm"]), mm };
}

/** With its unit, or bare where the document's own unit says the same. */
function decorated(
  chance: Chance,
  text: string,
  bare: Written,
  own: boolean,
  units: readonly [string, ...string[]],
): Written {
  if (own && chance.happens(0.5)) return bare;
  const unit = chance.pick(units);
  const gap = /[a-z]/.test(unit) ? chance.pick([" ", " ", "", "\u00a0"]) : "";
  return `${text}${gap}${unit}`;
}

/** A whole number of graduations between two lengths; the nearest where none lies between them. */
function within(chance: Chance, least: number, most: number, graduation: number): number {
  const low = Math.ceil(least / graduation);
  return Math.max(0, chance.whole(low, Math.max(low, Math.floor(most / graduation))));
}

function decimals(units: number, places: number): string {
  const digits = String(units).padStart(places + 1, "0");
  const part = digits.slice(-places).replace(/0+$/, "");
  return part === "" ? digits.slice(0, -places) : `${digits.slice(0, -places)}.${part}`;
}

function lowest(over: number, under: number): [number, number] {
  let [n, d] = [over, under];
  while (n !== 0 && n % 2 === 0) [n, d] = [n / 2, d / 2];
  return [n, d];
}
