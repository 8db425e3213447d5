import { execFileSync } from "node:child_process";
import { mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { listOf } from "./list.ts";
import { jpegOf } from "./picture.ts";
import { SCHEMAS } from "../../src/cli/schema.ts";
import { jsonSchemaOf } from "../../src/show/index.ts";
import { PRACTICE, SHOW, STOCK, WORKS } from "./show.ts";

/** Writes the example show anew: its document, its list, its rack, its habits and its pictures; and the documents' schemas. Always the same ones. */
const project = fileURLToPath(new URL("../../", import.meta.url));
const folder = join(project, "examples", "slack-water");
const pictures = join(folder, "pictures");
mkdirSync(pictures, { recursive: true });

const documents = { "show.json": SHOW, "practice.json": PRACTICE, "stock.json": STOCK };
for (const [name, document] of Object.entries(documents)) {
  writeFileSync(join(folder, name), `${JSON.stringify(document, null, 2)}\n`);
}
const schemas = join(project, "docs", "schemas");
mkdirSync(schemas, { recursive: true });
for (const [name, schema] of Object.entries(SCHEMAS))
  writeFileSync(join(schemas, `${name}.json`), `${JSON.stringify(jsonSchemaOf(schema), null, 2)}\n`);
execFileSync(
  process.execPath,
  [join(project, "node_modules", "@biomejs", "biome", "bin", "biome"), "format", "--write", folder, schemas],
  { cwd: project, stdio: "inherit" },
);
writeFileSync(join(folder, "list.csv"), listOf());

for (const name of readdirSync(pictures)) rmSync(join(pictures, name));
let bytes = 0;
for (const work of WORKS) {
  const picture = await jpegOf(work);
  bytes += picture.length;
  writeFileSync(join(pictures, `${work.id}.jpg`), picture);
}
console.log(`${WORKS.length} works, ${Math.round(bytes / 1000)} kB of pictures, in ${folder}`);
