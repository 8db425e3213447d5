import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

// The page runs under a content-security policy without inline scripts, inline styles or data
// addresses: assets stay files, and no loader is written into the document.
export default defineConfig({
  root: here("./src/web"),
  base: "./",
  publicDir: false,
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  build: {
    outDir: here("./dist/web"),
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    target: "es2022",
    reportCompressedSize: true,
  },
  server: { proxy: { "/api": "http://127.0.0.1:4817" } },
});
