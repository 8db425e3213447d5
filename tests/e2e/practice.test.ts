import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { browserPath, titled } from "./browser.ts";
import { blank, dimension, type House, openHouse, plain, told } from "./house.ts";

const beside = async (page: Page, habit: string): Promise<string> =>
  page.locator(`section[aria-labelledby="habit-${habit}"] .moves`).innerText();

describe.skipIf(browserPath === null)(titled("the practice"), () => {
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
    await page.getByRole("link", { name: "Practice", exact: true }).click();
    await page.waitForSelector(".habits");
    return page;
  };

  test("[PG90] every habit is a sentence, with why, from where and how many works it moves beside it", async () => {
    const page = await visit();
    const habits = page.locator(".habit");
    expect(await habits.count()).toBe(16);
    for (const why of await habits.locator(".beside p:first-child").allInnerTexts())
      expect(why).toMatch(
        /practice, no source|from memory|handbook|Saitzyk|Fine Woodworking|ASTM|university|log|stand at the head/,
      );
    expect(await beside(page, "bench")).toBe("All twenty-four works take it; a change moves them.");
    await page.context().close();
  });

  test("[PG91] a habit is changed by the mouse, the works follow, and it can be taken back", async () => {
    const page = await visit();
    await blank(page, "habit.liftBy").click();
    await page.locator(".ladder label, .ladder button").last().click();
    expect(await told(page)).toMatch(/^Raised above the middle 3\/8 in\./);
    await page.getByRole("button", { name: /^Undo “raised above the middle/ }).click();
    await expect.poll(() => blank(page, "habit.liftBy").inputValue().then(plain)).toBe("1/4");
    await page.context().close();
  });

  test("[PG91] and by the keyboard alone; a work that takes it is drawn by it", async () => {
    const page = await visit();
    await page.keyboard.press("Tab");
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("blank-habit.unit");
    await blank(page, "habit.liftBy").focus();
    await page.keyboard.type("1/2");
    await page.keyboard.press("Enter");
    expect(await told(page)).toMatch(/^Raised above the middle 1\/2 in\./);
    await page.keyboard.press("Tab");
    await page.getByRole("link", { name: "Works", exact: true }).focus();
    await page.keyboard.press("Enter");
    await page.locator(".laid a", { hasText: "Ferry Slip at Ebb" }).first().focus();
    await page.keyboard.press("Enter");
    await page.waitForSelector(".brief");
    expect(await blank(page, "liftBy").inputValue().then(plain)).toBe("1/2");
    const raised = await dimension(page, "border-head");
    await page.keyboard.press("Control+z");
    await expect.poll(() => dimension(page, "border-head")).not.toBe(raised);
    await page.context().close();
  });

  test("[PG92] what no work could be made with is said in place and not kept", async () => {
    const page = await visit();
    await blank(page, "habit.bevel.0").click();
    await page.keyboard.type("0");
    await page.keyboard.press("Enter");
    expect(await page.locator(".mend-here").innerText()).toContain("degrees above");
    await page.keyboard.press("Escape");
    expect(await page.locator(".mend-here").count()).toBe(0);
    expect(await blank(page, "habit.bevel.0").inputValue()).toBe("45");
    await page.context().close();
  });

  test("[PG92] nor what leaves no work of the show to be made", async () => {
    const page = await house.visit();
    await page.getByRole("button", { name: "Lay it on the table" }).click();
    await page.waitForSelector(".brief");
    await page.getByRole("link", { name: "Practice", exact: true }).click();
    await blank(page, "habit.holdKind").selectOption("own");
    const undo = page.getByRole("button", { name: /^Undo/ });
    const before = await undo.innerText();
    await blank(page, "habit.hold").click();
    await page.keyboard.type("40");
    await page.keyboard.press("Enter");
    expect(await page.locator(".mend-here").innerText()).toContain("at least one work");
    await page.keyboard.press("Escape");
    expect(await undo.innerText()).toBe(before);
    expect(await page.locator(".mend-here").count()).toBe(0);
    await page.context().close();
  });

  test("[PG93] in another unit every habit that was said keeps its length", async () => {
    const page = await visit();
    await blank(page, "habit.unit").selectOption("mm");
    await expect.poll(() => blank(page, "habit.overlap").inputValue()).toBe("3.175");
    expect(await blank(page, "habit.graduation").inputValue()).toBe("1 mm");
    await page.keyboard.press("Control+z");
    await expect.poll(() => blank(page, "habit.overlap").inputValue().then(plain)).toBe("1/8");
    await page.context().close();
  });

  test.each([
    ["by day", "light", 1440],
    ["by night on a phone", "dark", 360],
  ] as const)(
    "[PG94] it meets WCAG 2.2 AA %s, and a thumb finds every blank",
    async (_, colorScheme, width) => {
      const page = await visit({ colorScheme, viewport: { width, height: 800 }, hasTouch: width < 500 });
      const { violations } = await new AxeBuilder({ page })
        .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"])
        .analyze();
      expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.target.join(" ")}`)).toEqual([]);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      ).toBeLessThanOrEqual(0);
      if (width < 500) {
        await blank(page, "habit.overrun").tap();
        const rung = page.locator(".ladder label, .ladder button").last();
        expect((await rung.boundingBox())?.height).toBeGreaterThanOrEqual(44);
        await rung.tap();
        expect(await told(page)).toMatch(/^A cut runs past the line 5\/16 in\./);
      }
      await page.context().close();
    },
  );

  test("[PG13] and nothing goes wrong unseen", () => {
    expect(house.faults).toEqual([]);
  });
});
