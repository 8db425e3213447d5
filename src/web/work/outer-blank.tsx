import type { Composition, OuterRule } from "../../assembly/index.ts";
import type { Size } from "../../geometry/index.ts";
import { blankWords, outerText } from "../../words/page.ts";
import { sizeText } from "../blanks/set-length.ts";
import { openDialog } from "../state/draft.ts";
import { language } from "../state/session.ts";
import { DialogBlank } from "./dialog-blank.tsx";
import { listName } from "./document-of.ts";

/** The outer size in the sentence; it opens the ways in which one may say it. */
export function OuterBlank({ composition }: { readonly composition: Composition }) {
  const { design, outer } = composition;
  const { label } = blankWords("outer", design.mats.length, language.value);
  const list = design.outer.kind === "size" ? null : listName(listOf(design.outer));
  const text = outerText(design.outer, list, sizeText(outer, design.ruler.unit));
  return (
    <DialogBlank
      name="outer"
      label={label}
      text={text}
      open={() => {
        openDialog.value = "outer";
      }}
    />
  );
}

const listOf = (outer: Exclude<OuterRule, { kind: "size" }>): readonly Size[] =>
  (outer.kind === "smallest" ? outer.sizes : outer.standard) ?? [];
