// What the project's commands need before they can run: the packages of the lock file, and for the tests
// a Chromium. Plain JavaScript without a package, since it runs before there are any.
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = dirname(dirname(fileURLToPath(import.meta.url)));

/** Said in one sentence and left with status 2. */
export function giveUp(sentence) {
  console.error(`margent: ${sentence}`);
  process.exit(2);
}

function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    giveUp(`Node ${process.versions.node} is too old: 20.19 or newer is needed (https://nodejs.org).`);
  }
}

/** Whether every package of the lock file lies installed in the version it names. Those for other systems need not. */
function packagesFit() {
  const installed = join(root, "node_modules", ".package-lock.json");
  if (!existsSync(installed)) return false;
  const wanted = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8")).packages;
  const held = JSON.parse(readFileSync(installed, "utf8")).packages;
  return Object.entries(wanted).every(
    ([path, { version, optional }]) =>
      path === "" ||
      (path in held ? held[path].version === version && existsSync(join(root, path)) : optional === true),
  );
}

/** Installs the packages when they are missing or when the lock file changed; from npm's own store where they lie there. */
export function ensurePackages() {
  checkNode();
  if (packagesFit()) return;
  console.error("Installing the packages …");
  // Started by npm, its own program is named; on Windows a bare `npm` is a script that only a shell can start.
  const npm = process.env.npm_execpath;
  const list = ["ci", "--prefer-offline", "--include=dev", "--no-audit", "--no-fund"];
  const { status, error } =
    npm?.endsWith("js") === true
      ? spawnSync(process.execPath, [npm, ...list], { cwd: root, stdio: ["ignore", 2, 2] })
      : spawnSync("npm", list, { cwd: root, stdio: ["ignore", 2, 2], shell: process.platform === "win32" });
  if (status !== 0) {
    giveUp(
      `the packages could not be installed (${error?.message ?? `npm ended with ${status}`}); see what npm said above.`,
    );
  }
}

const INSTALLED = {
  linux: [
    "/usr/bin/chromium",
    "/usr/bin/chromium-browser",
    "/usr/bin/google-chrome-stable",
    "/usr/bin/google-chrome",
    "/snap/bin/chromium",
  ],
  darwin: [
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  ],
  win32: [
    "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
    "C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe",
  ],
};

/** Whether a program is there and its libraries too. A browser on Windows opens a window when asked for its version, so there it is enough that it lies there. */
function works(program) {
  if (!program || !existsSync(program)) return false;
  if (process.platform === "win32") return true;
  return spawnSync(program, ["--version"], { stdio: "ignore", timeout: 60_000 }).status === 0;
}

const firstInstalled = () => (INSTALLED[process.platform] ?? []).find(works);

async function drivers() {
  const { chromium } = await import("playwright-core");
  return chromium.executablePath();
}

const isRoot = () => process.getuid?.() === 0;

const apt = (...list) =>
  spawnSync("apt-get", list, {
    stdio: ["ignore", 2, 2],
    env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    timeout: 300_000,
  }).status === 0;

/** Debian's package, where this user may install one. Whether it went in. */
export function installPackage(name) {
  if (!isRoot() || !existsSync("/usr/bin/apt-get")) return false;
  console.error(`Installing the system's package ${name} …`);
  return apt("update", "-q") && apt("install", "-y", "-q", "--no-install-recommends", name);
}

/**
 * The path of a Chromium for the tests: the one named by CHROMIUM_PATH, an installed one, the test driver's
 * own, or the system's package where that may be installed. Where there is none, `path` is null and `why`
 * a sentence that says what to do.
 */
export async function ensureBrowser() {
  const named = process.env.CHROMIUM_PATH;
  if (named) {
    return works(named)
      ? { path: named }
      : {
          path: null,
          why: `CHROMIUM_PATH names ${named}, which does not run: correct it, or unset it to have one found`,
        };
  }
  const there = firstInstalled();
  if (there) return { path: there };
  const own = await drivers();
  if (works(own)) return { path: own };

  console.error("Fetching a Chromium for the tests …");
  const driver = join(root, "node_modules", "playwright-core", "cli.js");
  spawnSync(process.execPath, [driver, "install", "chromium"], {
    cwd: root,
    stdio: ["ignore", 2, 2],
    timeout: 240_000,
  });
  if (works(own)) return { path: own };
  if (installPackage("chromium")) {
    const fresh = firstInstalled();
    if (fresh) return { path: fresh };
  }
  return {
    path: null,
    why:
      process.platform === "linux"
        ? "no Chromium: install one (on Debian as root: apt-get install chromium) or set CHROMIUM_PATH to its program"
        : "no Chromium: install one, or set CHROMIUM_PATH to its program",
  };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) ensurePackages();
