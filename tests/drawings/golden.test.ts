import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { compose } from "../../src/assembly/index.ts";
import {
  backView,
  type Drawing,
  fitScale,
  frontView,
  packageView,
  sectionView,
  writeSvg,
} from "../../src/drawings/index.ts";
import { DESIGNS } from "./designs.ts";
import { optionsFor, px } from "./shown.ts";
import { WORDS } from "./words.ts";

const ACCEPTED = join(import.meta.dirname, "..", "golden");
const ACTUAL = join(ACCEPTED, "actual");

/**
 * Compares a drawing with the one that was looked at and accepted, and says what is to be done where
 * they differ. The other one is written to `tests/golden/actual/`, to be looked at beside the accepted
 * one and moved over it when it is right.
 */
function difference(name: string, drawing: Drawing): string[] {
  const actual = writeSvg(drawing);
  const accepted = readAccepted(name);
  const place = join(ACTUAL, `${name}.svg`);
  if (actual === accepted) {
    rmSync(place, { force: true });
    return [];
  }
  mkdirSync(ACTUAL, { recursive: true });
  writeFileSync(place, actual);
  return [
    accepted === null
      ? `never accepted: look at ${place}`
      : `drawn otherwise than accepted: look at ${place}`,
  ];
}

function readAccepted(name: string): string | null {
  try {
    return readFileSync(join(ACCEPTED, `${name}.svg`), "utf8");
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT") return null;
    throw error;
  }
}

describe("accepted drawings", () => {
  for (const [name, design] of Object.entries(DESIGNS)) {
    it(`[D35] ${name}`, () => {
      const composition = compose(design);
      const scale = fitScale(composition, { width: px(342), height: px(442) }, { words: WORDS });
      const options = optionsFor(composition, scale);
      const differences = [
        ...difference(`${name}-front`, frontView(composition, options)),
        ...composition.mats.flatMap((_, mat) =>
          difference(`${name}-back${mat === 0 ? "" : `-${mat}`}`, backView(composition, { ...options, mat })),
        ),
        ...difference(`${name}-section`, sectionView(composition, { ...options, width: px(487) })),
        ...difference(`${name}-package`, packageView(composition, { ...options, scale: scale / 4 })),
      ];
      expect(differences).toEqual([]);
    });
  }
});
