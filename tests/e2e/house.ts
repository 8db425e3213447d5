import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { build } from "vite";
import {
  createApp,
  listen,
  newId,
  newsOf,
  papersOf,
  readAssets,
  readExample,
} from "../../src/server/index.ts";
import { openStore } from "../../src/storage/index.ts";
import { launch } from "./browser.ts";

/** Tests and benchmarks are run from the project's folder. */
const root = process.cwd();

/** The page as it is built and served, and a browser to open it in. */
export interface House {
  readonly address: string;
  /** Where the built page lies. */
  readonly folder: string;
  readonly browser: Browser;
  /** Faults that any page of this house has met; a test that expects none finds none. */
  readonly faults: string[];
  /** A window of its own, with nothing kept. */
  visit(options?: BrowserContextOptions): Promise<Page>;
  /** A second window onto the same browser's store. */
  again(context: BrowserContext): Promise<Page>;
  close(): Promise<void>;
}

interface BuiltPage {
  readonly folder: string;
  readonly remove: () => void;
}

/** The page that a run of all tests has built already, else one built for this house alone. */
async function builtPage(): Promise<BuiltPage> {
  const built = process.env["MARGENT_BUILT_PAGE"];
  if (built !== undefined && built !== "") return { folder: built, remove: () => undefined };
  const folder = mkdtempSync(join(tmpdir(), "margent-page-"));
  await buildAsShipped(folder);
  return { folder, remove: () => rmSync(folder, { recursive: true }) };
}

/** Under a test runner a build would be one for tests, with what packages say to developers in it. */
async function buildAsShipped(folder: string): Promise<void> {
  const before = process.env["NODE_ENV"];
  process.env["NODE_ENV"] = "production";
  await build({
    configFile: join(root, "vite.config.ts"),
    logLevel: "error",
    build: { outDir: folder, emptyOutDir: true },
  });
  if (before === undefined) delete process.env["NODE_ENV"];
  else process.env["NODE_ENV"] = before;
}

/** Builds the page, serves it under its real policy with the real papers, and starts a browser. */
export async function openHouse(): Promise<House> {
  const { folder, remove } = await builtPage();
  const faults: string[] = [];
  const clock = () => new Date("2026-11-25T09:00:00Z");
  const report = (fault: unknown) => void faults.push(`server: ${String(fault)}`);
  const home = mkdtempSync(join(tmpdir(), "margent-home-"));
  const store = await openStore({ home, clock, report });
  const news = newsOf(store, report);
  const app = createApp({
    studio: { store, news, newId },
    assets: readAssets(folder),
    example: readExample(join(root, "examples", "slack-water")),
    clock,
    papers: papersOf(() => performance.now()),
    report,
  });
  const server = await listen(app, 0);
  const browser = await launch();

  const watched = async (context: BrowserContext): Promise<Page> => {
    const page = await context.newPage();
    page.setDefaultTimeout(15_000);
    page.on("pageerror", (error) => faults.push(`page: ${error.message}`));
    page.on("console", (message) => {
      // An overtaken change is answered 409: the page goes on from there, and the browser notes it by itself.
      if (message.text().includes("status of 409")) return;
      if (message.type() === "error" || message.type() === "warning")
        faults.push(`console: ${message.text()}`);
    });
    await page.goto(server.address);
    await page.waitForSelector("h1");
    return page;
  };
  return {
    address: server.address,
    folder,
    browser,
    faults,
    visit: async (options) =>
      watched(
        await browser.newContext({
          viewport: { width: 1440, height: 900 },
          reducedMotion: "reduce",
          ...options,
        }),
      ),
    again: watched,
    close: async () => {
      await browser.close();
      news.end();
      await server.close(0);
      await store.close();
      rmSync(home, { recursive: true });
      remove();
    },
  };
}

/** Opens the example show and one of its works. */
export async function openWork(page: Page, title: string): Promise<void> {
  await page.getByRole("button", { name: "Open the example show" }).click();
  await page.locator(".laid a", { hasText: title }).first().click();
  await page.waitForSelector(".brief");
}

export const blank = (page: Page, name: string) => page.locator(`[id="blank-${name}"]`);

/** The figure of a dimension in the back view, as its text reads: thin spaces and fraction slashes made plain. */
export async function dimension(page: Page, name: string): Promise<string> {
  const text = (await page.locator(`[id="back-${name}"] text`).textContent()) ?? "";
  return plain(text);
}

export const plain = (text: string): string =>
  text.replaceAll("\u2009", " ").replaceAll("\u2044", "/").replaceAll("\u00a0", " ").trim();

/** What the title block's status region says. */
export const told = async (page: Page): Promise<string> =>
  plain((await page.locator(".said").textContent()) ?? "");
