import { signal } from "./signal.ts";

/** What an address may name, one work aside. */
const NAMES = ["first", "works", "boards", "frames", "wall", "papers", "practice"] as const;
export type PlaceName = (typeof NAMES)[number];

/** Where in the page one is. The address says it, so that back, forward and a copied address work. */
export type Place = { readonly at: PlaceName } | { readonly at: "work"; readonly id: string };

export function placeOf(hash: string): Place {
  const [at = "", id = ""] = hash.replace(/^#\/?/, "").split("/");
  if (at === "work" && id !== "") return { at: "work", id: decodeURIComponent(id) };
  return { at: NAMES.find((name) => name === at) ?? "works" };
}

export function addressOf(place: Place): string {
  return place.at === "work" ? `#/work/${encodeURIComponent(place.id)}` : `#/${place.at}`;
}

export const place = signal<Place>({ at: "works" });

/** The work that was shown last: coming back to all works, one is where one left. */
export const lastOpened = signal<string | null>(null);

export function goTo(next: Place): void {
  location.hash = addressOf(next);
}

function follow(): void {
  place.value = placeOf(location.hash);
}

/** Follows the address from now on. */
export function followAddress(): void {
  addEventListener("hashchange", follow);
  follow();
}
