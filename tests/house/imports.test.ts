import { readdirSync } from "node:fs";
import { dirname, join, posix } from "node:path";
import ts from "typescript";
import { describe, expect, test } from "vitest";
import { filesIn, type Import, importsOf, parsed, root, textOf, walk } from "./sources.ts";

/** From what everything is made of to what people see. */
const ORDER = [
  "lengths",
  "geometry",
  "assembly",
  "photo",
  "plans",
  "solver",
  "show",
  "drawings",
  "papers",
  "words",
  "packet",
  "storage",
  "server",
  "cli",
  "web",
];
/** These stand above `words` and may still speak: its sentences need only types of theirs. */
const SPEAK = new Set(["show", "drawings", "papers"]);
const ENGINE = ["lengths", "geometry", "assembly", "plans", "drawings", "papers", "words"];
const isEngine = (file: string): boolean =>
  ENGINE.includes(folderOf(file)) && !file.startsWith("src/drawings/writers/pdf/");

const sources = filesIn("src", ".ts", ".tsx");
const folderOf = (file: string): string => file.split("/")[1] ?? "";
const imports = sources.flatMap(importsOf);
const targetOf = ({ file, from }: Import): string | null =>
  from.startsWith(".") ? posix.join(dirname(file), from) : null;
const crossing = imports.flatMap((one) => {
  const target = targetOf(one);
  return target?.startsWith("src/") && folderOf(target) !== folderOf(one.file) ? [{ ...one, target }] : [];
});
const said = ({ file, from }: Import): string => `${file}: ${from}`;

describe("the order of the folders", () => {
  test("[H1] names every folder there is", () => {
    const folders = readdirSync(join(root, "src"), { withFileTypes: true });
    for (const entry of folders) expect(ORDER, entry.name).toContain(entry.name);
  });

  test("[H1] sees imports at all", () => {
    expect(imports.length).toBeGreaterThan(100);
    expect(crossing.length).toBeGreaterThan(50);
  });

  test("[H1] is never gone up", () => {
    const upward = crossing.filter(({ file, target }) => {
      const [from, to] = [folderOf(file), folderOf(target)];
      if (to === "words" && SPEAK.has(from)) return false;
      // What words takes from above are types alone, which the next rule holds.
      return ORDER.indexOf(to) > ORDER.indexOf(from);
    });
    expect(upward.map(said)).toEqual([]);
  });

  test("[H1] is not left by a way round it", () => {
    const outside = imports.filter((one) => targetOf(one)?.startsWith("src/") === false);
    expect(outside.map(said)).toEqual([]);
  });

  test("[H2] words takes nothing that runs but lengths", () => {
    const taken = crossing.filter(
      ({ file, target, runs }) => folderOf(file) === "words" && runs && folderOf(target) !== "lengths",
    );
    expect(taken.map(said)).toEqual([]);
  });
});

describe("the engine", () => {
  /** What needs neither a page nor Node: pure tables and tongs. */
  const FREE_PACKAGES = new Set<string>();

  test("[H3] is all compiled without the names of browsers and of Node", () => {
    const config = ts.parseConfigFileTextToJson("tsconfig.engine.json", textOf("tsconfig.engine.json"))
      .config as {
      compilerOptions: { lib: string[]; types: string[] };
      include: string[];
      exclude: string[];
    };
    expect(config.compilerOptions.types).toEqual([]);
    expect(config.compilerOptions.lib.filter((lib) => !lib.startsWith("ES"))).toEqual([]);
    const present = ENGINE.map((folder) => `src/${folder}`);
    expect(config.include).toEqual(expect.arrayContaining(present));
    expect(config.exclude).toEqual(["src/drawings/writers/pdf"]);
  });

  test("[H3] imports neither Node's modules nor packages", () => {
    const foreign = imports.filter(
      ({ file, from }) => isEngine(file) && !from.startsWith(".") && !FREE_PACKAGES.has(from),
    );
    expect(foreign.map(said)).toEqual([]);
  });

  test("[H3] takes clock and chance as arguments", () => {
    const asked: string[] = [];
    for (const file of sources.filter((one) => isEngine(one) || folderOf(one) === "show")) {
      walk(parsed(file), (node) => {
        const text = ts.isPropertyAccessExpression(node) ? node.getText() : "";
        const now =
          ts.isNewExpression(node) && node.expression.getText() === "Date" && !node.arguments?.length;
        if (/^(Date\.now|Math\.random|performance\.now|crypto\.\w+)$/.test(text) || now)
          asked.push(`${file}: ${node.getText()}`);
      });
    }
    expect(asked).toEqual([]);
  });
});

describe("the doors", () => {
  test("[H4] a folder is entered by its index", () => {
    const inside = crossing.filter(({ file, target }) => {
      const to = folderOf(target);
      if (to === "words" || to === "web") return false;
      // A folder within a folder may have a door of its own.
      return posix.basename(target) !== "index.ts" && !(folderOf(file) === "words" && to !== "lengths");
    });
    expect(inside.map(said)).toEqual([]);
  });

  test("[H4] every import names its file with its extension", () => {
    const bare = imports.filter(
      ({ from }) => from.startsWith(".") && !/\.(ts|tsx|css|svg|woff2|json)(\?\w+)?$/.test(from),
    );
    expect(bare.map(said)).toEqual([]);
  });
});
