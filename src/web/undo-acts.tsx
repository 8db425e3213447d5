import { redoneSays, redoSays, undoneSays, undoSays } from "../words/page.ts";
import { clearDrafts } from "./state/draft.ts";
import { history, redo, told, undo } from "./state/session.ts";

export function undoLast(): void {
  const undone = undo();
  if (undone === null) return;
  clearDrafts();
  told.value = undoneSays(undone.said);
}

export function redoLast(): void {
  const done = redo();
  if (done === null) return;
  clearDrafts();
  told.value = redoneSays(done.said);
}

/** Undo and redo, each named by the change it is about. */
export function UndoActs() {
  const { done, undone } = history.value;
  const [last, next] = [done.at(-1), undone.at(-1)];
  return (
    <>
      {last !== undefined && (
        <button type="button" class="plain" onClick={undoLast}>
          {undoSays(last.change.said)}
        </button>
      )}
      {next !== undefined && (
        <button type="button" class="plain" onClick={redoLast}>
          {redoSays(next.change.said)}
        </button>
      )}
    </>
  );
}

/** Ctrl+Z undoes the last change whatever has the focus, except text that is being typed. */
export function listenForUndo(): void {
  addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    const back = key === "z" && !event.shiftKey;
    const again = (key === "z" && event.shiftKey) || key === "y";
    if (!back && !again) return;
    if (document.activeElement?.getAttribute("data-typing") === "yes") return;
    event.preventDefault();
    if (back) undoLast();
    else redoLast();
  });
}
