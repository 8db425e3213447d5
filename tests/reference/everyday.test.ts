import fc from "fast-check";
import { expect, test } from "vitest";
import { composeDocument, validate } from "../../src/show/index.ts";
import { sureOf } from "../../src/show/everyday.ts";
import { randomDesign } from "./random-designs.ts";

const sure = sureOf(composeDocument);
const seed = fc.integer({ min: 1, max: 1_000_000 });

/** Every object and list of a document with each of its keys. */
function places(value: unknown): (readonly [holder: Record<string, unknown>, key: string])[] {
  if (typeof value !== "object" || value === null) return [];
  const holder = value as Record<string, unknown>;
  return Object.keys(holder).flatMap((key) => [[holder, key] as const, ...places(holder[key])]);
}

test("[R4] a design of a known shape is taken at a glance", () => {
  fc.assert(
    fc.property(seed, (at) => {
      expect(sure(randomDesign(at))).toBe(true);
    }),
  );
});

test("[R4] what is taken at a glance, the schema takes too and gives back the same", () => {
  const odd = fc.oneof(
    fc.constantFrom(undefined, null, true, "", "overlap", "pockets", 45, Number.NaN, Infinity),
    fc.constantFrom([], {}, [1, 2], { show: "sheet" }, { width: 1, height: "2" }, { rule: "none", by: 1 }),
    fc.jsonValue(),
  );
  fc.assert(
    fc.property(
      seed,
      fc.nat(),
      odd,
      fc.constantFrom("set", "drop", "more", "list"),
      (at, where, value, what) => {
        const document = structuredClone(randomDesign(at)) as object;
        const all = places(document);
        const [holder, key] = all[where % all.length] ?? [{}, ""];
        if (what === "set") holder[key] = value;
        else if (what === "drop") delete holder[key];
        else if (what === "more" && !Array.isArray(holder)) holder["more"] = value;
        else holder[key] = Array.from({ length: where % 12 }, () => value);
        if (!sure(document)) return;
        expect(validate(composeDocument, document)).toStrictEqual({ ok: true, value: document });
      },
    ),
    { numRuns: 3000 },
  );
});
