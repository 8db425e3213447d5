import { hangWork, type HungWork, type Loads, STANDARD_GRAVITY } from "../assembly/index.ts";
import type { Length } from "../lengths/index.ts";
import { planWall, type WallCheck, type WallPlan } from "../plans/index.ts";
import {
  HANGING,
  type HangingSpeech,
  sayHangCheck,
  sayHangStep,
  sayHangWanted,
  sayWallCheck,
} from "../words/hanging.ts";
import { saySum } from "../words/index.ts";
import { placeJson, type ProblemJson, unreadJson } from "./json.ts";
import { type HangProblem, type HangRequest, type HungWall, readHang } from "./read-hang.ts";

/** Reads one wall, lays it out and hangs every work. */
export function hangFor(
  document: unknown,
):
  | { readonly ok: true; readonly value: HungWall }
  | { readonly ok: false; readonly problems: readonly HangProblem[] } {
  const read = readHang(document);
  if (!read.ok) return read;
  const request = read.value;
  const plan = planWall(request.job, request.seed);
  const works = request.works.flatMap((work, index) => {
    const place = plan.places[index];
    return place === undefined ? [] : [hangWork(work, place, request.habits)];
  });
  const stopped = [...plan.checks, ...works.flatMap(({ checks }) => checks)].some(
    ({ level }) => level === "stop",
  );
  return { ok: true, value: { request, plan, works, stopped } };
}

/** One wall in, where everything hangs or its problem out, as plain JSON, with whether something is of level "stop". */
export function hangResult(document: unknown): { readonly json: object; readonly stopped: boolean } {
  const hung = hangFor(document);
  if (hung.ok) return { json: hungWallJson(hung.value), stopped: hung.value.stopped };
  return { json: unreadJson(hung.problems.map(hangProblemJson)), stopped: true };
}

export const hangProblemJson = ({ field, found, wanted }: HangProblem): ProblemJson => ({
  field,
  found,
  wanted: sayHangWanted(wanted),
});

/** A wall in the open format. */
export function hungWallJson({ request, plan, works }: HungWall): object {
  const { ruler, job, safety } = request;
  const speech: HangingSpeech = { ruler, job };
  const at = (length: Length): object => placeJson(length, ruler);
  return {
    works: works.map((hung, index) => workJson(hung, index, request, plan, speech)),
    wall: {
      gaps: plan.gaps.map(at),
      centre: at(plan.centre),
      order: plan.order,
      balance: { across: at(plan.balance.across), up: at(plan.balance.up) },
      checks: plan.checks
        .filter((check) => !("frame" in check))
        .map((check) => wallCheckJson(check, "wall", speech)),
    },
    safety,
    checks: request.hookKnown
      ? []
      : [{ code: "hook-unknown", level: "note", text: HANGING.hookUnknown, about: "hookDrop" }],
  };
}

function workJson(
  { frame, hooks, wire, loads, checks, reckoning }: HungWork,
  index: number,
  { ruler, works, safety }: HangRequest,
  plan: WallPlan,
  speech: HangingSpeech,
): object {
  const at = (length: Length): object => placeJson(length, ruler);
  const work = works[index];
  const about = `works.${index}`;
  return {
    title: work?.title ?? "",
    frame: {
      x: at(frame.x),
      y: at(frame.y),
      ...(work === undefined ? {} : { width: at(work.width), height: at(work.height) }),
    },
    hooks: hooks.map(({ x, bear, nail }) => ({ x: at(x), bear: at(bear), nail: at(nail) })),
    wire: wire === null ? null : { rise: at(wire.rise), length: at(wire.length) },
    loads: loads === null ? null : { ...loadsJson(loads, 1), angle: angleJson(wire) },
    rated: loads === null ? null : loadsJson(loads, safety),
    checks: [
      ...plan.checks
        .filter((check) => "frame" in check && check.frame === index)
        .map((check) => wallCheckJson(check, about, speech)),
      ...checks.map((check) => ({
        code: check.code,
        level: check.level,
        text: sayHangCheck(check, speech),
        about,
      })),
    ],
    reckoning: reckoning.map((step) => ({
      name: sayHangStep(step.name),
      sum: saySum(step, ruler.unit),
      is: at(step.is),
    })),
  };
}

const wallCheckJson = (check: WallCheck, about: string, speech: HangingSpeech): object => ({
  code: check.code,
  level: check.level,
  text: sayWallCheck(check, speech),
  about,
});

const angleJson = (wire: HungWork["wire"]): number | null =>
  wire === null ? null : Math.round(wire.angle * 100) / 100;

/** So many times what each fitting carries. */
const loadsJson = ({ hook, ring, wire, inward, sideways }: Loads, times: number): object => ({
  hook: forceJson(hook * times),
  ring: forceJson(ring * times),
  wire: wire === null ? null : forceJson(wire * times),
  inward: forceJson(inward * times),
  sideways: forceJson(sideways * times),
});

/** A force is a minimum for what must hold it: rounded up, to a hundredth of a newton and a thousandth of a kilogram-force. */
const forceJson = (newtons: number): object => ({
  N: roundedUp(newtons, 100),
  kgf: roundedUp(newtons / STANDARD_GRAVITY, 1000),
});

// A double's own error is not a hundredth more.
const roundedUp = (value: number, parts: number): number => Math.ceil(value * parts - 1e-6) / parts;
