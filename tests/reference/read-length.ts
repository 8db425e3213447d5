import { Fraction } from "./fraction.ts";

const PER_UNIT: Readonly<Record<string, Fraction>> = {
  mm: Fraction.one,
  cm: Fraction.of(10),
  m: Fraction.of(1000),
  in: Fraction.of(254, 10),
  inches: Fraction.of(254, 10),
  '"': Fraction.of(254, 10),
  ft: Fraction.of(3048, 10),
  "'": Fraction.of(3048, 10),
};

/** Printed variants of one sign, each written the plain way; a vulgar fraction gets its own word. */
function spell(sign: string): string {
  if (/\p{No}/u.test(sign)) return ` ${sign.normalize("NFKC").replace("\u2044", "/")} `;
  if (/\s/u.test(sign)) return " ";
  if (sign === "\u2044") return "/";
  if (sign === "\u2032" || sign === "\u2019") return "'";
  if (sign === "\u2033" || sign === "\u201d") return '"';
  return sign;
}

/**
 * Millimetres, exactly, of a well-formed length; `unit` is that of a bare number. It reads word by
 * word and adds up what it finds: it is here to say what a good text means, not to refuse bad ones.
 */
export function readMillimetres(said: string | number, unit: string): Fraction {
  const words = [...String(said)]
    .map(spell)
    .join("")
    .replace(/(\d)-(\d)/g, "$1 $2")
    .replace(/(\d),(\d)/g, "$1.$2")
    .match(/\d+\/\d+|\d*\.?\d+|[a-z]+|["']/g);
  if (words === null) throw new Error(`nothing to read in ${said}`);
  let total = Fraction.zero;
  let pending = Fraction.zero;
  let bare = false;
  for (const word of words) {
    const per = PER_UNIT[word];
    if (per !== undefined) {
      total = total.plus(pending.times(per));
      pending = Fraction.zero;
      bare = false;
    } else {
      const [over = "", under = "1"] = word.split("/");
      pending = pending.plus(Fraction.decimal(over).over(Fraction.decimal(under)));
      bare = true;
    }
  }
  const left = PER_UNIT[unit];
  if (left === undefined) throw new Error(`no unit ${unit}`);
  return bare ? total.plus(pending.times(left)) : total;
}
