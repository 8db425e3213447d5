import { signal } from "./state/signal.ts";
import { LIGHT_OPTIONS } from "../words/page.ts";

type Light = (typeof LIGHT_OPTIONS)[number]["key"];
const KEY = "margent.light";

/** By day, by night, or as the system has it. */
export const light = signal<Light>("system");

export function beginLight(store: Storage | null): void {
  const kept = store?.getItem(KEY);
  setLight(LIGHT_OPTIONS.find(({ key }) => key === kept)?.key ?? "system", null);
}

export function setLight(next: Light, store: Storage | null): void {
  light.value = next;
  if (next === "system") document.documentElement.removeAttribute("data-theme");
  else document.documentElement.setAttribute("data-theme", next);
  if (store === null) return;
  try {
    store.setItem(KEY, next);
  } catch (fault) {
    // A full store costs only that the choice is asked again next time.
    if (!(fault instanceof DOMException)) throw fault;
  }
}

export const lightNamed = (key: string): Light =>
  LIGHT_OPTIONS.find((option) => option.key === key)?.key ?? "system";
