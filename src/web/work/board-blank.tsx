import { useState } from "preact/hooks";
import type { Composition } from "../../assembly/index.ts";
import { VOCABULARY } from "../../words/index.ts";
import { type BlankName, blankWords } from "../../words/page.ts";
import { later } from "../later.tsx";
import type { KeptWork } from "../state/change.ts";
import { language } from "../state/session.ts";
import { DialogBlank } from "./dialog-blank.tsx";

const BoardDialog = later(async () => (await import("./board-dialog.tsx")).BoardDialog);

interface Props {
  readonly mat: number;
  readonly work: KeptWork;
  readonly composition: Composition;
}

/** A mat's board in the sentence; it opens what the board is and how it is cut. */
export function BoardBlank({ mat, work, composition }: Props) {
  const [open, setOpen] = useState(false);
  const name: BlankName = `board.${mat}`;
  const { design } = composition;
  const { label } = blankWords(name, design.mats.length, language.value);
  const board = design.mats[mat]?.board ?? "";
  const text = board === "" ? VOCABULARY[language.value].mat : board;
  return (
    <>
      <DialogBlank name={name} label={label} text={text} open={() => setOpen(true)} />
      {open && (
        <BoardDialog
          mat={mat}
          work={work}
          composition={composition}
          title={label}
          close={() => setOpen(false)}
        />
      )}
    </>
  );
}
