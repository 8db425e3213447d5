import { useEffect, useRef, useState } from "preact/hooks";
import { exactFigure, type Length, readLength, type Ruler } from "../../lengths/index.ts";
import type { BlankName } from "../../words/page.ts";
import { putAside } from "../state/draft.ts";
import type { BlankFault } from "./fault.ts";
import { Ladder } from "./ladder.tsx";
import { setText, typedText } from "./set-length.ts";
import { stepped, strideOf } from "./step.ts";

interface Props {
  readonly blank: BlankName;
  readonly label: string;
  /** The clause alone, for the line over the ladder. */
  readonly asks: string;
  readonly length: Length;
  readonly ruler: Ruler;
  /** Whether the unit stands in the underline; the first side of a size leaves it to the second. */
  readonly unit: boolean;
  readonly fault: BlankFault | undefined;
  readonly washed: boolean;
  /** The parts of the drawings that this blank speaks of, by their ids. */
  readonly controls: string;
  /** The other way to say the same length, for the ladder. */
  readonly otherWay: (length: Length) => string;
  /** Every keystroke: the length where the text reads as one, else null. */
  readonly follow: (length: Length | null) => void;
  /** Enter, leaving, a rung: false where it was not taken. */
  readonly keep: (length: Length) => boolean;
  readonly refuse: (fault: BlankFault | null) => void;
  /** Escape, and leaving without a change. */
  readonly putBack: () => void;
  readonly light: (on: boolean) => void;
}

/** A length in a sentence: typed, stepped along the ruler, or taken from the ladder that hangs under it. */
export function LengthBlank(props: Props) {
  const { blank, label, length, ruler, fault } = props;
  const field = useRef<HTMLInputElement>(null);
  const [typed, setTyped] = useState<string | null>(null);
  const aside = putAside.value;
  useEffect(() => setTyped(null), [aside]);
  const [open, setOpen] = useState(false);
  const { unit } = ruler;
  const written = typedText(length, unit);

  // What another hand, an undo or a drag has changed shows at once, unless something is being typed.
  const shown = useRef(length);
  useEffect(() => {
    if (shown.current !== length && fault === undefined && !open) setTyped(null);
    shown.current = length;
  }, [length, fault, open]);

  const read = readLength(typed ?? written, unit);
  const now = read.ok ? read.length : length;

  const write = (text: string): void => {
    setTyped(text);
    props.refuse(null);
    const next = readLength(text, unit);
    props.follow(next.ok ? next.length : null);
  };
  const keepLength = (next: Length): void => {
    if (props.keep(next)) setTyped(null);
  };
  const keepTyped = (): void => {
    if (typed === null) return;
    if (!read.ok) props.refuse({ code: "length", fault: read.fault, typed });
    else if (read.length === length) putBack();
    else keepLength(read.length);
  };
  const putBack = (): void => {
    setTyped(null);
    props.refuse(null);
    props.putBack();
  };
  const step = (way: 1 | -1, keys: KeyboardEvent): void => {
    keys.preventDefault();
    write(typedText(stepped(now, way, strideOf(keys), ruler), unit));
  };

  const value = open || typed !== null ? (typed ?? written) : setText(length, unit);
  const printed = exactFigure(length, unit).unit;
  const errorId = `${blank}-fault`;
  return (
    <span
      class={props.washed ? "length washed" : "length"}
      onPointerEnter={() => props.light(true)}
      onPointerLeave={() => !open && props.light(false)}
    >
      <span class="mirror" aria-hidden="true">
        {value}
      </span>
      <input
        ref={field}
        id={`blank-${blank}`}
        class="blank"
        type="text"
        inputMode="text"
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        aria-label={label}
        aria-controls={props.controls}
        aria-invalid={fault === undefined ? undefined : "true"}
        aria-describedby={fault === undefined ? undefined : errorId}
        data-typing={typed === null ? undefined : "yes"}
        value={value}
        size={Math.max(1, value.length)}
        onMouseDown={(event) => {
          // A click opens the blank with all of it selected, as Tab does; a second click places the caret.
          if (document.activeElement === event.currentTarget) return;
          event.preventDefault();
          event.currentTarget.focus();
        }}
        onFocus={(event) => {
          // Selected as it is typed, before anything can be: the first key replaces all.
          if (typed === null) event.currentTarget.value = written;
          event.currentTarget.select();
          setOpen(true);
          props.light(true);
        }}
        onBlur={() => {
          keepTyped();
          setOpen(false);
          props.light(false);
        }}
        onInput={(event) => write(event.currentTarget.value)}
        onKeyDown={(event) => {
          if (event.isComposing || event.ctrlKey || event.metaKey) return;
          if (event.key === "ArrowUp") step(1, event);
          else if (event.key === "ArrowDown") step(-1, event);
          else if (event.key === "Enter") {
            event.preventDefault();
            keepTyped();
            requestAnimationFrame(() => field.current?.select());
          } else if (event.key === "Escape") {
            event.preventDefault();
            putBack();
            requestAnimationFrame(() => field.current?.select());
          }
        }}
      />
      {props.unit && typed === null && <span class="unit">{printed}</span>}
      {props.unit && typed !== null && !/[a-z'"”″]/i.test(typed) && <span class="unit">{unit}</span>}
      {open && fault === undefined && (
        <Ladder
          label={props.asks}
          length={now}
          ruler={ruler}
          otherWay={props.otherWay(now)}
          take={keepLength}
        />
      )}
    </span>
  );
}
