/** A new id: 72 bits of the browser's own chance, safe in an address and in a store's key. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(9));
  return Array.from(bytes, (byte) => byte.toString(36).padStart(2, "0")).join("");
}

/** The present moment, ISO 8601. */
export const now = (): string => new Date().toISOString();
