import { newId, now } from "./chance.ts";
import { upon } from "./change.ts";
import { writeOver } from "./keeping-later.ts";
import {
  carry,
  held,
  history,
  hold,
  keep,
  sender,
  settle,
  store,
  take,
  type Trouble,
  trouble,
} from "./session.ts";

/** Settles a trouble for this window's side. */
export function keepMine(): void {
  const stands = settled();
  const mine = held.value;
  if (mine === null) return;
  if (stands?.kind === "word") {
    const made = carry(upon(mine.show, stands.mine), "do");
    if (made !== null) history.value = { done: [...history.value.done, made], undone: [] };
  }
  if (stands?.kind === "show" && store !== null) {
    settle(writeOver(store, mine, stands.theirs, mine, newId(), now()), mine);
    sender.wake();
  }
}

/** Settles a trouble for the other window's side. */
export function takeTheirs(): void {
  const stands = settled();
  if (stands?.kind !== "show") return;
  take(stands.theirs, (read) => {
    history.value = { done: [], undone: [] };
    hold(read);
    sender.wake();
  });
}

/** Brings a show that this browser kept alone to the studio, as it stands. */
export function takeIn(): void {
  trouble.value = null;
  const mine = held.value;
  if (mine?.base !== "browser") return;
  keep({ ...mine, base: "new" });
  sender.wake();
}

/** Takes the trouble away, and what waited for it; what else waits is asked next. */
function settled(): Trouble | null {
  const stands = trouble.value;
  const mine = held.value;
  trouble.value = null;
  if (stands?.kind !== "word" || stands.against === undefined || mine === null) return stands;
  const { done, undone } = history.value;
  const others = ({ stamp }: { readonly stamp: string }): boolean => stamp !== stands.against;
  history.value = { done: done.filter(others), undone };
  keep({ ...mine, against: mine.against.filter(others) });
  return stands;
}
