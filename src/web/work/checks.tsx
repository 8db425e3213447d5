import { useMemo } from "preact/hooks";
import type { Check, Composition } from "../../assembly/index.ts";
import type { ComposeDocument } from "../../show/index.ts";
import { sayCheck } from "../../words/index.ts";
import { LEVEL_WORDS, PAGE } from "../../words/page.ts";
import { language, practice } from "../state/session.ts";
import { type Way, waysOf } from "./ways.ts";

interface Props {
  readonly document: ComposeDocument;
  readonly composition: Composition;
  readonly take: (way: Way) => void;
}

/** What stands against the work, heaviest first, each with a way out where one holds. */
export function Checks({ document, composition, take }: Props) {
  const ways = useMemo(
    () => composition.checks.map((check) => waysOf(check, document, composition, practice.value)),
    [document, composition, practice.value],
  );
  if (composition.checks.length === 0) return <p class="quiet checks">{PAGE.noChecks}</p>;
  return (
    <ul class="checks" aria-label={PAGE.checks}>
      {composition.checks.map((check, index) => (
        <CheckText key={keyOf(check)} check={check} composition={composition} ways={ways[index] ?? []} take={take} />
      ))}
    </ul>
  );
}

const keyOf = (check: Check): string =>
  [check.code, "side" in check ? check.side : "", "mat" in check ? check.mat : "", "direction" in check ? check.direction : "", "sheet" in check ? check.sheet : ""].join(" ");

function CheckText(props: {
  readonly check: Check;
  readonly composition: Composition;
  readonly ways: readonly Way[];
  readonly take: (way: Way) => void;
}) {
  const { check, composition, ways, take } = props;
  const speech = { ruler: composition.design.ruler, language: language.value };
  return (
    <li class={`check ${check.level}`}>
      <span class="level">{LEVEL_WORDS[check.level]}</span>
      <div>
        <p>{sayCheck(check, speech)}</p>
        {ways.length > 0 && (
          <div class="way">
            {ways.map((way) => (
              <button key={way.label} type="button" onClick={() => take(way)}>
                {way.label}
              </button>
            ))}
          </div>
        )}
      </div>
    </li>
  );
}
