import { type ComponentChildren, type FunctionComponent, Fragment, options } from "preact";
import { useEffect, useReducer, useRef } from "preact/hooks";

/** Draws a component once more. */
type Again = () => void;

/** The component that is being drawn now; it hears of every value that it reads. */
let drawing: { readonly again: Again; readonly read: Set<Signal<unknown>> } | null = null;

/** A value of the page. A component that has read it while it was drawn is drawn again when it changes. */
export class Signal<Value> {
  #value: Value;
  readonly readers = new Set<Again>();

  constructor(value: Value) {
    this.#value = value;
  }

  get value(): Value {
    if (drawing !== null) {
      drawing.read.add(this);
      this.readers.add(drawing.again);
    }
    return this.#value;
  }

  set value(next: Value) {
    if (next === this.#value) return;
    this.#value = next;
    for (const again of this.readers) again();
  }
}

export const signal = <Value>(value: Value): Signal<Value> => new Signal(value);

/** What follows from signals: reckoned when it is read, heard of as they are. */
export const following = <Value>(reckon: () => Value): { readonly value: Value } => ({
  get value() {
    return reckon();
  },
});

const watched = new WeakMap<FunctionComponent, FunctionComponent>();

/** The same component, which hears of what it reads for as long as it stands on the page. */
function watching(component: FunctionComponent): FunctionComponent {
  return function Watching(props): ComponentChildren {
    const [, again] = useReducer<number, void>((drawn) => drawn + 1, 0);
    const self = useRef({ again, read: new Set<Signal<unknown>>() }).current;
    useEffect(
      () => () => {
        for (const { readers } of self.read) readers.delete(self.again);
      },
      [],
    );
    const outer = drawing;
    drawing = self;
    try {
      return component(props);
    } finally {
      drawing = outer;
    }
  };
}

/** From here on every component hears of the values that it reads. Called once, before anything is drawn. */
export function watchComponents(): void {
  const before = options.vnode;
  options.vnode = (node) => {
    before?.(node);
    const { type } = node;
    if (typeof type !== "function" || type === Fragment) return;
    const component = type as FunctionComponent;
    const own = watched.get(component) ?? watching(component);
    watched.set(component, own);
    // What is drawn a second time comes here again, and is not wrapped again.
    watched.set(own, own);
    node.type = own;
  };
}
