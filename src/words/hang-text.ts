import type { HungWork, Loads } from "../assembly/index.ts";
import { figureOf, figureText, type Length } from "../lengths/index.ts";
import type { Balance, WallPlan } from "../plans/index.ts";
import type { HangRequest, HungWall } from "../show/hang-request.ts";
import type { HookRow } from "../show/hook-rows.ts";
import { letterOf } from "./figures.ts";
import { HANGING, type HangingSpeech, sayHangCheck, sayTitle, sayWallCheck } from "./hanging.ts";
import { sayForce } from "./weights.ts";

type Level = "stop" | "warn" | "note";

/** A wall as lines for a terminal: the gaps, a row for each hook in the order of hanging, then each work with its wire, loads and checks. */
export function sayHungWall({ request, plan, works }: HungWall, hooks: readonly HookRow[]): string[] {
  const speech: HangingSpeech = { ruler: request.ruler, job: request.job };
  const say = (length: Length): string => figureText(figureOf(length, request.ruler));
  return [
    ...(plan.gaps.length === 0 ? [] : [`gaps from the left corner: ${plan.gaps.map(say).join(", ")}`]),
    `centre of the weight: ${balance(plan.balance, say)}`,
    ...(plan.rowBalance === null ? [] : [`in one plain row: ${balance(plan.rowBalance, say)}`]),
    ...plan.checks
      .filter((check) => !("frame" in check))
      .map((check) => said(check.level, sayWallCheck(check, speech))),
    ...hookLines(hooks, request),
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

/** The letters are the hanging sheet's; a hook that it leaves out has none. What a tape reads that sags, or over a floor that falls, stands below its hook. */
function hookLines(hooks: readonly HookRow[], { ruler, job, habits }: HangRequest): readonly string[] {
  if (hooks.length === 0) return [];
  const say = (length: Length): string => figureText(figureOf(length, ruler));
  const floor = habits.floor === 0 ? "floor" : "level line";
  const rows: string[][] = [["hook", "across", `nail, up from the ${floor}`, "from the right", "work"]];
  let letters = 0;
  for (const { work, hook, back, tape, hangs } of hooks) {
    const letter = hangs ? letterOf(letters++) : "-";
    rows.push([letter, say(hook.x), say(hook.nail), say(back), sayTitle(job, work)]);
    if (tape !== null) rows.push(["", say(tape.across), say(tape.up), say(tape.back), "as the tape reads"]);
  }
  const widths = rows[0]?.map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0))) ?? [];
  return [
    "",
    ...rows.map((row) =>
      row
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join("  ")
        .trimEnd(),
    ),
  ];
}

function workLines(
  { frame, wire, loads, checks }: HungWork,
  index: number,
  safety: number,
  plan: WallPlan,
  speech: HangingSpeech,
): readonly string[] {
  const say = (length: Length): string => figureText(figureOf(length, speech.ruler));
  return [
    `${sayTitle(speech.job, index)}: left edge ${say(frame.x)} from the left corner, foot ${say(frame.y)} up`,
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
