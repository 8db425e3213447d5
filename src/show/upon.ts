import { type Change, type KeptShow, keysOf, type Patch, type ShowFacts, type WorkFacts } from "./change.ts";

/** The change made upon what stands there now, whoever has put it there: what a person chooses who has seen both. */
export function upon(show: KeptShow, change: Change): Change {
  const work = (id: string) => show.works.find((one) => one.id === id);
  switch (change.kind) {
    case "design":
      return { ...change, before: standing(work(change.work)?.design ?? {}, change) };
    case "facts":
      return { ...change, before: standing<WorkFacts>(work(change.work) ?? {}, change) };
    case "show":
      return { ...change, before: standing<ShowFacts>(show, change) };
    case "practice":
      return { ...change, before: standing(show.practice ?? {}, change) };
    case "remove":
      return { ...change, work: work(change.work.id) ?? change.work };
    default:
      return change;
  }
}

const standing = <T extends object>(
  value: Patch<T>,
  { before, after }: { readonly before: Patch<T>; readonly after: Patch<T> },
): Patch<T> => Object.fromEntries(keysOf(before, after).map((key) => [key, value[key]])) as Patch<T>;
