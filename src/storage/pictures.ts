import { createHash } from "node:crypto";
import type { Store } from "./store.ts";

/** Larger files are no pictures of a print. */
export const MOST_PICTURE_BYTES = 120_000_000;
/** More than any camera or scanner here gives, and still decoded in a gigabyte. */
const MOST_PIXELS = 250_000_000;
/** The longest side of a preview: sharp on a wide page and on an A4 paper, some 300 kB. */
const PREVIEW = 1600;

/** What is kept, by the signs that each begins with (their own standards). */
const KINDS: readonly {
  readonly type: string;
  readonly end: string;
  readonly at: number;
  readonly says: readonly string[];
}[] = [
  { type: "image/jpeg", end: "jpg", at: 0, says: ["\xff\xd8\xff"] },
  { type: "image/png", end: "png", at: 0, says: ["\x89PNG\r\n\x1a\n"] },
  { type: "image/webp", end: "webp", at: 8, says: ["WEBP"] },
  { type: "image/avif", end: "avif", at: 4, says: ["ftypavif", "ftypavis"] },
  { type: "image/gif", end: "gif", at: 0, says: ["GIF87a", "GIF89a"] },
  { type: "image/tiff", end: "tif", at: 0, says: ["II*\0", "MM\0*"] },
];

/** The type of a picture's bytes, whatever it is called; null where it is none that is kept. */
export function pictureType(bytes: Uint8Array): string | null {
  const start = String.fromCharCode(...bytes.subarray(0, 16));
  return KINDS.find(({ at, says }) => says.some((sign) => start.startsWith(sign, at)))?.type ?? null;
}

export const pictureEnd = (type: string): string => KINDS.find((kind) => kind.type === type)?.end ?? "bin";

export const pictureSum = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");

export interface KeptPicture {
  readonly sum: string;
  readonly type: string;
  readonly width: number | null;
  readonly height: number | null;
}

interface Preview {
  readonly bytes: Uint8Array | null;
  readonly width: number | null;
  readonly height: number | null;
}

const NO_PREVIEW: Preview = { bytes: null, width: null, height: null };

/** Keeps a picture under the sum of its bytes; the same bytes are kept once. Null where they are no picture. */
export async function keepPicture(store: Store, bytes: Uint8Array): Promise<KeptPicture | null> {
  const type = pictureType(bytes);
  if (type === null) return null;
  const sum = pictureSum(bytes);
  const there = await store.db
    .selectFrom("pictures")
    .select(["sum", "type", "width", "height"])
    .where("sum", "=", sum)
    .executeTakeFirst();
  if (there !== undefined) return there;
  const preview = await previewOf(bytes);
  if (preview === null) return null;
  const { width, height } = preview;
  await store.db
    .insertInto("pictures")
    .values({
      sum,
      type,
      width,
      height,
      size: bytes.length,
      at: store.clock().toISOString(),
      bytes: Buffer.from(bytes),
      preview: preview.bytes === null ? null : Buffer.from(preview.bytes),
    })
    .onConflict((conflict) => conflict.doNothing())
    .execute();
  return { sum, type, width, height };
}

/**
 * A small picture, decoded on a thread of its own and no further than its pixels are bounded; null where
 * the bytes cannot be decoded. Without the library that decodes, the original serves.
 */
async function previewOf(bytes: Uint8Array): Promise<Preview | null> {
  const sharp = await library();
  if (sharp === null) return NO_PREVIEW;
  try {
    const { data, info } = await sharp(bytes, { limitInputPixels: MOST_PIXELS, failOn: "error" })
      .rotate()
      .flatten({ background: "#fff" })
      .resize({ width: PREVIEW, height: PREVIEW, fit: "inside", withoutEnlargement: true })
      .jpeg({ quality: 85 })
      .toBuffer({ resolveWithObject: true });
    return { bytes: new Uint8Array(data), width: info.width, height: info.height };
  } catch (error) {
    // The library's only way to say that bytes are no picture, or one past the bound.
    if (error instanceof Error) return null;
    throw error;
  }
}

async function library(): Promise<typeof import("sharp")["default"] | null> {
  try {
    return (await import("sharp")).default;
  } catch (error) {
    // Where there is none for this machine, the program goes without.
    if (error instanceof Error) return null;
    throw error;
  }
}

/** A picture's bytes: as it came in, or small. Null where there is none of the sum. */
export async function readPicture(
  { db }: Store,
  sum: string,
  which: "original" | "preview",
): Promise<{ readonly bytes: Uint8Array; readonly type: string } | null> {
  const asked = db.selectFrom("pictures").where("sum", "=", sum);
  if (which === "preview") {
    const small = await asked.select("preview").executeTakeFirst();
    if (small === undefined) return null;
    if (small.preview !== null) return { bytes: new Uint8Array(small.preview), type: "image/jpeg" };
  }
  const row = await asked.select(["bytes", "type"]).executeTakeFirst();
  return row === undefined ? null : { bytes: new Uint8Array(row.bytes), type: row.type };
}

/** Where a kept picture is had, as a work names it. */
export const PICTURE_ADDRESS = "/api/pictures/";

/** The sum that an address names; null where it is another's. */
export const sumOf = (address: string | undefined): string | null =>
  /^\/api\/pictures\/([0-9a-f]{64})$/.exec(address ?? "")?.[1] ?? null;
