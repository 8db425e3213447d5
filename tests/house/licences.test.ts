import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { root, textOf } from "./sources.ts";

/** Each asks that its notice be kept, and no more. */
const NOTICE = [
  "MIT",
  "MIT-0",
  "ISC",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "0BSD",
  "Apache-2.0",
  "BlueOak-1.0.0",
  "CC0-1.0",
  "Zlib",
  "Unlicense",
  "OFL-1.1",
];
/** These ask that changes to the package itself be given on; a tool that is only run asks for nothing. */
const TOOLS = [...NOTICE, "MPL-2.0", "LGPL-3.0-or-later", "Python-2.0", "CC-BY-4.0", "CC-BY-3.0"];

/** Listed among what the program needs, since `npm start` builds the page with it; nothing of it is in what is built. */
const BUILDER = /^node_modules\/lightningcss(-|$)/;

interface Locked {
  readonly dev?: boolean;
  readonly devOptional?: boolean;
  readonly optional?: boolean;
}

const lock = JSON.parse(textOf("package-lock.json")) as { packages: Record<string, Locked> };
const installed = Object.entries(lock.packages)
  .filter(([path]) => path !== "" && existsSync(join(root, path, "package.json")))
  .map(([path, { dev = false, devOptional = false, optional = false }]) => ({
    path,
    // What is optional the program runs without; it lies beside it, as a library of its own.
    tool: dev || devOptional || optional || BUILDER.test(path),
    licences: licencesOf(path),
  }));

function licencesOf(path: string): string {
  const { license, licenses } = JSON.parse(textOf(`${path}/package.json`)) as {
    license?: string | { type: string };
    licenses?: readonly { type: string }[];
  };
  if (typeof license === "string") return license;
  return license?.type ?? licenses?.map(({ type }) => type).join(" OR ") ?? byItsFile(path);
}

/** A few packages state no licence but carry its text. */
function byItsFile(path: string): string {
  const file = `${path}/LICENSE`;
  return existsSync(join(root, file)) && textOf(file).startsWith("MIT License\n") ? "MIT" : "none stated";
}

/** Whether one of the ways that an expression offers is allowed in all its parts. */
const allowed = (expression: string, list: readonly string[]): boolean =>
  expression
    .replace(/[()]/g, "")
    .split(" OR ")
    .some((way) => way.split(" AND ").every((one) => list.includes(one.trim())));

describe("licences", () => {
  test("[H9] are read from what is installed", () => expect(installed.length).toBeGreaterThan(80));

  test("[H9] of what the program runs with ask for their notice only", () => {
    const wrong = installed.filter(({ tool, licences }) => !tool && !allowed(licences, NOTICE));
    expect(wrong.map(({ path, licences }) => `${path}: ${licences}`)).toEqual([]);
  });

  test("[H9] of tests and tools leave the project's own alone", () => {
    const wrong = installed.filter(({ tool, licences }) => tool && !allowed(licences, TOOLS));
    expect(wrong.map(({ path, licences }) => `${path}: ${licences}`)).toEqual([]);
  });

  test("[H9] an expression is allowed by one of its ways, whole", () => {
    expect(allowed("(MIT OR GPL-3.0)", NOTICE)).toBe(true);
    expect(allowed("MIT AND GPL-3.0", NOTICE)).toBe(false);
    expect(allowed("GPL-3.0", TOOLS)).toBe(false);
    expect(allowed("none stated", TOOLS)).toBe(false);
  });

  test("[H9] the project's own is stated", () => {
    expect(JSON.parse(textOf("package.json"))).toMatchObject({ license: "MIT" });
    expect(textOf("LICENSE")).toMatch(/^MIT License\n\nCopyright \(c\) \d{4} the Margent authors\n/);
  });
});
