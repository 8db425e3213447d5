import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { replaceFolder } from "../../src/cli/folder.ts";
import { folder } from "./run.ts";

async function* files(text: string): AsyncGenerator<{ name: string; bytes: Uint8Array }> {
  yield { name: "packet.json", bytes: new TextEncoder().encode(text) };
}

/** The name of the folder in which a run writes, as it is while it writes. */
async function freshName(out: string): Promise<string> {
  let name = "";
  async function* looking(): AsyncGenerator<{ name: string; bytes: Uint8Array }> {
    name = readdirSync(join(out, "..")).find((one) => one.startsWith(".packet.new-")) ?? "";
    yield* files("{}");
  }
  await replaceFolder(out, looking());
  return name;
}

test("[K13] a dead run's folder is swept, those of a running one, of another machine and of another form are not", async () => {
  const place = folder();
  const out = join(place, "packet");
  const name = await freshName(out);
  expect(name).toContain(`-${process.pid}-`);
  const { pid: gone } = spawnSync(process.execPath, ["--version"]);
  const [mine, id] = [`-${process.pid}-`, `-${gone}-`];
  const dead = name.replace(mine, id);
  const kept = [
    // Still running: this very process.
    `${name.slice(0, -6)}abcdef`,
    // Not exactly of the form.
    `${dead}x`,
    dead.replace(".packet.", ".packets."),
    dead.replace(".new-", ".new-elsewhere"),
    ".packet.new-abcdef",
    // A file, no folder.
    `${dead.slice(0, -6)}ABCDEF`,
  ];
  mkdirSync(join(place, dead, "deeper"), { recursive: true });
  writeFileSync(join(place, dead, "bench-sheets.pdf"), "half");
  for (const one of kept.slice(0, -1)) mkdirSync(join(place, one));
  writeFileSync(join(place, kept.at(-1) ?? ""), "keep me");
  expect(await replaceFolder(out, files("{}"))).toBe(1);
  expect(readdirSync(place).toSorted()).toEqual([...kept, "packet"].toSorted());
});
