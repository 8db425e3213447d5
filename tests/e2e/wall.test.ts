import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { browserPath, titled } from "./browser.ts";
import { blank, type House, openHouse, plain, told } from "./house.ts";

const onWall = async (page: Page): Promise<string[]> =>
  page
    .locator(".nails b")
    .first()
    .isVisible()
    .then(() => page.locator(".nails a b").allInnerTexts());

const gap = async (page: Page): Promise<string> =>
  plain((await page.locator('[id="wall-gap-1"] text').textContent()) ?? "");

describe.skipIf(browserPath === null)(titled("the wall"), () => {
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
    await page.getByRole("link", { name: "Wall", exact: true }).click();
    await page.waitForSelector(".slides svg");
    return page;
  };

  test("[PG60] every nail of the drawing stands on both tapes and in the list; the sums make the wall", async () => {
    const page = await visit();
    const listed = plain((await page.locator(".nails li").first().textContent()) ?? "");
    expect(listed).toContain("Mud Larks");
    const figures = (listed.match(/Nails at (.+?) and (.+?) in across, (.+?) in up/) ?? []).slice(1);
    expect(figures).toHaveLength(3);
    const across = plain((await page.locator(".slides svg").textContent()) ?? "");
    const up = plain((await page.locator("svg.upright").textContent()) ?? "");
    for (const figure of figures.slice(0, 2)) expect(across).toContain(figure);
    expect(up).toContain(figures[2] ?? "nothing");
    expect(plain(await page.locator(".sums .total").innerText())).toContain("324 in");
    await page.context().close();
  });

  test("[PG61] the drawing follows a blank as it is typed; list and undo wait until it is kept", async () => {
    const page = await visit();
    const before = await page.locator(".nails").innerText();
    await blank(page, "wall.gap").click();
    await page.keyboard.type("3");
    await expect.poll(() => gap(page)).toBe("3");
    expect(await page.locator(".nails").innerText()).toBe(before);
    await page.keyboard.press("Enter");
    expect(await page.locator(".nails").innerText()).not.toBe(before);
    expect(await told(page)).toMatch(/^Gap between frames 3 in\./);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Control+z");
    await expect.poll(() => gap(page)).toBe("4");
    expect(await page.locator(".nails").innerText()).toBe(before);
    // What cannot be is said in place, and nothing is changed.
    await blank(page, "wall.width").click();
    await page.keyboard.type("0");
    await page.keyboard.press("Enter");
    expect(await page.locator(".mend-here").innerText()).toContain("wanted");
    await page.keyboard.press("Escape");
    expect(await page.locator(".mend-here").count()).toBe(0);
    await page.context().close();
  });

  test("[PG62] the mouse carries a frame to another place of the row", async () => {
    const page = await visit();
    const before = await onWall(page);
    const [from, to] = [page.locator("#frame-0 rect"), page.locator("#frame-3 rect")];
    const [a, b] = [await from.boundingBox(), await to.boundingBox()];
    if (a === null || b === null) throw new Error("no frames are drawn");
    await page.mouse.move(a.x + a.width / 2, a.y + a.height / 2);
    await page.mouse.down();
    await page.mouse.move(b.x + b.width / 2, b.y + b.height / 2, { steps: 8 });
    await page.mouse.up();
    const after = await onWall(page);
    expect(after.indexOf(before[0] ?? "")).toBeGreaterThan(1);
    expect(after.toSorted()).toEqual(before.toSorted());
    await page.keyboard.press("Control+z");
    expect(await onWall(page)).toEqual(before);
    await page.context().close();
  });

  test("[PG62] Space takes a frame up, the arrows carry it, Space lays it down; Escape puts it back", async () => {
    const page = await visit();
    const before = await onWall(page);
    await page.locator("#frame-0").focus();
    await page.keyboard.press("Space");
    expect(await told(page)).toContain("taken up");
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("frame-1");
    await page.keyboard.press("ArrowRight");
    expect(await told(page)).toContain("place 3 of 12");
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("frame-2");
    // Nothing is kept before it is laid down.
    expect(await onWall(page)).toEqual(before);
    await page.keyboard.press("Escape");
    await page.locator("#frame-0").focus();
    await page.keyboard.press("Space");
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("frame-1");
    await page.keyboard.press("Space");
    expect((await onWall(page)).slice(0, 2)).toEqual([before[1], before[0]]);
    await page.context().close();
  });

  test("[PG63] a way out of a wall that is too narrow holds, and can be taken back", async () => {
    const page = await visit();
    await blank(page, "wall.width").click();
    await page.keyboard.type("200");
    await page.keyboard.press("Enter");
    expect(await page.locator(".check.stop").first().innerText()).toContain("take");
    await page.getByRole("button", { name: "Let the row fill the wall" }).first().click();
    await expect.poll(() => page.locator(".check.stop").count()).toBe(0);
    expect(await blank(page, "wall.rule").inputValue()).toBe("spread");
    await page.keyboard.press("Control+z");
    await expect.poll(() => page.locator(".check.stop").count()).toBeGreaterThan(0);
    await page.context().close();
  });

  test("[PG64] a work that is taken off is offered to every wall; walls come and go", async () => {
    const page = await visit();
    await page.getByRole("button", { name: "Move works one by one" }).click();
    await page.getByRole("button", { name: "Take Mud Larks off the wall" }).click();
    // The second wall takes what no other names.
    await page.getByText("East wall", { exact: true }).click();
    await page.waitForSelector(".slides svg:not(.unread)");
    expect(await onWall(page)).toContain("Mud Larks");
    await page.getByRole("button", { name: "Take Mud Larks off the wall" }).click();
    await page.getByRole("button", { name: "Add a wall" }).click();
    expect(await page.locator("h1").innerText()).toBe("Wall 3, nothing on it yet");
    await page.getByRole("button", { name: "Hang Mud Larks here" }).click();
    expect(await onWall(page)).toEqual(["Mud Larks"]);
    expect(await page.locator("h1").innerText()).toBe("Wall 3, one work");
    await page.getByRole("button", { name: "Take this wall away" }).click();
    expect(await page.getByText("Wall 3", { exact: true }).count()).toBe(0);
    await page.keyboard.press("Control+z");
    expect(await page.getByText("Wall 3", { exact: true }).count()).toBe(1);
    await page.context().close();
  });

  test("[PG65] a group is solved apart; until it is, what stood there is thin and dashed", async () => {
    const page = await visit();
    await blank(page, "wall.rule").selectOption("cluster");
    await page.waitForSelector(".slides svg.unread");
    await page.waitForSelector(".slides svg:not(.unread)");
    expect(await page.locator("h1").innerText()).toBe("North wall, twelve works in a group");
    await page.context().close();
  });

  test.each([
    ["by day", "light", 1440],
    ["by night on a phone", "dark", 360],
  ] as const)(
    "[PG66] it meets WCAG 2.2 AA %s, and only the wall itself slides",
    async (_, colorScheme, width) => {
      const page = await visit({ colorScheme, viewport: { width, height: 800 }, hasTouch: width < 500 });
      await page.getByRole("button", { name: "Move works one by one" }).click();
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
        const before = await page.locator("svg.upright").boundingBox();
        const slid = await page.locator(".slides").evaluate((wall) => {
          wall.scrollLeft += 200;
          return wall.scrollLeft;
        });
        expect(slid).toBeGreaterThan(100);
        expect((await page.locator("svg.upright").boundingBox())?.x).toBe(before?.x);
        const later = page.getByRole("button", { name: "Mud Larks: one place later" });
        expect((await later.boundingBox())?.height).toBeGreaterThanOrEqual(44);
        await later.tap();
        expect((await onWall(page)).slice(0, 2)).toEqual(["Reed Cutters’ Ground", "Mud Larks"]);
      }
      await page.context().close();
    },
  );

  test("[PG13] and nothing goes wrong unseen", () => {
    expect(house.faults).toEqual([]);
  });
});
