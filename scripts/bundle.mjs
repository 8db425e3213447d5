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
  const out = entry.slice(0, -3).replaceAll("/", "-");
  const bundle = join(dist, `${out}.mjs`);
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
  const make = (from, to, plugins) =>
    build({
      entryPoints: [{ in: from, out: to }],
      outdir: dist,
      outExtension: { ".js": ".mjs" },
      chunkNames: "parts/[name]-[hash]",
      write: false,
      bundle: true,
      splitting: true,
      platform: "node",
      format: "esm",
      target: "node20",
      plugins: [...plugins, whatIsUsed],
      logLevel: "error",
    });
  const commands = new Set();
  const { outputFiles: first } = await make(join(root, entry), out, [apart(commands)]);
  const parts = await Promise.all([...commands].map((file) => make(file, partOf(file), [])));
  // The entry last, and each moved into place whole, so that two runs at once never read half a bundle.
  for (const { path, contents } of [...parts.flatMap(({ outputFiles }) => outputFiles), ...first]) {
    mkdirSync(dirname(path), { recursive: true });
    const fresh = `${path}-${process.pid}`;
    writeFileSync(fresh, contents);
    renameSync(fresh, path);
  }
  return bundle;
}

const dist = join(root, "dist");

const partOf = (file) => `parts/${basename(file, ".ts")}`;

/**
 * Each module that the entry imports when it is called for, as each command is, is a bundle of its own.
 * In chunks that bundles share stands all that an index.ts can reach, so that composing would wait
 * for the PDF writer: 0.3 s from call to answer, and 0.1 s so.
 */
const apart = (found) => ({
  name: "apart",
  setup({ onResolve }) {
    onResolve({ filter: /^\.\.?\// }, ({ path, resolveDir, kind }) => {
      if (kind !== "dynamic-import") return undefined;
      const file = join(resolveDir, path);
      found.add(file);
      return { path: `./${partOf(file)}.mjs`, external: true };
    });
  },
});

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
