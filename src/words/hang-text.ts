import type { HungWork, Loads } from "../assembly/index.ts";
import { figureOf, figureText, type Length } from "../lengths/index.ts";
import type { Balance, WallPlan } from "../plans/index.ts";
import type { HungWall } from "../show/hang-request.ts";
import { HANGING, type HangingSpeech, sayHangCheck, sayTitle, sayWallCheck } from "./hanging.ts";
import { sayForce } from "./weights.ts";

type Level = "stop" | "warn" | "note";

/** A wall as lines for a terminal: the gaps, then each work in the order of hanging with its hooks, loads and checks. */
export function sayHungWall({ request, plan, works }: HungWall): string[] {
  const speech: HangingSpeech = { ruler: request.ruler, job: request.job };
  const say = (length: Length): string => figureText(figureOf(length, request.ruler));
  return [
    ...(plan.gaps.length === 0 ? [] : [`gaps from the left corner: ${plan.gaps.map(say).join(", ")}`]),
    `centre of the weight: ${balance(plan.balance, say)}`,
    ...(plan.rowBalance === null ? [] : [`in one plain row: ${balance(plan.rowBalance, say)}`]),
    ...plan.checks
      .filter((check) => !("frame" in check))
      .map((check) => said(check.level, sayWallCheck(check, speech))),
    ...plan.order.flatMap((index) => {
      const hung = works[index];
      return hung === undefined ? [] : ["", ...workLines(hung, index, request.safety, plan, speech)];
    }),
    ...(request.hookKnown ? [] : ["", said("note", HANGING.hookUnknown)]),
  ];
}

function balance({ across, up, share }: Balance, say: (length: Length) => string): string {
  const away = (length: Length, less: string, more: string, none: string): string =>
    length === 0 ? none : `${say(Math.abs(length) as Length)} ${length < 0 ? less : more}`;
  return `${away(across, "left of the middle", "right of the middle", "in the middle")}, ${away(up, "below the eye line", "above the eye line", "on the eye line")} (${(100 * share).toFixed(1)} % of the way to its edge)`;
}

function workLines(
  { frame, hooks, wire, loads, checks }: HungWork,
  index: number,
  safety: number,
  plan: WallPlan,
  speech: HangingSpeech,
): readonly string[] {
  const say = (length: Length): string => figureText(figureOf(length, speech.ruler));
  return [
    `${sayTitle(speech.job, index)}: left edge ${say(frame.x)} from the left corner, foot ${say(frame.y)} up`,
    ...hooks.map(({ x, nail }, turn) => `  hook ${turn + 1}: ${say(x)} across, nail ${say(nail)} up`),
    ...(wire === null
      ? []
      : [`  wire ${say(wire.length)}, rises ${say(wire.rise)}, ${wire.angle.toFixed(1)}°`]),
    ...(loads === null ? [] : [loadLine(loads, safety)]),
    ...plan.checks
      .filter((check) => "frame" in check && check.frame === index)
      .map((check) => `  ${said(check.level, sayWallCheck(check, speech))}`),
    ...checks.map((check) => `  ${said(check.level, sayHangCheck(check, speech))}`),
  ];
}

function loadLine({ hook, ring, wire }: Loads, safety: number): string {
  const each = wire === null ? "" : `, each ring and the wire ${sayForce(ring)}`;
  return `  each hook carries ${sayForce(hook)}${each}; rated for ${safety} times that or more`;
}

const said = (level: Level, text: string): string => `${level === "stop" ? "STOP" : level}  ${text}`;
