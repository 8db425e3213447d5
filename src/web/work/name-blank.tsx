import { useState } from "preact/hooks";
import { PAGE, subtitle } from "../../words/page.ts";
import { whenOpened } from "../later.tsx";
import type { KeptWork } from "../state/change.ts";

const NameDialog = whenOpened(({ NameDialog: it }) => it);

/** Who made it, how and when, under the title; it opens what is written on the work's label. */
export function NameBlank({ work }: { readonly work: KeptWork }) {
  const [open, setOpen] = useState(false);
  const text = subtitle(work);
  return (
    <>
      <button type="button" class="blank name-blank" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        {text === "" ? PAGE.unnamed : text}
      </button>
      {open && <NameDialog work={work} close={() => setOpen(false)} />}
    </>
  );
}
