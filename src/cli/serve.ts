import { CannotServe, papersOf, serve, type ServeOptions } from "../server/index.ts";
import { Unreadable } from "./input.ts";

export type ServeAsked = Pick<ServeOptions, "port" | "home" | "open">;

/** `margent serve`: the page, until it is stopped. */
export async function runServe(asked: ServeAsked): Promise<void> {
  try {
    await serve({ ...asked, papers: papersOf(() => performance.now()), clock: () => new Date() });
  } catch (error) {
    if (error instanceof CannotServe) throw new Unreadable(error.message, { cause: error });
    throw error;
  }
}
