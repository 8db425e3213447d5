import { expect, test } from "vitest";
import { margent, refusedLines } from "./run.ts";

const job = {
  unit: "in",
  lengths: [{ name: "oak", length: 120, cost: 22 }],
  rails: [{ name: "Ebb", length: "20", n: 5 }],
  kerf: "1/8",
  waste: "1/2",
  seconds: 1,
};

test("[CH11] a job in, lengths and rails out as text or JSON, status 0", () => {
  const text = margent(["chop"], JSON.stringify(job));
  expect([text.status, text.err]).toEqual([0, ""]);
  expect(text.out).toContain("no plan costs less");
  const { lengths } = JSON.parse(margent(["chop", "--json"], JSON.stringify(job)).out) as {
    lengths: { used: number; left: number }[];
  };
  expect(lengths).toMatchObject([{ used: 101.5, left: 18.5 }]);
});

test("[CH2] [CH11] status 1 where a rail cannot be made, 2 where nothing could be read, line by line as well", () => {
  const long = { ...job, rails: [{ name: "Ebb", length: "130" }] };
  const stopped = margent(["chop"], JSON.stringify(long));
  expect(stopped.status).toBe(1);
  expect(stopped.out).toContain("STOP  Ebb");
  const bad = margent(["chop"], JSON.stringify({ ...job, kerf: "x" }));
  expect([bad.status, bad.err]).toEqual([2, expect.stringContaining("kerf: found x; wanted: a length")]);
  const lines = margent(["chop", "--lines"], `${JSON.stringify(job)}\n5\n`);
  expect(lines.status).toBe(1);
  expect(refusedLines(lines.out)).toEqual([false, true]);
});

test("[CH12] a mitre's kerf lies between the marks: its places are said in inches, with ≈", () => {
  const sawn = {
    unit: "in",
    lengths: [{ name: "8 ft", length: 96, cost: 10 }],
    rails: [{ name: "A", length: 20, n: 3 }],
    saw: "1/8",
    waste: "1/2",
  };
  const { out } = margent(["chop"], JSON.stringify(sawn));
  // 20 1/2 in and a kerf of 1/8 in × √2, 0.1768 in: 20.6768 in.
  expect(out).toContain("from ≈ 20 43/64 in");
  expect(out).not.toContain("mm");
});
