import { fileURLToPath } from "node:url";
import { defineConfig, type Plugin } from "vite";

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

const DEFINES_ONLY =
  /\/src\/(lengths|geometry|assembly|plans|solver|show|drawings|papers|words|packet)\/|\/preact\/dist\//;

/** Offered to all by an index, wanted only where a file is brought in or by what follows. */
const LATER =
  /\/(zod|fflate|hucre)\/|\/assembly\/(hang|hold|light|record|frame)\/|\/show\/(lists|metadata|[a-z-]*schema|validate)|\/views\/grips|\/words\/(reckoning|page\/(dialogs|files|first|sums|all-works|troubles|ways))/;

/** What boards, frames and walls are reckoned and drawn with: only they want it. */
const OF_FRAMED =
  /\/src\/(packet|papers|plans)\/|\/assembly\/(frame|hang|hold)\/|\/views\/wall\/|\/show\/(cut-blanks|days|frame-habits|hang-request|hang-wall|mass|read-(fitting|frames|held|light|money|packing|practice|show-walls|wall|work-frame)|show-read|stock|wall-works)\.ts|\/words\/(cut-plan|cutting|frame|hanging|runs|weights|page\/(boards|framing|habit-[a-z]+|papers|practice|wall))\.ts/;

const isLater = (id: string): boolean => LATER.test(id) || OF_FRAMED.test(id);

/** Where a work is made: each comes as its own file, and what two of them need as another. */
const PLACES = ["first/first", "works/works", "work/work"].map((name) => here(`./src/web/${name}.tsx`));

/** What the page's entry imports, and what that imports: needed before one can work anywhere, so it comes as one file. */
const atOnce = new Set<string>();
/** What more than one of the places imports beyond that. */
const together = new Set<string>();
/** What the last of them imports, a work by itself. */
const ofWork = new Set<string>();
const findAtOnce: Plugin = {
  name: "find-at-once",
  buildEnd() {
    const closureOf = (id: string, into = new Set<string>()): Set<string> => {
      if (into.has(id)) return into;
      into.add(id);
      for (const imported of this.getModuleInfo(id)?.importedIds ?? []) closureOf(imported, into);
      return into;
    };
    for (const id of closureOf(here("./src/web/main.tsx"))) atOnce.add(id);
    const closures = PLACES.map((place) => closureOf(place));
    for (const id of closures.flatMap((closure) => [...closure]))
      if (closures.filter((closure) => closure.has(id)).length > 1) together.add(id);
    for (const id of closures.at(-1) ?? []) ofWork.add(id);
  },
};

/** What only defines and is not used is not in the code, of a worker either. */
const treeshake = { moduleSideEffects: (id: string) => !DEFINES_ONLY.test(id) };

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
    rolldownOptions: {
      treeshake,
      output: {
        codeSplitting: {
          groups: [
            { name: "page", test: (id: string) => atOnce.has(id) && !isLater(id) },
            { name: "together", test: (id: string) => together.has(id) && !isLater(id) },
            { name: "work", test: (id: string) => ofWork.has(id) && !isLater(id) },
          ],
        },
      },
    },
  },
  worker: { rolldownOptions: { treeshake } },
  server: { proxy: { "/api": "http://127.0.0.1:4817" } },
});
