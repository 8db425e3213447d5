import { add, fromReal, type Length, subtract, toGraduation, ZERO } from "../../lengths/index.ts";
import type { HookPlace } from "./hanging.ts";

/** A tape that sags: held at both ends over `span` it reads `over` too much. */
export interface Tape {
  readonly span: Length;
  readonly over: Length;
}

/**
 * What a tape reads over a true length, both ends held as taut as when it was tried. A hanging tape is
 * longer than its span by w² L³ / (24 P²), its weight w and its pull P the same (catenary correction of
 * surveying, from memory): so the error grows with the third power of the length. To the nearest tick.
 */
export const onTape = (length: Length, tape: Tape | null): Length =>
  tape === null || tape.span === ZERO
    ? length
    : add(length, fromReal(tape.over * (length / tape.span) ** 3, "nearest"));

/**
 * How far up a place is to be measured where it lies `across` a wall, when the floor or line that heights
 * are measured from is straight and lies `fall` lower at the right corner than at the left.
 */
export const upAt = (up: Length, across: Length, width: Length, fall: Length): Length =>
  fall === ZERO || width === ZERO ? up : add(up, fromReal((fall * across) / width, "nearest"));

/** How one wall is measured: its width, the tape that sags, and the floor or line that falls. */
export interface Measuring {
  readonly width: Length;
  readonly tape: Tape | null;
  /** How much lower the floor, or the line that heights are measured from, lies at the right corner than at the left. */
  readonly fall: Length;
}

/** What the tape must read for one hook. */
export interface Measures {
  /** From the left corner. */
  readonly across: Length;
  /** From the floor or the line below it, up to the nail. */
  readonly up: Length;
  /** From the right corner: the proof of the first. */
  readonly back: Length;
}

/** The three tape measures of a hook; `across` and `back` make the wall where the tape does not sag. */
export const measuresOf = (
  { x, nail }: Pick<HookPlace, "x" | "nail">,
  { width, tape, fall }: Measuring,
): Measures => ({
  across: onTape(x, tape),
  up: upAt(nail, x, width, fall),
  back: onTape(subtract(width, x), tape),
});

/** The same as they are read: a tape shows no more than its marks. Without sag the two across make the wall as they are printed. */
export function readingsOf(
  hook: Pick<HookPlace, "x" | "nail">,
  measuring: Measuring,
  graduation: Length,
): Measures {
  const marked = (length: Length): Length => toGraduation(length, graduation, "nearest");
  const { across, up, back } = measuresOf(hook, measuring);
  const read = marked(across);
  return {
    across: read,
    up: marked(up),
    back: measuring.tape === null ? subtract(measuring.width, read) : marked(back),
  };
}
