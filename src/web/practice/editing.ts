import { practiceOfShow, worksInFrames } from "../../packet/reckoned/index.ts";
import { practiceFor, type PracticeDocument, type Read, readHangingHabits } from "../../show/index.ts";
import { sayHangWanted } from "../../words/hanging.ts";
import { sayWanted } from "../../words/index.ts";
import { type BlankName, cannotNow, keptSays, PRACTICE, unitWanted } from "../../words/page.ts";
import { type KeptShow, practiceChange } from "../state/change.ts";
import { setUnread } from "../state/draft.ts";
import { framedOf, readOf } from "../state/framed.ts";
import { make, told } from "../state/session.ts";
import type { HabitsSaid } from "./fields.ts";
import { bareIn } from "./units.ts";

export type ReadHabits =
  | { readonly ok: true; readonly said: HabitsSaid }
  /** What is wanted in the first field that cannot be read, in words. */
  | { readonly ok: false; readonly field: string; readonly wanted: string };

/** A practice read with every choice made. */
export function readHabitsSaid(document: PracticeDocument): ReadHabits {
  const practice: Read<HabitsSaid["habits"]> = practiceFor(document, document.unit ?? "in");
  if (!practice.ok) {
    const [problem] = practice.problems;
    return problem === undefined
      ? { ok: false, field: "", wanted: PRACTICE.wanted }
      : { ok: false, field: problem.field, wanted: sayWanted(problem.wanted) };
  }
  const hanging = readHangingHabits(document, practice.value);
  if (!hanging.ok) {
    const [problem] = hanging.problems;
    return problem === undefined
      ? { ok: false, field: "", wanted: PRACTICE.wanted }
      : { ok: false, field: problem.field, wanted: sayHangWanted(problem.wanted) };
  }
  const { language } = practice.value;
  return { ok: true, said: { document, habits: practice.value, hanging: hanging.value, language } };
}

/** How many works of the show can be made by a practice. */
function madeBy(show: KeptShow, practice: PracticeDocument): number {
  const read = readOf({ ...show, practice });
  return made(worksInFrames(read.works, practiceOfShow(read)).works);
}

const made = (works: readonly { readonly stopped: boolean }[]): number =>
  works.filter(({ stopped }) => !stopped).length;

/** Keeps a practice as a blank has made it. False where it cannot be read, or no work could be made by it; then the blank says why. */
export function keepPractice(
  show: KeptShow,
  next: PracticeDocument,
  said: string,
  blank: BlankName,
): boolean {
  const refuse = (wanted: string): false => {
    setUnread(blank, { code: "wanted", wanted });
    return false;
  };
  const read = readHabitsSaid(next);
  if (!read.ok) return refuse(read.wanted);
  const before = show.practice ?? {};
  const bare = (next.unit ?? "in") === (before.unit ?? "in") ? 0 : bareIn(show);
  if (bare > 0) return refuse(unitWanted(bare));
  const [could, can] = [made(framedOf(show).works), madeBy(show, next)];
  if (could > 0 && can === 0) return refuse(PRACTICE.wanted);
  setUnread(blank, null);
  const change = practiceChange(before, next, said);
  if (change === null) return true;
  if (!make(change)) return false;
  told.value = keptSays(said, can < could ? cannotNow(could - can) : null);
  return true;
}
