// `npm run bench` runs every benchmark, `npm run bench -- compose` those named, with the options that
// follow the names. Each is seeded and prints its figures with what they are held against.
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { bundled, root } from "./bundle.mjs";

const given = process.argv.slice(2);
const firstOption = given.findIndex((word) => word.startsWith("--"));
const wanted = firstOption < 0 ? given : given.slice(0, firstOption);
const options = firstOption < 0 ? [] : given.slice(firstOption);
const all = readdirSync(join(root, "bench"))
  .filter((file) => file.endsWith(".ts"))
  .map((file) => file.slice(0, -3));
const unknown = wanted.filter((name) => !all.includes(name));
if (unknown.length > 0) {
  console.error(`bench: no benchmark ${unknown.join(", ")}; there are ${all.join(", ")}`);
  process.exit(2);
}
let status = 0;
for (const name of wanted.length > 0 ? wanted : all) {
  console.log(`\n${name}`);
  const bundle = await bundled(`bench/${name}.ts`, ["src", "bench", "tests"]);
  const { status: ended } = spawnSync(process.execPath, ["--expose-gc", bundle, ...options], {
    cwd: root,
    stdio: "inherit",
  });
  if (ended !== 0) status = 1;
}
process.exit(status);
