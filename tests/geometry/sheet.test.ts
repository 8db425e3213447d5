import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Corner,
  cornerInSheetAxes,
  type FourCorners,
  type RealBox,
  type RealPoint,
  reach,
  type Side,
  turned,
} from "../../src/geometry/index.ts";
import { box } from "./outlines.ts";

/** A sheet w x h with its top-left corner at the origin, turned about its middle. */
function sheet(w: number, h: number, degrees: number): FourCorners {
  const flat = [
    { x: 0, y: 0 },
    { x: w, y: 0 },
    { x: w, y: h },
    { x: 0, y: h },
  ];
  const [a, b, c, d] = turned(flat, { x: w / 2, y: h / 2 }, degrees);
  if (!a || !b || !c || !d) throw new Error("a sheet has four corners");
  return [a, b, c, d];
}

/** Each side's window edge by its two ends, and the way out. */
function edgeOf(window: RealBox, side: Side): { ends: [RealPoint, RealPoint]; out: RealPoint } {
  const { left, top } = window;
  const [right, bottom] = [left + window.width, top + window.height];
  switch (side) {
    case "head":
      return {
        ends: [
          { x: left, y: top },
          { x: right, y: top },
        ],
        out: { x: 0, y: -1 },
      };
    case "foot":
      return {
        ends: [
          { x: left, y: bottom },
          { x: right, y: bottom },
        ],
        out: { x: 0, y: 1 },
      };
    case "left":
      return {
        ends: [
          { x: left, y: top },
          { x: left, y: bottom },
        ],
        out: { x: -1, y: 0 },
      };
    case "right":
      return {
        ends: [
          { x: right, y: top },
          { x: right, y: bottom },
        ],
        out: { x: 1, y: 0 },
      };
  }
}

const leaves = (start: number, step: number, size: number): number =>
  Math.abs(step) < 1e-15 ? Infinity : ((step > 0 ? size : 0) - start) / step;

/** In the sheet's own axes the paper is a plain box: how far a walk goes before it leaves it. */
function walk(from: RealPoint, out: RealPoint, w: number, h: number, degrees: number): number {
  const middle = { x: w / 2, y: h / 2 };
  const [at, ahead] = turned([from, { x: from.x + out.x, y: from.y + out.y }], middle, -degrees);
  if (!at || !ahead) throw new Error("a point was lost");
  return Math.min(leaves(at.x, ahead.x - at.x, w), leaves(at.y, ahead.y - at.y, h));
}

const SIDES: readonly Side[] = ["head", "left", "right", "foot"];

const laid = fc
  .record({
    w: fc.integer({ min: 4_000_000, max: 40_000_000 }),
    h: fc.integer({ min: 4_000_000, max: 40_000_000 }),
    degrees: fc.double({ min: -8, max: 8, noNaN: true }),
    shares: fc.tuple(...[0, 1, 2, 3].map(() => fc.double({ min: 0.2, max: 0.45, noNaN: true }))),
  })
  .map(({ w, h, degrees, shares: [a = 0, b = 0, c = 0, d = 0] }) => ({
    w,
    h,
    degrees,
    window: { left: w * a, top: h * b, width: w * (1 - a - c), height: h * (1 - b - d) },
  }));

describe("how far the paper reaches beyond a window", () => {
  it("[G17] is plain subtraction for a sheet that is not turned, also where the paper ends short", () => {
    expect(reach(box(300, 200, 1000, 500), sheet(1600, 900, 0))).toEqual({
      head: 200,
      left: 300,
      right: 300,
      foot: 200,
    });
    expect(reach(box(-30, 200, 1000, 750), sheet(900, 900, 0))).toEqual({
      head: 200,
      left: -30,
      right: -70,
      foot: -50,
    });
    const far = reach(box(7_000_000_001, 1, 900_000_000, 3), sheet(7_999_999_999, 7_999_999_999, 0));
    expect(far).toEqual({ head: 1, left: 7_000_000_001, right: 99_999_998, foot: 7_999_999_995 });
  });

  it("[G16] from no point of the window's edge is the paper nearer, and from one of its ends it is that near", () => {
    fc.assert(
      fc.property(laid, ({ w, h, degrees, window }) => {
        const corners = SIDES.flatMap((side) => edgeOf(window, side).ends);
        const flat = turned(corners, { x: w / 2, y: h / 2 }, -degrees);
        fc.pre(flat.every(({ x, y }) => x >= 0 && x <= w && y >= 0 && y <= h));
        const found = reach(window, sheet(w, h, degrees));
        for (const side of SIDES) {
          const { ends, out } = edgeOf(window, side);
          const [from, to] = ends;
          const walks = Array.from({ length: 41 }, (_, step) => {
            const at = {
              x: from.x + ((to.x - from.x) * step) / 40,
              y: from.y + ((to.y - from.y) * step) / 40,
            };
            return walk(at, out, w, h, degrees);
          });
          // A reach is kept to the tick, and so are the paper's own corners.
          expect(Math.abs(found[side] - Math.min(...walks))).toBeLessThan(1);
          expect(Math.abs(found[side] - Math.min(walks[0] ?? 0, walks[40] ?? 0))).toBeLessThan(1);
        }
      }),
    );
  });

  it("[G16] a window corner past the paper counts by the line of that side's own edge", () => {
    // Turned clockwise, the head runs down to the right: at the window's right end it is lower.
    const paper = sheet(20_000_000, 30_000_000, 2);
    const slope = Math.tan((2 * Math.PI) / 180);
    const [topLeft] = paper;
    const headAt = (x: number): number => topLeft.y + (x - topLeft.x) * slope;
    const window = { left: 4_000_000, top: 150_000, width: 12_000_000, height: 20_000_000 };
    expect(headAt(16_000_000)).toBeGreaterThan(window.top);
    const found = reach(window, paper);
    expect(found.head).toBeCloseTo(window.top - headAt(16_000_000), 3);
    expect(found.head).toBeLessThan(0);
    expect(found.foot).toBeGreaterThan(0);
  });

  it("[G16] a corner past one edge does not spoil the reach on the side beside it", () => {
    // Turned anticlockwise a tall sheet's head leans over to the left: the window's foot end there is off the paper.
    const [w, h, degrees] = [4_000_000, 20_000_000, -8];
    const paper = sheet(w, h, degrees);
    const [topLeft, topRight, , bottomLeft] = paper;
    const window = { left: 800_000, top: 4_000_000, width: 2_400_000, height: 12_000_000 };
    const ends = edgeOf(window, "left").ends;
    const leftAt = (y: number): number =>
      topLeft.x + ((bottomLeft.x - topLeft.x) * (y - topLeft.y)) / (bottomLeft.y - topLeft.y);
    const found = reach(window, paper);
    expect(found.left).toBeCloseTo(Math.min(...ends.map(({ x, y }) => x - leftAt(y))), 3);
    expect(found.left).toBeLessThan(0);
    // The right edge is passed at the head's end, so there the head counts by its own line alone.
    const headAt = (x: number): number =>
      topLeft.y + ((topRight.y - topLeft.y) * (x - topLeft.x)) / (topRight.x - topLeft.x);
    expect(found.right).toBeLessThan(0);
    expect(found.head).toBeCloseTo(
      Math.min(...edgeOf(window, "head").ends.map(({ x, y }) => y - headAt(x))),
      3,
    );
    expect(found.head).toBeGreaterThan(0);
  });

  it("[G16] near a corner of the paper another edge may be met first", () => {
    const paper = sheet(10_000_000, 10_000_000, 30);
    const [topLeft, topRight] = paper;
    // Straight up from here the way leaves by the sheet's left edge, before its head's line.
    const window = { left: topLeft.x - 1_000_000, top: 5_000_000, width: 2_000_000, height: 100 };
    const found = reach(window, paper);
    expect(found.head).toBeCloseTo(walk({ x: window.left, y: window.top }, { x: 0, y: -1 }, 1e7, 1e7, 30), 1);
    const headLine = topLeft.y + ((topRight.y - topLeft.y) / (topRight.x - topLeft.x)) * -1_000_000;
    expect(found.head).toBeLessThan(window.top - headLine - 1000);
  });

  it("[G16] turned by a quarter, the edge that faces a side is the one that counts", () => {
    const paper = sheet(1000, 600, 90);
    // Its box is now 600 wide and 1000 high about the same middle (500, 300).
    expect(reach(box(300, -100, 400, 700), paper)).toEqual({ head: 100, left: 100, right: 100, foot: 200 });
    expect(reach(box(100, -100, 400, 700), paper).left).toBe(-100);
  });
});

describe("a window's corner in the sheet's axes", () => {
  const CORNERS: readonly Corner[] = ["topLeft", "topRight", "bottomLeft", "bottomRight"];

  it("[G17] [G18] is how far it lies in from each side, exact where nothing is turned", () => {
    const flat = sheet(1000, 600, 0);
    const dot = { x: 130, y: 70 };
    expect(cornerInSheetAxes(dot, flat, "topLeft")).toEqual({ u: 130, v: 70 });
    expect(cornerInSheetAxes(dot, flat, "topRight")).toEqual({ u: 870, v: 70 });
    expect(cornerInSheetAxes(dot, flat, "bottomLeft")).toEqual({ u: 130, v: 530 });
    expect(cornerInSheetAxes(dot, flat, "bottomRight")).toEqual({ u: 870, v: 530 });
  });

  it("[G18] turned with the sheet, a point keeps its place in the sheet's axes", () => {
    fc.assert(
      fc.property(laid, fc.constantFrom(...CORNERS), ({ w, h, degrees, window }, corner) => {
        const dot = { x: window.left, y: window.top };
        const [there] = turned([dot], { x: w / 2, y: h / 2 }, degrees);
        if (there === undefined) throw new Error("a point was lost");
        const { u, v } = cornerInSheetAxes(there, sheet(w, h, degrees), corner);
        expect(u).toBeCloseTo(corner.endsWith("Left") ? dot.x : w - dot.x, 3);
        expect(v).toBeCloseTo(corner.startsWith("top") ? dot.y : h - dot.y, 3);
      }),
    );
  });
});
