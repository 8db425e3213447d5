import * as fc from "fast-check";
import { expect, test } from "vitest";
import { readLength, type Unit } from "../../src/lengths/index.ts";
import { type ListRead, listToWorks, readTable } from "../../src/show/lists/index.ts";
import { readDimensions } from "../../src/show/lists/dimensions/index.ts";
import { validate } from "../../src/show/validate.ts";
import { workDocument } from "../../src/show/schema.ts";
import { sayDimensionsFault, sayListNote, sayListProblem } from "../../src/words/lists.ts";
import { anyFile, dimensionTexts, wholeWorkbooks } from "./generators.ts";

/** Whatever came in, what comes out can be said, and every length of a work stands alone. */
function expectSound(read: ListRead, unit: Unit): void {
  for (const problem of read.problems) expect(sayListProblem(problem)).toMatch(/found .*; wanted: \S/);
  for (const note of read.notes) expect(sayListNote(note)).toMatch(/\.$/);
  const other: Unit = unit === "in" ? "mm" : "in";
  for (const { work, notes } of read.works) {
    for (const note of notes) expect(sayListNote(note)).toMatch(/^row \d+, .*[.?]$/s);
    expect(validate(workDocument, work).ok).toBe(true);
    const { print, window, outer } = work.design;
    const lengths = [print?.width, print?.height, ...Object.values(print?.image ?? {})];
    if (window?.show === "typed") lengths.push(window.width, window.height);
    if (outer !== undefined && "width" in outer) lengths.push(outer.width, outer.height);
    for (const length of lengths) {
      if (length === undefined) continue;
      const here = readLength(String(length), unit);
      expect(here.ok).toBe(true);
      expect(readLength(String(length), other)).toEqual(here);
    }
  }
}

test("[LI9] any file gives works or problems in words", async () => {
  const workbooks = await wholeWorkbooks();
  await fc.assert(
    fc.asyncProperty(anyFile(workbooks), fc.constantFrom<Unit>("in", "mm"), async (bytes, unit) => {
      const result = await readTable(bytes, "list.csv");
      if (!result.ok) expect(sayListProblem(result.problem)).toMatch(/^found list\.csv; wanted: \S/);
      else expectSound(listToWorks(result.table, { unit }), unit);
    }),
    { numRuns: 1500 },
  );
});

test("[LI27] any text of dimensions gives sizes or a reason in words", () =>
  fc.assert(
    fc.property(dimensionTexts, (text) => {
      const read = readDimensions(text, "cm");
      if (!read.ok) expect(sayDimensionsFault(read.fault)).toMatch(/\S/);
      else expect(read.sheet ?? read.image).not.toBeNull();
    }),
    { numRuns: 1500 },
  ));

test.each([
  ["lone marks", '"'.repeat(200_000)],
  ["marks on every line", `title\n${'"x\n'.repeat(20_000)}`],
  ["a mark and letters", `title,notes\n${'a,"b"c'.repeat(60_000)}`],
  ["separators", ";".repeat(400_000)],
  ["lines of separators", `title\n${",,,,,\n".repeat(20_000)}`],
  ["one endless figure", `title,sheet width,dimensions\nEbb,${"9".repeat(3_900)},${"1 ".repeat(1_900)}\n`],
  ["endless brackets", `title,dimensions\nEbb,${"( ".repeat(1_900)}\nNeap,${"h x ".repeat(900)}\n`],
  [
    "endless labels",
    `title,dimensions\nEbb,${"image & ".repeat(450)}: 20 x 30 cm\nNeap,${"image: ".repeat(500)}\n`,
  ],
  ["endless headers", `title,${"sheet width (".repeat(300)}\nEbb,x\n`],
])("[LI9] %s come to an end", async (_, text) => {
  const result = await readTable(new TextEncoder().encode(text), "list.csv");
  if (result.ok) expectSound(listToWorks(result.table, { unit: "in" }), "in");
  else expect(sayListProblem(result.problem)).toMatch(/wanted: \S/);
});
