import { type Sides, SIDES } from "../../geometry/index.ts";
import { type Length, larger, mm, ZERO } from "../../lengths/index.ts";
import type { Composition, PlacedPrint } from "../composition.ts";
import { HOLD_FIGURES, type HoldFacts } from "./facts.ts";
import { holdingOfWay, isHinge } from "./ways.ts";
import type { HoldCheck, HoldPlan } from "./hold-plan.ts";
import { leastCover } from "./pockets.ts";
import { stopsFirst } from "../check.ts";

/** Fine Art Trade Guild framing standards, as reprinted on members' sites: a window board of 1100 micrometres at least. */
const LEAST_WINDOW = mm(1.1);

/** What must be said of how a work is held; stops first. */
export function holdPlanChecks(
  plan: Omit<HoldPlan, "checks">,
  composition: Composition,
  print: PlacedPrint,
  facts: HoldFacts,
  moves: Sides,
): readonly HoldCheck[] {
  return stopsFirst([
    ...wayChecks(plan),
    ...(facts.grammage === null && isHinge(plan.way)
      ? [{ level: "note", code: "weight-unknown" } as const]
      : []),
    ...moveChecks(plan, composition, print, moves),
    ...bedChecks(plan, composition, moves),
    ...materialChecks(plan, composition, facts),
  ]);
}

function wayChecks({ asked, way, refused }: Omit<HoldPlan, "checks">): readonly HoldCheck[] {
  if (way === null) return [{ level: "stop", code: "no-holding", refused }];
  const first = refused.find((one) => holdingOfWay(one.way) === asked);
  return first === undefined || holdingOfWay(way) === asked
    ? []
    : [{ level: "warn", code: "holding-changed", asked, way, why: first.why }];
}

/** Whether the paper may draw back from under the mat, and whether pockets leave more slack than was asked. */
function* moveChecks(
  { way, pockets }: Omit<HoldPlan, "checks">,
  { design }: Composition,
  print: PlacedPrint,
  moves: Sides,
): Generator<HoldCheck> {
  if (design.window.show !== "sheet") {
    const cover = leastCover(print);
    // Where the paper ends before the window already, the composition has said so.
    for (const side of SIDES)
      if (cover[side] >= 0 && cover[side] < moves[side])
        yield { level: "warn", code: "cover-moves", side, cover: cover[side], needs: moves[side] };
  }
  if (way === "pockets" && pockets !== null && pockets.play > design.play)
    yield { level: "note", code: "play-widened", asked: design.play, play: pockets.play };
}

function* bedChecks(
  { bed }: Omit<HoldPlan, "checks">,
  { design }: Composition,
  moves: Sides,
): Generator<HoldCheck> {
  const needs = SIDES.map((side) => moves[side]).reduce(larger, ZERO);
  if (bed.kind === "sink") {
    const least = HOLD_FIGURES[design.ruler.unit].leastWall;
    for (const side of SIDES)
      if (bed.walls[side] < least)
        yield { level: "stop", code: "sink-wall", side, wall: bed.walls[side], least };
    if (bed.room < needs) yield { level: "warn", code: "sink-tight", room: bed.room, needs };
  }
  if (bed.kind === "raised") {
    for (const direction of ["width", "height"] as const)
      if (bed.riser[direction] <= 0)
        yield { level: "stop", code: "riser-gone", direction, size: bed.riser[direction] };
    const gap: Length = design.window.show === "sheet" ? design.window.gap : ZERO;
    if (gap < needs) yield { level: "warn", code: "float-tight", gap, needs };
  }
}

function* materialChecks(
  { buffer, process }: Omit<HoldPlan, "checks">,
  { design }: Composition,
  { never, board, glazing, process: told }: HoldFacts,
): Generator<HoldCheck> {
  if (never.includes("buffered") && board === "buffered") yield { level: "stop", code: "buffer-never" };
  else if (board === "buffered" && (buffer === "unbuffered" || buffer === "disputed"))
    yield { level: buffer === "disputed" ? "warn" : "stop", code: "buffer", process: told, advice: buffer };
  else if (board === null && (never.includes("buffered") || buffer === "unbuffered" || buffer === "disputed"))
    yield {
      level: "warn",
      code: "board-unknown",
      advice: never.includes("buffered") ? "unbuffered" : buffer,
    };
  if (glazing !== null && never.includes(glazing)) yield { level: "stop", code: "glazing-never", glazing };
  if (process === null) yield { level: "note", code: "process-unknown", process: told };
  const thickness = design.mats[0]?.thickness ?? LEAST_WINDOW;
  if (thickness < LEAST_WINDOW) yield { level: "note", code: "window-thin", thickness, least: LEAST_WINDOW };
}
