import { Unzlib } from "fflate";

/** A record of one picture is no longer. */
const MOST = 4 * 2 ** 20;
/** How much goes in at once: a thousandfold of it is the most that can come out before the bound is looked at. */
const STEP = 4096;

/** Packed bytes (zlib) unpacked; null where they are damaged, or unpack to more than any record is long. */
export function inflated(packed: Uint8Array): Uint8Array | null {
  const chunks: Uint8Array[] = [];
  let total = 0;
  const stream = new Unzlib((chunk) => {
    chunks.push(chunk);
    total += chunk.length;
  });
  try {
    for (let at = 0; at < packed.length; at += STEP) {
      stream.push(packed.subarray(at, at + STEP), at + STEP >= packed.length);
      if (total > MOST) return null;
    }
  } catch {
    // Whatever damaged bytes make the unpacker throw, they say nothing.
    return null;
  }
  const whole = new Uint8Array(total);
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}
