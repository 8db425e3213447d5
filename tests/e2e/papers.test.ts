import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { browserPath, titled } from "./browser.ts";
import { type House, openHouse, told } from "./house.ts";

/** Laying papers out takes a busy machine its time. */
const LONG = { timeout: 60_000 };

describe.skipIf(browserPath === null)(titled("the papers"), () => {
  let house: House;
  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(async () => {
    await house.close();
  });

  /** A show of one work, which is laid out soon. */
  const visit = async (options: Parameters<House["visit"]>[0] = {}): Promise<Page> => {
    const page = await house.visit(options);
    await page.getByRole("button", { name: "Lay it on the table" }).click();
    await page.waitForSelector(".brief");
    await page.getByRole("link", { name: "Papers", exact: true }).click({ noWaitAfter: true });
    await page.waitForSelector(".paper-list", LONG);
    return page;
  };
  const widthOf = async (page: Page): Promise<number> =>
    (await page.locator(".paper-page").first().boundingBox())?.width ?? 0;

  test("[PG100] each paper stands with its name, what it is for and its first page, all at one scale", async () => {
    const page = await visit();
    const papers = page.locator(".paper-list li");
    const count = await papers.count();
    expect(count).toBeGreaterThan(6);
    expect(await papers.locator("h2").first().innerText()).toBe("Bench sheets");
    expect(await page.locator(".paper-list svg text").first().textContent()).not.toBe("");
    // 8 1/2 in at a quarter, 96 pixels to the inch.
    expect(await widthOf(page)).toBeCloseTo(204, 0);
    expect(await page.locator(".head p").innerText()).toContain("Plan 1, of one work");
    // What has no part in the show is named with why, and is not in the list.
    expect(await page.locator(".papers-left-out").innerText()).toContain("hanging.pdf is left out");
    expect(await papers.getByText("Hanging sheets", { exact: true }).count()).toBe(0);
    await page.context().close();
  });

  test("[PG101] by the mouse: one paper on A4, saved under the show's name", async () => {
    const page = await visit();
    await page.getByText("A4", { exact: true }).click();
    await expect.poll(() => widthOf(page), LONG).toBeLessThan(203);
    const saved = page.waitForEvent("download", LONG);
    await page.getByRole("button", { name: "Print cut plan" }).click({ noWaitAfter: true });
    expect((await saved).suggestedFilename()).toMatch(/cut-plan\.pdf$/);
    await expect.poll(() => told(page), LONG).toContain("is made and saved");
    await page.context().close();
  });

  test("[PG101] by the keyboard alone: the works that are chosen, then one of their papers", async () => {
    const page = await visit();
    await page.getByLabel("All works").focus();
    await page.keyboard.press("ArrowRight");
    const box = page.getByRole("group", { name: "Works to print" }).getByRole("checkbox");
    await box.focus();
    await page.keyboard.press("Space");
    expect(await page.getByText("Choose a work, and its papers stand here.").count()).toBe(1);
    expect(await page.getByRole("button", { name: "Print the packet" }).count()).toBe(0);
    await page.keyboard.press("Space");
    await page.waitForSelector(".paper-list", LONG);
    const saved = page.waitForEvent("download", LONG);
    await page.getByRole("button", { name: "Print board labels" }).focus();
    await page.keyboard.press("Enter");
    expect((await saved).suggestedFilename()).toMatch(/labels\.pdf$/);
    await page.context().close();
  });

  test("[PG102] where the server does not answer the page says so", async () => {
    const page = await visit();
    await page.context().setOffline(true);
    await page.getByText("A4", { exact: true }).click();
    await page.getByText("Margent's server does not answer").waitFor();
    await page.context().setOffline(false);
    await page.getByRole("button", { name: "Lay them out again" }).click({ noWaitAfter: true });
    await page.waitForSelector(".paper-list", LONG);
    await page.context().close();
    // A browser tells of the request that failed; nothing else went wrong.
    expect(house.faults.filter((fault) => !fault.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
  });

  test.each([
    ["by day", "light", 1440],
    ["by night on a phone", "dark", 360],
  ] as const)("[PG103] it meets WCAG 2.2 AA %s, and a thumb prints", async (_, colorScheme, width) => {
    const page = await visit({ colorScheme, viewport: { width, height: 800 }, hasTouch: width < 500 });
    await page.getByText("Some of them", { exact: true }).click();
    await page.waitForSelector(".which-works");
    // Thousands of marks are one image each paper: what is in it is no part of the page.
    const { violations } = await new AxeBuilder({ page })
      .exclude(".paper-page > *")
      .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"])
      .analyze();
    expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.target.join(" ")}`)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
    if (width < 500) {
      const print = page.getByRole("button", { name: "Print bench sheets" });
      expect((await print.boundingBox())?.height).toBeGreaterThanOrEqual(44);
      const saved = page.waitForEvent("download", LONG);
      await print.tap({ noWaitAfter: true });
      expect((await saved).suggestedFilename()).toMatch(/bench-sheets\.pdf$/);
    }
    await page.context().close();
  });
});
