import { useMemo } from "preact/hooks";
import type { Check, Composition } from "../../assembly/index.ts";
import type { ComposeDocument } from "../../show/index.ts";
import { practice } from "../state/session.ts";
import { type Way, waysOf } from "./ways.ts";

interface Props {
  readonly check: Check;
  readonly document: ComposeDocument;
  readonly composition: Composition;
  readonly take: (way: Way) => void;
}

/** The ways out of one check, each a button that takes it. */
export function Ways({ check, document, composition, take }: Props) {
  const habits = practice.value;
  const ways = useMemo(
    () => waysOf(check, document, composition, habits),
    [check, document, composition, habits],
  );
  if (ways.length === 0) return null;
  return (
    <div class="way">
      {ways.map((way) => (
        <button key={way.label} type="button" onClick={() => take(way)}>
          {way.label}
        </button>
      ))}
    </div>
  );
}
