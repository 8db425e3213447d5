import { useState } from "preact/hooks";
import type { Composition, OuterRule } from "../../assembly/index.ts";
import type { Size } from "../../geometry/index.ts";
import { blankWords, outerText } from "../../words/page.ts";
import { sizeText } from "../blanks/set-length.ts";
import { later } from "../later.tsx";
import type { KeptWork } from "../state/change.ts";
import { language } from "../state/session.ts";
import { DialogBlank } from "./dialog-blank.tsx";
import { listName } from "./document-of.ts";

const OuterDialog = later(async () => (await import("./outer-dialog.tsx")).OuterDialog);

interface Props {
  readonly work: KeptWork;
  readonly composition: Composition;
}

/** The outer size in the sentence; it opens the ways in which one may say it. */
export function OuterBlank({ work, composition }: Props) {
  const [open, setOpen] = useState(false);
  const { design, outer } = composition;
  const { label } = blankWords("outer", design.mats.length, language.value);
  const list = design.outer.kind === "size" ? null : listName(listOf(design.outer));
  const text = outerText(design.outer, list, sizeText(outer, design.ruler.unit));
  return (
    <>
      <DialogBlank name="outer" label={label} text={text} open={() => setOpen(true)} />
      {open && <OuterDialog work={work} composition={composition} close={() => setOpen(false)} />}
    </>
  );
}

const listOf = (outer: Exclude<OuterRule, { kind: "size" }>): readonly Size[] =>
  (outer.kind === "smallest" ? outer.sizes : outer.standard) ?? [];
