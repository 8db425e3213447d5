import { THICKEST } from "../bounds.ts";
import type { DimensionsNote } from "../records.ts";
import { partsOf } from "./parts.ts";
import type { DimensionsFault, Part, Size } from "./records.ts";
import { agree, type PartSize, sizeOf } from "./sizes.ts";
import { tokensOf, type UnitWord } from "./tokens.ts";

export type * from "./records.ts";
export { agree } from "./sizes.ts";
export { type UnitWord, unitWord } from "./tokens.ts";

export type DimensionsRead =
  | {
      readonly ok: true;
      readonly sheet: Size | null;
      readonly image: Size | null;
      readonly notes: readonly Noted[];
    }
  | Refused;

interface Noted {
  readonly level: "warn" | "note";
  readonly note: DimensionsNote;
}

interface Refused {
  readonly ok: false;
  readonly fault: DimensionsFault;
}

const refuse = (fault: DimensionsFault): Refused => ({ ok: false, fault });

const WHOLE: readonly Part[] = ["whole"];

/** Parts that say nothing about the paper itself. */
const AROUND: readonly Part[] = ["mount", "frame", "object"];

/**
 * Reads a museum's text of dimensions, height before width as museums write them:
 * `image: 241 x 191 mm; support: 254 x 203 mm`, `7 1/2 x 9 1/2 in. (19.1 x 24.1 cm) (image)`,
 * `H. 20 cm; W. 30 cm`. `unit` is taken where none is written. Whatever is not understood refuses the
 * whole text: half of it read could be the wrong half.
 */
export function readDimensions(text: string, unit: UnitWord): DimensionsRead {
  const read = partsOf(tokensOf(text));
  if (!read.ok) return read;

  const notes = new Map<string, Noted>();
  const note = (level: Noted["level"], body: DimensionsNote): void => {
    const key = JSON.stringify(body);
    if (!notes.has(key)) notes.set(key, { level, note: body });
  };
  const sizes = new Map<Part, PartSize>();
  for (const written of read.parts) {
    const size = sizeOf(written, unit);
    if (!size.ok) return size;
    for (const part of written.names.length === 0 ? WHOLE : written.names) {
      const before = sizes.get(part);
      if (before === undefined) {
        sizes.set(part, size);
        if (size.differs !== null) note("warn", { code: "twice-differs", part, ...size.differs });
      } else if (!AROUND.includes(part) && !agree(before.size, size.size)) {
        return refuse({ code: "two-sizes", part, first: before.size, second: size.size });
      }
    }
    if (size.unitTaken) note("warn", { code: "unit-taken", unit });
    if (written.unsure) note("warn", { code: "part-not-named" });
    if (written.each) note("note", { code: "each" });
    for (const word of written.notExact) note("warn", { code: "not-exact", word });
  }
  const chosen = choose(sizes, note);
  return chosen.ok ? { ...chosen, notes: [...notes.values()] } : chosen;
}

/** Which of the parts are the sheet and the image, and what becomes of the others. */
function choose(
  sizes: ReadonlyMap<Part, PartSize>,
  note: (level: Noted["level"], body: DimensionsNote) => void,
): Refused | { readonly ok: true; readonly sheet: Size | null; readonly image: Size | null } {
  const paper = ["sheet", "image", "plate", "whole"] as const;
  // An object is the work itself where nothing else is named.
  const alone = paper.every((part) => !sizes.has(part)) ? sizes.get("object") : undefined;
  for (const size of [...paper.map((part) => sizes.get(part)), alone]) {
    const depth = size?.depth ?? null;
    if (depth !== null && depth.length > THICKEST) return refuse({ code: "not-flat", depth: depth.text });
  }
  const whole = sizes.get("whole")?.size ?? alone?.size;
  const plate = sizes.get("plate")?.size;
  let sheet = sizes.get("sheet")?.size ?? null;
  let image = sizes.get("image")?.size ?? null;

  if (whole !== undefined && sheet !== null && !agree(sheet, whole))
    return refuse({ code: "unnamed-beside-sheet" });
  if (whole !== undefined && sheet === null) {
    sheet = whole;
    note(alone === undefined ? "note" : "warn", { code: "part-not-named" });
  }
  if (plate !== undefined && image === null) {
    image = plate;
    note("note", { code: "plate-is-image" });
  } else if (plate !== undefined) {
    note("note", { code: "part-not-used", part: "plate", size: plate });
  }
  const outermost = sheet ?? image;
  if (outermost === null) return refuse({ code: "no-sheet-or-image" });

  for (const part of AROUND) {
    const size = sizes.get(part)?.size;
    if (size !== undefined && size !== alone?.size) note("note", { code: "part-not-used", part, size });
  }
  const frame = sizes.get("frame")?.size;
  if (frame !== undefined && smallerThan(frame, outermost)) {
    note("warn", { code: "frame-smaller", frame, sheet: outermost });
  }
  return { ok: true, sheet, image };
}

const smallerThan = (a: Size, b: Size): boolean =>
  a.width.length < b.width.length || a.height.length < b.height.length;
