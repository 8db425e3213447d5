import type { HangCheck, HangStep } from "../assembly/index.ts";
import { figureOf, figureText, type Length, type Ruler } from "../lengths/index.ts";
import type { WallCheck, WallJob } from "../plans/index.ts";
import type { HangWanted } from "../show/hang-request.ts";
import { andList } from "./figures.ts";
import { sayWanted } from "./problems.ts";
import { sayMass } from "./weights.ts";

/** What a wall is spoken about with: its ruler, and its job for the names. */
export interface HangingSpeech {
  readonly ruler: Ruler;
  readonly job: WallJob;
}

/** A problem of one hanging work: what, the figure, and a way out. */
export function sayHangCheck(check: HangCheck, { ruler }: HangingSpeech): string {
  const place = (length: Length): string => figureText(figureOf(length, ruler));
  const least = (length: Length): string => figureText(figureOf(length, ruler, "up"));
  switch (check.code) {
    case "wire-short":
      return `The wire is ${place(check.length)} and the rings are ${place(check.apart)} apart: it is never taut over a hook. Take a longer wire, or set the rings nearer to each other.`;
    case "wire-shows":
      return `The taut wire rises ${least(check.rise)} and the rings lie ${place(check.below)} below the top of the frame: it shows. Take a shorter wire, or set the rings lower.`;
    case "wire-flat":
      return `The wire lies at ${check.angle.toFixed(1)}°: each ring carries ${check.times.toFixed(1)} times the weight. Take a longer wire, or hang it by its two rings.`;
    case "hooks-past-rings":
      return `The hooks are ${place(check.hooksApart)} apart and the rings ${place(check.apart)}: they would pull the frame open. Set the hooks nearer to each other.`;
    case "nail-shows":
      return check.above === 0
        ? "The nail is level with the top of the frame and shows. Set the fittings lower on the frame."
        : `The nail stands ${least(check.above)} above the top of the frame and shows. Set the fittings lower on the frame.`;
    case "fitting-past-frame":
      return check.direction === "width"
        ? `The fittings are ${place(check.at)} apart and the frame is ${place(check.size)} wide. Measure them again.`
        : `The fittings lie ${place(check.at)} below the top of a frame ${place(check.size)} high. Measure them again.`;
    case "leans-out":
      return `The fittings lie ${place(check.below)} down, below the middle at ${place(check.half)}: the top leans out from the wall. Set them in the upper third.`;
    case "weight-unknown":
      return "The weight is not known, so no load is given. Weigh it, framed.";
    case "heavy":
      return `It weighs ${sayMass(check.mass)}: a licensed hand hangs it, into what carries the wall.`;
    case "into-frame":
      return `It weighs ${sayMass(check.mass)}: from 20 lb (9.1 kg) up a hook goes into a stud or joist, never into plaster or board alone (Earthquake Country Alliance). Find the stud, or hang a rail from stud to stud.`;
    case "shakes":
      return `The ground shakes: ${
        check.light
          ? "putty at all four corners, and a hook that it cannot jump off"
          : "a closed hanger, screwed into a stud"
      }${check.oneHook ? "; two hooks where it is large" : ""} (Earthquake Country Alliance; FEMA, 2008). Local codes come first.`;
    case "over-people":
      return `It hangs over ${check.name === "" ? "where people sit or lie" : check.name}. Hang it elsewhere, or have a licensed hand fix it (FEMA, 2008: never over beds, chairs, couches where the ground shakes).`;
    case "no-hardware":
      return `No listed ${check.use} is rated for ${sayMass(check.needs)}. Get a stronger one, or share the load between two hooks.`;
    case "projects":
      return `It stands ${least(check.depth)} out from the wall where people pass; ${place(check.most)} is the most between 27 in and 80 in above the floor (2010 ADA Standards, 307.2). Local codes come first. Hang it elsewhere, or in a shallower frame.`;
  }
}

/** A work by its title, or by its number. */
export function sayTitle({ frames }: WallJob, index: number): string {
  const name = frames[index]?.title ?? "";
  return name === "" ? `work ${index + 1}` : name;
}

/** What must stay free, by name where it has one. */
function obstaclesOf({ avoid }: WallJob, obstacles: readonly number[]): string {
  const names = [...new Set(obstacles.map((index) => avoid[index]?.name ?? ""))].filter(
    (name) => name !== "",
  );
  return names.length === 0 ? "what must stay free" : andList(names);
}

/** A problem of a wall: which frame, the figure, and a way out. */
export function sayWallCheck(check: WallCheck, { ruler, job }: HangingSpeech): string {
  const least = (length: Length): string => figureText(figureOf(length, ruler, "up"));
  switch (check.code) {
    case "wall-too-narrow":
      return `The frames and their gaps take ${least(check.needs)} and the wall has ${figureText(figureOf(check.has, ruler, "down"))}. Narrow the gap, or hang fewer.`;
    case "parted":
      return `Parted at ${obstaclesOf(job, check.obstacles)}: equal gaps on each part, the eye line kept.`;
    case "no-way-past": {
      const free = check.free.map((length) => figureText(figureOf(length, ruler, "down")));
      const room =
        free.length === 0
          ? "no wall is free"
          : `${andList(free)} of wall ${free.length === 1 ? "is" : "are"} free`;
      return `Frames and gaps take ${least(check.needs)}; beside ${obstaclesOf(job, check.obstacles)} ${room}. Hang fewer, narrow the gap, or ask for a cluster.`;
    }
    case "off-wall":
      return `It passes the ${check.side === "foot" ? "foot" : check.side} of the wall by ${least(check.by)}. Move the eye line or the group, or hang it elsewhere.`;
    case "touches":
      return `It lies over ${obstaclesOf(job, [check.obstacle])}. Move the group, or hang it elsewhere.`;
    case "frames-overlap":
      return `It lies over ${sayTitle(job, check.other)}. Widen the gap.`;
  }
}

/** What a step of a work's hanging finds. */
export function sayHangStep(name: HangStep["name"]): string {
  switch (name) {
    case "rise":
      return "rise of the taut wire above the rings";
    case "wire":
      return "wire from ring to ring";
    case "bear":
      return "height where it bears";
    case "nail":
      return "height of the nail";
  }
}

/** What is wanted in a field of a wall. */
export function sayHangWanted(wanted: HangWanted): string {
  switch (wanted.kind) {
    case "mass":
      return "a weight above 0, such as 3.2 kg or 7 lb";
    case "wire":
      return "the wire's length from ring to ring, or its drop: how far it rises above the rings when taut";
    case "rule":
      return 'a row, rows, a grid or a cluster, such as {"row": "gap", "gap": "2 in"}';
    case "titles":
      return "a list of titles, or rest";
    case "free-title":
      return "the title of a work that can be made, has a frame and hangs on no other wall";
    case "wall":
      return "the name of one of the show's walls";
    case "own-name":
      return "a name that no other wall has";
    case "frame":
      return "its frame's width and height, or a moulding in the practice to reckon them from";
    case "whole":
      if (wanted.least === null) return "a whole number";
      return wanted.most === null
        ? `a whole number of ${wanted.least} or more`
        : `a whole number from ${wanted.least} to ${wanted.most}`;
    default:
      return sayWanted(wanted);
  }
}

export const HANGING = {
  hookUnknown:
    "The hook's own drop is not given: the nail is placed where the hook bears. Measure from the hook's bearing up to its nail, and give hookDrop.",
} as const;
