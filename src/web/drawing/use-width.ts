import { useLayoutEffect, useRef, useState } from "preact/hooks";

/** The width that an element has to itself, in pixels; 0 before it stands on the page. */
export function useWidth<T extends HTMLElement>() {
  const ref = useRef<T>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null) return;
    const measure = (): void => setWidth(Math.floor(element.clientWidth));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, width] as const;
}

/** Whether the page is as narrow as a phone in one hand; the style sheet parts there too. */
const narrow = matchMedia("(max-width: 740px)");

export function useNarrow(): boolean {
  const [is, setIs] = useState(narrow.matches);
  useLayoutEffect(() => {
    const follow = (): void => setIs(narrow.matches);
    narrow.addEventListener("change", follow);
    return () => narrow.removeEventListener("change", follow);
  }, []);
  return is;
}
