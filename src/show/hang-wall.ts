import { chooseHardware, hangWork } from "../assembly/index.ts";
import { planWall } from "../plans/index.ts";
import type { HangRequest, HungWall } from "./hang-request.ts";

/** Lays one wall out, hangs every work on it and takes its fittings from what is listed. */
export function hangWall(request: HangRequest): HungWall {
  const plan = planWall(request.job, request.seed);
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
