/**
 * A change in the page: from the key in a blank to the drawing redrawn and laid out, for a work with three
 * mats and a brushed outline of 2,000 points, in a real Chromium. Wanted: 4 ms at the median. Beside it
 * what composing alone takes in the same process, and the weight of the code that each place needs, packed; wanted: 60 kB.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { compose } from "../src/assembly/index.ts";
import { type Outline, outlineFault } from "../src/geometry/index.ts";
import { readDesign, type ShowDocument, type WorkDocument } from "../src/show/index.ts";
import { openHouse } from "../tests/e2e/house.ts";
import { weighPlaces } from "../tests/e2e/weight.ts";
import { roughRectangle } from "../tests/geometry/outlines.ts";
import { Chance } from "../tests/reference/chance.ts";
import { median, spread } from "./shared/timing.ts";

const KEYS = 200;
const POINTS = 2000;
const MM = 80_000;
/** Millimetres, either way. */
const ROUGH = 0.8;
/** Code that reads lists and shows of any origin. */
const FOR_FILES = /^(workbook|lists|read-show)/;

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
  const times = await page.evaluate(async (keys) => {
    const blank = document.querySelector('[id="blank-liftBy"]');
    if (!(blank instanceof HTMLInputElement)) throw new Error("no blank");
    blank.focus();
    const taken: number[] = [];
    for (let key = 0; key < keys; key++) {
      const start = performance.now();
      const up = key % 8 < 4;
      blank.dispatchEvent(
        new KeyboardEvent("keydown", { key: up ? "ArrowUp" : "ArrowDown", bubbles: true, cancelable: true }),
      );
      // What is rendered is rendered in the microtasks after the event; the layout is asked for by reading it.
      for (let turn = 0; turn < 5; turn++) await Promise.resolve();
      document.body.getBoundingClientRect();
      taken.push(performance.now() - start);
      await new Promise((done) => setTimeout(done, 0));
    }
    return { taken, shown: blank.value };
  }, KEYS);
  const settled = times.taken.slice(20);
  console.log(
    `  key to drawing laid out   median ${median(settled).toFixed(2)} ms (${spread(settled, 2)}); wanted 4 at the median`,
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
  const folder = join(house.folder, "assets");
  const scripts = readdirSync(folder).filter((file) => file.endsWith(".js"));
  const packed = (files: readonly string[]): string =>
    (
      files.reduce((sum, file) => sum + gzipSync(readFileSync(join(folder, file)), { level: 9 }).length, 0) /
      1000
    ).toFixed(1);
  console.log(
    `  all places together        ${packed(scripts.filter((file) => !FOR_FILES.test(file)))} kB; fetched only when a file is brought in: ${packed(scripts.filter((file) => FOR_FILES.test(file)))} kB`,
  );
  if (house.faults.length > 0) throw new Error(house.faults.join("\n"));
} finally {
  await house.close();
}
