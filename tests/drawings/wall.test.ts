import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type FramedWork, hangWork, type Measuring, readingsOf } from "../../src/assembly/index.ts";
import { figureRuns, type Mark, PIXEL, wallView, type WallSeen } from "../../src/drawings/index.ts";
import { add, inch, type Length, mm, type Ruler, ticks, ZERO } from "../../src/lengths/index.ts";
import { planWall, type WallJob, type WallRule } from "../../src/plans/index.ts";

const length = (least: number, most: number): fc.Arbitrary<Length> =>
  fc.integer({ min: least * 80_000, max: most * 80_000 }).map(ticks);

const ruler: Ruler = { unit: "in", graduation: inch(1, 16) };

const rules: readonly WallRule[] = [
  { kind: "gap", gap: inch(4), centre: null },
  { kind: "spread" },
  { kind: "rows", count: 2, gap: inch(4), rowGap: inch(4), centre: null },
];

/** A wall with frames on two rings each, laid out and hung. */
const walls: fc.Arbitrary<WallSeen> = fc
  .record({
    floor: fc.constantFrom(ZERO, ticks(-inch(48))),
    rule: fc.constantFrom(...rules),
    sizes: fc.array(fc.record({ width: length(200, 700), height: length(200, 700) }), {
      minLength: 1,
      maxLength: 6,
    }),
    avoid: fc.array(
      fc.record({
        name: fc.constantFrom("", "door"),
        x: length(0, 5000),
        y: length(0, 1500),
        width: length(60, 900),
        height: length(60, 1500),
      }),
      { maxLength: 3 },
    ),
    fall: length(0, 20),
  })
  .map(({ floor, rule, sizes, avoid, fall }) => {
    const job: WallJob = {
      wall: { width: mm(7000), height: mm(3000) },
      floor,
      avoid,
      eyeLine: add(floor, inch(58)),
      rule,
      frames: sizes.map((size) => ({ ...size, title: "", weight: 1, set: null })),
    };
    const plan = planWall(job, 1);
    const measuring: Measuring = { width: job.wall.width, tape: null, fall };
    const hung = sizes.map(({ width, height }, index) => {
      const work: FramedWork = {
        title: "",
        width,
        height,
        mass: null,
        depth: null,
        hanging: { kind: "rings", below: inch(3), apart: inch(5) },
      };
      const place = plan.places[index] ?? { x: ZERO, y: ZERO };
      return hangWork(work, place, {
        hookDrop: inch(5, 16),
        publicWay: false,
        floor,
        wall: null,
        shakes: false,
        seats: [],
      });
    });
    return { job, plan, hung, fronts: [], measuring, seats: [], level: floor !== 0 };
  });

const drawn = (seen: WallSeen, scale: number) =>
  wallView(seen, { scale, ruler, words: { eyeLine: "eye line", levelLine: "level line", floor: "floor" } });

const texts = (marks: readonly Mark[]): string[] =>
  marks.flatMap((mark) =>
    mark.kind === "group"
      ? texts(mark.marks)
      : mark.kind === "text"
        ? [JSON.stringify(mark.runs.map((run) => (run.kind === "text" ? run.text : { ...run, size: 0 })))]
        : [],
  );

const figure = (of: Length): string =>
  JSON.stringify(
    figureRuns(of, { ruler, pixel: PIXEL }).map((run) =>
      run.kind === "text" ? run.text : { ...run, size: 0 },
    ),
  );

const scale = fc.double({ min: 0.05, max: 0.2, noNaN: true });

describe("a wall as it is seen from the room", () => {
  test("[D26] one scale both ways, and nothing is lost where a stretch is left out", () => {
    fc.assert(
      fc.property(walls, scale, (seen, of) => {
        const { boxes } = drawn(seen, of);
        seen.job.frames.forEach(({ width, height }, index) => {
          const box = boxes[index];
          if (box === undefined) throw new Error("a frame is not drawn");
          expect(Math.abs(box.right - box.left - width * of)).toBeLessThan(2);
          expect(Math.abs(box.bottom - box.top - height * of)).toBeLessThan(2);
        });
        const order = [...boxes.entries()].toSorted(([, a], [, b]) => a.bottom - b.bottom);
        const heights = order.map(([index]) => seen.plan.places[index]?.y ?? ZERO);
        expect(heights).toEqual(heights.toSorted((a, b) => b - a));
      }),
      { numRuns: 60 },
    );
  });

  test("[D27] every nail is read on both tapes, as the hanging sheet says it", () => {
    fc.assert(
      fc.property(walls, scale, (seen, of) => {
        const { wall, upright } = drawn(seen, of);
        const [across, up] = [new Set(texts(wall.marks)), new Set(texts(upright.marks))];
        for (const { hooks } of seen.hung)
          for (const hook of hooks) {
            const read = readingsOf(hook, seen.measuring, ruler.graduation);
            expect(across).toContain(figure(read.across));
            expect(up).toContain(figure(read.up));
          }
      }),
      { numRuns: 60 },
    );
  });
});
