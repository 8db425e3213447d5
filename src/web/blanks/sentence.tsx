import type { ComponentChildren } from "preact";
import { type BlankName, type Token, tokensOf } from "../../words/page.ts";

interface Props {
  readonly sentence: string;
  readonly class: string;
  readonly label: string;
  readonly blank: (name: BlankName) => ComponentChildren;
  /** What is to be mended in a blank, on a line of its own inside the sentence. */
  readonly fault: (name: BlankName) => ComponentChildren;
}

/** A sentence with its blanks: a paragraph in a form, read in one breath. */
export function Sentence({ sentence, class: name, label, blank, fault }: Props) {
  return (
    <form aria-label={label} onSubmit={(event) => event.preventDefault()}>
      <p class={name}>
        {tokensOf(sentence).map((token, index) => (
          <TokenText key={keyOf(token, index)} token={token} blank={blank} fault={fault} />
        ))}
      </p>
    </form>
  );
}

/** A blank keeps its element while the words round it change, so that typing in it is not cut off. */
const keyOf = (token: Token, index: number): string => {
  const named = token.find((piece) => piece.kind === "blank");
  return named?.kind === "blank" ? named.blank : `${index}`;
};

function TokenText({ token, blank, fault }: Pick<Props, "blank" | "fault"> & { readonly token: Token }) {
  const pieces = token.map((piece) => (piece.kind === "words" ? piece.text : blank(piece.blank)));
  const blanks = token.flatMap((piece) => (piece.kind === "blank" ? [piece.blank] : []));
  if (blanks.length === 0) return <>{pieces} </>;
  return (
    <>
      <span class="kept-together">{pieces}</span>
      {blanks.map(fault)}{" "}
    </>
  );
}
