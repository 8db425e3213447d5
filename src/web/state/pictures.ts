import { newId } from "./chance.ts";
import { signal } from "./signal.ts";

/**
 * Pictures that a person has added lie in the browser's own database, apart from the shows: a show names
 * one by its key, and is written again at every change without it.
 */
const KEY = "kept:";
const STORE = "pictures";
const ORIGINAL = ".original";

export const isKept = (picture: string | undefined): picture is string => picture?.startsWith(KEY) === true;

const answerOf = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((done, fail) => {
    request.addEventListener("success", () => done(request.result));
    request.addEventListener("error", () => fail(request.error ?? new DOMException("no answer")));
  });

async function store(mode: IDBTransactionMode): Promise<IDBObjectStore> {
  const opening = indexedDB.open("margent", 1);
  opening.addEventListener("upgradeneeded", () => opening.result.createObjectStore(STORE));
  return (await answerOf(opening)).transaction(STORE, mode).objectStore(STORE);
}

/** Keeps a picture, and as it came until the studio has it, and gives its key. Throws DOMException where the browser keeps nothing more. */
export async function keepPicture(picture: Blob, original?: Blob): Promise<string> {
  const key = KEY + newId();
  const pictures = await store("readwrite");
  if (original !== undefined) await answerOf(pictures.put(original, key + ORIGINAL));
  await answerOf(pictures.put(picture, key));
  return key;
}

/** A kept picture as it came, and small: the best first. */
export async function keptOriginal(key: string): Promise<readonly Blob[]> {
  const found = [await keptPicture(key + ORIGINAL), await keptPicture(key)];
  return found.filter((one) => one !== undefined);
}

/** A kept picture; undefined where this browser has none of the key. */
export async function keptPicture(key: string): Promise<Blob | undefined> {
  const found: unknown = await answerOf((await store("readonly")).get(key));
  return found instanceof Blob ? found : undefined;
}

const addresses = signal<ReadonlyMap<string, string>>(new Map());
const asked = new Set<string>();

/** Where a picture can be loaded from; undefined while a kept one is looked up, and where there is none. */
export function addressOfPicture(picture: string): string | undefined {
  if (!isKept(picture)) return picture;
  if (!asked.has(picture)) void lookUp(picture);
  return addresses.value.get(picture);
}

async function lookUp(key: string): Promise<void> {
  asked.add(key);
  try {
    const found = await keptPicture(key);
    if (found !== undefined) addresses.value = new Map(addresses.value).set(key, URL.createObjectURL(found));
  } catch (fault) {
    // A browser that gives no database shows the work without its picture, as one that never had it.
    if (!(fault instanceof DOMException)) throw fault;
  }
}
