// `npm start`: installs what is missing, builds the page when its sources are newer, and serves it.
// What stands after `npm start --` goes to `margent serve`.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { bundled, newest, root, writtenAt } from "./bundle.mjs";
import { ensurePackages, giveUp } from "./ensure.mjs";

function buildPage() {
  const sources = Math.max(
    newest(join(root, "src")),
    writtenAt(join(root, "vite.config.ts")),
    writtenAt(join(root, "package-lock.json")),
  );
  if (writtenAt(join(root, "dist", "web", "index.html")) >= sources) return;
  console.error("Building the page …");
  const vite = join(root, "node_modules", "vite", "bin", "vite.js");
  // Standard output is the server's: it holds the one line that says where the page is.
  const { status } = spawnSync(process.execPath, [vite, "build", "--logLevel", "warn"], {
    cwd: root,
    stdio: ["ignore", 2, 2],
  });
  if (status !== 0) giveUp("the page could not be built; see what the builder said above.");
}

ensurePackages();
buildPage();
process.argv.splice(2, 0, "serve");
await import(pathToFileURL(await bundled("src/cli/main.ts")).href);
