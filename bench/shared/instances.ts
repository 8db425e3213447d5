import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { ticks } from "../../src/lengths/index.ts";
import type { CuttingJob } from "../../src/plans/index.ts";

/** One job of an instance file, with the cheapest plan that anybody is known to have found. */
export interface Instance {
  readonly name: string;
  readonly family: string;
  readonly job: CuttingJob;
  readonly bestKnown: number | null;
}

/** What a line of an instance file holds: whole numbers of any unit. */
interface Line {
  readonly name: string;
  readonly class?: string;
  readonly sheets: readonly {
    readonly w: number;
    readonly h: number;
    readonly cost: number;
    readonly copies: number | null;
    readonly trim?: number;
  }[];
  readonly pieces: readonly {
    readonly w: number;
    readonly h: number;
    readonly n: number;
    readonly window?: readonly [number, number];
    readonly rotate?: boolean;
  }[];
  readonly rotate?: boolean;
  readonly kerf?: number;
  readonly trim?: number;
  readonly dropouts?: boolean;
  readonly best_known?: {
    readonly sheets?: number | null;
    readonly cost?: number | null;
    readonly cost_own_run?: number | null;
  };
}

/** All instances of a folder's `.jsonl` files, one JSON document a line. */
export function instancesIn(folder: string): Instance[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith(".jsonl"))
    .toSorted()
    .flatMap((file) =>
      readFileSync(join(folder, file), "utf8")
        .split("\n")
        .filter((line) => line.trim() !== "")
        .map((line) => instanceOf(JSON.parse(line) as Line, file)),
    );
}

function instanceOf(line: Line, file: string): Instance {
  const known = line.best_known;
  const found = [known?.sheets, known?.cost, known?.cost_own_run].filter((one) => typeof one === "number");
  return {
    name: line.name,
    family: line.class ?? file,
    bestKnown: found.length === 0 ? null : Math.min(...found),
    job: {
      sheets: line.sheets.map(({ w, h, cost, copies, trim }, index) => ({
        name: `sheet ${index + 1}`,
        width: ticks(w),
        height: ticks(h),
        cost,
        copies,
        trim: ticks(trim ?? line.trim ?? 0),
      })),
      pieces: line.pieces.map(({ w, h, n, window, rotate }, index) => ({
        name: `piece ${index + 1}`,
        width: ticks(w),
        height: ticks(h),
        count: n,
        window: window === undefined ? null : { width: ticks(window[0]), height: ticks(window[1]) },
        turns: (line.rotate ?? true) && (rotate ?? true),
      })),
      dropOuts: line.dropouts ?? false,
      kerf: ticks(line.kerf ?? 0),
      least: null,
      longestCut: null,
      tight: ticks(0),
    },
  };
}
