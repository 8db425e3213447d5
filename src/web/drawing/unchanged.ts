import type { ComponentChildren, VNode } from "preact";
import { useRef } from "preact/hooks";

/**
 * What a component draws, with every node that says just what it said the last time taken from there: a
 * node that is met again is not looked into, so that only what has changed is drawn. Costs more than it
 * spares where a node holds what is made anew each time, as a function.
 */
export function useUnchanged<Nodes extends ComponentChildren>(now: Nodes): Nodes {
  const last = useRef<Nodes>(now);
  last.current = unchanged(last.current, now) as Nodes;
  return last.current;
}

/** What stood there before where nothing in it has changed, else what stands there now with its unchanged parts. */
function unchanged(before: unknown, now: unknown): unknown {
  if (before === now) return now;
  if (Array.isArray(now) && Array.isArray(before)) {
    const kept = now.map((each, place) => unchanged(before[place], each));
    return isSame(before, kept) ? before : kept;
  }
  if (!isNode(now) || !isNode(before) || before.type !== now.type || before.key !== now.key) return now;
  now.props.children = unchanged(before.props.children, now.props.children) as ComponentChildren;
  return isSame(before.props, now.props) ? before : now;
}

const isNode = (node: unknown): node is VNode => typeof node === "object" && node !== null && "props" in node;

/** Whether two lists, or two records, hold the very same under every name. */
function isSame(before: object, now: object): boolean {
  const names = Object.keys(now);
  return (
    names.length === Object.keys(before).length &&
    names.every((name) => Reflect.get(before, name) === Reflect.get(now, name))
  );
}
