import { chooseHardware, hangWork } from "../assembly/index.ts";
import { planWall, type WallPlan } from "../plans/index.ts";
import type { HangRequest, HungWall } from "./hang-request.ts";

/** Lays one wall out, hangs every work on it and takes its fittings from what is listed. */
export const hangWall = (request: HangRequest): HungWall =>
  hangPlanned(request, planWall(request.job, request.seed));

/** The same where the wall has been laid out already. */
export function hangPlanned(request: HangRequest, plan: WallPlan): HungWall {
  const hung = request.works.flatMap((work, index) => {
    const place = plan.places[index];
    if (place === undefined) return [];
    const one = hangWork(work, place, request.habits);
    const { chosen, checks } = chooseHardware(one.loads, request.safety, request.hardware);
    return [{ work: { ...one, checks: [...one.checks, ...checks] }, chosen }];
  });
  const works = hung.map(({ work }) => work);
  const checks = [...plan.checks, ...works.flatMap((work) => work.checks)];
  return {
    request,
    plan,
    works,
    hardware: hung.map(({ chosen }) => chosen),
    stopped: checks.some(({ level }) => level === "stop"),
  };
}
