import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { browserPath, titled } from "./browser.ts";
import { blank, dimension, type House, openHouse, openWork, plain, told } from "./house.ts";

describe.skipIf(browserPath === null)(titled("what is kept, and two windows on it"), () => {
  let house: House;
  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(async () => {
    await house.close();
  });

  test("[PG14] a change is kept at once and is there after a reload; the page says where it is kept", async () => {
    const page = await house.visit();
    await openWork(page, "Ferry Slip at Ebb");
    expect(await page.locator(".block").innerText()).toContain("in this browser only");
    await blank(page, "liftBy").click();
    await page.keyboard.type("1/2");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator(".block").innerText()).toContain("in the studio");
    await page.reload();
    await page.waitForSelector(".brief");
    expect(plain(await blank(page, "liftBy").inputValue())).toBe("1/2");
    expect(await dimension(page, "border-head")).toBe("1 1/2");
    await page.context().close();
  });

  test("[PG15] a change in one window is seen in the other", async () => {
    const here = await house.visit();
    await openWork(here, "Ferry Slip at Ebb");
    const there = await house.again(here.context());
    await there.goto(here.url());
    await there.waitForSelector(".brief");
    await blank(here, "holding").selectOption("hinges");
    await expect.poll(() => blank(there, "holding").inputValue()).toBe("hinges");
    // And back: each window undoes its own changes, and only those.
    expect(await there.getByRole("button", { name: /^Undo/ }).count()).toBe(0);
    await here.context().close();
  });

  test("[PG16] two hands on one word: both values, and the choice is the person's", async () => {
    const here = await house.visit();
    await openWork(here, "Ferry Slip at Ebb");
    const there = await house.again(here.context());
    await there.goto(here.url());
    await there.waitForSelector(".brief");

    await blank(there, "overlap").click();
    await there.keyboard.type("1/4");
    await blank(here, "overlap").click();
    await here.keyboard.type("3/16");
    await here.keyboard.press("Enter");
    await there.keyboard.press("Enter");

    const strip = there.locator(".strip");
    await expect.poll(() => strip.count()).toBe(1);
    const says = await strip.innerText();
    expect(says).toContain("Two hands on one word");
    expect(says).toContain("It says 3/16 in, you say 1/4 in.");
    await there.getByRole("button", { name: "Keep mine" }).click();
    expect(await strip.count()).toBe(0);
    await expect.poll(async () => plain(await blank(here, "overlap").inputValue())).toBe("1/4");

    // The other way round: theirs is taken, and nothing of mine is written over it.
    await blank(there, "liftBy").focus();
    await there.keyboard.type("1");
    await blank(here, "liftBy").focus();
    await here.keyboard.type("3/8");
    await here.keyboard.press("Enter");
    await there.keyboard.press("Enter");
    await there.getByRole("button", { name: "Take theirs" }).click();
    await expect.poll(async () => plain(await blank(there, "liftBy").inputValue())).toBe("3/8");
    await expect.poll(async () => plain(await blank(here, "liftBy").inputValue())).toBe("3/8");
    await here.context().close();
  });

  test("[PG17] a state that never knew this window's last change is not taken in silence", async () => {
    const page = await house.visit();
    await openWork(page, "Ferry Slip at Ebb");
    await blank(page, "holding").selectOption("hinges");
    const other = await house.again(page.context());
    // A window that slept writes what it held before that change.
    await other.evaluate(() => {
      const key = `margent.show.${localStorage.getItem("margent.open")}`;
      const record: unknown = JSON.parse(localStorage.getItem(key) ?? "{}");
      if (typeof record !== "object" || record === null) throw new Error("nothing is kept");
      const text = JSON.stringify({ ...record, stamp: "slept", line: [] }).replaceAll('"hinges"', '"strips"');
      localStorage.setItem(key, text);
    });
    const strip = page.locator(".strip");
    await expect.poll(() => strip.count()).toBe(1);
    expect(await strip.innerText()).toContain("Two hands on one show");
    expect(await blank(page, "holding").inputValue()).toBe("hinges");
    await page.getByRole("button", { name: "Take theirs" }).click();
    expect(await blank(page, "holding").inputValue()).toBe("strips");
    await page.context().close();
  });

  test("[PG18] a browser that keeps nothing is said to keep nothing, and the work goes on", async () => {
    const page = await house.visit();
    await openWork(page, "Ferry Slip at Ebb");
    await page.evaluate(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
    });
    await blank(page, "holding").selectOption("hinges");
    await expect.poll(() => page.locator(".strip").innerText()).toContain("Not kept");
    expect(await page.locator(".block").innerText()).toContain("not kept");
    expect(await blank(page, "holding").inputValue()).toBe("hinges");
    expect(await told(page)).toMatch(/^Held with hinges at the head\./);
    await page.context().close();
  });

  test("[PG19] a record of another version is left as it is, and said", async () => {
    const page = await house.visit();
    await openWork(page, "Ferry Slip at Ebb");
    const before = await page.evaluate(() => {
      const key = `margent.show.${localStorage.getItem("margent.open")}`;
      localStorage.setItem(key, JSON.stringify({ format: 99, later: true }));
      return localStorage.getItem(key);
    });
    await page.reload();
    await page.waitForSelector("h1");
    expect(await page.locator(".strip").innerText()).toContain("written by another version");
    const after = await page.evaluate(() =>
      localStorage.getItem(`margent.show.${localStorage.getItem("margent.open")}`),
    );
    expect(after).toBe(before);
    await page.context().close();
  });

  test("[PG19] a record with a wrong field is not opened: the field is named, and its text can be saved", async () => {
    const page = await house.visit();
    await openWork(page, "Ferry Slip at Ebb");
    const damaged = await page.evaluate(() => {
      const key = `margent.show.${localStorage.getItem("margent.open")}`;
      const record = JSON.parse(localStorage.getItem(key) ?? "");
      record.show.works[2].design.mats = 5;
      localStorage.setItem(key, JSON.stringify(record));
      return localStorage.getItem(key);
    });
    await page.reload();
    await page.waitForSelector(".strip");
    const said = await page.locator(".strip").innerText();
    expect(said).toContain("it is damaged");
    expect(said).toContain("works.2.design.mats: “5” stands where");
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save its text as a file" }).click(),
    ]);
    expect(readFileSync(await download.path(), "utf8")).toBe(damaged);

    // A record that somebody has changed and that is whole is read, and opens.
    await page.evaluate(() => {
      const key = `margent.show.${localStorage.getItem("margent.open")}`;
      const record = JSON.parse(localStorage.getItem(key) ?? "");
      delete record.show.works[2].design.mats;
      localStorage.setItem(key, JSON.stringify(record));
    });
    await page.reload();
    await page.waitForSelector(".brief");
    expect(await page.locator(".strip").count()).toBe(0);
    await page.context().close();
  });

  test("[PG13] nothing went wrong unseen", () => {
    expect(house.faults).toEqual([]);
  });
});
