import { LEFT_OUT, moreLeftOut } from "../words/page.ts";
import { Dialog } from "./blanks/dialog.tsx";
import { leftOut } from "./state/draft.ts";

/** More than these nobody reads in a dialog; the list itself is mended first. */
const MOST = 200;

/** What of a list could not be read, each cell by its row and column. */
export function LeftOut() {
  const sentences = leftOut.value;
  return (
    <Dialog
      title={LEFT_OUT.title}
      onClose={() => {
        leftOut.value = [];
      }}
    >
      <p>{LEFT_OUT.rest}</p>
      <ol class="left-out">
        {sentences.slice(0, MOST).map((sentence, index) => (
          <li key={index}>{sentence}</li>
        ))}
      </ol>
      {sentences.length > MOST && <p>{moreLeftOut(sentences.length - MOST)}</p>}
    </Dialog>
  );
}
