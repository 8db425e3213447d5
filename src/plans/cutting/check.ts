import type { Box } from "../../geometry/index.ts";
import { carryOutCuts } from "./check-cuts.ts";
import { checkMoney } from "./check-money.ts";
import { cutsApart } from "./cuts-apart.ts";
import type { CuttingFault, Ground, Report } from "./faults.ts";
import type { CuttingJob } from "./job.ts";
import type { CuttingPlan, Placement, PlannedSheet } from "./plan.ts";

/**
 * Checks a plan against its job, trusting neither the planner nor its notes: whatever can be reckoned
 * again is, and the cuts are carried out one by one on the sheet. It shares no code with the planners,
 * only the shapes of job and plan. An empty list: the plan holds.
 */
export function cuttingFaults(job: CuttingJob, plan: CuttingPlan): CuttingFault[] {
  const faults: CuttingFault[] = [];
  const report: Report = (fault) => void faults.push(fault);
  plan.sheets.forEach((sheet, index) => {
    const ground = groundOf(job, plan, index, report);
    if (ground === null) return;
    if (ground.width !== sheet.size.width || ground.height !== sheet.size.height) {
      report({ code: "wrong-sheet-size", sheet: index });
    }
    checkPlacements(job, sheet, index, ground, report);
    if (!cutsApart(sheet.placements, job.kerf)) {
      // What cuts part lies a kerf apart.
      checkApart(sheet.placements, index, job.kerf, report);
      report({ code: "not-guillotine", sheet: index });
    }
    carryOutCuts(job, sheet, index, ground, report);
  });
  checkDemand(job, plan, report);
  checkStock(job, plan, report);
  checkMoney(job, plan, report);
  return faults;
}

function groundOf(job: CuttingJob, plan: CuttingPlan, index: number, report: Report): Ground | null {
  const from = plan.sheets[index]?.from;
  if (from === undefined) return null;
  if (from.kind === "stock") {
    const sheet = job.sheets[from.sheet];
    if (sheet === undefined) report({ code: "no-such-sheet", sheet: index });
    return sheet ?? null;
  }
  const lies = plan.sheets[from.sheet]?.placements[from.placement];
  const piece = lies === undefined ? undefined : job.pieces[lies.piece];
  if (lies === undefined || piece === undefined || piece.window === null || !job.dropOuts) {
    report({ code: "no-such-drop-out", sheet: index });
    return null;
  }
  const asWanted = lies.width === piece.width && lies.height === piece.height;
  const [width, height] = asWanted
    ? [piece.window.width, piece.window.height]
    : [piece.window.height, piece.window.width];
  return { width, height, trim: 0 };
}

function checkPlacements(
  job: CuttingJob,
  { placements, needs }: PlannedSheet,
  sheet: number,
  ground: Ground,
  report: Report,
): void {
  const { trim } = ground;
  placements.forEach((lies, placement) => {
    const piece = job.pieces[lies.piece];
    if (piece === undefined) {
      report({ code: "no-such-piece", sheet, placement });
      return;
    }
    const straight = lies.width === piece.width && lies.height === piece.height;
    const turned = piece.turns && lies.width === piece.height && lies.height === piece.width;
    if (!straight && !turned) report({ code: "wrong-piece-size", sheet, placement });
    const inside =
      lies.left >= trim &&
      lies.top >= trim &&
      lies.left + lies.width <= ground.width - trim &&
      lies.top + lies.height <= ground.height - trim;
    if (!inside) report({ code: "outside", sheet, placement });
  });
  const right = placements.reduce((most, one) => Math.max(most, one.left + one.width), 0);
  const foot = placements.reduce((most, one) => Math.max(most, one.top + one.height), 0);
  if (needs.width !== right + trim || needs.height !== foot + trim) report({ code: "needs", sheet });
}

/** No two placements closer than the kerf. Swept the way in which they begin at more places, so that few are near each other. */
function checkApart(placements: readonly Placement[], sheet: number, kerf: number, report: Report): void {
  const places = (side: "left" | "top") => new Set(placements.map((lies) => lies[side])).size;
  const upright = places("left") >= places("top");
  const start = (box: Box): number => (upright ? box.left : box.top);
  const end = (box: Box): number => (upright ? box.left + box.width : box.top + box.height);
  const swept = placements
    .map((lies, placement) => ({ lies, placement }))
    .toSorted((a, b) => start(a.lies) - start(b.lies) || a.placement - b.placement);
  swept.forEach((one, index) => {
    for (let next = index + 1; next < swept.length; next++) {
      const other = swept[next];
      if (other === undefined || start(other.lies) >= end(one.lies) + kerf) break;
      if (apart(one.lies, other.lies, kerf)) continue;
      const pair = [one.placement, other.placement] as const;
      report({ code: "too-close", sheet, placements: [Math.min(...pair), Math.max(...pair)] });
    }
  });
}

const apart = (a: Box, b: Box, kerf: number): boolean =>
  a.left + a.width + kerf <= b.left ||
  b.left + b.width + kerf <= a.left ||
  a.top + a.height + kerf <= b.top ||
  b.top + b.height + kerf <= a.top;

/** Every copy once, nothing beyond, and whatever is missing said. */
function checkDemand(job: CuttingJob, plan: CuttingPlan, report: Report): void {
  const copies = job.pieces.map(() => new Set<number>());
  for (const { placements } of plan.sheets) {
    for (const { piece, copy } of placements) {
      const seen = copies[piece];
      const count = job.pieces[piece]?.count ?? 0;
      if (seen === undefined) continue;
      if (seen.has(copy) || !Number.isInteger(copy) || copy < 0 || copy >= count)
        report({ code: "copy", piece, copy });
      seen.add(copy);
    }
  }
  job.pieces.forEach(({ count }, piece) => {
    const made = copies[piece]?.size ?? 0;
    const missing = plan.missing[piece] ?? Number.NaN;
    if (made + missing !== count) report({ code: "demand", piece, made });
    const named = plan.checks.some((one) => one.level === "stop" && "piece" in one && one.piece === piece);
    if (named !== missing > 0) report({ code: "silence", piece });
  });
}

/** No sheet more often than it is there, no drop-out twice, none cut from a window of its own making. */
function checkStock(job: CuttingJob, plan: CuttingPlan, report: Report): void {
  job.sheets.forEach(({ copies }, stock) => {
    const used = plan.sheets.filter(({ from }) => from.kind === "stock" && from.sheet === stock).length;
    if (copies !== null && used > copies) report({ code: "copies", stock, used });
  });
  const seen = new Set<string>();
  plan.sheets.forEach(({ from }, sheet) => {
    if (from.kind !== "drop-out") return;
    const key = `${from.sheet} ${from.placement}`;
    if (seen.has(key)) report({ code: "drop-out-twice", sheet });
    seen.add(key);
    let host = plan.sheets[from.sheet]?.from;
    for (let steps = 0; host?.kind === "drop-out"; steps++) {
      if (steps > plan.sheets.length) {
        report({ code: "drop-out-circle", sheet });
        break;
      }
      host = plan.sheets[host.sheet]?.from;
    }
  });
}
