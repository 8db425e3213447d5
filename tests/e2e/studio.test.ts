import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { browserPath, titled } from "./browser.ts";
import { blank, type House, openHouse, openWork, plain } from "./house.ts";

/** A busy machine takes its time to find a network again. */
const LONG = { timeout: 15_000 };

const kept = (page: Page) => expect.poll(() => page.locator(".block").innerText(), LONG);
const value = async (page: Page, name: string) => plain(await blank(page, name).inputValue());
const type = async (page: Page, name: string, text: string) => {
  await blank(page, name).focus();
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
};

describe.skipIf(browserPath === null)(titled("what the studio keeps"), () => {
  let house: House;
  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(async () => {
    await house.close();
  });

  /** A browser of its own, at the work that another one has open, found in the studio's list. */
  async function joined(first: Page): Promise<Page> {
    const page = await house.visit();
    await page.locator(".ways button", { hasText: "Open “Slack Water”" }).first().click();
    await page.waitForSelector(".laid li");
    await page.goto(first.url());
    await page.waitForSelector(".brief");
    return page;
  }

  test("[PG42, PG44] a show is in the studio with its first change: another browser opens it there, and each sees the other's changes", async () => {
    const here = await house.visit();
    await openWork(here, "Ferry Slip at Ebb");
    await kept(here).toContain("in this browser only");
    await type(here, "liftBy", "1/2");
    await kept(here).toContain("in the studio");
    const there = await joined(here);
    expect(await value(there, "liftBy")).toBe("1/2");
    await type(there, "overlap", "3/16");
    await expect.poll(() => value(here, "overlap"), LONG).toBe("3/16");
    // Each undoes its own.
    await here.keyboard.press("Control+z");
    await expect.poll(() => value(there, "liftBy"), LONG).toBe("1/4");
    expect(await value(here, "overlap")).toBe("3/16");
    await here.context().close();
    await there.context().close();
  });

  test("[PG43] what was changed without the studio is kept here and sent when it answers; where both changed one word, both are shown", async () => {
    const here = await house.visit();
    await openWork(here, "Ferry Slip at Ebb");
    await type(here, "liftBy", "3/8");
    await kept(here).toContain("in the studio");
    const there = await joined(here);
    await here.context().setOffline(true);
    await type(here, "overlap", "1/4");
    await type(here, "liftBy", "1/2");
    await kept(here).toContain("on its way to the studio");
    await type(there, "overlap", "3/16");
    await kept(there).toContain("in the studio");
    await here.context().setOffline(false);
    const strip = here.locator(".strip");
    await expect.poll(() => strip.count(), LONG).toBe(1);
    expect(await strip.innerText()).toContain("It says 3/16 in, you say 1/4 in.");
    // What meets nobody went through meanwhile.
    await expect.poll(() => value(there, "liftBy"), LONG).toBe("1/2");
    await here.getByRole("button", { name: "Keep mine" }).click();
    await expect.poll(() => value(there, "overlap"), LONG).toBe("1/4");
    expect(await strip.count()).toBe(0);
    await here.context().close();
    await there.context().close();
  });

  test("[PG44] a page that was closed undoes what it did when it is opened again", async () => {
    const first = await house.visit();
    await openWork(first, "Ferry Slip at Ebb");
    await type(first, "liftBy", "1/2");
    await kept(first).toContain("in the studio");
    const address = first.url();
    await first.close();
    const again = await house.again(first.context());
    await again.goto(address);
    await again.waitForSelector(".brief");
    expect(await value(again, "liftBy")).toBe("1/2");
    await again.getByRole("button", { name: /^Undo/ }).click();
    await expect.poll(() => value(again, "liftBy"), LONG).toBe("1/4");
    await again.context().close();
  });

  test("[PG45] a show that lay in the browser alone is offered to be taken in", async () => {
    const page = await house.visit();
    await openWork(page, "Ferry Slip at Ebb");
    await page.evaluate(() => {
      const key = `margent.show.${localStorage.getItem("margent.open")}`;
      const {
        base: _base,
        pending: _pending,
        against: _against,
        ...before
      } = JSON.parse(localStorage.getItem(key) ?? "");
      localStorage.setItem(key, JSON.stringify(before));
    });
    await page.reload();
    await page.getByRole("button", { name: "Take it into the studio" }).click();
    await kept(page).toContain("in the studio");
    expect(await page.locator(".strip").count()).toBe(0);
    await page.context().close();
  });

  test("[PG13] nothing went wrong unseen, but for what the network was said to lack", () => {
    expect(house.faults.filter((fault) => !fault.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
  });
});
