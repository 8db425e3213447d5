import { existsSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";

const INSTALLED = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome-stable",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/** A Chromium on this machine: the one that CHROMIUM_PATH names, an installed one, or the test driver's own; null where there is none. */
export function findBrowser(): string | null {
  const named = process.env["CHROMIUM_PATH"];
  if (named !== undefined && named !== "") return existsSync(named) ? named : null;
  return [...INSTALLED, chromium.executablePath()].find((path) => existsSync(path)) ?? null;
}

export const browserPath = findBrowser();

/** A suite's title; where nothing can drive it, it says so. */
export const titled = (title: string): string =>
  browserPath === null
    ? `${title} (left out: no Chromium is found; install one or set CHROMIUM_PATH)`
    : title;

export async function launch(): Promise<Browser> {
  if (browserPath === null) throw new Error("no Chromium is found");
  return chromium.launch({
    executablePath: browserPath,
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
}
