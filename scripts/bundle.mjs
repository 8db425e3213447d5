// Bundles one entry of the sources into dist/, once for each state of the sources. A bundle starts four
// times faster than sources compiled on the way, and runs without what a compiler adds to keep names.
import { mkdirSync, readdirSync, renameSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

export const root = dirname(dirname(fileURLToPath(import.meta.url)));

/** When the newest file of a folder was written. */
export function newest(folder) {
  let latest = statSync(folder).mtimeMs;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    latest = Math.max(latest, entry.isDirectory() ? newest(path) : statSync(path).mtimeMs);
  }
  return latest;
}

/** When a file was written; 0 where there is none. */
export function writtenAt(file) {
  try {
    return statSync(file).mtimeMs;
  } catch (error) {
    if (error.code === "ENOENT") return 0;
    throw error;
  }
}

/** The bundle of `entry` (a path from the root), made anew when one of `folders` is newer. */
export async function bundled(entry, folders = ["src"]) {
  const bundle = join(root, "dist", `${entry.slice(0, -3).replaceAll("/", "-")}.mjs`);
  const sources = Math.max(
    ...folders.map((folder) => newest(join(root, folder))),
    writtenAt(join(root, "package-lock.json")),
  );
  if (writtenAt(bundle) >= sources) return bundle;
  const { build } = await import("esbuild").catch((error) => {
    console.error(
      "margent: the packages are not installed yet; run `npm ci` (or `npm start`, which does it) first.",
    );
    throw error;
  });
  mkdirSync(dirname(bundle), { recursive: true });
  // Written beside and moved into place, so that two runs at once never read half a bundle.
  const fresh = bundle.replace(/\.mjs$/, `-${process.pid}.mjs`);
  await build({
    entryPoints: [join(root, entry)],
    outfile: fresh,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    packages: "external",
    sourcemap: "inline",
    logLevel: "error",
  });
  renameSync(fresh, bundle);
  return bundle;
}
