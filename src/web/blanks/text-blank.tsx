import { useState } from "preact/hooks";

interface Props {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  /** What stands there when nothing has been said. */
  readonly unsaid: string;
  readonly keep: (text: string) => void;
}

/** No label and no line of a paper holds a longer name. */
const LONGEST = 200;

/** A name in a sentence. Empty, it shows what it would be, as a placeholder beside its own label. */
export function TextBlank({ id, label, value, unsaid, keep }: Props) {
  const [typed, setTyped] = useState<string | null>(null);
  const text = typed ?? value;
  const keepTyped = (): void => {
    if (typed !== null && typed.trim() !== value) keep(typed.trim());
    setTyped(null);
  };
  return (
    <span class="length">
      <span class="mirror" aria-hidden="true">
        {text === "" ? unsaid : text}
      </span>
      <input
        id={id}
        class="blank"
        type="text"
        autocomplete="off"
        maxLength={LONGEST}
        aria-label={label}
        placeholder={unsaid}
        data-typing={typed === null ? undefined : "yes"}
        value={text}
        onFocus={(event) => event.currentTarget.select()}
        onInput={(event) => setTyped(event.currentTarget.value)}
        onBlur={keepTyped}
        onKeyDown={(event) => {
          if (event.isComposing) return;
          if (event.key === "Enter") keepTyped();
          else if (event.key === "Escape" && typed !== null) {
            event.preventDefault();
            setTyped(null);
          }
        }}
      />
    </span>
  );
}
