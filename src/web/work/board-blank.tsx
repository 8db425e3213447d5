import type { Composition } from "../../assembly/index.ts";
import { VOCABULARY } from "../../words/index.ts";
import { type BlankName, blankWords } from "../../words/page.ts";
import { openDialog } from "../state/draft.ts";
import { language } from "../state/session.ts";
import { DialogBlank } from "./dialog-blank.tsx";

interface Props {
  readonly mat: number;
  readonly composition: Composition;
}

/** A mat's board in the sentence; it opens what the board is and how it is cut. */
export function BoardBlank({ mat, composition }: Props) {
  const name: BlankName = `board.${mat}`;
  const { design } = composition;
  const { label } = blankWords(name, design.mats.length, language.value);
  const board = design.mats[mat]?.board ?? "";
  const text = board === "" ? VOCABULARY[language.value].mat : board;
  return (
    <DialogBlank
      name={name}
      label={label}
      text={text}
      open={() => {
        openDialog.value = name;
      }}
    />
  );
}
