import type { WallPlan } from "./job.ts";

/** Whether a check of level "stop" stands against a work, its own or its wall's. */
export const cannotHang = (
  { checks }: { readonly checks: readonly { readonly level: string }[] },
  work: number,
  plan: WallPlan,
): boolean =>
  checks.some(({ level }) => level === "stop") ||
  plan.checks.some((check) => check.level === "stop" && "frame" in check && check.frame === work);
