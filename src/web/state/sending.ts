import { browserStore } from "../browser-store.ts";
import { caughtUp, confirmedOf, madeUpon } from "./catching-up.ts";
import type { Held, Next } from "./keeping.ts";
import { isKept, keptOriginal } from "./pictures.ts";
import { held, history, keep, self, sender, trouble, whereKept } from "./session.ts";
import { begin, listed, recall, send, sendPicture, since, stored } from "./studio.ts";

/** How long it waits for a studio that does not answer, in milliseconds. */
const AGAIN = 4000;

/** Something may have happened at the studio that is not known here. */
let behind = true;
let busy = false;
let onceMore = false;
/** Whose list of changes to undo has been asked for. */
let recalled: string | null = null;
let waiting: ReturnType<typeof setTimeout> | undefined;

/** Brings every change to the studio from now on, and those of others here. Where there is no studio, nothing is tried. */
export async function beginSending(): Promise<void> {
  try {
    await listed();
  } catch (fault) {
    // A TypeError is how a browser says that nothing answered: the show stays in this browser.
    if (!(fault instanceof TypeError)) throw fault;
    return;
  }
  await beOneself();
  sender.wake = () => void wake();
  const news = new EventSource("./api/news");
  // Said at each new connection: who knows what happened before it.
  news.addEventListener("here", hearOf);
  news.addEventListener("show", (event) => {
    const told: unknown = JSON.parse(String(event.data));
    const { id, base } = held.value ?? {};
    if (
      typeof told === "object" &&
      told !== null &&
      Reflect.get(told, "show") === id &&
      Reflect.get(told, "number") !== base
    )
      hearOf();
  });
  addEventListener("online", hearOf);
  sender.wake();
}

function hearOf(): void {
  behind = true;
  sender.wake();
}

async function wake(): Promise<void> {
  if (busy) {
    onceMore = true;
    return;
  }
  busy = true;
  try {
    do {
      onceMore = false;
      await bring();
    } while (onceMore);
  } catch (fault) {
    if (!(fault instanceof TypeError)) throw fault;
    whereKept.value = "sending";
    behind = true;
    clearTimeout(waiting);
    waiting = setTimeout(() => sender.wake(), AGAIN);
  } finally {
    busy = false;
  }
}

/** Brings what waits to the studio and what has happened there here, until neither is left. */
async function bring(): Promise<void> {
  for (;;) {
    const mine = held.value;
    if (mine === null) return;
    if (mine.base === "browser" || mine.base === "with-a-change") {
      whereKept.value = "browser";
      if (mine.base === "browser" && trouble.value === null) trouble.value = { kind: "outside" };
      return;
    }
    if (recalled !== mine.id) behind = true;
    if (mine.pending.length > 0 || mine.base === "new") {
      if (whereKept.value !== "sending") whereKept.value = "sending";
      if (await picturesBrought(mine)) continue;
    }
    if (mine.base === "new") await begun(mine);
    else if (mine.pending.length > 0) await sent(mine, mine.base);
    else if (behind) await heard(mine, mine.base);
    else {
      whereKept.value = "studio";
      return;
    }
    await recollect(mine.id);
  }
}

async function begun(mine: Held): Promise<void> {
  const confirmed = confirmedOf(mine);
  // What waits cannot be taken back: all of it goes as it stands.
  await begin(mine.id, confirmed ?? mine.show);
  become(mine.id, (now) => ({ ...now, base: 0, pending: confirmed === null ? [] : now.pending }));
}

async function sent(mine: Held, base: number): Promise<void> {
  const outcome = await send(mine.id, base, mine.pending);
  if (outcome.kind === "none") return left(mine.id);
  return arrive(mine.id, outcome.entries);
}

async function heard(mine: Held, base: number): Promise<void> {
  behind = false;
  const entries = await since(mine.id, base);
  if (entries === null) return left(mine.id);
  if (entries.length > 0) await arrive(mine.id, entries);
}

/** The studio has the show no longer: it stays in this browser, and is offered to be taken in again. */
function left(id: string): void {
  become(id, (now) => ({ ...now, base: "browser", pending: [] }));
}

async function arrive(id: string, entries: Parameters<typeof caughtUp>[1]): Promise<void> {
  const mine = held.value;
  if (mine?.id !== id) return;
  const next = caughtUp(mine, entries);
  if (next !== null) {
    become(id, (now) => (now === mine ? next : caughtUp(now, entries)));
    return;
  }
  // What is known here does not lead there: the studio's state is read whole.
  const [whole, all] = [await stored(id), await since(id, 0)];
  if (whole === null || all === null) return left(id);
  const arrived = new Set(all.map(({ stamp }) => stamp));
  become(id, (now) => madeUpon(whole.show, whole.number, now, arrived));
}

/** Keeps a new state of a show as long as it is the open one. */
function become(id: string, how: (now: Held) => Next | null): void {
  const now = held.value;
  if (now?.id !== id) return;
  const next = how(now);
  if (next === null) return;
  const before = new Set(now.against);
  const fell = next.against.filter((one) => !before.has(one)).map(({ stamp }) => stamp);
  keep(next);
  if (fell.length > 0) {
    const { done, undone } = history.value;
    history.value = { done: done.filter(({ stamp }) => !fell.includes(stamp)), undone };
  }
}

/** Brings pictures that lie in this browser and are named by what waits. Whether there were any: then what names them has changed. */
async function picturesBrought(mine: Held): Promise<boolean> {
  const naming = mine.base === "new" ? [mine.show, mine.pending] : mine.pending;
  const keys = new Set(JSON.stringify(naming).match(/kept:[\w-]+/g) ?? []);
  const addresses = new Map<string, string>();
  for (const key of keys) {
    for (const picture of isKept(key) ? await keptOriginal(key) : []) {
      const address = await sendPicture(picture);
      if (address === null) continue;
      addresses.set(key, address);
      break;
    }
  }
  if (addresses.size === 0) return false;
  const named = <Value>(value: Value): Value =>
    JSON.parse(JSON.stringify(value), (_, inner: unknown) =>
      typeof inner === "string" ? (addresses.get(inner) ?? inner) : inner,
    ) as Value;
  become(mine.id, ({ base, show, pending, against }) => named({ base, show, pending, against }));
  history.value = named(history.value);
  return true;
}

/** What this window can undo, from the studio's history, as long as it has done nothing here yet. */
async function recollect(id: string): Promise<void> {
  if (recalled === id) return;
  const { done, undone } = await recall(id, self.window);
  recalled = id;
  const mine = history.value;
  if (held.value?.id === id && mine.done.length === 0 && mine.undone.length === 0)
    history.value = { done, undone };
}

const WINDOW = "margent.window";

/** The window takes up its own name of before a restart, where no other window has it, so that it undoes what it did. */
async function beOneself(): Promise<void> {
  const names = [remembered(() => sessionStorage), remembered(browserStore)];
  for (const name of names) {
    if (name === null || history.value.done.length > 0) continue;
    if (await taken(name)) {
      self.window = name;
      return note();
    }
  }
  await taken(self.window);
  return note();
}

function remembered(store: () => Storage | null): string | null {
  try {
    return store()?.getItem(WINDOW) ?? null;
  } catch (fault) {
    // A browser that keeps nothing throws at the first touch.
    if (fault instanceof DOMException) return null;
    throw fault;
  }
}

function note(): void {
  try {
    sessionStorage.setItem(WINDOW, self.window);
    browserStore()?.setItem(WINDOW, self.window);
  } catch (fault) {
    // Then it is another one after a restart.
    if (!(fault instanceof DOMException)) throw fault;
  }
}

/** Takes a name for as long as the window is open; false where another window has it. */
function taken(name: string): Promise<boolean> {
  return new Promise((told) => {
    void navigator.locks.request(`${WINDOW}.${name}`, { ifAvailable: true }, (lock) => {
      told(lock !== null);
      return lock === null ? undefined : new Promise(() => undefined);
    });
  });
}
