import { fieldProblem, PAGE, TROUBLES } from "../words/page.ts";
import { save } from "./papers.ts";
import { clearDrafts } from "./state/draft.ts";
import { firstDifference } from "./state/difference.ts";
import { recordOf, type Trouble, trouble } from "./state/session.ts";
import { keepMine, takeIn, takeTheirs } from "./state/settling.ts";

/** What stands between this window and what is kept: under the head, once, quiet; both sides shown, nothing merged by itself. */
export function Strip() {
  const now = trouble.value;
  if (now === null) return null;
  const choice = now.kind === "word" || now.kind === "show";
  return (
    <div class="strip" role="status">
      <p>{says(now)}</p>
      {choice && (
        <>
          <button type="button" onClick={() => settle(keepMine)}>
            {TROUBLES.keepMine}
          </button>
          <button type="button" onClick={() => settle(takeTheirs)}>
            {TROUBLES.takeTheirs}
          </button>
        </>
      )}
      {now.kind === "outside" && (
        <>
          <button type="button" onClick={takeIn}>
            {PAGE.takeIn}
          </button>
          <button
            type="button"
            onClick={() => {
              trouble.value = null;
            }}
          >
            {TROUBLES.leaveIt}
          </button>
        </>
      )}
      {(now.kind === "unread" || now.kind === "damaged") && (
        <button type="button" onClick={() => saveRecord(now.id)}>
          {TROUBLES.saveRecord}
        </button>
      )}
    </div>
  );
}

/** What cannot be opened is not lost: its text, as it lies in the store, as a file. */
function saveRecord(id: string): void {
  save(new Blob([recordOf(id) ?? ""], { type: "application/json" }), "kept-by-this-browser.json");
}

function settle(how: () => void): void {
  clearDrafts();
  how();
}

function says(now: Trouble) {
  switch (now.kind) {
    case "refused":
      return TROUBLES.refused;
    case "outside":
      return TROUBLES.outside;
    case "unread":
      return TROUBLES.unread(now.found);
    case "damaged": {
      const { problem } = now;
      return TROUBLES.damaged(problem && fieldProblem(problem.field, problem.found, problem.wanted));
    }
    case "word": {
      if (now.theirs === undefined) return TROUBLES.gone;
      const { mine } = now;
      const after = "after" in mine ? mine.after : {};
      return <Sides sentence={TROUBLES.word} mine={after} theirs={theirsOf(after, now.theirs)} />;
    }
    case "show":
      return <Sides sentence={TROUBLES.show} mine={now.mine.works} theirs={now.theirs.show.works} />;
  }
}

/** What stands there under the key that differs, in the same shape as what is wanted there. */
const theirsOf = (after: object, theirs: unknown): object => {
  const key = Object.keys(after)[0];
  return key === undefined ? {} : { [key]: theirs };
};

function Sides({
  sentence,
  mine,
  theirs,
}: {
  readonly sentence: string;
  readonly mine: unknown;
  readonly theirs: unknown;
}) {
  const differs = firstDifference(mine, theirs);
  if (differs === null) return <>{sentence}</>;
  return (
    <>
      {sentence} {TROUBLES.theySay} <b class="together">{differs.theirs}</b>, {TROUBLES.youSay}{" "}
      <b class="together">{differs.mine}</b>.
    </>
  );
}
