import { add, fromReal, half, subtract, sum, ticks, ZERO } from "../../lengths/index.ts";
import { at } from "../at.ts";
import { Chance } from "../chance.ts";
import { clusterOf } from "./cluster.ts";
import { clearWay, meet } from "./clear.ts";
import { gridOf } from "./grid.ts";
import type { Balance, LaidWall, WallBox, WallCheck, WallJob, WallPlan, WallRule } from "./job.ts";
import { type InLine, lineOf } from "./line.ts";
import { gapsOf, type Row, rowOf } from "./row.ts";
import { rowsOf } from "./rows.ts";
import { groups, isJoined } from "./sets.ts";
import { outlineOf } from "./settle.ts";

type Places = WallPlan["places"];

/**
 * Lays out one wall. Rows, grids and groups are in the middle of the wall, or about the rule's own
 * centre, their middle on the eye line; a group moves away from what must stay free, rows and grids are parted at it, where they
 * can. Whatever does not fit is laid all the same, and checks of level "stop" say what passes what. The same job and
 * seed give the same wall. Throws RangeError for a grid without columns, or rows without one.
 */
export function planWall(job: WallJob, seed: number): WallPlan {
  if (job.frames.length === 0)
    return {
      places: [],
      order: [],
      gaps: [job.wall.width],
      centre: half(job.wall.width, "nearest"),
      balance: { across: ZERO, up: ZERO, share: 0 },
      rowBalance: null,
      checks: [],
    };
  const laid = layOut(job, seed);
  return {
    ...laid,
    balance: balanceOf(job, laid),
    rowBalance: plainRowBalance(job),
    checks: [...laid.checks, ...wallChecks(job, laid)],
  };
}

/** The same frames in one row, against which a group is held. */
function plainRowBalance(job: WallJob): Balance | null {
  const { rule } = job;
  if (rule.kind === "gap" || rule.kind === "spread") return null;
  const plain = { kind: "gap", gap: rule.gap, centre: rule.centre } as const;
  return balanceOf(job, rowPlaces({ ...job, avoid: [] }, rowOf(job, plain), plain));
}

function layOut(job: WallJob, seed: number): LaidWall {
  const { rule } = job;
  switch (rule.kind) {
    case "gap":
    case "spread":
      return rowPlaces(job, rowOf(job, rule), rule);
    case "rows":
      return rowsOf(job, rule);
    case "grid":
      return gridOf(job, rule);
    case "cluster": {
      const group = clusterOf(job, rule, new Chance(seed));
      const centre = rule.centre ?? half(job.wall.width, "nearest");
      const corner = {
        x: fromReal(centre - group.width / 2, "nearest"),
        y: fromReal(job.eyeLine - group.height / 2, "nearest"),
      };
      const asked = group.corners.map(({ x, y }) => ({
        x: add(corner.x, ticks(x)),
        y: add(corner.y, ticks(y)),
      }));
      const { across, up } = clearWay(job, asked);
      const places = asked.map(({ x, y }) => ({ x: add(x, across), y: add(y, up) }));
      const left = add(corner.x, across);
      return {
        places,
        order: readingOrder(job, places),
        gaps: [left, subtract(job.wall.width, add(left, ticks(group.width)))],
        centre: add(left, half(ticks(group.width), "nearest")),
        checks: [],
      };
    }
  }
}

type OneRow = Extract<WallRule, { readonly kind: "gap" | "spread" }>;

function rowPlaces(job: WallJob, { order, gaps }: Row, rule: OneRow): LaidWall {
  let x = ZERO;
  const asked = order.map((index, turn) => {
    const left = add(x, at(gaps, turn));
    x = add(left, at(job.frames, index).width);
    return left;
  });
  const items = order.map((index, turn): InLine => {
    const { width, height } = at(job.frames, index);
    const y = subtract(job.eyeLine, half(height, "nearest"));
    return { width, height, y, joined: isJoined(job.frames, order, turn) };
  });
  const stands = rule.kind === "gap" && rule.centre !== null ? "asked" : "middle";
  const laid = lineOf(job, items, asked, rule.kind === "gap" ? { kind: "gap", gap: rule.gap, stands } : rule);
  const places = job.frames.map(() => ({ x: ZERO, y: ZERO }));
  order.forEach((index, turn) => {
    places[index] = { x: at(laid.lefts, turn), y: at(items, turn).y };
  });
  const widths = items.map(({ width }) => width);
  return { places, order, ...gapsOf(job, laid.lefts, widths), checks: laid.checks };
}

/** From the left, and where frames stand over each other from the top; a set stays together. */
function readingOrder({ frames }: WallJob, places: Places): readonly number[] {
  const first = (group: readonly number[]) => at(places, at(group, 0));
  return groups(frames)
    .toSorted((a, b) => first(a).x - first(b).x || first(b).y - first(a).y)
    .flat();
}

/** Where the weight's centre lies from the middle of the group and from the eye line. */
function balanceOf(job: WallJob, { places, centre }: LaidWall): Balance {
  const whole = job.frames.reduce((total, { weight }) => total + weight, 0);
  const mean = (middle: (index: number) => number): number =>
    job.frames.reduce((total, { weight }, index) => total + weight * middle(index), 0) / whole;
  const across = mean((index) => at(places, index).x + at(job.frames, index).width / 2) - centre;
  const up = mean((index) => at(places, index).y + at(job.frames, index).height / 2) - job.eyeLine;
  const { left, right, foot, top } = outlineOf(
    job.frames.map(({ width, height }, index) => ({ ...at(places, index), width, height })),
  );
  return {
    across: fromReal(across, "nearest"),
    up: fromReal(up, "nearest"),
    share: Math.hypot((2 * across) / (right - left), (2 * up) / (top - foot)),
  };
}

/** What passes the wall's edges, lies over what must stay free, or over each other. */
function* wallChecks(job: WallJob, { places, gaps }: LaidWall): Generator<WallCheck> {
  const needs = subtract(job.wall.width, sum([at(gaps, 0), at(gaps, gaps.length - 1)]));
  const between = job.rule.kind === "spread" ? sum(job.frames.map(({ width }) => width)) : needs;
  if (between > job.wall.width)
    yield { level: "stop", code: "wall-too-narrow", needs: between, has: job.wall.width };
  const boxes = job.frames.map(
    ({ width, height }, index): WallBox => ({ ...at(places, index), width, height }),
  );
  for (const [frame, box] of boxes.entries()) {
    for (const [side, by] of [
      ["left", subtract(ZERO, box.x)],
      ["right", subtract(add(box.x, box.width), job.wall.width)],
      ["foot", subtract(job.floor, box.y)],
      ["top", subtract(add(box.y, box.height), add(job.floor, job.wall.height))],
    ] as const)
      if (by > 0) yield { level: "stop", code: "off-wall", frame, side, by };
    for (const [obstacle, other] of job.avoid.entries())
      if (meet(box, other)) yield { level: "stop", code: "touches", frame, obstacle };
    for (const [other, second] of boxes.slice(0, frame).entries())
      if (meet(box, second)) yield { level: "stop", code: "frames-overlap", frame: other, other: frame };
  }
}
