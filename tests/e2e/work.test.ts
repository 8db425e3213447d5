import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { browserPath, titled } from "./browser.ts";
import { blank, dimension, type House, openHouse, openWork, plain, told } from "./house.ts";

describe.skipIf(browserPath === null)(titled("one work, said and seen"), () => {
  let house: House;
  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(async () => {
    await house.close();
  });

  const ferrySlip = async (options?: Parameters<House["visit"]>[0]): Promise<Page> => {
    const page = await house.visit(options);
    await openWork(page, "Ferry Slip at Ebb");
    return page;
  };

  test("[PG1] the figures in the drawing are those of the sentence", async () => {
    const page = await ferrySlip();
    const outer = plain(await blank(page, "outer").innerText());
    expect(outer).toBe(
      `${await dimension(page, "outer-width")} × ${await dimension(page, "outer-height")} in`,
    );
    const lift = plain(await blank(page, "liftBy").inputValue());
    expect(lift).toBe("1/4");
    expect(await dimension(page, "border-head")).toBe("1 3/4");
    expect(await dimension(page, "border-foot")).toBe("2 1/4");
    await page.context().close();
  });

  test("[PG46] a work is framed in one of the show's frames, and what comes of it is said", async () => {
    const page = await ferrySlip();
    const [kind, said, stops] = [
      page.locator("#framed-in"),
      page.locator(".framed"),
      page.locator(".say .check.stop"),
    ];
    await kind.waitFor();
    // 11 × 14 in, 1/8 in of allowance, 1/2 in of face beyond the rabbet on each side.
    expect(plain(await said.innerText())).toMatch(/^Outside 12 1\/8 × 15 1\/8 in, /);
    expect(await stops.count()).toBe(0);
    await kind.selectOption({ label: "walnut, from the old show" });
    await stops.first().waitFor();
    expect(await stops.first().innerText()).toContain("would show");
    await page.locator("#framed-seat").selectOption("shimmed");
    expect(await told(page)).toBe("Shimmed at the foot.");
    await kind.selectOption({ label: "nothing yet" });
    expect(await said.count()).toBe(0);
    for (let undone = 0; undone < 3; undone++) await page.keyboard.press("Control+z");
    expect(plain(await said.innerText())).toMatch(/^Outside 12 1\/8 × 15 1\/8 in, /);
    await page.context().close();
  });

  test("[PG2] the drawing follows every keystroke that reads as a length; the reckoning waits until it is kept", async () => {
    const page = await ferrySlip();
    const headSum = page.locator(".sums tr", { hasText: "Head border" }).locator("td").last();
    await blank(page, "liftBy").click();
    await page.keyboard.type("3/8");
    expect(await dimension(page, "border-head")).toBe("1 5/8");
    expect(plain(await headSum.innerText())).toBe("1 3/4 in");
    await page.keyboard.press("Enter");
    expect(plain(await headSum.innerText())).toBe("1 5/8 in");
    expect(await told(page)).toMatch(/^Raised 3\/8 in\./);
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("blank-liftBy");
    await page.context().close();
  });

  test("[PG3] the arrows step along the ruler, with Shift by a whole unit, with Alt by the finest step", async () => {
    const page = await ferrySlip();
    await blank(page, "sheetWidth").focus();
    await page.keyboard.press("ArrowUp");
    expect(await blank(page, "sheetWidth").inputValue()).toBe("9 9/16");
    await page.keyboard.press("Shift+ArrowDown");
    expect(await blank(page, "sheetWidth").inputValue()).toBe("8 9/16");
    await page.keyboard.press("Alt+ArrowDown");
    expect(await blank(page, "sheetWidth").inputValue()).toBe("8 71/128");
    await page.keyboard.press("Escape");
    expect(await blank(page, "sheetWidth").inputValue()).toBe("9 1/2");
    expect(await page.getByRole("button", { name: /^Undo/ }).count()).toBe(0);
    await page.context().close();
  });

  test("[PG4] the ladder's rungs are neighbouring marks, follow typing and are no stops for Tab", async () => {
    const page = await ferrySlip();
    await blank(page, "liftBy").focus();
    const rungs = page.locator(".rungs button");
    expect((await rungs.allInnerTexts()).map(plain)).toEqual(["1/8", "3/16", "1/4", "5/16", "3/8"]);
    expect(plain(await page.locator(".other-way").innerText())).toContain("1/2 in more at the foot");
    await page.keyboard.type("1");
    expect((await rungs.allInnerTexts()).map(plain)).toEqual(["7/8", "15/16", "1", "1 1/16", "1 1/8"]);
    await rungs.nth(1).click();
    expect(await told(page)).toMatch(/^Raised 15\/16 in\./);
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("blank-holding");
    await page.context().close();
  });

  test("[PG5] what cannot be read is said in place with what may have been meant, and nothing is changed", async () => {
    const page = await ferrySlip();
    await blank(page, "overlap").click();
    await page.keyboard.type("71/4");
    await page.keyboard.press("Enter");
    const field = blank(page, "overlap");
    expect(await field.getAttribute("aria-invalid")).toBe("true");
    const fault = page.locator(`#${await field.getAttribute("aria-describedby")}`);
    expect(await fault.innerText()).toContain("more than one way");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("blank-overlap");
    expect(await dimension(page, "window-width")).toBe("7");
    expect(await page.locator(".back svg.unread").count()).toBe(1);
    expect(await page.getByRole("button", { name: /^Undo/ }).count()).toBe(0);

    // A reading that the design cannot take is refused in place too; one that it can is kept.
    const offers = (await fault.getByRole("button").allInnerTexts()).map(plain);
    expect(offers).toEqual(["7 1/4 in", "17 3/4 in"]);
    await page.keyboard.press("Escape");
    expect(await field.getAttribute("aria-invalid")).toBeNull();
    expect(await page.locator("svg.unread").count()).toBe(0);

    await blank(page, "sheetWidth").click();
    await page.keyboard.type("91/2");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "9 1⁄2 in" }).click();
    expect(await blank(page, "sheetWidth").getAttribute("aria-invalid")).toBeNull();
    await page.context().close();
  });

  test("[PG6] undo and redo take the last change back and make it again, whatever has the focus", async () => {
    const page = await ferrySlip();
    await blank(page, "show").selectOption("sheet");
    await blank(page, "holding").selectOption("hinges");
    expect(await page.locator(".brief").innerText()).toContain("floated");
    await page.keyboard.press("Control+z");
    await page.keyboard.press("Control+z");
    expect(await page.locator(".brief").innerText()).toContain("all round, in");
    expect(await blank(page, "holding").inputValue()).toBe("pockets");
    expect(await told(page)).toBe("Undone: show the whole sheet.");
    await page.getByRole("button", { name: /^Redo/ }).click();
    expect(await page.locator(".brief").innerText()).toContain("floated");

    // Text that is being typed has its own undo.
    await blank(page, "gap").click();
    await page.keyboard.type("1");
    await page.keyboard.press("Control+z");
    expect(await page.locator(".brief").innerText()).toContain("floated");
    await page.context().close();
  });

  test("[PG7] a check's button takes its way out, moves the focus to the blank it changed, and can be undone", async () => {
    const page = await house.visit();
    await openWork(page, "Two Sheds, Rain");
    const stop = page.locator(".check.stop");
    expect(await stop.count()).toBe(1);
    const way = stop.getByRole("button").first();
    await way.click();
    await expect.poll(() => page.locator(".check.stop").count()).toBe(0);
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("blank-windowWidth");
    await page.keyboard.press("Escape");
    await page.keyboard.press("Control+z");
    await expect.poll(() => page.locator(".check.stop").count()).toBe(1);
    await page.context().close();
  });

  test("[PG8] an edge that is dragged snaps to the ruler, the figure follows, and the blank shows the same number", async () => {
    const page = await ferrySlip();
    const grip = page.locator("#grip-head .grip");
    const box = await grip.boundingBox();
    if (box === null) throw new Error("the grip is not drawn");
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y - 13.7, { steps: 5 });
    const dragged = plain((await page.locator("#grip-head .grip-figure").textContent()) ?? "");
    expect(await dimension(page, "border-head")).toBe(dragged);
    await page.mouse.up();

    const value = (await page.locator("#grip-head").getAttribute("aria-valuetext")) ?? "";
    expect(value).toBe(`${dragged} in`);
    expect(value).toMatch(/^1( \d+\/(2|4|8|16))? in$/);
    // Head and foot still make the board with the window, which did not yield.
    expect(await dimension(page, "window-height")).toBe("10");
    const [lift, head] = [sixteenths(await blank(page, "liftBy").inputValue()), sixteenths(dragged)];
    expect(2 * 16 - lift).toBe(head);
    expect(await page.getByRole("button", { name: /^Undo/ }).count()).toBe(1);
    await page.context().close();
  });

  test("[PG8] a grip is a slider by the keys", async () => {
    const page = await ferrySlip();
    await page.locator("#grip-head").focus();
    await page.keyboard.press("ArrowUp");
    expect(await dimension(page, "border-head")).toBe("1 13/16");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    expect(await dimension(page, "border-head")).toBe("1 11/16");
    expect(plain(await blank(page, "liftBy").inputValue())).toBe("5/16");
    await page.locator("#grip-width").focus();
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("Escape");
    expect(plain(await blank(page, "outer").innerText())).toBe("11 × 14 in");
    await page.context().close();
  });

  test("[PG9] a blank that is open thickens what it speaks of in the drawings, and a pointed line washes its blank", async () => {
    const page = await ferrySlip();
    await blank(page, "liftBy").focus();
    expect(await page.locator("#back-border-head.part-lit").count()).toBe(1);
    const controls = (await blank(page, "liftBy").getAttribute("aria-controls")) ?? "";
    expect(controls.split(" ")).toContain("back-border-head");
    await blank(page, "liftBy").blur();
    await page.locator("#back-outer-width text").hover();
    expect(await page.locator("#blank-outer.washed").count()).toBe(1);
    await page.context().close();
  });

  test("[PG10] two mats: the sentence gains what the second needs, and the section its layers", async () => {
    const page = await ferrySlip();
    expect(await page.locator(".layers li").count()).toBe(4);
    await blank(page, "matCount").selectOption("2");
    expect(await page.locator(".layers li").count()).toBe(5);
    await blank(page, "reveal.1").click();
    await page.keyboard.type("3/8");
    await page.keyboard.press("Enter");
    expect(plain((await page.locator("#section-reveal-1 text").textContent()) ?? "")).toBe("3/8");

    await blank(page, "board.1").click();
    await page.getByRole("dialog").getByLabel("What it is called").fill("4-ply black core");
    await page.getByRole("button", { name: "Done" }).click();
    expect(await page.locator(".layers li").first().innerText()).toContain("4-ply black core");
    await page.context().close();
  });

  test("[PG11] the outer size may be named, taken from a list, or found by its borders", async () => {
    const page = await ferrySlip();
    await blank(page, "outer").click();
    const dialog = page.getByRole("dialog");
    await dialog.getByRole("button", { name: "16 × 20 in" }).click();
    expect(await dimension(page, "outer-width")).toBe("16");
    await dialog.getByText("The smallest of a list").click();
    expect(plain(await page.locator(".brief").innerText())).toContain("that leaves borders of");
    await dialog.getByText("Borders that I name").click();
    await page.getByRole("button", { name: "Done" }).click();
    await blank(page, "borderFoot").click();
    await page.keyboard.type("3");
    await page.keyboard.press("Enter");
    expect(await dimension(page, "border-foot")).toBe("3");
    await page.context().close();
  });

  test("[PG12] the bench sheet comes as a PDF under the work's own name", async () => {
    const page = await ferrySlip();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Print the bench sheet" }).click(),
    ]);
    expect(download.suggestedFilename()).toBe("ferry-slip-at-ebb-bench-sheet.pdf");
    const bytes = readFileSync(await download.path());
    expect(bytes.subarray(0, 5).toString()).toBe("%PDF-");
    expect(bytes.length).toBeGreaterThan(10_000);
    await expect.poll(() => told(page)).toContain("ferry-slip-at-ebb-bench-sheet.pdf");
    await page.context().close();
  });

  test("[PG12] without the server it is said, and the design stays", async () => {
    const page = await ferrySlip();
    await page.context().setOffline(true);
    await page.getByRole("button", { name: "Print the bench sheet" }).click();
    await expect.poll(() => told(page)).toContain("does not answer");
    await blank(page, "liftBy").click();
    await page.keyboard.type("1/2");
    await page.keyboard.press("Enter");
    expect(await dimension(page, "border-head")).toBe("1 1/2");
    house.faults.length = 0;
    await page.context().close();
  });

  test("[PG13] nothing went wrong unseen: no fault in the console, nothing the policy forbade", () => {
    expect(house.faults).toEqual([]);
  });
});

/** `1 3/4` in sixteenths, of what a blank holds. */
function sixteenths(text: string): number {
  const [whole = "0", fraction = ""] = plain(text).includes(" ")
    ? plain(text).split(" ")
    : plain(text).includes("/")
      ? ["0", plain(text)]
      : [plain(text), ""];
  const [over = "0", under = "1"] = fraction.split("/");
  return Number(whole) * 16 + (Number(over) * 16) / Number(under || 1);
}
