import { type Length, printExact } from "../lengths/index.ts";
import type { CuttingPlan, CuttingProgress, PlannedSheet } from "../plans/index.ts";
import { type CuttingSpeech, sayBound, sayCuttingCheck, sayDropOutOf } from "./cutting.ts";

/** A cutting plan as lines for a terminal: the claim, then each sheet with its blanks and its cuts in order. */
export function sayCuttingPlan(plan: CuttingPlan, speech: CuttingSpeech): string[] {
  const claim = plan.proven
    ? "no plan costs less"
    : `no plan costs less than ${cost(plan.bound.cost)} (${sayBound(plan.bound.how)})`;
  return [
    `cost ${cost(plan.cost)}, ${plan.sheetsUsed} ${plan.sheetsUsed === 1 ? "sheet" : "sheets"}; ${claim}`,
    ...plan.sheets.flatMap((sheet, index) => ["", ...sheetLines(sheet, index, plan, speech)]),
    ...(plan.checks.length === 0 ? [] : [""]),
    ...plan.checks.map(
      (check) => `${check.level === "stop" ? "STOP" : check.level}  ${sayCuttingCheck(check, speech)}`,
    ),
  ];
}

/** How far the planning has come, on one line. */
export const sayCuttingProgress = ({ cost: found, bound, complete }: CuttingProgress): string =>
  complete
    ? `best plan so far ${cost(found)}; no plan costs less than ${cost(bound)}`
    : "no plan with every piece so far";

const cost = (amount: number): string => String(Number(amount.toFixed(4)));

function sheetLines(
  sheet: PlannedSheet,
  index: number,
  plan: CuttingPlan,
  { job, unit }: CuttingSpeech,
): string[] {
  const say = (length: Length): string => (unit === "tick" ? String(length) : printExact(length, unit));
  const size = (of: { width: Length; height: Length }): string => `${say(of.width)} × ${say(of.height)}`;
  const place = (of: { left: Length; top: Length }): string =>
    `${say(of.left)} from the left, ${say(of.top)} from the top`;
  const from =
    sheet.from.kind === "stock"
      ? (job.sheets[sheet.from.sheet]?.name ?? "")
      : sayDropOutOf(
          job.pieces[plan.sheets[sheet.from.sheet]?.placements[sheet.from.placement]?.piece ?? -1]?.name ??
            "",
        );
  return [
    `sheet ${index + 1}: ${from}, ${size(sheet.size)}`,
    ...sheet.placements.map(
      (lies) => `  ${job.pieces[lies.piece]?.name ?? ""}, ${size(lies)}: ${place(lies)}`,
    ),
    ...sheet.cuts.map(
      (cut, at) => `  cut ${at + 1}: fence at ${say(cut.setting)}, through ${size(cut.part)}`,
    ),
    ...sheet.left.filter(({ keep }) => keep).map((left) => `  keep ${size(left)}`),
  ];
}
