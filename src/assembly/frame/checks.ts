import { inch, type Length, mm, negate, subtract, type Unit, ZERO } from "../../lengths/index.ts";
import type { Composition } from "../composition.ts";
import { movementOf } from "../hold/index.ts";
import type { Direction, FrameCheck, FramePlan } from "./frame-plan.ts";
import { liftOf } from "./opening.ts";
import { stopsFirst } from "../check.ts";
import { SIDES } from "../../geometry/index.ts";

const DIRECTIONS: readonly Direction[] = ["width", "height"];

/** 1 to 3 mm of clearance in the rebate, by size (Fine Art Trade Guild framing standards, as reprinted on members' sites). */
export const LEAST_ROOM = mm(1);

/** A mitre that opens farther is seen. Common practice, no source. */
const SEEN_MITRE = mm(0.5);

/** Acrylic longer than this leans on what is under it. Common practice, no source. */
const BOWS_FROM: Readonly<Record<Unit, Length>> = { in: inch(36), mm: mm(900) };

/** Media whose pigment lies loose on the sheet; acrylic's charge lifts it: from memory. */
const LOOSE = /pastel|charcoal|chalk|conté/i;

/** What must be said of a framed work; stops first. `process` as it was told, empty where it was not. */
export function frameChecks(
  plan: Omit<FramePlan, "checks">,
  composition: Composition,
  process: string,
): readonly FrameCheck[] {
  return stopsFirst([
    ...sizeChecks(plan),
    ...lipChecks(plan, composition),
    ...roomChecks(plan, composition),
    ...depthChecks(plan),
    ...glazingChecks(plan, composition, process),
    ...woodChecks(plan),
  ]);
}

function* sizeChecks({ sizes: { opening, slack } }: Omit<FramePlan, "checks">): Generator<FrameCheck> {
  for (const direction of DIRECTIONS) {
    const room = slack[direction];
    if (room < 0)
      yield {
        level: "stop",
        code: "package-large",
        direction,
        size: subtract(opening[direction], room),
        opening: opening[direction],
      };
    else if (room < LEAST_ROOM)
      yield { level: "warn", code: "rabbet-tight", direction, room, least: LEAST_ROOM };
  }
}

function* lipChecks(
  { frame, sizes, stands, glazing }: Omit<FramePlan, "checks">,
  { mats, design }: Composition,
): Generator<FrameCheck> {
  const { rabbet } = frame.profile;
  const fits = sizes.slack.width >= 0 && sizes.slack.height >= 0;
  for (const side of fits ? SIDES : []) {
    const hidden = stands.hidden[side];
    if (hidden <= 0) yield { level: "stop", code: "edge-shows", side, by: negate(hidden), layer: "package" };
    else if ((side === "left" || side === "right") && sizes.slack.width >= rabbet)
      yield {
        level: "warn",
        code: "edge-may-show",
        side,
        by: subtract(sizes.slack.width, rabbet),
      };
  }
  // Glazing is smaller than the package, and stands on what the package stands on.
  const pane =
    glazing === null ? null : subtract(stands.hidden.head, subtract(glazing.room.height, sizes.slack.height));
  if (fits && pane !== null && pane <= 0 && stands.hidden.head > 0)
    yield { level: "stop", code: "edge-shows", side: "head", by: negate(pane), layer: "glazing" };
  for (const side of fits ? SIDES : []) {
    const seen = stands.seen[side];
    if (seen < 0) yield { level: "stop", code: "lip-covers", side, by: negate(seen) };
    else if (seen < design.leastBorder && (mats[0]?.borders[side] ?? ZERO) >= design.leastBorder)
      yield { level: "warn", code: "seen-small", side, seen, least: design.leastBorder };
  }
  const asked = mats[0] === undefined ? ZERO : liftOf(mats[0].borders);
  if (fits && stands.lift !== asked)
    yield {
      level: "note",
      code: "lift-changed",
      asked,
      seen: stands.lift,
      shim: subtract(asked, stands.lift),
    };
}

function* roomChecks(
  { sizes: { slack }, glazing, frame }: Omit<FramePlan, "checks">,
  { outer }: Composition,
): Generator<FrameCheck> {
  for (const direction of DIRECTIONS) {
    if (slack[direction] < 0) continue;
    if (glazing !== null && glazing.grows[direction] > glazing.room[direction])
      yield {
        level: "warn",
        code: "glazing-tight",
        direction,
        kind: glazing.kind,
        grows: glazing.grows[direction],
        room: glazing.room[direction],
      };
    const { humidity } = frame.air;
    // Board is taken as paper whose fibres' way is not known.
    const grows = movementOf(outer, { grain: null, humidity })[direction];
    if (grows > slack[direction])
      yield { level: "note", code: "package-tight", direction, grows, room: slack[direction] };
  }
}

function* depthChecks({ frame, stack, left }: Omit<FramePlan, "checks">): Generator<FrameCheck> {
  const { depth: rabbet } = frame.profile;
  const { fittings: needs, offset: most } = frame.habits;
  if (left === null || rabbet === null) {
    yield { level: "note", code: "depth-unknown", stack: stack.depth };
    return;
  }
  const by = negate(left);
  if (by > 0)
    yield {
      level: by > most ? "stop" : "warn",
      code: "stack-over",
      stack: stack.depth,
      rabbet,
      by,
      most,
    };
  else if (left < needs) yield { level: "warn", code: "fittings-short", left, needs };
}

function* glazingChecks(
  { frame, stack, glazing }: Omit<FramePlan, "checks">,
  { design }: Composition,
  process: string,
): Generator<FrameCheck> {
  if (glazing === null) return;
  const { clear: least } = frame.habits;
  if (stack.clear !== null && stack.clear < least)
    yield {
      level: stack.clear <= 0 ? "stop" : "warn",
      code: "glazing-near",
      clear: stack.clear,
      least,
    };
  if (glazing.kind !== "acrylic") return;
  const size = Math.max(glazing.width, glazing.height);
  const most = BOWS_FROM[design.ruler.unit];
  if (size > most)
    yield {
      level: "note",
      code: "glazing-bows",
      size: glazing.width > glazing.height ? glazing.width : glazing.height,
      most,
    };
  if (LOOSE.test(process)) yield { level: "warn", code: "draws-pigment", process };
}

function* woodChecks({ wood, mass, frame }: Omit<FramePlan, "checks">): Generator<FrameCheck> {
  if (wood !== null && wood.mitre > SEEN_MITRE && frame.opening === null)
    yield { level: "note", code: "mitre-opens", by: wood.mitre, ...wood.moisture };
  const parts = mass.parts.filter(
    ({ by, part, mass: kilograms }) => by === "assumed" && part !== "hardware" && kilograms > 0,
  );
  if (parts.length > 0) yield { level: "note", code: "mass-assumed", parts };
}
