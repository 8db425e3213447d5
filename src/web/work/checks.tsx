import type { Check, Composition } from "../../assembly/index.ts";
import type { ComposeDocument } from "../../show/index.ts";
import { sayCheck } from "../../words/index.ts";
import { figureInSentence } from "../blanks/set-length.ts";
import { LEVEL_WORDS, PAGE } from "../../words/page.ts";
import { language } from "../state/session.ts";
import { following } from "../later.tsx";
import type { Way } from "./ways.ts";

const Ways = following(({ Ways: it }) => it);

interface Props {
  readonly document: ComposeDocument;
  readonly composition: Composition;
  readonly take: (way: Way) => void;
}

/** What stands against the work, heaviest first, each with a way out where one holds. */
export function Checks({ document, composition, take }: Props) {
  if (composition.checks.length === 0) return <p class="quiet checks">{PAGE.noChecks}</p>;
  return (
    <ul class="checks" aria-label={PAGE.checks}>
      {composition.checks.map((check) => (
        <CheckText
          key={keyOf(check)}
          check={check}
          document={document}
          composition={composition}
          take={take}
        />
      ))}
    </ul>
  );
}

const keyOf = (check: Check): string =>
  [
    check.code,
    "side" in check ? check.side : "",
    "mat" in check ? check.mat : "",
    "direction" in check ? check.direction : "",
    "sheet" in check ? check.sheet : "",
  ].join(" ");

function CheckText({ check, document, composition, take }: Props & { readonly check: Check }) {
  const speech = { ruler: composition.design.ruler, language: language.value, set: figureInSentence };
  return (
    <li class={`check ${check.level}`}>
      <span class="level">{LEVEL_WORDS[check.level]}</span>
      <div>
        <p>{sayCheck(check, speech)}</p>
        <Ways check={check} document={document} composition={composition} take={take} />
      </div>
    </li>
  );
}
