import type { Composition } from "../../assembly/index.ts";
import { finished } from "./finish.ts";
import { type FrontOptions, frontMarks } from "./front.ts";
import { surfaceOf, type View } from "./layout.ts";
import { penFor, scaleOf } from "./pen.ts";

/** No more than the outline's own weight: packages lie on one line by their true edges. */
const MARGIN = 1;

/**
 * A package as it lies on the table among others, small: no shade, and bevels only where they can be
 * seen. Throws RangeError for a scale that is not above nought.
 */
export function packageView(composition: Composition, options: FrontOptions): View {
  const pen = penFor(options);
  const on = surfaceOf(composition, scaleOf(options.scale), false);
  return finished(pen, on, frontMarks(composition, on, pen, { ...options, plain: true }), MARGIN);
}
