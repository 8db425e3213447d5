import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { browserPath, titled } from "./browser.ts";
import { blank, type House, openHouse, openWork, plain, told } from "./house.ts";
import { weighAll, weighPlaces } from "./weight.ts";

/** What a page may weigh before one can work at a place, in bytes as gzip packs them. */
const MOST_CODE = 60_000;
const MOST_CODE_OF_ALL = 156_000;

/** What stands against WCAG 2.2 AA, one line for each rule and place. By night only the colours are other ones. */
async function faultsOf(page: Page, light: "light" | "dark"): Promise<string[]> {
  const axe = new AxeBuilder({ page });
  const { violations } = await (light === "dark"
    ? axe.withRules(["color-contrast"])
    : axe.withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"])
  ).analyze();
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} ${target.join(" ")}: ${failureSummary}`),
  );
}

describe.skipIf(browserPath === null)(titled("the page in every light, size and hand"), () => {
  let house: House;
  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(async () => {
    await house.close();
  });

  test.each([
    ["by day", "light", 1440],
    ["by night", "dark", 1440],
    ["by day on a phone", "light", 360],
    ["by night on a phone", "dark", 360],
  ] as const)("[PG27] every place meets WCAG 2.2 AA %s", async (_, colorScheme, width) => {
    const page = await house.visit({ colorScheme, viewport: { width, height: 800 }, hasTouch: width < 500 });
    expect(await faultsOf(page, colorScheme), "first").toEqual([]);
    await page.getByRole("button", { name: "Open the example show" }).click();
    await page.waitForSelector(".laid li");
    expect(await faultsOf(page, colorScheme), "works").toEqual([]);
    await page.getByText("As a list").click();
    expect(await faultsOf(page, colorScheme), "list").toEqual([]);
    await page.getByText("On the table").click();
    await page.locator(".laid a", { hasText: "Two Sheds, Rain" }).click();
    await page.waitForSelector(".way button");
    await page.waitForSelector(".sums");
    expect(await faultsOf(page, colorScheme), "work").toEqual([]);
    await blank(page, "liftBy").focus();
    expect(await faultsOf(page, colorScheme), "an open blank").toEqual([]);
    await page.keyboard.type("71/4");
    await page.keyboard.press("Enter");
    expect(await faultsOf(page, colorScheme), "a blank that cannot be read").toEqual([]);
    await page.keyboard.press("Escape");
    await blank(page, "outer").click();
    await page.waitForSelector("dialog[open] .ready-sizes");
    expect(await faultsOf(page, colorScheme), "a dialog").toEqual([]);
    await page.context().close();
  });

  test("[PG28] nothing scrolls sideways from 320 to 2,560", async () => {
    const page = await house.visit();
    const over = async (place: string): Promise<string[]> => {
      const wide: string[] = [];
      for (const width of [320, 360, 740, 741, 820, 1280, 1281, 1440, 2560]) {
        await page.setViewportSize({ width, height: 800 });
        await page.evaluate(
          () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
        );
        const { scroll, client } = await page.evaluate(() => ({
          scroll: document.documentElement.scrollWidth,
          client: document.documentElement.clientWidth,
        }));
        if (scroll > client) wide.push(`${place} at ${width}: ${scroll}`);
      }
      return wide;
    };
    const found = await over("first");
    await page.getByRole("button", { name: "Open the example show" }).click();
    await page.waitForSelector(".laid li");
    found.push(...(await over("works")));
    await page.getByText("As a list").click();
    found.push(...(await over("list")));
    await page.getByText("On the table").click();
    await page.locator(".laid a", { hasText: "Spring Tide" }).click();
    await page.waitForSelector(".layers");
    for (const view of ["Front", "Back", "Section"]) {
      await page.setViewportSize({ width: 360, height: 800 });
      await page.locator(".pick-view").getByText(view, { exact: true }).click();
      found.push(...(await over(`work, ${view}`)));
    }
    await page.setViewportSize({ width: 1440, height: 800 });
    await blank(page, "matCount").selectOption("3");
    found.push(...(await over("three mats")));
    await page.setViewportSize({ width: 1440, height: 800 });
    await blank(page, "board.2").click();
    const name = page.getByRole("dialog").getByLabel("What it is called");
    await name.fill("Museumspassepartoutkarton, alterungsbeständig, naturweiß");
    await page.getByRole("button", { name: "Done" }).click();
    found.push(...(await over("a long name")));
    expect(found).toEqual([]);
    await page.context().close();
  });

  test("[PG29] the main job by the keyboard alone: from an empty page to a bench sheet", async () => {
    const page = await house.visit();
    const tabTo = async (name: RegExp): Promise<void> => {
      for (let presses = 0; presses < 80; presses++) {
        await page.keyboard.press("Tab");
        const label = await page.evaluate(() => {
          const element = document.activeElement;
          return element?.getAttribute("aria-label") ?? element?.textContent ?? "";
        });
        if (name.test(label)) return;
      }
      throw new Error(`Tab never came to ${name}`);
    };
    await tabTo(/^Sheet width/);
    await page.keyboard.type("12");
    await tabTo(/^Title/);
    await page.keyboard.type("Weir, Evening");
    await tabTo(/^Lay it on the table/);
    await page.keyboard.press("Enter");
    await page.waitForSelector(".brief");
    await tabTo(/^What the window shows/);
    await page.keyboard.press("ArrowDown");
    await tabTo(/^Paper in sight at the foot/);
    await page.keyboard.type("1/2");
    await page.keyboard.press("Enter");
    expect(await told(page)).toMatch(/^Paper in sight at the foot 1\/2 in\./);
    // Back to the act that stands before the sentences.
    await page.locator("h1").focus();
    await tabTo(/^Print the bench sheet/);
    const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
    expect(download.suggestedFilename()).toBe("weir-evening-bench-sheet.pdf");
    await page.context().close();
  });

  test("[PG30] the main job by the thumb at 360: a rung of the ladder, one view at a time, and targets of 44", async () => {
    const page = await house.visit({ viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true });
    await page.getByRole("button", { name: "Open the example show" }).tap();
    await page.locator(".laid a", { hasText: "Ferry Slip at Ebb" }).tap();
    await page.waitForSelector(".brief");
    const peek = page.locator(".peek svg");
    const before = await peek.innerHTML();
    await blank(page, "liftBy").tap();
    await page.locator(".rungs button").last().tap();
    expect(plain(await blank(page, "liftBy").inputValue())).toBe("3/8");
    expect(await peek.innerHTML()).not.toBe(before);
    // The strip of rungs stands at the foot of the screen, over the keys.
    const ladder = await page.locator(".ladder").boundingBox();
    expect((ladder?.y ?? 0) + (ladder?.height ?? 0)).toBeCloseTo(780, -1);

    await page.locator(".pick-view").getByText("Back").tap();
    expect(await page.locator(".view.back svg").isVisible()).toBe(true);
    expect(await page.locator(".view.front svg").isVisible()).toBe(false);
    const small = await page
      .locator("button:visible, .pick-view label:visible, .places a")
      .evaluateAll((targets) =>
        targets
          .filter((target) => !target.classList.contains("blank"))
          .map((target) => ({
            text: target.textContent ?? "",
            height: target.getBoundingClientRect().height,
          }))
          .filter(({ height }) => height < 44),
      );
    expect(small).toEqual([]);
    await page.context().close();
  });

  test("[PG31] every blank is at least 24 high, and its label is the clause it completes", async () => {
    const page = await house.visit();
    await openWork(page, "Ferry Slip at Ebb");
    const blanks = await page.locator("form .blank").evaluateAll((all) =>
      all.map((one) => ({
        label: one.getAttribute("aria-label") ?? "",
        height: (one.closest(".length") ?? one).getBoundingClientRect().height,
      })),
    );
    expect(blanks.length).toBeGreaterThan(15);
    expect(blanks.filter(({ label, height }) => label.length < 4 || height < 24)).toEqual([]);
    expect(blanks.map(({ label }) => label)).toContain("Raised above center, inches");
    await page.context().close();
  });

  test("[PG32] the light may be chosen against the system's and is remembered", async () => {
    const page = await house.visit({ colorScheme: "light" });
    const ground = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    const day = await ground();
    await page.locator("#light").selectOption("dark");
    const night = await ground();
    expect(night).not.toBe(day);
    await page.reload();
    await page.waitForSelector("h1");
    expect(await ground()).toBe(night);
    await page.context().close();
  });

  test("[PG33] printed, the page leaves its acts away and keeps sentence, drawing and sums", async () => {
    const page = await house.visit();
    await openWork(page, "Ferry Slip at Ebb");
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".acts").first().isVisible()).toBe(false);
    expect(await page.locator(".grip-of").first().isVisible()).toBe(false);
    for (const kept of [".brief", ".back svg", ".sums"])
      expect(await page.locator(kept).first().isVisible()).toBe(true);
    await page.context().close();
  });

  test("[PG34] in the system's own colours a stop is still told from a note", async () => {
    const page = await house.visit({ forcedColors: "active" });
    await openWork(page, "Two Sheds, Rain");
    expect(await page.locator(".check.stop .level").innerText()).toBe("stop");
    const underline = await blank(page, "liftBy").evaluate(
      (field) => getComputedStyle(field.parentElement ?? field).borderBottomStyle,
    );
    expect(underline).toBe("solid");
    await page.context().close();
  });

  test("[PG35] the code that a place needs is at most 60 kB packed, and that of all places 156 kB", async () => {
    for (const { place, atOnce, following } of await weighPlaces(house)) {
      expect(atOnce, place).toBeGreaterThan(20_000);
      expect(atOnce, place).toBeLessThanOrEqual(MOST_CODE);
      expect(following, place).toBeLessThan(MOST_CODE / 10);
    }
    expect(weighAll(house).places).toBeLessThanOrEqual(MOST_CODE_OF_ALL);
  });

  test("[PG13] nothing went wrong unseen", () => {
    expect(house.faults).toEqual([]);
  });
});
