import { describe, expect, it } from "vitest";
import { LABEL_HEIGHT, LABEL_LIMITS, labelChecks } from "../../src/assembly/index.ts";
import { add, inch, mm, toInches, toMillimetres } from "../../src/lengths/index.ts";
import { fitIn, USUAL_BOX } from "../../src/plans/index.ts";
import { DUBLIN_CORE, IPTC_ARTWORK, OBJECT_ID } from "../../src/show/index.ts";

const wordsOf = (count: number): string => Array.from({ length: count }, () => "tide").join(" ");
const codesOf = (text: string): readonly string[] =>
  labelChecks(text).map(({ code, level }) => `${code} ${level}`);

describe("wall labels", () => {
  it("[RE2] at most 55 characters a line, 45 to 50 better; sentences of at most 25 words, 15 better; 75 to 100 words in all (Smithsonian Guidelines for Accessible Exhibition Design, section III)", () => {
    expect(LABEL_LIMITS).toMatchObject({
      line: { most: 55, better: 45 },
      sentence: { most: 25, better: 15 },
      label: { most: 100, better: 75 },
      known: "read",
    });
    expect(codesOf(`${wordsOf(25)}. ${wordsOf(25)}. ${wordsOf(25)}.`)).toEqual([]);
    expect(codesOf(`${wordsOf(26)}.`)).toEqual(["sentence-long warn"]);
    expect(codesOf(`${wordsOf(25)}. ${wordsOf(25)}! ${wordsOf(25)}? ${wordsOf(25)}.`)).toEqual([
      "label-long note",
    ]);
    expect(codesOf(`${wordsOf(25)}. ${wordsOf(25)}. ${wordsOf(25)}. ${wordsOf(25)}. One.`)).toEqual([
      "label-long warn",
    ]);
  });

  it("[RE2] 48 to 67 in above the floor, 54 best (an accessibility page that follows the Smithsonian's guidance, second-hand)", () => {
    const { from, to, best } = LABEL_HEIGHT.in;
    expect([from, to, best].map(toInches)).toEqual([48, 67, 54]);
    for (const key of ["from", "to", "best"] as const)
      expect(
        Math.abs(toMillimetres(LABEL_HEIGHT.in[key]) - toMillimetres(LABEL_HEIGHT.mm[key])),
      ).toBeLessThan(5);
  });
});

describe("boxes", () => {
  it("[RE7] about 15 mounts lie in a print room's box (Rehousing of print collections at The British Museum, The Paper Conservator 27, 2003, endnotes)", () => {
    // How thick its mounts are the source does not say: mat and mount of 4-ply, a sixteenth each, and a sheet between.
    const mount = add(inch(1, 8), mm(0.3));
    for (const unit of ["in", "mm"] as const) {
      const fit = fitIn(add(mount, USUAL_BOX[unit].interleaf), USUAL_BOX[unit]);
      expect(fit).toBeGreaterThanOrEqual(15);
      expect(fit).toBeLessThanOrEqual(20);
    }
  });
});

describe("names of metadata", () => {
  it("[RE3] Object ID: photographs, nine categories, a short description, and five more that are recommended (ICOM and Getty)", () => {
    expect(OBJECT_ID.map(([category]) => category)).toEqual([
      "Photographs",
      "Type of object",
      "Materials and techniques",
      "Measurements",
      "Inscriptions and markings",
      "Distinguishing features",
      "Title",
      "Subject",
      "Date or period",
      "Maker",
      "Short description",
      "Inventory number",
      "Related written material",
      "Place of origin or discovery",
      "Cross-reference to related objects",
      "Date documented",
    ]);
  });

  it("[RE4] Dublin Core: fifteen elements (DCMI 1.1, ISO 15836)", () => {
    expect(DUBLIN_CORE).toHaveLength(15);
    expect([...DUBLIN_CORE].toSorted()).toEqual([...DUBLIN_CORE]);
    expect(new Set(DUBLIN_CORE)).toEqual(
      new Set(
        "contributor coverage creator date description format identifier language publisher relation rights source subject title type".split(
          " ",
        ),
      ),
    );
  });

  it("[RE4] IPTC's artwork or object: title, creator, date created, source, inventory number, copyright notice (public documentation; their names in the file from memory)", () => {
    const names: readonly string[] = IPTC_ARTWORK.map(([name]) => name);
    for (const name of [
      "AOTitle",
      "AOCreator",
      "AODateCreated",
      "AOSource",
      "AOSourceInvNo",
      "AOCopyrightNotice",
    ])
      expect(names).toContain(name);
  });
});
