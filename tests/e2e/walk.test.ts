import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { browserPath, titled } from "./browser.ts";
import { blank, dimension, type House, openHouse, openWork, plain, told } from "./house.ts";

/** What people type by mistake: no blank for a length takes one of these. */
const AWKWARD: readonly string[] = [
  "",
  "-3",
  "71/4",
  "1,500",
  "99999999",
  "12 furlongs",
  "3 1/0",
  "🖼️",
  "<b>1</b>",
  "7".repeat(10_000),
];

/** Goes on by Tab, or back, until a control is named so. */
async function tabTo(page: Page, name: RegExp, key: "Tab" | "Shift+Tab" = "Tab"): Promise<void> {
  for (let presses = 0; presses < 90; presses++) {
    await page.keyboard.press(key);
    const label = await page.evaluate(() => {
      const element = document.activeElement;
      return element?.getAttribute("aria-label") ?? element?.textContent ?? "";
    });
    if (name.test(label)) return;
  }
  throw new Error(`Tab never came to ${name}`);
}

/** Pastes as Ctrl+V does, where the focus is. */
const paste = (page: Page, text: string): Promise<void> =>
  page.evaluate((pasted) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", pasted);
    const event = new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true });
    document.activeElement?.dispatchEvent(event);
  }, text);

const isTooWide = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth);

/** Enter, on an act that gives a file: its name and its first bytes. */
async function enterForFile(page: Page): Promise<readonly [name: string, begins: string]> {
  const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(Buffer.from(chunk));
  return [download.suggestedFilename(), Buffer.concat(chunks).subarray(0, 4).toString("latin1")];
}

describe.skipIf(browserPath === null)(titled("a walk through the page by its keys"), () => {
  let house: House;
  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(async () => {
    await house.close();
  });

  test("[PG29] [PG41] from a pasted list and one from a file to a bench sheet and the packet, by the keyboard alone", async () => {
    const page = await house.visit();
    const header = "title\tsheet width\tsheet height\timage width\timage height";
    await paste(
      page,
      `${header}\nWeir, Evening\t8 1/2 in\t11 in\t7 in\t9 in\nLock Gate\t12 in\t9 in\t10 in\t7 in\n`,
    );
    await page.waitForSelector(".laid li");
    expect(await told(page)).toBe("Two works brought in.");

    await tabTo(page, /^Bring in a list/);
    const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.keyboard.press("Enter")]);
    const list =
      "title;sheet width;sheet height;image width;image height\nSluice;210 mm;297 mm;150 mm;220 mm\n";
    await chooser.setFiles({ name: "more.csv", mimeType: "text/csv", buffer: Buffer.from(list) });
    await expect.poll(() => page.locator(".laid li").count()).toBe(3);

    await tabTo(page, /Weir, Evening/);
    await page.keyboard.press("Enter");
    await page.waitForSelector(".brief");
    await tabTo(page, /^What the window shows/);
    await page.keyboard.press("ArrowDown");
    await tabTo(page, /^Paper in sight at the foot/);
    await page.keyboard.type("3/4");
    await page.keyboard.press("Enter");
    expect(await told(page)).toMatch(/^Paper in sight at the foot 3\/4 in\./);

    await tabTo(page, /^Outer size/);
    await page.keyboard.press("Enter");
    await page.getByRole("dialog", { name: "Outer size" }).waitFor();
    // The chosen one of the three ways has the focus; the arrows choose another.
    const borders = page.getByRole("radio", { name: "Borders that I name" });
    for (let presses = 0; presses < 3 && !(await borders.isChecked()); presses++)
      await page.keyboard.press("ArrowDown");
    expect(await borders.isChecked()).toBe(true);
    await page.keyboard.press("Escape");
    expect(await page.getByRole("dialog").count()).toBe(0);
    expect(await told(page)).toMatch(/^On borders that I name\./);
    await tabTo(page, /^Border at the head, inches/, "Shift+Tab");
    await page.keyboard.type("2 5/8");
    await page.keyboard.press("Enter");
    expect(await told(page)).toMatch(/^Border at the head 2 5\/8 in\./);
    expect(await dimension(page, "border-head")).toBe("2 5/8");

    await page.locator("h1").focus();
    await tabTo(page, /^Print the bench sheet/);
    expect(await enterForFile(page)).toEqual(["weir-evening-bench-sheet.pdf", "%PDF"]);

    await tabTo(page, /^Works$/, "Shift+Tab");
    await page.keyboard.press("Enter");
    await tabTo(page, /^Print the packet/);
    expect(await enterForFile(page)).toEqual(["pasted-list-packet.zip", "PK\u0003\u0004"]);
    await page.context().close();
  });

  test("[PG5] [PG28] whatever is written in a blank stays as typed, is answered in place, and never widens the page", async () => {
    const page = await house.visit({ viewport: { width: 360, height: 800 } });
    await openWork(page, "Ferry Slip at Ebb");
    const ids = await page
      .locator("form input.blank[inputmode]")
      .evaluateAll((fields) => fields.map((field) => field.id));
    expect(ids.length).toBeGreaterThan(10);
    for (const [place, id] of ids.entries()) {
      const field = page.locator(`[id="${id}"]`);
      const before = plain(await field.inputValue());
      // Every blank meets three of them, and all blanks together each of them more than once.
      for (const offset of [0, 3, 7]) {
        const typed = AWKWARD[(place + offset) % AWKWARD.length] ?? "";
        await field.focus();
        await field.fill(typed);
        await page.keyboard.press("Enter");
        const mend = page.locator(`[id="${id.replace("blank-", "")}-fault"]`);
        expect((await mend.innerText()).length, `${id}: ${typed.slice(0, 20)}`).toBeLessThan(160);
        expect(await field.inputValue()).toBe(typed);
        expect(await field.getAttribute("aria-invalid")).toBe("true");
        expect(await isTooWide(page), `${id}: ${typed.slice(0, 20)}`).toBe(false);
        await page.keyboard.press("Escape");
        // What was, with its unit where that is not the work's own.
        expect(plain(await field.inputValue()).split(" mm")[0]).toBe(before);
        expect(await field.getAttribute("aria-invalid")).toBe(null);
      }
    }
    await page.context().close();
  });

  test("[PG28] a name as long as it may be, and a sheet of a hundred metres, leave the page as wide as it is", async () => {
    const page = await house.visit({ viewport: { width: 360, height: 800 } });
    await openWork(page, "Ferry Slip at Ebb");
    await blank(page, "sheetWidth").fill("100 m");
    await page.keyboard.press("Enter");
    expect(await isTooWide(page)).toBe(false);
    await page.locator(".name-blank").click();
    await page.getByRole("dialog").getByLabel("Title").fill("W".repeat(10_000));
    await page.keyboard.press("Enter");
    expect(await isTooWide(page)).toBe(false);
    await page.keyboard.press("Escape");
    expect((await page.locator("h1").innerText()).length).toBe(200);
    await page.locator(".places a", { hasText: "Works" }).click();
    await page.waitForSelector(".laid li");
    expect(await isTooWide(page)).toBe(false);
    await page.getByText("As a list").click();
    await page.waitForSelector("table");
    expect(await isTooWide(page)).toBe(false);
    await page.context().close();
  });

  test("[PG14] [PG15] a window that is closed or loaded again half-way leaves what was kept, and the other window goes on", async () => {
    const here = await house.visit();
    await openWork(here, "Ferry Slip at Ebb");
    const there = await house.again(here.context());
    await there.goto(here.url());
    await there.waitForSelector(".brief");
    const before = plain(await blank(here, "overlap").inputValue());
    // Half typed, and closed.
    await blank(there, "overlap").click();
    await there.keyboard.type("1/");
    await there.close();
    await blank(here, "liftBy").fill("3/8");
    await here.keyboard.press("Enter");
    expect(plain(await blank(here, "overlap").inputValue())).toBe(before);
    // Half typed, and loaded again.
    await blank(here, "overlap").click();
    await here.keyboard.type("5/1");
    await here.reload();
    await here.waitForSelector(".brief");
    expect(plain(await blank(here, "overlap").inputValue())).toBe(before);
    expect(plain(await blank(here, "liftBy").inputValue())).toBe("3/8");
    await here.context().close();
  });

  test("[PG13] nothing went wrong unseen", () => {
    expect(house.faults).toEqual([]);
  });
});
