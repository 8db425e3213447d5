/** Keeps the height that a phone's keys take from the page where the style sheet finds it: the ladder stands above them. */
export function followKeys(): void {
  const view = window.visualViewport;
  if (view === null) return;
  const follow = (): void => {
    const taken = Math.max(0, window.innerHeight - view.height - view.offsetTop);
    document.documentElement.style.setProperty("--keys", `${Math.round(taken)}px`);
  };
  view.addEventListener("resize", follow);
  view.addEventListener("scroll", follow);
}
