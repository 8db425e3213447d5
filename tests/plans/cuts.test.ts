import * as fc from "fast-check";
import { expect, test } from "vitest";
import { ticks } from "../../src/lengths/index.ts";
import type { PlannedSheet } from "../../src/plans/index.ts";
import { firstPlanned, jobOf, piece, planned, sheet, smallJob } from "./jobs.ts";

const settingsOf = (one: PlannedSheet | undefined): number[] =>
  (one?.cuts ?? []).map((cut) => cut.setting).filter((set, index, all) => set !== all[index - 1]);

test("[CT14] sixteen blanks of 8 x 10 from 32 x 40: no setting twice", () => {
  const [only] = planned(jobOf([sheet(32, 40)], [piece(8, 10, { count: 16 })])).sheets;
  const settings = settingsOf(only);
  expect(only?.settings).toBe(settings.length);
  expect(new Set(settings).size).toBe(settings.length);
  expect(settings.length).toBeLessThanOrEqual(4);
});

test("[CT14] boards that wait are all cut before the fence moves", () => {
  // Two rows of three: after the long cut both strips are cut at 10 without moving the fence.
  const [only] = planned(jobOf([sheet(30, 16)], [piece(10, 8, { count: 6, turns: false })])).sheets;
  expect(settingsOf(only)).toHaveLength(2);
  expect(only?.cuts).toHaveLength(5);
});

test("[CT14] of very many pieces too no board waits at a setting that it could be cut at", () => {
  const many = jobOf(
    [sheet(100, 80)],
    [piece(3, 4, { count: 500, turns: false }), piece(2, 2, { count: 400 })],
  );
  const [only] = firstPlanned(many).sheets;
  const settings = settingsOf(only);
  expect(only?.cuts.length).toBeGreaterThan(800);
  expect(only?.settings).toBe(settings.length);
  expect(settings.length).toBeLessThanOrEqual(40);
});

test("[CT15] no piece is measured across a rest, and only trim from a raw edge", () => {
  fc.assert(
    fc.property(smallJob, (job) => {
      for (const one of firstPlanned(job).sheets) {
        for (const cut of one.cuts) {
          const kept = keptBox(cut);
          const trim = one.from.kind === "stock" ? (job.sheets[one.from.sheet]?.trim ?? 0) : 0;
          if (isTrimmed(cut, kept, trim, one)) continue;
          // The width against the fence is made of whole pieces and kerfs along it.
          expect(sums(one, kept, cut.across, job.kerf)).toContain(cut.setting);
        }
      }
    }),
    { numRuns: 300 },
  );
});

type Box = PlannedSheet["left"][number] extends infer B
  ? Omit<B & { left: number; top: number; width: number; height: number }, "keep">
  : never;

function keptBox(cut: PlannedSheet["cuts"][number]): Box {
  const { part, setting, across, against } = cut;
  const upright = across === "x";
  const far = against === "after";
  return {
    left: ticks(upright && far ? part.left + part.width - setting : part.left),
    top: ticks(!upright && far ? part.top + part.height - setting : part.top),
    width: upright ? setting : part.width,
    height: upright ? part.height : setting,
  };
}

/** Whether what comes off lies in the sheet's trim alone. */
function isTrimmed(cut: PlannedSheet["cuts"][number], kept: Box, trim: number, one: PlannedSheet): boolean {
  if (trim === 0) return false;
  const [start, end, size] =
    cut.across === "x"
      ? [kept.left, kept.left + kept.width, one.size.width]
      : [kept.top, kept.top + kept.height, one.size.height];
  return cut.against === "after" ? start <= trim : end >= size - trim;
}

/** Every width that pieces inside a box make, side by side with kerfs between. */
function sums(one: PlannedSheet, box: Box, across: "x" | "y", kerf: number): number[] {
  const inside = one.placements.filter(
    (lies) =>
      lies.left >= box.left &&
      lies.top >= box.top &&
      lies.left + lies.width <= box.left + box.width &&
      lies.top + lies.height <= box.top + box.height,
  );
  let reached = new Set([0]);
  for (const lies of inside) {
    const size = across === "x" ? lies.width : lies.height;
    reached = new Set([...reached, ...[...reached].map((sum) => (sum === 0 ? size : sum + kerf + size))]);
  }
  return [...reached];
}
