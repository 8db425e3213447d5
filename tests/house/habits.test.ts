import { existsSync } from "node:fs";
import { dirname, join, posix } from "node:path";
import ts from "typescript";
import { describe, expect, test } from "vitest";
import { filesIn, parsed, root, textOf, walk } from "./sources.ts";

const code = ["src", "tests", "examples", "bench", "scripts"].flatMap((folder) =>
  filesIn(folder, ".ts", ".tsx", ".mjs"),
);
const written = [
  ...code,
  ...filesIn("src", ".css", ".html"),
  ...filesIn("docs", ".md"),
  ...filesIn(".ci"),
  "README.md",
  "CHANGELOG.md",
  "package.json",
  "vite.config.ts",
  "vitest.config.ts",
  "biome.json",
  ".oxlintrc.json",
];

/** Where a pattern is found, as file and line. */
const findings = (files: readonly string[], pattern: RegExp): string[] =>
  files.flatMap((file) =>
    textOf(file)
      .split("\n")
      .flatMap((line, i) => (pattern.test(line) ? [`${file}:${i + 1}: ${line.trim()}`] : [])),
  );

// Words are put together here, so that this file does not find itself.
const word = (...parts: string[]): RegExp => new RegExp(parts.join(""));

const lines = (file: string): number => textOf(file).trimEnd().split("\n").length;

describe("sizes", () => {
  test("[H5] no file of the program must be scrolled to be held", () => {
    const long = filesIn("src", ".ts", ".tsx").filter((file) => lines(file) > 300);
    expect(long.map((file) => `${file}: ${lines(file)}`)).toEqual([]);
  });

  test("[H5] nor one of its tests", () => {
    const long = [
      ...filesIn("tests", ".ts"),
      ...filesIn("examples", ".ts"),
      ...filesIn("bench", ".ts"),
    ].filter((file) => lines(file) > 400);
    expect(long.map((file) => `${file}: ${lines(file)}`)).toEqual([]);
  });
});

describe("nothing is left for later or switched off", () => {
  test.each([
    ["a note of work to come", word("\\b(TO", "DO|FIX", "ME|X", "XX|HA", "CK)\\b")],
    ["a silenced compiler", word("@ts-", "(ignore|nocheck)")],
    ["a silenced linter", word("(eslint|oxlint|biome)-", "(disable|ignore)|biome-", "ignore")],
    ["coverage looked away from", word("(v8|c8|istanbul) ", "ignore")],
  ])("[H6] %s stands nowhere", (_, pattern) => {
    expect(findings(written, pattern)).toEqual([]);
  });

  test("[H6] there is no test left out or singled out", () => {
    const left = word(
      "\\b(test|it|describe)(\\.\\w+)*\\.",
      "(skip|only|todo|fails)\\b|\\b(x|f)(it|describe|test)\\(",
    );
    expect(findings(filesIn("tests", ".ts"), left)).toEqual([]);
  });

  test("[H6] there is no type that says nothing", () => {
    const loose: string[] = [];
    for (const file of code.filter((one) => !one.endsWith(".mjs"))) {
      walk(parsed(file), (node) => {
        if (node.kind === ts.SyntaxKind.AnyKeyword)
          loose.push(`${file}: ${node.parent.getText().slice(0, 60)}`);
      });
    }
    expect(loose).toEqual([]);
  });

  test("[H6] there is no error caught and dropped", () => {
    const dropped: string[] = [];
    for (const file of code.filter((one) => !one.endsWith(".mjs"))) {
      walk(parsed(file), (node) => {
        if (ts.isCatchClause(node) && node.block.statements.length === 0) dropped.push(file);
      });
    }
    expect(dropped).toEqual([]);
  });
});

describe("the project speaks of itself alone", () => {
  test("[H7] every document that is named is there", () => {
    const missing = written.flatMap((file) =>
      [...textOf(file).matchAll(/(?<![\w/*$}-])((?:[\w.-]+\/)*[\w-]+\.md)\b/g)].flatMap(([, name = ""]) =>
        [name, posix.join(dirname(file), name), `docs/${name}`].some((path) => existsSync(join(root, path)))
          ? []
          : [`${file}: ${name}`],
      ),
    );
    expect(missing).toEqual([]);
  });

  test("[H7] no path of one machine stands anywhere", () => {
    expect(findings(written, word("(^|[\\s\"'`(=])/(home|Users|root|wo", "rk|mnt)/"))).toEqual([]);
  });

  test("[H7] nothing tells how it came to be written", () => {
    const told = word("\\b(A", "I|LL", "Ms?|chat", "bots?|language mo", "dels?|co", "pilot)\\b");
    expect(findings(written, told)).toEqual([]);
  });
});

describe("what the documents tell to run", () => {
  test("[H10] exists", () => {
    const { scripts } = JSON.parse(textOf("package.json")) as { scripts: Record<string, string> };
    const known = new Set([...Object.keys(scripts), "ci", "install"]);
    const told = [...filesIn("docs", ".md"), "README.md", "CHANGELOG.md"].flatMap((file) =>
      [...textOf(file).matchAll(/\bnpm (?:run )?(?:-s |--silent )?([a-z][\w:-]*)/g)].map(([, name = ""]) => ({
        file,
        name,
      })),
    );
    expect(told.length).toBeGreaterThan(2);
    expect(told.filter(({ name }) => !known.has(name))).toEqual([]);
  });

  test("[H10] and every script runs a file that is there", () => {
    const { scripts } = JSON.parse(textOf("package.json")) as { scripts: Record<string, string> };
    const files = Object.values(scripts).flatMap((script) => script.match(/\S+\.(mjs|ts)\b/g) ?? []);
    expect(files.length).toBeGreaterThan(2);
    for (const file of files) expect(existsSync(join(root, file)), file).toBe(true);
  });
});
