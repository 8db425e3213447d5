import type { ComponentType } from "preact";
import { PAGE } from "../words/page.ts";
import { told } from "./state/session.ts";
import { signal } from "./state/signal.ts";

/** Files of code that are left for later, so that they can be fetched while there is still a network. */
const waiting = new Set<() => Promise<void>>();

/** A file of code that comes when one of its components is first shown, or in a quiet moment before. */
export function file<Code>(load: () => Promise<Code>) {
  const here = signal<Code | null>(null);
  const fetchOnce = async (): Promise<void> => {
    here.value ??= await load();
  };
  waiting.add(fetchOnce);
  /** One component of the file; nothing stands there until it is here. With `waits` it is not fetched for this one. */
  return <Props extends object>(
    part: (code: Code) => ComponentType<Props>,
    waits = false,
  ): ComponentType<Props> =>
    function Later(props: Props) {
      if (here.value === null) {
        if (!waits) void orTold(fetchOnce);
        return null;
      }
      const Component = part(here.value);
      return <Component {...props} />;
    };
}

export const following = file(() => import("./following.ts"));
export const whenOpened = file(() => import("./when-opened.ts"));

type Acts = typeof import("./when-opened.ts");

/** Fetches code; where it cannot be had, the page says so and nothing is lost. */
async function orTold<Code>(fetchCode: () => Promise<Code>): Promise<Code | null> {
  try {
    return await fetchCode();
  } catch (fault) {
    // A TypeError is how a browser says that nothing answered.
    if (!(fault instanceof TypeError)) throw fault;
    told.value = PAGE.notHere;
    return null;
  }
}

/** Does what an act asks for. */
export async function act(does: (acts: Acts) => Promise<void>): Promise<void> {
  const acts = await orTold<Acts>(() => import("./when-opened.ts"));
  if (acts !== null) await does(acts);
}

/** Fetches in a quiet moment what has not been wanted yet: the page goes on when the server does not. */
export function fetchTheRest(): void {
  const quiet =
    "requestIdleCallback" in window ? window.requestIdleCallback : (run: () => void) => setTimeout(run, 2000);
  quiet(() => {
    for (const fetchOnce of waiting) void fetchOnce();
    void import("./when-opened.ts").then(async ({ beginSending }) => beginSending());
  });
}
