import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { PAGE } from "../../words/page.ts";

interface Props {
  readonly title: string;
  /** Runs when it closes, however it closes. */
  readonly onClose: () => void;
  readonly children: ComponentChildren;
}

/** A native dialog that opens as soon as it stands on the page. Escape and a press beside it close it; focus goes back by itself. */
export function Dialog({ title, onClose, children }: Props) {
  const self = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const dialog = self.current;
    if (dialog !== null && !dialog.open) dialog.showModal();
  }, []);
  return (
    <dialog
      ref={self}
      aria-label={title}
      onClose={onClose}
      onClick={(event) => {
        if (event.target === self.current) self.current?.close();
      }}
    >
      <h2>{title}</h2>
      {children}
      <div class="acts">
        <button type="button" class="main-act" onClick={() => self.current?.close()}>
          {PAGE.done}
        </button>
      </div>
    </dialog>
  );
}
