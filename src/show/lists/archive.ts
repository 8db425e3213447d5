import { Unzip, UnzipInflate, zipSync } from "fflate";
import { BOUNDS } from "./bounds.ts";
import type { Bounded } from "./records.ts";

export type Unpacked =
  | { readonly ok: true; readonly files: ReadonlyMap<string, Uint8Array> }
  | { readonly ok: false; readonly bound: Bounded | null };

/** Leaves the unpacking as soon as a bound is passed; never seen outside this file. */
class PastBound extends Error {
  readonly bound: Bounded;
  constructor(bound: Bounded) {
    super(`past the bound of ${bound}`);
    this.bound = bound;
  }
}

/** How much goes in at once: a thousandfold of it is the most that can come out before the bound is looked at. */
const STEP = 16 * 1024;

/**
 * Unpacks the files of an archive that are wanted. What comes out is counted as it comes, whatever sizes the
 * archive claims, and the unpacking stops at the bound: a small file that unpacks to gigabytes costs neither
 * memory nor time. `bound` is null where the archive itself is broken.
 */
export function unpack(bytes: Uint8Array, wanted: (name: string) => boolean): Unpacked {
  const chunks = new Map<string, Uint8Array[]>();
  let entries = 0;
  let total = 0;
  let failed = false;
  const unzip = new Unzip((file) => {
    entries++;
    if (entries > BOUNDS.entries) throw new PastBound("entries");
    if (!wanted(file.name)) return;
    const own: Uint8Array[] = [];
    chunks.set(file.name, own);
    file.ondata = (error, chunk) => {
      if (error !== null) failed = true;
      total += chunk?.length ?? 0;
      if (total > BOUNDS.unpackedBytes) throw new PastBound("unpackedBytes");
      if (error === null) own.push(chunk);
    };
    file.start();
  });
  unzip.register(UnzipInflate);
  try {
    for (let at = 0; at < bytes.length; at += STEP) {
      unzip.push(bytes.subarray(at, at + STEP), at + STEP >= bytes.length);
    }
  } catch (error) {
    // The unpacker throws its own errors, and plain ones where a broken stream leads it astray: all mean the same.
    return { ok: false, bound: error instanceof PastBound ? error.bound : null };
  }
  if (failed) return { ok: false, bound: null };
  return { ok: true, files: new Map([...chunks].map(([name, own]) => [name, joined(own)])) };
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((length, chunk) => length + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

/** The first day that a ZIP archive can name: no clock in the bytes. Its fields are of local time. */
const NO_DATE = new Date(1980, 0, 1);

/** Packs files into an archive without compressing them. */
export function packPlain(files: ReadonlyMap<string, Uint8Array>): Uint8Array {
  return zipSync(Object.fromEntries(files), { level: 0, mtime: NO_DATE });
}
