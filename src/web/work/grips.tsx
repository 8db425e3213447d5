import type { Composition } from "../../assembly/index.ts";
import { onView, type View } from "../../drawings/index.ts";
import type { Length } from "../../lengths/index.ts";
import { GRIPS } from "../../words/page.ts";
import { Grip } from "../drawing/grip.tsx";
import { type GripEdit, gripEdits } from "./grip-edits.ts";

interface Props {
  readonly composition: Composition;
  readonly view: View;
  readonly scale: number;
  readonly moving: GripEdit["key"] | null;
  readonly follow: (edit: GripEdit, value: Length, free: boolean) => void;
  readonly keep: () => void;
  readonly putBack: () => void;
}

/** The blank that stands in the sentence now: a lift that is no distance yet has only its rule there. */
const standing = ({ blank }: GripEdit, { design }: Composition) =>
  blank === "liftBy" && design.lift.rule !== "fixed" ? "lift" : blank;

/** The edges of the front that can be dragged. */
export function Grips({ composition, view, scale, moving, follow, keep, putBack }: Props) {
  return (
    <>
      {gripEdits(composition).map((edit) => (
        <Grip
          key={edit.key}
          id={`grip-${edit.key}`}
          label={GRIPS[edit.key]}
          at={onView(view, scale, edit.at)}
          slides={edit.slides}
          way={edit.way}
          value={edit.value}
          least={edit.least}
          most={edit.most}
          scale={scale}
          ruler={composition.design.ruler}
          controls={`blank-${standing(edit, composition)}`}
          moving={moving === edit.key}
          follow={(value, free) => follow(edit, value, free)}
          keep={keep}
          putBack={putBack}
        />
      ))}
    </>
  );
}
