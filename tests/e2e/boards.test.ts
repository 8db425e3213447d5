import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { browserPath, titled } from "./browser.ts";
import { blank, type House, openHouse, plain, told } from "./house.ts";

describe.skipIf(browserPath === null)(titled("boards"), () => {
  let house: House;
  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(async () => {
    await house.close();
  });

  const visit = async (options: Parameters<House["visit"]>[0] = {}): Promise<Page> => {
    const page = await house.visit(options);
    await page.getByRole("button", { name: "Open the example show" }).click();
    await page.waitForSelector(".laid li");
    await page.getByRole("link", { name: "Boards", exact: true }).click();
    await page.waitForSelector(".boards .plan svg");
    return page;
  };
  const claim = async (page: Page): Promise<string> =>
    plain(await page.locator(".claim p").first().innerText());

  test("[PG70] the claim stands first: what the plan costs, what any must cost, proven or how far off", async () => {
    const page = await visit();
    await page.waitForSelector(".boards[data-done]");
    expect(await claim(page)).toMatch(
      /^\$57\.50 for the plan\. No plan can cost less than \$57\.50: this one is proven the best\.$/,
    );
    expect(await page.locator(".bound").getAttribute("aria-label")).toBe("Plan $57.50, bound $57.50");
    expect(await page.locator("h1").innerText()).toBe("Six sheets of 4-ply white rag");
    await page.context().close();
  });

  test("[PG71] each sheet as it is cut: every blank listed, every cut with the fence's setting, same where it stays", async () => {
    const page = await visit();
    await page.waitForSelector(".boards[data-done]");
    const sheet = page.locator(".plan").first();
    const cuts = plain(await sheet.locator(".cuts").innerText()).split(/\n/);
    const settings = cuts.filter((line) => / in$|^same$/.test(line));
    expect(settings.length).toBe(await sheet.locator(".cuts li").count());
    expect(settings).toContain("same");
    const numbers = await page.locator(".plan .gives b").allInnerTexts();
    expect(numbers.map(Number).toSorted((a, b) => a - b)).toEqual(numbers.map((_, index) => index + 1));
    // The drawing holds the same numbers as the list.
    const drawn = (await sheet.locator("svg").textContent()) ?? "";
    for (const number of await sheet.locator(".gives b").allInnerTexts()) expect(drawn).toContain(number);
    await page.context().close();
  });

  test("[PG72] planning goes on beside the page and can be stopped; what was found stays", async () => {
    const page = await visit();
    await page.getByText("fluted plastic, 3/16 in", { exact: true }).first().click();
    await page.waitForSelector(".boards .plan svg");
    const stop = page.getByRole("button", { name: "Stop, keep this" });
    const done = page.locator(".boards[data-done]");
    await stop.or(done).first().waitFor();
    if (await stop.isVisible()) await stop.click();
    await done.waitFor();
    expect(await claim(page)).toMatch(/^\$3[34]/);
    expect(await page.locator(".plan").count()).toBeGreaterThan(0);
    expect(await page.evaluate(() => crossOriginIsolated)).toBe(true);
    await page.context().close();
  });

  test("[PG73] the rack is said and changed in sentences; the plan follows, and undo takes it back", async () => {
    const page = await visit();
    await page.waitForSelector(".boards[data-done]");
    const cost = blank(page, "rack.0.cost");
    await cost.focus();
    await page.keyboard.press("Control+a");
    await page.keyboard.type("20");
    await page.keyboard.press("Enter");
    expect(await told(page)).toContain("20");
    await expect.poll(() => claim(page), { timeout: 10_000 }).toMatch(/^\$100\.00/);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Control+z");
    await expect.poll(() => claim(page)).toMatch(/^\$57\.50/);
    const entries = await page.locator(".rack li").count();
    await page.getByRole("button", { name: "Put something in the rack" }).click();
    expect(await page.locator(".rack li").count()).toBe(entries + 1);
    // What cannot be is said in place.
    await blank(page, "rack.0.width").click();
    await page.keyboard.type("0");
    await page.keyboard.press("Enter");
    expect(await page.locator(".mend-here").innerText()).toContain("wanted");
    await page.context().close();
  });

  test("[PG75] a sheet that is cut comes off the plan, what is left of it goes to the rack, and undo takes both back", async () => {
    const page = await visit();
    await page.waitForSelector(".boards[data-done]");
    const entries = await page.locator(".rack li").count();
    const last = page.locator(".plan", { hasText: "To keep" }).filter({ hasText: "32 x 40" }).first();
    const head = ((await last.getAttribute("aria-label")) ?? "").toLowerCase();
    await last.getByRole("button", { name: / is cut:/ }).focus();
    await page.keyboard.press("Enter");
    expect(await told(page)).toBe(`Cut ${head} of 4-ply white rag.`);
    // One sheet at $11.50 less.
    await expect.poll(() => claim(page), { timeout: 10_000 }).toMatch(/^\$46\.00/);
    expect(await page.locator(".rack li").count()).toBeGreaterThan(entries);
    await page.keyboard.press("Control+z");
    await expect.poll(() => claim(page)).toMatch(/^\$57\.50/);
    expect(await page.locator(".rack li").count()).toBe(entries);
    await page.context().close();
  });

  test.each([
    ["by day", "light", 1440],
    ["by night on a phone", "dark", 360],
  ] as const)(
    "[PG74] it meets WCAG 2.2 AA %s, and nothing scrolls sideways",
    async (_, colorScheme, width) => {
      const page = await visit({ colorScheme, viewport: { width, height: 800 }, hasTouch: width < 500 });
      await page.waitForSelector(".boards[data-done]");
      const axe = new AxeBuilder({ page });
      // By night only the colours are other ones.
      const { violations } = await (colorScheme === "dark"
        ? axe.withRules(["color-contrast", "scrollable-region-focusable"])
        : axe.withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"])
      ).analyze();
      expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.target.join(" ")}`)).toEqual([]);
      const sideways = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(sideways).toBeLessThanOrEqual(0);
      if (width < 500) {
        const board = page.getByText("8-ply white rag", { exact: true }).first();
        expect((await board.boundingBox())?.height).toBeGreaterThanOrEqual(44);
        await board.tap();
        await expect.poll(() => page.locator("h1").innerText(), { timeout: 10_000 }).toContain("8-ply");
      }
      await page.context().close();
    },
  );

  test("[PG13] and nothing goes wrong unseen", () => {
    expect(house.faults).toEqual([]);
  });
});
