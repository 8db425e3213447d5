import { expect, test } from "vitest";
import { inch } from "../../src/lengths/index.ts";
import { planWithSaved } from "../../src/packet/saved.ts";

test("[K12] a plan and the one that it is held against are made within the time asked, by the clock that is given", () => {
  let now = 0;
  // Every look at the clock takes 5 ms, so that the time is spent by being watched.
  const clock = (): number => (now += 5);
  // Too many unlike blanks for a proof in so short a time.
  const pieces = Array.from({ length: 40 }, (_, index) => ({
    name: "",
    width: inch(9 * 16 + ((index * 37) % 113), 16),
    height: inch(11 * 16 + ((index * 53) % 151), 16),
    window: { width: inch(6), height: inch(8) },
    count: 1 + (index % 3),
    turns: true,
  }));
  const { plan, saved } = planWithSaved(
    {
      sheets: [
        { name: "32 x 40", width: inch(32), height: inch(40), copies: null, cost: 11, trim: inch(0) },
        { name: "offcut", width: inch(16), height: inch(20), copies: 1, cost: 0, trim: inch(0) },
      ],
      pieces,
      dropOuts: true,
      kerf: inch(0),
      least: null,
      longestCut: null,
      tight: inch(1, 8),
    },
    { seconds: 1, seed: 1, clock },
  );
  expect(plan.proven).toBe(false);
  expect(now).toBeGreaterThan(900);
  expect(now).toBeLessThan(1300);
  expect(plan.missing.every((missing) => missing === 0)).toBe(true);
  expect(saved?.kind).toBe("money");
});
