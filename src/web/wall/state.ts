import type { WallDocument } from "../../show/index.ts";
import { signal } from "../state/signal.ts";

/** Which of the show's walls is looked at, by its place; kept while one goes elsewhere and comes back. */
export const shownWall = signal(0);

/** Walls with what is being typed or carried and is not kept yet; the drawing follows them. */
export const wallDraft = signal<readonly WallDocument[] | null>(null);

/** A frame that is taken up, by its place in the order of its wall, and the place to which it has been carried. */
export const carriedFrame = signal<{ readonly from: number; readonly to: number } | null>(null);

/** What was only typed or carried is put aside. */
export function putBack(): void {
  carriedFrame.value = null;
  wallDraft.value = null;
}
