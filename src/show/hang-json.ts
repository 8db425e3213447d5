import {
  type ChosenHardware,
  type HookPlace,
  type HungWork,
  type Loads,
  type Measuring,
  measuresOf,
  STANDARD_GRAVITY,
} from "../assembly/index.ts";
import type { Length } from "../lengths/index.ts";
import type { Balance, WallPlan } from "../plans/index.ts";
import {
  HANGING,
  type HangingSpeech,
  sayHangCheck,
  sayHangStep,
  sayHangWanted,
  sayWallCheck,
} from "../words/hanging.ts";
import { saySum } from "../words/index.ts";
import { roundedUp } from "../words/weights.ts";
import type { HangProblem, HangRead, HangRequest, HungWall } from "./hang-request.ts";
import { hangWall } from "./hang-wall.ts";
import { type ProblemJson, unreadJson, checkJson, lengthsJson } from "./json.ts";
import { readHang } from "./read-hang.ts";

/** Reads one wall, lays it out and hangs every work. */
export function hangFor(document: unknown): HangRead<HungWall> {
  const read = readHang(document);
  return read.ok ? { ok: true, value: hangWall(read.value) } : read;
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
export function hungWallJson({ request, plan, works, hardware }: HungWall): object {
  const { ruler, job, safety } = request;
  const speech: HangingSpeech = { ruler, job };
  const { at } = lengthsJson(ruler);
  return {
    works: works.map((hung, index) => ({
      ...workJson(hung, index, request, plan, speech),
      hardware: hardwareJson(hardware[index]),
    })),
    wall: {
      gaps: plan.gaps.map(at),
      centre: at(plan.centre),
      order: plan.order,
      balance: balanceJson(plan.balance, at),
      rowBalance: plan.rowBalance === null ? null : balanceJson(plan.rowBalance, at),
      checks: plan.checks
        .filter((check) => !("frame" in check))
        .map((check) => checkJson(check, sayWallCheck(check, speech), "wall")),
    },
    safety,
    checks: request.hookKnown
      ? []
      : [{ code: "hook-unknown", level: "note", text: HANGING.hookUnknown, about: "hookDrop" }],
  };
}

const balanceJson = ({ across, up, share }: Balance, at: (length: Length) => object): object => ({
  across: at(across),
  up: at(up),
  share: Math.round(share * 1e4) / 1e4,
});

/** The names of the fittings that were chosen. */
const hardwareJson = (chosen: ChosenHardware | undefined): object => ({
  hook: chosen?.hook?.name ?? null,
  ring: chosen?.ring?.name ?? null,
  wire: chosen?.wire?.name ?? null,
});

/** What the tape must read where that is not the place itself. */
function tapeJson(hook: HookPlace, measuring: Measuring, at: (length: Length) => object): object {
  if (measuring.tape === null && measuring.fall === 0) return {};
  const { across, up, back } = measuresOf(hook, measuring);
  return { tape: { across: at(across), up: at(up), back: at(back) } };
}

function workJson(
  { frame, hooks, wire, loads, checks, reckoning }: HungWork,
  index: number,
  { ruler, works, safety, measuring }: HangRequest,
  plan: WallPlan,
  speech: HangingSpeech,
): object {
  const { at } = lengthsJson(ruler);
  const work = works[index];
  const about = `works.${index}`;
  return {
    title: work?.title ?? "",
    frame: {
      x: at(frame.x),
      y: at(frame.y),
      ...(work === undefined ? {} : { width: at(work.width), height: at(work.height) }),
    },
    hooks: hooks.map((hook) => ({
      x: at(hook.x),
      bear: at(hook.bear),
      nail: at(hook.nail),
      ...tapeJson(hook, measuring, at),
    })),
    wire: wire === null ? null : { rise: at(wire.rise), length: at(wire.length) },
    loads: loads === null ? null : { ...loadsJson(loads, 1), angle: angleJson(wire) },
    rated: loads === null ? null : loadsJson(loads, safety),
    checks: [
      ...plan.checks
        .filter((check) => "frame" in check && check.frame === index)
        .map((check) => checkJson(check, sayWallCheck(check, speech), about)),
      ...checks.map((check) => checkJson(check, sayHangCheck(check, speech), about)),
    ],
    reckoning: reckoning.map((step) => ({
      name: sayHangStep(step.name),
      sum: saySum(step, ruler.unit),
      is: at(step.is),
    })),
  };
}

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
  N: roundedUp(newtons, 2),
  kgf: roundedUp(newtons / STANDARD_GRAVITY, 3),
});
