import type { BlankName } from "../../words/page.ts";
import { controlsOf } from "../drawing/parts.ts";
import { light } from "./blank.tsx";
import { isPointedAt } from "./pointing.ts";

interface Props {
  readonly name: BlankName;
  readonly label: string;
  readonly text: string;
  readonly open: () => void;
}

/** A blank with more ways to say it than a line holds: a word that opens a dialog. */
export function DialogBlank({ name, label, text, open }: Props) {
  const lights = light(name);
  return (
    <button
      id={`blank-${name}`}
      type="button"
      class={isPointedAt(name) ? "blank washed" : "blank"}
      aria-haspopup="dialog"
      aria-label={`${label}: ${text}`}
      aria-controls={controlsOf(name)}
      onClick={open}
      onPointerEnter={() => lights(true)}
      onPointerLeave={() => lights(false)}
      onFocus={() => lights(true)}
      onBlur={() => lights(false)}
    >
      {text}
    </button>
  );
}
