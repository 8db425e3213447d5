import { type RefObject } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { putAside } from "../state/draft.ts";
import type { BlankFault } from "./fault.ts";

/** What a typed blank does with its text: the same for a length and for a number. */
export interface Typed<Value> {
  readonly fault: BlankFault | undefined;
  readonly value: Value;
  /** The value as it is typed. */
  readonly written: string;
  readonly read: (
    text: string,
  ) => { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly fault: BlankFault };
  /** One press of an arrow key. */
  readonly step: (from: Value, way: 1 | -1, keys: KeyboardEvent) => string;
  /** Every keystroke: the value where the text reads as one, else null. */
  readonly follow: (value: Value | null) => void;
  /** Enter, leaving, a rung: false where it was not taken. */
  readonly keep: (value: Value) => boolean;
  readonly refuse: (fault: BlankFault | null) => void;
  /** Escape, and leaving without a change. */
  readonly putBack: () => void;
}

export interface Typing<Value> {
  readonly field: RefObject<HTMLInputElement | null>;
  /** The text that is being typed; null while none is. */
  readonly typed: string | null;
  readonly open: boolean;
  /** What the blank stands for now, the last good value where its text does not read. */
  readonly now: Value;
  readonly take: (value: Value) => void;
  /** For the `input`: Enter keeps and stays, Escape puts back, the arrows step, leaving keeps. */
  readonly props: {
    readonly onFocus: (event: { readonly currentTarget: HTMLInputElement }) => void;
    readonly onBlur: () => void;
    readonly onInput: (event: { readonly currentTarget: HTMLInputElement }) => void;
    readonly onKeyDown: (event: KeyboardEvent) => void;
    readonly "aria-invalid": "true" | undefined;
    readonly "data-typing": "yes" | undefined;
  };
}

export function useTyping<Value>(blank: Typed<Value>, opens: (open: boolean) => void): Typing<Value> {
  const { fault, value, written, refuse } = blank;
  const field = useRef<HTMLInputElement>(null);
  const [typed, setTyped] = useState<string | null>(null);
  const [open, setOpen] = useState(false);
  const read = blank.read(typed ?? written);
  const now = read.ok ? read.value : value;

  const aside = putAside.value;
  useEffect(() => setTyped(null), [aside]);
  // What another hand, an undo or a drag has changed shows at once, unless something is being typed.
  useEffect(() => {
    if (fault === undefined && !open) setTyped(null);
  }, [value]);

  const select = (): void => {
    requestAnimationFrame(() => field.current?.select());
  };
  const write = (text: string): void => {
    setTyped(text);
    refuse(null);
    const next = blank.read(text);
    blank.follow(next.ok ? next.value : null);
  };
  const putBack = (): void => {
    setTyped(null);
    refuse(null);
    blank.putBack();
  };
  const take = (next: Value): void => {
    if (blank.keep(next)) setTyped(null);
  };
  const keepTyped = (): void => {
    if (typed === null) return;
    if (!read.ok) refuse(read.fault);
    else if (read.value === value) putBack();
    else take(read.value);
  };

  return {
    field,
    typed,
    open,
    now,
    take,
    props: {
      onFocus: ({ currentTarget }) => {
        // Selected as it is typed, before anything can be: the first key replaces all.
        if (typed === null) currentTarget.value = written;
        currentTarget.select();
        setOpen(true);
        opens(true);
      },
      onBlur: () => {
        keepTyped();
        setOpen(false);
        opens(false);
      },
      onInput: ({ currentTarget }) => write(currentTarget.value),
      onKeyDown: (event) => {
        if (event.isComposing || event.ctrlKey || event.metaKey) return;
        const way = event.key === "ArrowUp" ? 1 : event.key === "ArrowDown" ? -1 : 0;
        if (way !== 0) write(blank.step(now, way, event));
        else if (event.key === "Enter") keepTyped();
        else if (event.key === "Escape") putBack();
        else return;
        event.preventDefault();
        if (way === 0) select();
      },
      "aria-invalid": fault === undefined ? undefined : "true",
      "data-typing": typed === null ? undefined : "yes",
    },
  };
}
