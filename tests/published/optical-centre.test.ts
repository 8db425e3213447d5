import { describe, expect, it } from "vitest";
import { headFootSide, inBoard } from "./bench.ts";

/**
 * The construction as it is drawn, with ruler and pencil, and nothing of its closed form: lay the
 * print in the board's upper-left corner; draw the mid-line of the strip at its right and of the
 * strip below; join the print's lower-left corner to where the horizontal mid-line meets the board's
 * right edge; where this crosses the vertical mid-line is the print's lower-right corner.
 */
function construct(board: readonly [number, number], print: readonly [number, number]) {
  const [boardWidth, boardHeight] = board;
  const [width, height] = print;
  const rightOf = { from: { x: width, y: 0 }, to: { x: boardWidth, y: 0 } };
  const below = { from: { x: 0, y: height }, to: { x: 0, y: boardHeight } };
  const upright = middle(rightOf).x;
  const level = middle(below).y;
  const lowerLeft = { x: 0, y: height };
  const atEdge = { x: boardWidth, y: level };
  const corner = crossing(
    { from: lowerLeft, to: atEdge },
    { from: { x: upright, y: 0 }, to: { x: upright, y: boardHeight } },
  );
  return { head: corner.y - height, foot: boardHeight - corner.y, side: corner.x - width };
}

interface Place {
  readonly x: number;
  readonly y: number;
}
interface Line {
  readonly from: Place;
  readonly to: Place;
}

const middle = ({ from, to }: Line): Place => ({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 });

/** Where two lines cross: the lines' own equations, solved by determinants. */
function crossing(one: Line, other: Line): Place {
  const equation = ({ from, to }: Line) => {
    const [a, b] = [to.y - from.y, from.x - to.x];
    return { a, b, c: a * from.x + b * from.y };
  };
  const [p, q] = [equation(one), equation(other)];
  const together = p.a * q.b - q.a * p.b;
  return { x: (p.c * q.b - q.c * p.b) / together, y: (p.a * q.c - q.a * p.c) / together };
}

const EXAMPLES = [
  { board: [16, 20], print: [11, 14], published: { head: 2.531, foot: 3.469, side: 2.5 } },
  { board: [11, 14], print: [8, 10], published: { head: 1.727, foot: 2.273, side: 1.5 } },
  { board: [20, 24], print: [16, 20], published: { head: 1.8, foot: 2.2, side: 2 } },
  { board: [14, 18], print: [8, 10], published: { head: 3.143, foot: 4.857, side: 3 } },
  { board: [20, 16], print: [14, 11], published: { head: 2.125, foot: 2.875, side: 3 } },
] as const;

describe("the optical-centre construction (teaching page mmresourcecenter.org; photography course handout; credited to Rand & Litschel, Black & White Photography)", () => {
  const THOUSANDTH = 0.001;

  it.each(EXAMPLES)(
    "[B3] board $board in, print $print in: drawn with ruler and pencil",
    ({ board, print }) => {
      const drawn = construct(board, print);
      const cut = headFootSide(
        inBoard(
          [String(board[0]), String(board[1])],
          [String(print[0]), String(print[1])],
          { rule: "optical" },
          "0.001 in",
        ),
      );
      // The head goes down to the graduation, what is left to the foot.
      expect(cut.head).toBeLessThanOrEqual(drawn.head + 1e-9);
      expect(cut.head).toBeGreaterThan(drawn.head - THOUSANDTH);
      expect(cut.foot).toBeCloseTo(drawn.foot, 2);
      expect(cut.side).toBeCloseTo(drawn.side, 9);
    },
  );

  it.each(EXAMPLES)(
    "[B3] board $board in, print $print in: head $published.head, foot $published.foot, sides $published.side",
    ({ board, print, published }) => {
      const cut = headFootSide(
        inBoard(
          [String(board[0]), String(board[1])],
          [String(print[0]), String(print[1])],
          { rule: "optical" },
          "0.001 in",
        ),
      );
      expect(Math.abs(cut.head - published.head)).toBeLessThanOrEqual(1.001 * THOUSANDTH);
      expect(Math.abs(cut.foot - published.foot)).toBeLessThanOrEqual(1.001 * THOUSANDTH);
      expect(cut.side).toBeCloseTo(published.side, 9);
    },
  );

  it("[B3] a landscape print gets a top narrower than its sides", () => {
    const { head, side } = headFootSide(inBoard(["20", "16"], ["14", "11"], { rule: "optical" }));
    expect(head).toBe(2.125);
    expect(head).toBeLessThan(side);
  });
});
