/** The browser's own store; null where it is switched off, which throws at the first touch. */
export function browserStore(): Storage | null {
  try {
    const store = window.localStorage;
    return typeof store.length === "number" ? store : null;
  } catch (fault) {
    if (fault instanceof DOMException) return null;
    throw fault;
  }
}
