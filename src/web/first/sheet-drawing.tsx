import type { Size } from "../../geometry/index.ts";
import type { Ruler } from "../../lengths/index.ts";
import { Drawn } from "../drawing/marks.tsx";
import { useWidth } from "../drawing/use-width.ts";
import { sheetMarks } from "./sheet-marks.ts";

const TALLEST = 460;

/** The sheet with its image, to scale, with the figures that the sentence says. */
export function SheetDrawing(props: {
  readonly sheet: Size;
  readonly image: Size;
  readonly ruler: Ruler;
  readonly label: string;
}) {
  const { sheet, image, ruler } = props;
  const [at, width] = useWidth<HTMLDivElement>();
  return (
    <div class="at-width" ref={at}>
      {width > 0 && (
        <Drawn
          drawing={sheetMarks(sheet, image, ruler, { width, height: TALLEST })}
          name="first"
          label={props.label}
        />
      )}
    </div>
  );
}
