import { signal } from "@preact/signals";
import type { ComponentType } from "preact";

/** Parts that were left for later, so that they can be fetched while there is still a network. */
const waiting: (() => Promise<unknown>)[] = [];

/** A component whose code comes when it is first shown, or in a quiet moment before. */
export function later<Props extends object>(load: () => Promise<ComponentType<Props>>): ComponentType<Props> {
  const loaded = signal<ComponentType<Props> | null>(null);
  const fetchOnce = async (): Promise<void> => {
    loaded.value ??= await load();
  };
  waiting.push(fetchOnce);
  return function Later(props: Props) {
    const Component = loaded.value;
    if (Component !== null) return <Component {...props} />;
    void fetchOnce();
    return null;
  };
}

/** Fetches in a quiet moment what has not been wanted yet: the page goes on when the server does not. */
export function fetchTheRest(): void {
  const quiet =
    "requestIdleCallback" in window ? window.requestIdleCallback : (run: () => void) => setTimeout(run, 2000);
  quiet(() => {
    for (const fetchOnce of waiting) void fetchOnce();
  });
}
