import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { extname, join, relative, sep } from "node:path";

/** One file of the page, as it is sent. */
export interface Asset {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly type: string;
  /** Strong, quoted: the same bytes have the same one. */
  readonly etag: string;
  /** Its name holds a hash of its content, so it never changes. */
  readonly immutable: boolean;
}

/** Files by their path below the folder, parted by "/" on every system. */
export type Assets = ReadonlyMap<string, Asset>;

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".jpg": "image/jpeg",
  ".woff2": "font/woff2",
  ".wasm": "application/wasm",
  ".txt": "text/plain; charset=utf-8",
};

/** The build puts everything it names by content into this folder. */
const HASHED = "assets/";

export function assetOf(path: string, content: Uint8Array): Asset {
  const bytes = new Uint8Array(content);
  return {
    bytes,
    type: TYPES[extname(path).toLowerCase()] ?? "application/octet-stream",
    etag: `"${createHash("sha256").update(bytes).digest("base64url").slice(0, 22)}"`,
    immutable: path.startsWith(HASHED),
  };
}

/** Every file below a folder, read once. Throws as the file system does when the folder cannot be read. */
export function readAssets(folder: string): Assets {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) =>
    entry.isFile(),
  );
  return new Map(
    entries.map((entry) => {
      const file = join(entry.parentPath, entry.name);
      const path = relative(folder, file).split(sep).join("/");
      return [path, assetOf(path, readFileSync(file))];
    }),
  );
}
