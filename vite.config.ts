import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

const ENGINE = /\/src\/(lengths|geometry|assembly|plans|show|drawings|words)\//;

// One file of what every place needs: many small ones compress badly. What only one place, one dialog
// or one act needs comes with it.
const EVERYWHERE = [
  /node_modules\/@?preact/,
  /\/src\/(lengths|geometry|assembly|drawings)\//,
  /\/src\/show\/(?!lists|schema|validate|compose-json)/,
  /\/src\/words\/(?!reckoning|page\/(sums|dialogs|files|first|troubles|ways|works))/,
  /\/src\/web\/(blanks\/(?!dialog)|drawing\/(?!grip)|state\/(?!read-show|difference))/,
  /\/src\/web\/(main|app|later|title-block|undo-acts|light|keys|browser-store)\./,
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
    modulePreload: false,
    target: "es2022",
    reportCompressedSize: true,
    // The engine's modules only define: what a place does not use is not in its code.
    rolldownOptions: {
      treeshake: { moduleSideEffects: (id) => !ENGINE.test(id) },
      output: {
        codeSplitting: {
          groups: [{ name: "page", test: (id: string) => EVERYWHERE.some((part) => part.test(id)) }],
        },
      },
    },
  },
  server: { proxy: { "/api": "http://127.0.0.1:4817" } },
});
