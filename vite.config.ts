import { fileURLToPath } from "node:url";
import { defineConfig, type Plugin } from "vite";

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

const DEFINES_ONLY = /\/src\/(lengths|geometry|assembly|plans|show|drawings|words)\/|\/preact\/dist\//;

/** Offered to all by an index, wanted only where a file is brought in or by what follows. */
const LATER =
  /\/(zod|fflate|hucre)\/|\/assembly\/(hang|hold|light|record|frame)\/|\/show\/(lists|metadata|[a-z-]*schema|validate)|\/views\/grips|\/words\/(reckoning|page\/(dialogs|files|sums|troubles|ways))/;

/** What the page's entry imports, and what that imports: needed before one can work anywhere, so it comes as one file. */
const atOnce = new Set<string>();
const findAtOnce: Plugin = {
  name: "find-at-once",
  buildEnd() {
    const take = (id: string): void => {
      if (atOnce.has(id)) return;
      atOnce.add(id);
      this.getModuleInfo(id)?.importedIds.forEach(take);
    };
    take(here("./src/web/main.tsx"));
  },
};

/** All styles come at once and nothing is fetched ahead of its module: a later file of code needs no helper to be loaded. */
const importPlainly: Plugin = {
  name: "import-plainly",
  enforce: "pre",
  load: (id) =>
    id === "\0vite/preload-helper.js" ? "export const __vitePreload = (load) => load();" : undefined,
};

// The page runs under a content-security policy without inline scripts, inline styles or data
// addresses: assets stay files, and no loader is written into the document.
export default defineConfig({
  root: here("./src/web"),
  base: "./",
  publicDir: false,
  // The plain call for an element packs more densely than that of the automatic runtime.
  oxc: {
    jsx: { runtime: "classic", pragma: "jsxElement", pragmaFrag: "JsxFragment" },
    jsxInject: 'import { h as jsxElement, Fragment as JsxFragment } from "preact"',
  },
  plugins: [findAtOnce, importPlainly],
  build: {
    outDir: here("./dist/web"),
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: false,
    target: "es2022",
    reportCompressedSize: true,
    // What only defines and is not used is not in the code.
    rolldownOptions: {
      treeshake: { moduleSideEffects: (id) => !DEFINES_ONLY.test(id) },
      output: {
        codeSplitting: {
          groups: [{ name: "page", test: (id: string) => atOnce.has(id) && !LATER.test(id) }],
        },
      },
    },
  },
  server: { proxy: { "/api": "http://127.0.0.1:4817" } },
});
