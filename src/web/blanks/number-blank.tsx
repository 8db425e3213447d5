import { useEffect, useRef, useState } from "preact/hooks";
import type { BlankName } from "../../words/page.ts";
import { putAside } from "../state/draft.ts";
import type { BlankFault } from "./fault.ts";

interface Props {
  readonly blank: BlankName;
  readonly label: string;
  readonly value: number;
  readonly unit: string;
  /** One press of an arrow; with Shift ten of them. */
  readonly step: number;
  readonly fault: BlankFault | undefined;
  readonly washed: boolean;
  readonly follow: (value: number | null) => void;
  readonly keep: (value: number) => boolean;
  readonly refuse: (fault: BlankFault | null) => void;
  readonly putBack: () => void;
}

/** Numbers are typed with a point or a comma. */
function readNumber(text: string): number | null {
  const plain = text.trim().replace("\u2212", "-").replace(",", ".");
  return /^-?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}

/** A number in a sentence that is no length: degrees, a ratio. */
export function NumberBlank(props: Props) {
  const { blank, label, value, fault } = props;
  const field = useRef<HTMLInputElement>(null);
  const [typed, setTyped] = useState<string | null>(null);
  const aside = putAside.value;
  useEffect(() => setTyped(null), [aside]);
  const read = typed === null ? value : readNumber(typed);

  const write = (text: string): void => {
    setTyped(text);
    props.refuse(null);
    props.follow(readNumber(text));
  };
  const putBack = (): void => {
    setTyped(null);
    props.refuse(null);
    props.putBack();
  };
  const keepTyped = (): void => {
    if (typed === null) return;
    if (read === null) props.refuse({ code: "not-a-number", typed });
    else if (read === value) putBack();
    else if (props.keep(read)) setTyped(null);
  };
  const select = (): void => {
    requestAnimationFrame(() => field.current?.select());
  };

  const text = typed ?? String(value);
  return (
    <span class={props.washed ? "length washed" : "length"}>
      <span class="mirror" aria-hidden="true">
        {text}
      </span>
      <input
        ref={field}
        id={`blank-${blank}`}
        class="blank"
        type="text"
        inputMode="text"
        autocomplete="off"
        aria-label={label}
        aria-invalid={fault === undefined ? undefined : "true"}
        aria-describedby={fault === undefined ? undefined : `${blank}-fault`}
        data-typing={typed === null ? undefined : "yes"}
        value={text}
        size={Math.max(1, text.length)}
        onFocus={select}
        onBlur={keepTyped}
        onInput={(event) => write(event.currentTarget.value)}
        onKeyDown={(event) => {
          if (event.isComposing || event.ctrlKey || event.metaKey) return;
          const way = event.key === "ArrowUp" ? 1 : event.key === "ArrowDown" ? -1 : 0;
          if (way !== 0) {
            event.preventDefault();
            const by = way * props.step * (event.shiftKey ? 10 : 1);
            write(String(Number(((read ?? value) + by).toFixed(6))));
          } else if (event.key === "Enter") {
            event.preventDefault();
            keepTyped();
            select();
          } else if (event.key === "Escape") {
            event.preventDefault();
            putBack();
            select();
          }
        }}
      />
      <span class="unit">{props.unit}</span>
    </span>
  );
}
