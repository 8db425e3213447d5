// `npm test`: the whole truth about the project. Format, lint, types, the page's build and every test, each
// counted; its last line is `N passed, N failed, N skipped`, and it ends with 1 when anything failed.
import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { root } from "./bundle.mjs";
import { ensureBrowser, ensurePackages, installPackage } from "./ensure.mjs";

ensurePackages();
const started = Date.now();
const seconds = () => `${Math.round((Date.now() - started) / 1000)} s`;
const count = { passed: 0, failed: 0, skipped: 0 };
const failures = [];
const skips = [];

const modules = (...path) => join(root, "node_modules", ...path);

// In a log file colours are noise.
const plain = process.stdout.isTTY ? {} : { NO_COLOR: "1", FORCE_COLOR: "0" };

/** Runs one of the packages' programs; what it says is kept, or let through when `show`. */
function run(program, list, { show = false, environment = {} } = {}) {
  return new Promise((ended) => {
    const child = spawn(process.execPath, [program, ...list], {
      cwd: root,
      env: { ...process.env, ...plain, ...environment },
      stdio: show ? ["ignore", "inherit", "inherit"] : ["ignore", "pipe", "pipe"],
    });
    let said = "";
    for (const stream of [child.stdout, child.stderr]) stream?.on("data", (piece) => (said += piece));
    child.once("error", (error) => ended({ ok: false, said: error.message }));
    child.once("close", (status) => ended({ ok: status === 0, said }));
  });
}

async function check(name, program, list) {
  const { ok, said } = await run(program, list);
  console.log(`${ok ? "ok    " : "FAILED"} ${name} (${seconds()})`);
  if (ok) count.passed++;
  else {
    count.failed++;
    failures.push(name);
    console.log(said.trimEnd());
  }
}

const tsc = modules("typescript", "bin", "tsc");
const types = (config) => check(`types: ${config}`, tsc, ["-p", config]);

await check("format", modules("@biomejs", "biome", "bin", "biome"), ["format", "."]);
await check("lint", modules("oxlint", "bin", "oxlint"), []);
await Promise.all([types("tsconfig.json"), types("tsconfig.engine.json")]);
await Promise.all([
  types("tsconfig.web.json"),
  check("page build", modules("vite", "bin", "vite.js"), ["build", "--logLevel", "warn"]),
]);

// The tests that measure printed pages read them with poppler; without it they are skipped and say so.
if (
  !["/usr/bin", "/usr/local/bin", "/opt/homebrew/bin"].some((folder) => existsSync(join(folder, "pdftoppm")))
) {
  installPackage("poppler-utils");
}
const browser = await ensureBrowser();
const projects = ["--project", "engine"];
if (browser.path !== null) projects.push("--project", "page");
else {
  const files = readdirSync(join(root, "tests", "e2e")).filter((name) => name.endsWith(".test.ts"));
  for (const file of files) skips.push({ name: `tests/e2e/${file}: the whole file`, why: browser.why });
}

const folder = mkdtempSync(join(tmpdir(), "margent-test-"));
const reportFile = join(folder, "report.json");
const { ok } = await run(
  modules("vitest", "vitest.mjs"),
  ["run", ...projects, "--reporter=dot", "--reporter=./scripts/test-reporter.mjs"],
  {
    show: true,
    environment: {
      MARGENT_TEST_REPORT: reportFile,
      // The one built and checked above.
      MARGENT_BUILT_PAGE: join(root, "dist", "web"),
      ...(browser.path ? { CHROMIUM_PATH: browser.path } : {}),
    },
  },
);
if (existsSync(reportFile)) {
  const report = JSON.parse(readFileSync(reportFile, "utf8"));
  count.passed += report.passed;
  count.failed += report.failed + report.broken.length;
  failures.push(...report.broken);
  if (report.failed > 0) failures.push(`${report.failed} of the tests, shown above`);
  skips.push(...report.skipped);
  if (!ok && report.failed + report.broken.length === 0) {
    count.failed++;
    failures.push("vitest ended with a fault that no test shows");
  }
} else {
  count.failed++;
  failures.push("vitest gave no report");
}
rmSync(folder, { recursive: true });

count.skipped = skips.length;
for (const { name, why } of skips) console.log(`skipped: ${name}: ${why === "" ? "no reason given" : why}`);
for (const name of failures) console.log(`failed: ${name}`);
console.log(`Done in ${seconds()}.`);
console.log(`${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped`);
process.exitCode = count.failed > 0 ? 1 : 0;
