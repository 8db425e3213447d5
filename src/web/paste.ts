import { FIRST } from "../words/page.ts";
import { act } from "./later.tsx";
import { place } from "./state/route.ts";

/** Where nothing is typed and no one work is open, lines that are pasted are a list, brought in as from a file. */
export function listenForLists(): void {
  document.addEventListener("paste", (event) => {
    const text = event.clipboardData?.getData("text") ?? "";
    const typing = event.target instanceof Element && event.target.closest("input, dialog") !== null;
    if (typing || place.value.at === "work" || !text.trim().includes("\n")) return;
    event.preventDefault();
    void act(({ bringInList }) => bringInList(new File([text], FIRST.pasted)));
  });
}
