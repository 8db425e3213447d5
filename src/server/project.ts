import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The project's own folder: the nearest above this code that holds its package.json, whether it runs from the sources or from a bundle. */
export function projectFolder(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, "package.json"))) {
    const above = dirname(folder);
    if (above === folder) throw new Error(`no package.json above ${fileURLToPath(import.meta.url)}`);
    folder = above;
  }
  return folder;
}
