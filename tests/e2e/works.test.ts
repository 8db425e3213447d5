import { readFileSync } from "node:fs";
import { unzipSync } from "fflate";
import type { Page } from "playwright-core";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { browserPath, titled } from "./browser.ts";
import { blank, type House, openHouse, plain, told } from "./house.ts";

const titles = (page: Page): Promise<string[]> => page.locator(".laid .name b").allInnerTexts();

describe.skipIf(browserPath === null)(titled("a show, from its first print on"), () => {
  let house: House;
  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(async () => {
    await house.close();
  });

  const example = async (): Promise<Page> => {
    const page = await house.visit();
    await page.getByRole("button", { name: "Open the example show" }).click();
    await page.waitForSelector(".laid li");
    return page;
  };

  test("[PG20] a show begins with one sentence and one act; the drawing answers from the first word", async () => {
    const page = await house.visit();
    await blank(page, "sheetWidth").click();
    await page.keyboard.type("9");
    expect(plain((await page.locator("#first-sheet-width text").textContent()) ?? "")).toBe("9");
    await page.keyboard.press("Tab");
    await blank(page, "title").fill("Weir, Evening");
    await page.getByRole("button", { name: "Lay it on the table" }).click();
    expect(await page.locator("h1").innerText()).toBe("Weir, Evening");
    expect(plain(await blank(page, "imageHeight").inputValue())).toBe("9 1/2");
    expect(plain(await blank(page, "sheetWidth").inputValue())).toBe("9");
    // The image lies in the middle of its sheet until somebody says otherwise.
    expect(plain(await blank(page, "imageLeft").inputValue())).toBe("1");
    await page.context().close();
  });

  test("[PG21] all works lie at one scale, by the scale bar", async () => {
    const page = await example();
    const widths = await page.locator(".laid li").evaluateAll((items) =>
      items.map((item) => ({
        title: item.querySelector("b")?.textContent ?? "",
        width: item.querySelector("svg")?.getBoundingClientRect().width ?? 0,
      })),
    );
    const widthOf = (title: string): number => widths.find((one) => one.title === title)?.width ?? 0;
    // 11 in and 16 in wide; two pixels are the outlines' own.
    const [slip, heron] = [widthOf("Ferry Slip at Ebb") - 2, widthOf("Heron, Waiting") - 2];
    expect(heron / slip).toBeCloseTo(16 / 11, 1);
    const bar = await page.locator(".scale-bar svg").evaluate((svg) => svg.getBoundingClientRect().width - 2);
    expect(bar / 12).toBeCloseTo(slip / 11, 0);
    await page.context().close();
  });

  test("[PG22] Space takes a work up, the arrows carry it, Space lays it down; Escape puts it back", async () => {
    const page = await example();
    const before = await titles(page);
    await page.locator(".laid a").first().focus();
    await page.keyboard.press("Space");
    expect(await told(page)).toContain("taken up");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ArrowRight");
    expect((await titles(page))[2]).toBe(before[0]);
    expect(await told(page)).toContain("place 3 of 24");
    await page.keyboard.press("Escape");
    expect(await titles(page)).toEqual(before);

    await page.keyboard.press("Space");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("Space");
    expect((await titles(page)).slice(0, 2)).toEqual([before[1], before[0]]);
    await page.keyboard.press("Control+z");
    expect(await titles(page)).toEqual(before);
    await page.context().close();
  });

  test("[PG22] the mouse carries a work too, and does not open it", async () => {
    const page = await example();
    const before = await titles(page);
    const [from, to] = [page.locator(".laid li").nth(0), page.locator(".laid li").nth(3)];
    const [a, b] = [await from.boundingBox(), await to.boundingBox()];
    if (a === null || b === null) throw new Error("the works are not laid out");
    await page.mouse.move(a.x + 20, a.y + a.height - 60);
    await page.mouse.down();
    await page.mouse.move(b.x + 20, b.y + b.height - 60, { steps: 12 });
    await page.mouse.up();
    const after = await titles(page);
    expect(after.indexOf(before[0] ?? "")).toBeGreaterThan(0);
    expect(after.toSorted()).toEqual(before.toSorted());
    expect(await page.locator("h1").innerText()).toContain("Twenty-four works");
    await page.context().close();
  });

  test("[PG22] a thumb moves a work by its two acts, and the act keeps the focus", async () => {
    const page = await house.visit({ viewport: { width: 360, height: 740 }, hasTouch: true });
    await page.getByRole("button", { name: "Open the example show" }).tap();
    await page.waitForSelector(".laid li");
    const before = await titles(page);
    await page.getByRole("button", { name: "Move works one by one" }).tap();
    const later = page.getByRole("button", { name: `${before[0]}: one place later` });
    const box = await later.boundingBox();
    expect(box?.height).toBeGreaterThanOrEqual(44);
    await later.tap();
    await expect.poll(async () => (await titles(page)).slice(0, 2)).toEqual([before[1], before[0]]);
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute("aria-label")))
      .toBe(`${before[0]}: one place later`);
    expect(await told(page)).toContain("place 2 of 24");
    await page.context().close();
  });

  test("[PG23] the list sorts by every column and leaves the wall's order alone", async () => {
    const page = await example();
    await page.getByText("As a list").click();
    const rows = page.locator(".works-list tbody th a");
    const first = await rows.allInnerTexts();
    await page.getByRole("button", { name: "To look at" }).click();
    expect(await page.locator(".works-list tbody tr").first().innerText()).toContain("stop");
    await page.getByRole("button", { name: "Work", exact: true }).click();
    const byName = await rows.allInnerTexts();
    expect(byName).toEqual(byName.toSorted((a, b) => a.localeCompare(b)));
    expect(await page.getByRole("columnheader", { name: "Work" }).getAttribute("aria-sort")).toBe(
      "ascending",
    );
    await page.getByText("On the table").click();
    expect(await titles(page)).toEqual(first);
    await page.context().close();
  });

  test("[PG24] a work is added, said, and taken off again; each can be undone", async () => {
    const page = await example();
    await page.getByRole("button", { name: "Add a work" }).click();
    await page.waitForSelector(".brief");
    await page.locator(".name-blank").click();
    await page.getByRole("dialog").getByLabel("Title").fill("Weir, Evening");
    await page.getByRole("dialog").getByLabel("Made by").fill("Ines Okonedo-Vale");
    await page.getByRole("button", { name: "Done" }).click();
    expect(await page.locator("h1").innerText()).toBe("Weir, Evening");
    expect(await page.locator(".name-blank").innerText()).toBe("Ines Okonedo-Vale");
    await page.getByRole("button", { name: "Take it off the table" }).click();
    await page.waitForSelector(".laid li");
    expect(await titles(page)).toHaveLength(24);
    await page.keyboard.press("Control+z");
    expect(await titles(page)).toHaveLength(25);
    await page.context().close();
  });

  test("[PG25] a list is brought in; what cannot be read is counted and named, and the rest goes on", async () => {
    const page = await house.visit();
    const [chooser] = await Promise.all([
      page.waitForEvent("filechooser"),
      page.getByRole("button", { name: "Bring in a list" }).click(),
    ]);
    await chooser.setFiles({
      name: "prints.csv",
      mimeType: "text/csv",
      buffer: Buffer.from(
        "title;sheet width;sheet height;image width;image height\nOne;8 1/2;11;7;9\nTwo;8 1/2;eleven;7;9\nThree;8 1/2;11;6;8\n",
      ),
    });
    await page.waitForSelector(".laid li");
    expect(await titles(page)).toEqual(["One", "Three"]);
    expect(await told(page)).toBe("Two works brought in; one cell could not be read.");
    const dialog = page.getByRole("dialog", { name: "What could not be read" });
    const named = await dialog.locator("li").allInnerTexts();
    expect(named).toHaveLength(1);
    expect(named[0]).toMatch(/^Row 3, sheet height: found eleven; wanted: a length/);
    await page.keyboard.press("Escape");
    expect(await page.getByRole("dialog").count()).toBe(0);
    await page.context().close();
  });

  test("[PG40] a work is given its own picture, which is kept, taken back, and goes with a copy", async () => {
    const page = await house.visit();
    await page.getByRole("button", { name: "Lay it on the table" }).click();
    await page.locator(".name-blank").click();
    const give = async (name: string, buffer: Buffer): Promise<void> => {
      const chooser = page.waitForEvent("filechooser");
      await page.getByRole("button", { name: "from a file" }).click();
      await (await chooser).setFiles({ name, mimeType: "image/png", buffer });
    };
    await give("notes.png", Buffer.from("no picture"));
    await expect.poll(() => told(page)).toContain("“notes.png” is no picture");
    const size = { width: 1500, height: 2000, channels: 3, background: "#245" } as const;
    await give("print.png", await sharp({ create: size }).png().toBuffer());
    const shown = page.locator("#front-image image");
    await expect.poll(() => shown.count()).toBe(1);
    expect(await told(page)).toBe("A picture added.");
    // Shown at once from this browser, and from the studio as soon as that has it.
    expect(await shown.getAttribute("href")).toMatch(/^(blob:|\/api\/pictures\/)/);
    await expect.poll(() => shown.getAttribute("href")).toMatch(/^\/api\/pictures\/[0-9a-f]{64}$/);

    await page.reload();
    await expect.poll(() => shown.count()).toBe(1);
    await page.getByRole("link", { name: "Works" }).click();
    await expect.poll(() => page.locator(".laid image").count()).toBe(1);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save a copy" }).click(),
    ]);
    const copy = JSON.parse(readFileSync(await download.path(), "utf8"));
    const inside = Buffer.from(String(copy.works[0].picture).split(",")[1] ?? "", "base64");
    expect(await sharp(inside).metadata()).toMatchObject({ format: "jpeg", width: 1200, height: 1600 });

    // In another browser the copy brings its picture along, and it is taken off and put back.
    const other = await house.visit();
    const chooser = other.waitForEvent("filechooser");
    await other.getByRole("button", { name: "Open a saved copy" }).click();
    await (await chooser).setFiles(await download.path());
    await expect.poll(() => other.locator(".laid image").count()).toBe(1);
    await other.locator(".laid a").click();
    await other.locator(".name-blank").click();
    await other.getByRole("button", { name: "Take the picture off" }).click();
    await expect.poll(() => other.locator("#front-image image").count()).toBe(0);
    await other.keyboard.press("Escape");
    await other.keyboard.press("Control+z");
    await expect.poll(() => other.locator("#front-image image").count()).toBe(1);
    await other.context().close();
    await page.context().close();
  });

  test("[PG26] a copy that is saved opens again as the same show, and a file that is none is refused", async () => {
    const page = await example();
    const before = await titles(page);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save a copy" }).click(),
    ]);
    const saved = readFileSync(await download.path());
    await page.getByRole("link", { name: "Another show" }).click();
    const open = async (name: string, buffer: Buffer): Promise<void> => {
      const [chooser] = await Promise.all([
        page.waitForEvent("filechooser"),
        page.getByRole("button", { name: "Open a saved copy" }).click(),
      ]);
      await chooser.setFiles({ name, mimeType: "application/json", buffer });
    };
    await open("none.json", Buffer.from('{"works": 3}'));
    await expect.poll(() => told(page)).toContain("not a show");
    await open("show.json", saved);
    await page.waitForSelector(".laid li");
    expect(await titles(page)).toEqual(before);

    // Both shows are kept, beside those that the studio has; the first one is one touch away.
    await page.getByRole("link", { name: "Another show" }).click();
    const found = page.getByRole("button", { name: "Open “Slack Water”" });
    await expect.poll(() => found.count()).toBeGreaterThanOrEqual(2);
    await page.context().close();
  });

  test("[PG12] the packet comes as one file with a bench sheet for every work", async () => {
    const page = await example();
    const [download] = await Promise.all([
      page.waitForEvent("download", { timeout: 60_000 }),
      page.getByRole("button", { name: "Print the packet" }).click({ timeout: 60_000 }),
    ]);
    expect(download.suggestedFilename()).toBe("slack-water-packet.zip");
    const files = Object.keys(unzipSync(readFileSync(await download.path())));
    expect(files).toContain("bench-sheets.pdf");
    await page.context().close();
  });

  test("[PG13] nothing went wrong unseen", () => {
    expect(house.faults).toEqual([]);
  });
});
