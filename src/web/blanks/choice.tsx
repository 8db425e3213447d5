import type { Options } from "../../words/page.ts";

interface Props {
  readonly id: string;
  readonly label: string;
  readonly options: Options<string>;
  readonly value: string;
  readonly washed?: boolean;
  readonly keep: (key: string) => void;
  readonly light?: (on: boolean) => void;
}

/** A choice of up to nine in a sentence. */
export function Choice({ id, label, options, value, washed = false, keep, light }: Props) {
  return (
    <select
      id={id}
      class={washed ? "blank washed" : "blank"}
      aria-label={label}
      value={value}
      onChange={(event) => keep(event.currentTarget.value)}
      onPointerEnter={() => light?.(true)}
      onPointerLeave={() => light?.(false)}
      onFocus={() => light?.(true)}
      onBlur={() => light?.(false)}
    >
      {options.map(({ key, words }) => (
        <option key={key} value={key}>
          {words}
        </option>
      ))}
    </select>
  );
}
