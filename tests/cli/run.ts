import { spawnSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("../../", import.meta.url));

export interface Ran {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the command line as a person does, in a process of its own. */
export function margent(args: readonly string[], input = ""): Ran {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(root, "scripts", "margent.mjs"), ...args],
    {
      input,
      encoding: "utf8",
      cwd: root,
      maxBuffer: 1 << 28,
      timeout: 60_000,
    },
  );
  return { status, out: stdout, err: stderr };
}

/** For each answered line, whether a problem stands in its place. */
export const refusedLines = (out: string): readonly boolean[] =>
  out
    .trim()
    .split("\n")
    .map((line) => "error" in (JSON.parse(line) as object));

export const folder = (): string => mkdtempSync(join(tmpdir(), "margent-"));
