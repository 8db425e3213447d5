// Bundles one entry of the sources into dist/, once for each state of the sources. A bundle starts four
// times faster than sources compiled on the way, and runs without what a compiler adds to keep names.
import { mkdirSync, readdirSync, renameSync, statSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
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
  const { outputFiles } = await build({
    entryPoints: [{ in: join(root, entry), out: basename(bundle, ".mjs") }],
    outdir: dirname(bundle),
    outExtension: { ".js": ".mjs" },
    chunkNames: "parts/[name]-[hash]",
    write: false,
    bundle: true,
    // What one command alone needs is a part of its own, read when that command is called.
    splitting: true,
    platform: "node",
    format: "esm",
    target: "node20",
    plugins: [whatIsUsed],
    logLevel: "error",
  });
  // The entry last, and each moved into place whole, so that two runs at once never read half a bundle.
  for (const { path, contents } of outputFiles.toSorted((a) => (a.path === bundle ? 1 : -1))) {
    mkdirSync(dirname(path), { recursive: true });
    const fresh = `${path}-${process.pid}`;
    writeFileSync(fresh, contents);
    renameSync(fresh, path);
  }
  return bundle;
}

/** Packages that are read at every start: bundled they are one file instead of dozens. */
const BUNDLED = /^zod(\/|$)/;

/** No module here does anything by being imported alone, so one that nothing is used of is left out. */
const whatIsUsed = {
  name: "what-is-used",
  setup({ onResolve }) {
    onResolve({ filter: /^\.\.?\// }, ({ path, resolveDir }) => ({
      path: join(resolveDir, path),
      sideEffects: false,
    }));
    onResolve({ filter: /^[^./]/ }, ({ path }) =>
      BUNDLED.test(path) ? undefined : { path, external: true, sideEffects: false },
    );
  },
};
