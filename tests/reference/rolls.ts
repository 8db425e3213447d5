import highsLoader from "highs";

/** Pieces of one width that are wanted from rolls. */
export interface Wanted {
  readonly width: number;
  readonly count: number;
}

/** Every way to cut one roll, by how many of each width come off; the empty one left out. */
export function patternsOf(roll: number, wanted: readonly Wanted[]): number[][] {
  const patterns: number[][] = [];
  const counts = wanted.map(() => 0);
  const extend = (index: number, room: number): void => {
    const one = wanted[index];
    if (one === undefined) {
      if (counts.some((count) => count > 0)) patterns.push([...counts]);
      return;
    }
    for (let count = 0; count * one.width <= room + 1e-9; count++) {
      counts[index] = count;
      extend(index + 1, room - count * one.width);
    }
    counts[index] = 0;
  };
  extend(0, roll);
  return patterns;
}

/** The fewest rolls by a mixture of all patterns: in parts of rolls, and in whole ones. Solved by HiGHS. */
export async function fewestRolls(roll: number, wanted: readonly Wanted[]) {
  const patterns = patternsOf(roll, wanted);
  const names = patterns.map((_, index) => `p${index}`);
  const rows = wanted.map(({ count }, row) => {
    const terms = patterns.flatMap((pattern, index) => {
      const gives = pattern[row] ?? 0;
      return gives > 0 ? [`${gives} p${index}`] : [];
    });
    return `r${row}: ${terms.join(" + ")} >= ${count}`;
  });
  const problem = `Minimize\nobj: ${names.join(" + ")}\nSubject To\n${rows.join("\n")}\n`;
  const highs = await highsLoader();
  const inParts = highs.solve(`${problem}End`);
  const whole = highs.solve(`${problem}General\n${names.join(" ")}\nEnd`);
  for (const { Status } of [inParts, whole])
    if (Status !== "Optimal") throw new Error(`not solved: ${Status}`);
  return { patterns: patterns.length, inParts: inParts.ObjectiveValue, whole: whole.ObjectiveValue };
}
