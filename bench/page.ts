/**
 * A change in the page: from the key in a blank to the drawing redrawn and laid out, for a work with three
 * mats and a brushed outline of 2,000 points, in a real Chromium. Wanted: 4 ms at the median. Beside it
 * the time of the page's own thread, what composing alone takes in the same process, and the weight of the
 * code that each place needs, packed; wanted: 60 kB.
 */
import { compose } from "../src/assembly/index.ts";
import { type Outline, outlineFault } from "../src/geometry/index.ts";
import { readDesign, type ShowDocument, type WorkDocument } from "../src/show/index.ts";
import { openHouse } from "../tests/e2e/house.ts";
import { weighAll, weighPlaces } from "../tests/e2e/weight.ts";
import { roughRectangle } from "../tests/geometry/outlines.ts";
import { Chance } from "../tests/reference/chance.ts";
import { median, spread } from "./shared/timing.ts";

const KEYS = 400;
/** Keys from one reading of the thread's time to the next. */
const BATCH = 20;
/** What the page's thread does between a key and the drawing laid out: each counted without the others. */
const WORK = new Set(["ScriptDuration", "RecalcStyleDuration", "LayoutDuration"]);
const POINTS = 2000;
const MM = 80_000;
/** Millimetres, either way. */
const ROUGH = 0.8;

/** The first seed whose corners do not cross: rough edges meet there. */
function brushed(): Outline {
  for (let seed = 1; ; seed++) {
    const chance = new Chance(seed);
    const edge = roughRectangle(180 * MM, 250 * MM, POINTS / 4, ROUGH * MM, () => chance.next());
    if (outlineFault(edge) === null) return edge;
  }
}
const points = brushed().map(({ x, y }): [string, string] => [
  `${(x / MM + 30).toFixed(4)} mm`,
  `${(y / MM + 35).toFixed(4)} mm`,
]);
const work: WorkDocument = {
  title: "Brushed",
  design: {
    unit: "mm",
    print: { width: "240", height: "320", outline: points },
    window: { show: "overlap", overlap: "3" },
    outer: { width: "400", height: "500" },
    lift: { rule: "fixed", by: "6" },
    mats: [{ thickness: "1.5" }, { thickness: "1.5", reveal: "5" }, { thickness: "1.5", reveal: "5" }],
  },
};
const show: ShowDocument = { format: "margent-show", version: 1, name: "Bench", works: [work] };

const house = await openHouse();
try {
  const page = await house.visit();
  const chooser = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Open a saved copy" }).click();
  await (await chooser).setFiles({
    name: "bench.json",
    mimeType: "application/json",
    buffer: Buffer.from(JSON.stringify(show)),
  });
  await page.locator(".laid a", { hasText: "Brushed" }).first().click();
  await page.waitForSelector('[id="blank-liftBy"]');
  const press = (count: number): Promise<readonly number[]> =>
    page.evaluate(async (keys) => {
      const blank = document.querySelector('[id="blank-liftBy"]');
      if (!(blank instanceof HTMLInputElement)) throw new Error("no blank");
      blank.focus();
      const taken: number[] = [];
      for (let key = 0; key < keys; key++) {
        const start = performance.now();
        const up = key % 8 < 4;
        blank.dispatchEvent(
          new KeyboardEvent("keydown", {
            key: up ? "ArrowUp" : "ArrowDown",
            bubbles: true,
            cancelable: true,
          }),
        );
        // What is rendered is rendered in the microtasks after the event; the layout is asked for by reading it.
        for (let turn = 0; turn < 5; turn++) await Promise.resolve();
        document.body.getBoundingClientRect();
        taken.push(performance.now() - start);
        await new Promise((done) => setTimeout(done, 0));
      }
      return taken;
    }, count);
  // A clock on the wall counts what else the machine does; the time that the page's own thread works does not.
  const tools = await page.context().newCDPSession(page);
  await tools.send("Performance.enable", { timeDomain: "threadTicks" });
  const worked = async (): Promise<number> => {
    const { metrics } = await tools.send("Performance.getMetrics");
    return metrics.filter(({ name }) => WORK.has(name)).reduce((all, { value }) => all + value * 1000, 0);
  };
  await press(BATCH);
  const settled: number[] = [];
  const busy: number[] = [];
  for (let batch = 0; batch < KEYS / BATCH; batch++) {
    const before = await worked();
    settled.push(...(await press(BATCH)));
    busy.push(((await worked()) - before) / BATCH);
  }
  console.log(
    `  key to drawing laid out   median ${median(settled).toFixed(2)} ms (${spread(settled, 2)}); wanted 4 at the median`,
  );
  console.log(
    `  of it the thread's own     median ${median(busy).toFixed(2)} ms a key, of batches of ${BATCH} (${spread(busy, 2)})`,
  );

  const design = readDesign(work.design, {});
  if (!design.ok) throw new Error("the work cannot be read");
  const composing = Array.from({ length: KEYS }, () => {
    const start = performance.now();
    compose(design.value);
    return performance.now() - start;
  });
  console.log(`  composing alone, in Node  median ${median(composing.slice(20)).toFixed(2)} ms`);

  for (const { place, atOnce, following } of await weighPlaces(house)) {
    console.log(
      `  code of ${place.padEnd(18)} ${(atOnce / 1000).toFixed(1)} kB packed before one can work there; wanted 60.${following === 0 ? "" : ` ${(following / 1000).toFixed(1)} kB follow while one reads`}`,
    );
  }
  const { places, forFiles } = weighAll(house);
  console.log(
    `  all places together        ${(places / 1000).toFixed(1)} kB; fetched only when a file is brought in: ${(forFiles / 1000).toFixed(1)} kB`,
  );
  if (house.faults.length > 0) throw new Error(house.faults.join("\n"));
} finally {
  await house.close();
}
