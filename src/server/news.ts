import { showStates, type Store } from "../storage/index.ts";

/** That a show has a new last change. */
export interface ShowNews {
  readonly show: string;
  readonly number: number;
}

/** Who hears of it; null: the server is stopping. */
type Listener = (told: ShowNews | null) => void;

export interface News {
  /** Tells from now on; what comes back ends it. */
  listen(listener: Listener): () => void;
  /** Sends everybody away: no stream holds the server up when it stops. */
  end(): void;
}

/** How often the changes of other programs on the same database are looked for, in milliseconds. */
const OTHERS = 1000;

/**
 * What happens to the shows of a store, told to every open page: changes made here at once, those that
 * another server or a command has made within a second. Nobody is asked while nobody listens.
 */
export function newsOf(store: Store, report: (fault: unknown) => void): News {
  const listeners = new Set<Listener>();
  const known = new Map<string, string>();
  let looking: NodeJS.Timeout | null = null;
  let under = false;
  /** Something happened while it was looked. */
  let again = false;

  async function look(): Promise<void> {
    if (under) {
      again = true;
      return;
    }
    under = true;
    try {
      for (const { id, number, at } of await showStates(store)) {
        const state = `${number} ${at}`;
        const before = known.get(id);
        known.set(id, state);
        if (before === undefined || before === state) continue;
        for (const listener of listeners) listener({ show: id, number });
      }
    } catch (fault) {
      report(fault);
    } finally {
      under = false;
    }
    if (!again) return;
    again = false;
    await look();
  }

  const here = (): void => void look();
  return {
    listen(listener) {
      listeners.add(listener);
      if (looking === null) {
        void look();
        store.listeners.add(here);
        looking = setInterval(() => void look(), OTHERS);
        looking.unref();
      }
      return () => {
        listeners.delete(listener);
        if (listeners.size > 0 || looking === null) return;
        clearInterval(looking);
        looking = null;
        store.listeners.delete(here);
      };
    },
    end() {
      for (const listener of listeners) listener(null);
    },
  };
}
