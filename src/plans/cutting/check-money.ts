import type { Report } from "./faults.ts";
import type { CuttingJob, StockSheet } from "./job.ts";
import type { CuttingPlan } from "./plan.ts";

/** How many sums of prices are looked at before "proven" has to rest on the bound alone. */
const MOST_SUMS = 500_000;

/** The cost is what the sheets cost, the bound no more than that, and "proven" true. */
export function checkMoney(job: CuttingJob, plan: CuttingPlan, report: Report): void {
  const bought = plan.sheets.flatMap(({ from }) =>
    from.kind === "stock" ? [job.sheets[from.sheet]?.cost ?? 0] : [],
  );
  const cost = bought.reduce((sum, one) => sum + one, 0);
  const hair = 1e-9 * cost;
  if (!(Math.abs(cost - plan.cost) <= hair)) report({ code: "cost", said: plan.cost, counted: cost });
  if (plan.sheetsUsed !== bought.length) {
    report({ code: "sheets-used", said: plan.sheetsUsed, counted: bought.length });
  }
  if (!(plan.bound.cost <= cost + hair)) report({ code: "bound-above-cost" });
  if (
    plan.proven &&
    (plan.missing.some((count) => count > 0) || cheaperSum(job, plan.bound.cost - hair, cost - hair))
  )
    report({ code: "not-proven" });
}

/** Whether whole sheets can cost anything from `least` up to but not including `below`; also true when there are too many sums to tell. */
function cheaperSum(job: CuttingJob, least: number, below: number): boolean {
  if (least >= below) return false;
  const prices = new Set(
    job.sheets.filter((sheet) => sheet.cost > 0 && isOfUse(job, sheet)).map(({ cost }) => cost),
  );
  const sums = new Set([0]);
  for (const sum of sums) {
    if (sum >= least && sum < below) return true;
    if (sums.size > MOST_SUMS) return true;
    for (const price of prices) {
      const next = Number((sum + price).toPrecision(14));
      if (next < below) sums.add(next);
    }
  }
  return false;
}

/** Whether any piece fits the sheet, its trim taken off. */
function isOfUse(job: CuttingJob, sheet: StockSheet): boolean {
  const [width, height] = [sheet.width - 2 * sheet.trim, sheet.height - 2 * sheet.trim];
  return (
    sheet.copies !== 0 &&
    job.pieces.some(
      (piece) =>
        piece.count > 0 &&
        ((piece.width <= width && piece.height <= height) ||
          (piece.turns && piece.height <= width && piece.width <= height)),
    )
  );
}
