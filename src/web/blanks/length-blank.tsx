import { exactFigure, type Length, readLength, type Ruler } from "../../lengths/index.ts";
import type { BlankName } from "../../words/page.ts";
import { Ladder } from "./ladder.tsx";
import { setText, typedText } from "./set-length.ts";
import { stepped, strideOf } from "./step.ts";
import { type Typed, useTyping } from "./use-typing.ts";

interface Props extends Omit<Typed<Length>, "read" | "step" | "written"> {
  readonly blank: BlankName;
  readonly label: string;
  /** The clause alone, for the line over the ladder. */
  readonly asks: string;
  readonly ruler: Ruler;
  /** Whether the unit stands in the underline; the first side of a size leaves it to the second. */
  readonly unit: boolean;
  readonly washed: boolean;
  /** The parts of the drawings that this blank speaks of, by their ids. */
  readonly controls: string;
  /** The other way to say the same length, for the ladder. */
  readonly otherWay: (length: Length) => string;
  readonly light: (on: boolean) => void;
}

/** A length in a sentence: typed, stepped along the ruler, or taken from the ladder that hangs under it. */
export function LengthBlank(props: Props) {
  const { blank, label, value, ruler, fault, light } = props;
  const { unit } = ruler;
  const typing = useTyping<Length>(
    {
      ...props,
      written: typedText(value, unit),
      read: (text) => {
        const read = readLength(text, unit);
        return read.ok
          ? { ok: true, value: read.length }
          : { ok: false, fault: { code: "length", fault: read.fault, typed: text } };
      },
      step: (from, way, keys) => typedText(stepped(from, way, strideOf(keys), ruler), unit),
    },
    light,
  );
  const { typed, open, now, field } = typing;
  const text = typed ?? (open ? typedText(value, unit) : setText(value, unit));
  // A unit that was typed stands for itself.
  const printed = typed === null ? exactFigure(value, unit).unit : /[a-z'"”″]/i.test(typed) ? "" : unit;
  return (
    <span
      class={props.washed ? "length washed" : "length"}
      onPointerEnter={() => light(true)}
      onPointerLeave={() => !open && light(false)}
    >
      <span class="mirror" aria-hidden="true">
        {text}
      </span>
      <input
        {...typing.props}
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
        aria-describedby={fault && `${blank}-fault`}
        value={text}
        size={Math.max(1, text.length)}
        onMouseDown={(event) => {
          // A click opens the blank with all of it selected, as Tab does; a second click places the caret.
          if (document.activeElement === event.currentTarget) return;
          event.preventDefault();
          event.currentTarget.focus();
        }}
      />
      {props.unit && printed !== "" && <span class="unit">{printed}</span>}
      {open && fault === undefined && (
        <Ladder
          label={props.asks}
          length={now}
          ruler={ruler}
          otherWay={props.otherWay(now)}
          take={typing.take}
        />
      )}
    </span>
  );
}
