import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { House } from "./house.ts";

/** Code that comes while one reads: the sums below the drawing, ways out of a check, edges that can be dragged, dialogs. */
const LATE = /\/following-/;

/** What frames are reckoned with, for walls and boards too: it comes after the sentence that it stands below. */
const OF_FRAMES = /\/(framing|framed|weights|job|read-show-walls)-/;

/** Code that reads lists and shows of any origin: fetched only with a file. */
const FOR_FILES = /^(workbook|lists|read-show)-[\w-]{8}\.js$/;

/** What plans and lays out beside the page, a solver with it: it comes when a plan is asked for. */
const APART = /^(planning|laying)-worker-/;

const packed = (path: string): number => gzipSync(readFileSync(path), { level: 9 }).length;

/** What all code of the page weighs packed, each file by itself: that of its places together, and that which only a file brings. */
export function weighAll(house: House): { readonly places: number; readonly forFiles: number } {
  const folder = join(house.folder, "assets");
  const scripts = readdirSync(folder).filter((file) => file.endsWith(".js") && !APART.test(file));
  const sum = (forFiles: boolean): number =>
    scripts
      .filter((file) => FOR_FILES.test(file) === forFiles)
      .reduce((all, file) => all + packed(join(folder, file)), 0);
  return { places: sum(false), forFiles: sum(true) };
}

/** What a place weighs in bytes of code, as the densest gzip packs them: what stands before one can work there, and what follows. */
export interface Weight {
  readonly place: "first" | "works" | "work";
  readonly atOnce: number;
  readonly following: number;
}

/** Opens each place by its own address, with nothing fetched ahead, and weighs the scripts that it asked for. */
export async function weighPlaces(house: House): Promise<readonly Weight[]> {
  const page = await house.visit();
  const fetched = new Set<string>();
  page.on("response", (response) => {
    const { pathname } = new URL(response.url());
    if (pathname.endsWith(".js")) fetched.add(pathname);
  });
  // What is fetched in a quiet moment is not needed yet.
  await page.addInitScript("Object.defineProperty(window, 'requestIdleCallback', { value: () => 0 })");
  const sum = (late: boolean): number =>
    [...fetched]
      .filter((path) => LATE.test(path) === late && !OF_FRAMES.test(path))
      .reduce((all, path) => all + packed(join(house.folder, path)), 0);
  const weigh = async (place: Weight["place"], standsWhen: string): Promise<Weight> => {
    // The page before it is left first, so that nothing it still asks for is taken for this one's.
    const address = page.url();
    await page.goto("about:blank");
    fetched.clear();
    await page.goto(address, { waitUntil: "networkidle" });
    await page.waitForSelector(standsWhen);
    return { place, atOnce: sum(false), following: sum(true) };
  };
  const first = await weigh("first", ".first");
  await page.getByRole("button", { name: "Open the example show" }).click();
  await page.waitForSelector(".laid li");
  const works = await weigh("works", ".laid li");
  await page.locator(".laid a", { hasText: "Ferry Slip at Ebb" }).click();
  await page.waitForSelector(".brief");
  const work = await weigh("work", ".brief");
  await page.context().close();
  return [first, works, work];
}
