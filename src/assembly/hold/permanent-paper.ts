/** What a standard asks of permanent paper, which is what lies between a print and its cover. */
export interface PermanentPaper {
  readonly standard: string;
  readonly leastPh: number;
  readonly mostPh: number;
  /** Calcium carbonate, grams a kilogram. */
  readonly reserve: number;
  /** The most that the pulp may still take up: a measure of its lignin. */
  readonly mostKappa: number;
  /** Millinewtons that a sheet of so many grams a square metre must bear before it tears. Null: the standard does not speak of one so light. */
  readonly leastTear: (grammage: number) => number | null;
}

/**
 * Side by side in the Library of Congress's final report on permanent papers, appendix 3. ISO 9706 is not for
 * boards (its scope). Of Z39.48 the tear of an uncoated sheet: an index of 5.25 for each gram a square metre.
 */
export const PERMANENT_PAPER: Readonly<Record<"iso9706" | "z3948", PermanentPaper>> = {
  iso9706: {
    standard: "ISO 9706",
    leastPh: 7.5,
    mostPh: 10,
    reserve: 20,
    mostKappa: 5,
    leastTear: (grammage) => (grammage < 25 ? null : grammage < 70 ? 6 * grammage - 70 : 350),
  },
  z3948: {
    standard: "ANSI/NISO Z39.48-1992",
    leastPh: 7.5,
    mostPh: 10,
    reserve: 20,
    mostKappa: 7,
    leastTear: (grammage) => 5.25 * grammage,
  },
};
