import { Chance } from "../reference/chance.ts";
import { randomDesign } from "../reference/random-designs.ts";

type Json = string | number | boolean | null | Json[] | { [key: string]: Json };

/** Values that no field expects, and some that only look right. */
const ODD: readonly [Json, ...Json[]] = [
  null,
  true,
  false,
  0,
  -1,
  1e308,
  -1e308,
  1e-300,
  0.1,
  1e21,
  "",
  " ",
  "7 1/",
  "71/4",
  "1,500",
  "-3",
  "7 in in",
  "0",
  "0 mm",
  "99999999999 m",
  "\u0000",
  "\u202e7 in",
  "½½",
  "1/0",
  "𝟕 in",
  "NaN",
  "Infinity",
  "__proto__",
  "<b>7</b>",
  "7".repeat(5000),
  [],
  {},
  [[]],
  [{}],
  ["7", "8"],
  { width: "1" },
  { rule: "golden" },
  { show: "overlap", overlap: {} },
  { smallest: [] },
  { smallest: [["0", "0"]] },
  { borders: null },
  [
    ["0", "0"],
    ["1", "1"],
  ],
  [
    ["0", "0"],
    ["9", "9"],
    ["9", "0"],
    ["0", "9"],
  ],
];

/** A design mutated by chance into something that may or may not be read. The same for the same seed. */
export function hostileDocument(seed: number): unknown {
  const chance = new Chance(seed);
  if (chance.happens(0.03)) return structuredClone(chance.pick(ODD));
  const document = JSON.parse(JSON.stringify(randomDesign(seed))) as { [key: string]: Json };
  if (chance.happens(0.2)) giveOutline(document, chance);
  const changes = chance.whole(0, 4);
  for (let change = 0; change < changes; change++) mutate(document, chance);
  return document;
}

/** A rough edge for image or sheet: mostly simple, sometimes knotted or flat. */
function giveOutline(document: { [key: string]: Json }, chance: Chance): void {
  const { print } = document;
  if (typeof print !== "object" || print === null || Array.isArray(print)) return;
  const points = chance.whole(2, 40);
  const knotted = chance.happens(0.3);
  print[chance.pick(["outline", "sheetOutline"])] = Array.from({ length: points }, (_, index) => {
    const turn = (knotted ? chance.next() : index / points) * 2 * Math.PI;
    const reach = 40 + chance.next() * 60;
    return [
      `${(150 + reach * Math.cos(turn)).toFixed(2)} mm`,
      `${(150 + reach * Math.sin(turn)).toFixed(2)} mm`,
    ];
  });
}

function mutate(document: { [key: string]: Json }, chance: Chance): void {
  let at: Json = document;
  for (;;) {
    if (typeof at !== "object" || at === null) return;
    const holder: { [key: string]: Json } | Json[] = at;
    const keys = Object.keys(holder);
    const [first, ...rest] = keys;
    if (first === undefined) return;
    const key = chance.pick([first, ...rest]);
    const inner = Reflect.get(holder, key) as Json;
    if (typeof inner === "object" && inner !== null && chance.happens(0.7)) {
      at = inner;
      continue;
    }
    if (chance.happens(0.15)) Reflect.deleteProperty(holder, key);
    else
      Reflect.set(
        holder,
        key,
        chance.happens(0.2) && typeof inner === "string"
          ? scrambled(inner, chance)
          : structuredClone(chance.pick(ODD)),
      );
    return;
  }
}

/** A text with one sign dropped, doubled or put in. */
function scrambled(text: string, chance: Chance): string {
  const cut = chance.whole(0, text.length);
  const sign = chance.pick(["/", " ", ",", ".", "-", "1", "\u00a0", "½", "'", '"', "in", "mm", "\u0007"]);
  return chance.happens(0.4)
    ? text.slice(0, cut) + text.slice(cut + 1)
    : text.slice(0, cut) + sign + text.slice(cut);
}
