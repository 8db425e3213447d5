import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { planLight } from "../../src/assembly/index.ts";
import { lightWords, planLights } from "../../src/packet/light.ts";
import { composeWorks } from "../../src/packet/works.ts";
import {
  dayOf,
  isoOf,
  problemJson,
  readLux,
  readShowLight,
  readWorkLight,
  type WorkDocument,
} from "../../src/show/index.ts";

const work = (light: WorkDocument["light"], process = "gelatin silver print"): WorkDocument => ({
  title: "Ferry Slip",
  process,
  light,
  design: { print: { width: "8", height: "10" }, outer: { width: "14", height: "18" } },
});

const ROOM = { from: "2026-12-14", to: "2027-03-14", lux: "5 fc", hours: 8, days: 6 };

describe("light in a show's document", () => {
  it("[LT8] a date reads back as it was written; what no calendar has is refused", () => {
    fc.assert(fc.property(fc.integer({ min: -20_000, max: 60_000 }), (day) => dayOf(isoOf(day)) === day));
    for (const wrong of ["2026-02-29", "14/12/2026", "2026-13-01", ""]) expect(dayOf(wrong)).toBeNull();
  });

  it("[LT8] light is read in lux and foot-candles", () => {
    expect(readLux("50")).toBe(50);
    expect(readLux(50)).toBe(50);
    expect(readLux("50 lx")).toBe(50);
    expect(readLux("5 fc")).toBeCloseTo(53.82, 2);
    for (const wrong of ["bright", "-5", "5 fcx", ""]) expect(readLux(wrong)).toBeNull();
  });

  it("[LT8] what cannot be read is told with its field, what was found and what is wanted", () => {
    const read = readShowLight(
      { ...ROOM, to: "2026-12-01", lux: "bright", hours: 30, ultraviolet: -1 },
      null,
    );
    expect(read.ok ? [] : read.problems.map(problemJson)).toEqual([
      { field: "light.to", found: "2026-12-01", wanted: "a date from 2026-12-14 on" },
      { field: "light.lux", found: "bright", wanted: "light as 50 lx or 5 fc, at most 200,000 lx" },
      { field: "light.hours", found: "30", wanted: "a number above 0, at most 24" },
      { field: "light.ultraviolet", found: "-1", wanted: "at least 0" },
    ]);
  });

  it("[LT8] a day that no calendar has is told once", () => {
    const read = readShowLight({ ...ROOM, to: "2027-02-30" }, null);
    expect(read.ok ? [] : read.problems.map(problemJson)).toEqual([
      { field: "light.to", found: "2027-02-30", wanted: "a date as year, month, day, such as 2026-12-14" },
    ]);
  });

  it("[LT8] a show without its own first day hangs from its date", () => {
    const read = readShowLight({ ...ROOM, from: undefined }, "2026-12-20");
    expect(read.ok && isoOf(read.value.hanging.first)).toBe("2026-12-20");
    expect(readShowLight({ ...ROOM, from: undefined }, null).ok).toBe(false);
  });

  it("[LT2][LT6] a work's own class wins over its process's, and what it hung in before counts", () => {
    const room = readShowLight(ROOM, null);
    if (!room.ok) throw new Error("the room's light is whole");
    const before = [{ from: "2026-06-01", to: "2026-11-30", lux: 150, hours: 10 }];
    const job = readWorkLight(work({ before }), room.value, {});
    if (!job.ok) throw new Error("the work's light is whole");
    expect(job.value.sensitivity).toBe("medium");
    const fresh = planLight({ ...job.value, before: [] });
    expect(fresh.until).toBeNull();
    expect(planLight(job.value).fullestYear).toBeGreaterThan(fresh.fullestYear);
    expect(planLight(job.value).until).not.toBeNull();
    const own = readWorkLight(work({ sensitivity: "none" }), room.value, {});
    expect(own.ok && own.value.sensitivity).toBe("none");
  });

  it("[LT4] the check-list says until when a work may hang, and whose limit it is", () => {
    const room = readShowLight({ ...ROOM, lux: 200 }, null);
    if (!room.ok) throw new Error("the room's light is whole");
    const { works } = composeWorks([{ row: 2, work: work({ sensitivity: "high" }) }], {});
    const { plans } = planLights(works, room.value, {});
    expect(lightWords(plans[0])).toBe(
      "200 lx is brighter than 50 lx (CIE 157:2004, from memory). Dim the lamps, or hang it elsewhere. " +
        "124,800 lx·h in a year; 15,000 is the most (CIE 157:2004, from memory). Take it down after 23 Dec 2026. It may hang to the end at 24 lx.",
    );
  });
});
