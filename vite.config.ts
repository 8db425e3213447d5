import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

const ENGINE = /\/src\/(lengths|geometry|assembly|plans|show|drawings|words)\//;

/** Few files, since many small ones compress badly: what every place needs, all works, the dialogs, and what comes while one reads. */
const FILES = {
  page: [
    /node_modules\/@?preact/,
    /\/src\/(lengths|geometry|assembly|drawings)\//,
    /\/src\/show\/(?!lists|schema|validate|compose-json)/,
    /\/src\/words\/(?!reckoning|page\/(sums|dialogs|files|first|troubles|ways|works))/,
    /\/src\/web\/(blanks\/(?!dialog)|drawing\/(?!grip)|state\/(?!read-show|difference))/,
    /\/src\/web\/(main|app|later|title-block|undo-acts|light|keys|browser-store)\./,
  ],
  works: [/\/src\/web\/works\//, /\/src\/words\/page\/works\./],
  dialogs: [
    /\/src\/web\/(work\/\w+-dialog|blanks\/dialog|strip|state\/difference)\./,
    /\/src\/words\/page\/(dialogs|troubles)\./,
  ],
  late: [
    /\/src\/web\/(work\/(reckoning|grips|grip-edits|ways|ways-out)|drawing\/grip)\./,
    /\/src\/words\/(reckoning|page\/(sums|ways))\./,
  ],
};

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
    modulePreload: false,
    target: "es2022",
    reportCompressedSize: true,
    // The engine's modules only define: what a place does not use is not in its code.
    rolldownOptions: {
      treeshake: { moduleSideEffects: (id) => !ENGINE.test(id) },
      output: {
        codeSplitting: {
          includeDependenciesRecursively: false,
          groups: Object.entries(FILES).map(([name, parts]) => ({
            name,
            test: (id: string) => parts.some((part) => part.test(id)),
          })),
        },
      },
    },
  },
  server: { proxy: { "/api": "http://127.0.0.1:4817" } },
});
