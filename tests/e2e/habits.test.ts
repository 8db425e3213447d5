import { describe, expect, test } from "vitest";
import { compose } from "../../src/assembly/index.ts";
import { type PracticeDocument, readDesign, readWorkFrame, type WorkDocument } from "../../src/show/index.ts";
import { readHabitsSaid } from "../../src/web/practice/editing.ts";
import { habitsNow, type HabitsSaid } from "../../src/web/practice/fields.ts";
import { movedBy } from "../../src/web/practice/moves.ts";
import { habitField } from "../../src/web/practice/habit-field.ts";
import { inUnit } from "../../src/web/practice/units.ts";
import { habitBlankWords, type HabitName, habitsSaid, tokensOf } from "../../src/words/page.ts";
import { readExample } from "../../src/server/index.ts";

const example = readExample("examples/slack-water").show;
const PRACTICES: readonly PracticeDocument[] = [
  {},
  example.practice ?? {},
  {
    unit: "mm",
    language: "en-GB",
    hold: 4,
    mount: "8-ply",
    scaleOffset: "0.5",
    outer: { borders: { head: 50, side: 50, foot: 60 } },
    lift: { rule: "ratio", foot: 1.2 },
    mats: [{ board: "2-ply" }, { reveal: 5 }],
    holding: "hinges",
  },
  { outer: { width: 16, height: 20 }, lift: { rule: "optical" }, glazing: { kind: "glass", board: "glass" } },
];

function saidOf(document: PracticeDocument): HabitsSaid {
  const read = readHabitsSaid(document);
  if (!read.ok) throw new Error(`${read.field}: ${read.wanted}`);
  return read.said;
}
const text = (value: unknown): string =>
  JSON.stringify(value, (_, one: unknown) => (typeof one === "bigint" ? String(one) : one));
const meaning = (document: PracticeDocument): string => {
  const { habits, hanging } = saidOf(document);
  return text([habits, hanging]);
};

describe("habits", () => {
  test("[PG90] every blank has a label, and writes what it reads", () => {
    for (const practice of PRACTICES) {
      const said = saidOf(practice);
      for (const { name, title, sentence, why } of habitsSaid(habitsNow(said))) {
        expect(title.length, name).toBeGreaterThan(2);
        expect(why.length, name).toBeGreaterThan(10);
        const blanks = tokensOf(sentence).flatMap((token) =>
          token.flatMap((piece) => (piece.kind === "blank" ? [piece.blank] : [])),
        );
        for (const blank of blanks) {
          expect(habitBlankWords(blank, 2, "en-GB").label, blank).toMatch(/^[A-Z].* |^[A-Z][a-z]+$/);
          const field = habitField(blank);
          if (field === null) throw new Error(`nothing stands behind ${blank}`);
          if (field.kind === "choice") {
            expect(
              field.options(said).map(({ key }) => key),
              blank,
            ).toContain(field.read(said));
            for (const { key, words } of field.options(said)) {
              expect(words.length, words).toBeLessThanOrEqual(22);
              expect(readHabitsSaid(field.write(said, key)).ok, `${blank} ${key}`).toBe(true);
            }
          } else if (field.kind === "length") {
            const now = field.read(said);
            const written = field.write(said, `${now / 80_000} mm`, now);
            expect(field.read(saidOf(written)), blank).toBe(now);
          } else if (field.kind === "number") {
            expect(field.read(saidOf(field.write(said, field.read(said)))), blank).toBe(field.read(said));
          } else if (blank !== "habit.priced") {
            expect(field.read(saidOf(field.write(said, "tested"))), blank).toBe("tested");
          }
        }
      }
    }
  });

  test("[PG90] so many works are moved as read otherwise when the habit is another", () => {
    const practice = example.practice ?? {};
    const others: readonly (readonly [HabitName, PracticeDocument])[] = [
      ["measuring", { graduation: "1/32 in" }],
      ["windows", { overlap: "5/16 in", gap: "5/16 in", margins: { top: 1, side: 1, foot: 1 } }],
      ["raising", { lift: { rule: "ratio", foot: 1.7 } }],
      ["size", { outer: { smallest: "inch", border: "3 in" } }],
      ["mats", { mats: [{ board: "other", thickness: "1/8 in", bevel: 60 }] }],
      ["holding", { hold: "5/8 in", play: "3/16 in", holding: "strips" }],
      ["moulding", { moulding: { name: "other", overall: "2 in", rabbet: "1/4 in" } }],
      ["glazing", { glazing: { kind: "glass", board: "other" } }],
      ["backing", { backing: { board: "other" } }],
    ];
    const made = (habit: HabitName, work: WorkDocument, by: PracticeDocument): string => {
      const design = readDesign(work.design, by);
      if (!design.ok) throw new Error(text(design.problems));
      // Where borders are named a lift is read, and moves nothing.
      if (habit === "raising") return text(compose(design.value).mats);
      return text([design.value, readWorkFrame(work, by, design.value.ruler.unit)]);
    };
    for (const [habit, change] of others) {
      const moved = example.works.filter(
        (work) => made(habit, work, practice) !== made(habit, work, { ...practice, ...change }),
      );
      expect(movedBy(habit, example.works, practice), habit).toBe(moved.length);
    }
  });

  test("[PG93] in another unit what was said means the same, bare figures with it", () => {
    const bare: PracticeDocument = {
      unit: "in",
      overlap: "3/16",
      hold: 0.25,
      mats: [{ thickness: 0.0625, bevel: 45, board: "4" }],
      moulding: { name: "12", overall: 1, rabbet: "1/4", mass: 0.3 },
      money: { minutes: { blank: 3 }, hour: "28.00" },
      hanging: { safety: 4, hookDrop: "5/16", hardware: [{ name: "hook", use: "hook", rated: 30 }] },
    };
    const other = inUnit(saidOf(bare), "mm");
    const back = inUnit(saidOf(other), "in");
    expect(meaning(back)).toBe(meaning(bare));
    expect(other.mats?.[0]).toEqual({ thickness: "0.0625 in", bevel: 45, board: "4" });
    expect(saidOf(other).habits.moulding?.massPerMetre).toBe(saidOf(bare).habits.moulding?.massPerMetre);
    expect(other.moulding).toMatchObject({ name: "12", overall: "1 in", mass: "0.3 lb/ft" });
  });
});
