import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

const ENGINE = /\/src\/(lengths|geometry|assembly|plans|show|drawings|words)\//;

// What every place needs. The rest is one file for each place, dialog or late part.
const SHARED = [
  /\/src\/(lengths|geometry|assembly)\//,
  /\/src\/words\/(?!reckoning|page\/(dialogs|files|first|section|sums|troubles|ways|works))/,
  /\/src\/drawings\/(?!views\/(section|breaks|leaders|layers))/,
  /\/src\/show\/(?!lists|schema|validate|compose-json)/,
  /\/src\/web\/(blanks|drawing|state\/(?!read-show))/,
  /node_modules\/@?preact/,
];

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
    // The engine's modules only define: what a place does not use is not in its code.
    rolldownOptions: {
      treeshake: { moduleSideEffects: (id) => !ENGINE.test(id) },
      // What several places share is one file: many small ones compress badly.
      output: {
        codeSplitting: {
          groups: [{ name: "shared", test: (id: string) => SHARED.some((part) => part.test(id)) }],
        },
      },
    },
  },
  server: { proxy: { "/api": "http://127.0.0.1:4817" } },
});
