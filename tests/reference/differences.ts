import { composeReference } from "./compose.ts";
import type { Composed, LengthOut } from "./composed.ts";
import type { Design } from "./document.ts";
import { Fraction } from "./fraction.ts";
import { readMillimetres } from "./read-length.ts";
import { stopFaults } from "./stops.ts";
import { faultOf } from "./sums.ts";

const SIDES = ["head", "left", "right", "foot"] as const;
const CORNERS = ["topLeft", "topRight", "bottomLeft", "bottomRight"] as const;

// Whole ticks are exact as printed. Half an odd tick (1/128 in has an odd number) goes to a whole one beside it; what a
// tangent or a root makes lies within a tick or two, what a turn makes within a few. A pocket is the sum of two such.
const EXACT = 1e-8;
const HALF_TICK = 6.26e-6;
const TICKS = 3e-5;

/** Every place in which a composed work differs from the reference, one line each. */
export function differences(design: Design, composed: Composed, leastBorder: number): string[] {
  const reference = composeReference(design, leastBorder);
  const found: string[] = [];
  const mark = readMillimetres(design.graduation, design.unit);
  const hold = (name: string, length: LengthOut | undefined, expected: number, within: number): void => {
    if (length === undefined) found.push(`${name}: absent, expected ${expected} mm`);
    else if (!(Math.abs(length.mm - expected) <= within)) {
      found.push(`${name}: ${length.mm} mm, expected ${expected} mm`);
    }
  };
  const exactly = (name: string, length: LengthOut | undefined, expected: Fraction): void =>
    hold(name, length, expected.toNumber(), EXACT);

  if (reference.outer === null) {
    // No size, no borders: what else is said of the mats hangs on a size that cannot be had.
    const checks = composed.checks.filter((check) => !check.about.startsWith("mats."));
    return checkFaults("stop", { ...composed, checks }, reference.stopped);
  }
  found.push(...checkFaults("stop", composed, reference.stopped));
  // Of borders that are all too narrow it is enough to be told of one, and of none beside a border below nought.
  const narrow = reference.warned.filter((check) => check.startsWith("border-small"));
  const other = reference.warned.filter((check) => !check.startsWith("border-small"));
  const told = composed.checks
    .filter((check) => check.code === "border-small")
    .map((check) => `${check.code} ${check.about}`);
  const silent = told.length === 0 && !reference.stopped.some((check) => check.startsWith("border-negative"));
  if ((silent && narrow.length > 0) || told.some((check) => !narrow.includes(check))) {
    found.push(`warned of ${told.join() || "no border"}, narrow are ${narrow.join() || "none"}`);
  }
  found.push(...checkFaults("warn", composed, [...told, ...other]));

  exactly("outer width", composed.outer.width, reference.outer[0]);
  exactly("outer height", composed.outer.height, reference.outer[1]);
  hold("diagonal", composed.diagonal, reference.diagonal ?? 0, TICKS);
  if (composed.mats.length !== reference.mats.length) found.push(`${composed.mats.length} mats`);
  for (const [number, mat] of reference.mats.entries()) {
    const own = composed.mats[number];
    const bevel = design.mats[number]?.bevel ?? 45;
    const within = bevel === 45 || bevel === 90 ? EXACT : TICKS;
    for (const side of SIDES) {
      exactly(`mat ${number} ${side} border`, own?.borders[side], mat.borders[side]);
    }
    exactly(`mat ${number} back width`, own?.back.width, mat.back[0]);
    exactly(`mat ${number} back height`, own?.back.height, mat.back[1]);
    hold(`mat ${number} face width`, own?.face.width, mat.face[0].toNumber(), within);
    hold(`mat ${number} face height`, own?.face.height, mat.face[1].toNumber(), within);
    hold(`mat ${number} bevel`, own?.bevel.plan, mat.plan.toNumber(), within);
    hold(`mat ${number} slope`, own?.bevel.slope, mat.slope.toNumber(), TICKS);
    if (mat.revealAsCut === null) {
      if (own?.revealAsCut !== undefined) found.push(`mat ${number} has a strip below the lowest mat`);
    } else hold(`mat ${number} reveal as cut`, own?.revealAsCut, mat.revealAsCut.toNumber(), TICKS);
  }

  found.push(
    ...stopFaults(
      composed,
      reference.mats.map(({ stops }) => stops),
    ),
  );
  const { laid } = reference;
  if (laid === null) {
    if (composed.print !== undefined) found.push("a print where there is none");
  } else {
    const within = laid.turn === 0 ? HALF_TICK : TICKS;
    hold("print left", composed.print?.left, laid.corner[0].toNumber(), within);
    hold("print top", composed.print?.top, laid.corner[1].toNumber(), within);
    if (composed.print?.angle !== laid.turn)
      found.push(`turned ${composed.print?.angle}, expected ${laid.turn}`);
    for (const side of SIDES) {
      // A tick at the corner is many on the way out to an edge that is met aslant.
      const stretch = laid.aslant.includes(side) ? 1 / Math.abs(Math.sin((laid.turn * Math.PI) / 180)) : 1;
      hold(`cover ${side}`, composed.cover?.[side], laid.cover[side].toNumber(), within * stretch);
    }
    for (const [index, corner] of CORNERS.entries()) {
      hold(
        `pocket ${corner}`,
        composed.pockets?.[corner],
        (laid.pockets[index] ?? Fraction.zero).toNumber(),
        2 * within,
      );
    }
  }
  for (const step of composed.reckoning) {
    const fault = faultOf(step.sum, Fraction.decimal(String(step.is.mm)), mark);
    if (fault !== null) found.push(`${step.name}: ${step.sum} (is ${step.is.mm} mm): ${fault}`);
  }
  return found;
}

/** Codes that the reference knows; the house has more cautions of its own, about things that are no figure of the composition. */
const KNOWN =
  /^(paper-ends|hold-short|border-negative|border-small|window-gone|no-size|reveal-gone|reveal-off) /;

/** Checks of one level that are missing, or that are one too many. */
function checkFaults(level: string, composed: Composed, expected: readonly string[]): string[] {
  const said = composed.checks
    .filter((check) => check.level === level)
    .map((check) => `${check.code} ${check.about}`)
    .filter((check) => KNOWN.test(check));
  return [
    ...expected.filter((check) => !said.includes(check)).map((check) => `no ${level}: ${check}`),
    ...said.filter((check) => !expected.includes(check)).map((check) => `a ${level} too many: ${check}`),
  ];
}
