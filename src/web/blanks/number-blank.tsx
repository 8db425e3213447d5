import type { BlankName } from "../../words/page.ts";
import { type Typed, useTyping } from "./use-typing.ts";

interface Props extends Omit<Typed<number>, "read" | "step" | "written"> {
  readonly blank: BlankName;
  readonly label: string;
  readonly unit: string;
  /** One press of an arrow; with Shift ten of them. */
  readonly stride: number;
  readonly washed: boolean;
  readonly light: (on: boolean) => void;
}

/** Numbers are typed with a point or a comma. */
function readNumber(text: string): number | null {
  const plain = text.trim().replace("\u2212", "-").replace(",", ".");
  return /^-?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}

/** A number in a sentence that is no length: degrees, a ratio. */
export function NumberBlank(props: Props) {
  const { blank, value, fault } = props;
  const typing = useTyping<number>(
    {
      ...props,
      written: String(value),
      read: (text) => {
        const number = readNumber(text);
        return number === null
          ? { ok: false, fault: { code: "not-a-number", typed: text } }
          : { ok: true, value: number };
      },
      step: (from, way, { shiftKey }) =>
        String(Number((from + way * props.stride * (shiftKey ? 10 : 1)).toFixed(6))),
    },
    props.light,
  );
  const text = typing.typed ?? String(value);
  return (
    <span class={props.washed ? "length washed" : "length"}>
      <span class="mirror" aria-hidden="true">
        {text}
      </span>
      <input
        {...typing.props}
        ref={typing.field}
        id={`blank-${blank}`}
        class="blank"
        type="text"
        inputMode="text"
        autocomplete="off"
        aria-label={props.label}
        aria-describedby={fault && `${blank}-fault`}
        value={text}
        size={Math.max(1, text.length)}
      />
      {props.unit !== "" && <span class="unit">{props.unit}</span>}
    </span>
  );
}
