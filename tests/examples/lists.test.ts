import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { PRACTICE, SHOW } from "../../examples/draw/show.ts";
import { type Composition, isStopped } from "../../src/assembly/index.ts";
import { composeFrom, type PracticeDocument, type WorkDocument } from "../../src/show/index.ts";
import { readShow, type ShowRead } from "../../src/show/index.ts";

async function listed(name: string): Promise<ShowRead> {
  const bytes = readFileSync(fileURLToPath(new URL(`../../examples/${name}`, import.meta.url)));
  const read = await readShow(bytes, name, "in");
  if (!read.ok) throw new Error(JSON.stringify(read.fault));
  return read.show;
}

function composed({ title, design }: WorkDocument, practice: PracticeDocument = {}): Composition {
  const result = composeFrom(design, practice);
  if (!result.ok) throw new Error(`${title}: ${JSON.stringify(result.problems)}`);
  return result.value;
}

describe("the example show's list", () => {
  test("[EX8] goes in whole, and keeps the column that only this print room has", async () => {
    const { works, listProblems, unknownColumns } = await listed("slack-water/list.csv");
    expect(listProblems).toEqual([]);
    expect(unknownColumns.map(({ name }) => name)).toEqual(["wall"]);
    expect(works.map(({ work }) => work.title)).toEqual(SHOW.works.map(({ title }) => title));
    expect(works.map(({ row }) => row)).toEqual(SHOW.works.map((_, i) => i + 2));
    expect(works[0]?.work.more).toEqual({ wall: "north 1" });
    expect(works[0]?.work.picture).toBe("pictures/mud-larks.jpg");
  });

  test("[EX8] gives the same print as the show's document does", async () => {
    const { works } = await listed("slack-water/list.csv");
    for (const [i, { work }] of works.entries()) {
      const own = SHOW.works[i];
      if (own === undefined) throw new Error(`no work ${i}`);
      const [fromList, fromShow] = [
        composed(work, PRACTICE).design.print,
        composed(own, PRACTICE).design.print,
      ];
      expect(fromList?.sheet, work.title).toEqual(fromShow?.sheet);
      expect(fromList?.image, work.title).toEqual(fromShow?.image);
      expect(fromList?.angle, work.title).toBe(fromShow?.angle);
    }
  });

  test("[EX8] gives the same window and borders where a list can say all of the design", async () => {
    const { works } = await listed("slack-water/list.csv");
    const whole = [
      "Mud Larks",
      "Heron, Waiting",
      "Drying Nets",
      "The Long Slip",
      "Two Sheds, Rain",
      "Bittern",
    ];
    for (const title of whole) {
      const [listedWork, own] = [
        works.find(({ work }) => work.title === title),
        SHOW.works.find((work) => work.title === title),
      ];
      if (listedWork === undefined || own === undefined) throw new Error(title);
      const [fromList, fromShow] = [composed(listedWork.work, PRACTICE), composed(own, PRACTICE)];
      expect(fromList.outer, title).toEqual(fromShow.outer);
      expect(fromList.mats, title).toEqual(fromShow.mats);
    }
  });
});

describe("the lists to try", () => {
  test("[EX9] the clean one goes in whole, and every work can be made", async () => {
    const { works, listProblems, notes, unknownColumns } = await listed("lists/evening-class.csv");
    expect(works).toHaveLength(12);
    expect([...listProblems, ...notes, ...unknownColumns]).toEqual([]);
    expect(works.filter(({ work }) => isStopped(composed(work))).map(({ work }) => work.title)).toEqual([]);
  });

  test("[EX9] the messy one names its three bad rows and takes the others", async () => {
    const { works, listProblems, unknownColumns } = await listed("lists/werkverzeichnis.csv");
    expect(listProblems.map(({ row, column, found }) => [row, column, found])).toEqual([
      [9, "sheet height", "1/2 25"],
      [10, "title", "nothing"],
      [11, "image width", "71/4 in"],
    ]);
    expect(unknownColumns.map(({ name }) => name)).toEqual(["Inv.nr", "Lagerplatz"]);
    expect(works.map(({ row }) => row)).toEqual([2, 3, 4, 5, 7, 8, 12, 13, 14]);
    expect(works[1]?.work.title).toBe("Zażółcone sieci");
    // Height first, as museums write: 300 by 250 mm is an upright sheet.
    const print = works[1] && composed(works[1].work).design.print;
    expect([print?.sheet.width, print?.sheet.height]).toEqual([250 * 80_000, 300 * 80_000]);
  });

  test("[EX9] the messy one stops only the work that no common board can take", async () => {
    const { works } = await listed("lists/werkverzeichnis.csv");
    expect(works.filter(({ work }) => isStopped(composed(work))).map(({ work }) => work.title)).toEqual([
      "Großer Speicher",
    ]);
  });
});
