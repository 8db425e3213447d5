import { half, printExact, subtract, type Unit, ZERO } from "../../lengths/index.ts";
import type { ComposeDocument } from "../schema.ts";
import type { Size, WrittenLength } from "./dimensions/index.ts";
import type { Given, RowReader } from "./row-reader.ts";
import { columnOf, type Sizes, textsOf } from "./row-sizes.ts";

type Print = NonNullable<ComposeDocument["print"]>;

/** Where the image begins on the sheet, as the columns have it. */
export interface Places {
  readonly left: Given<WrittenLength>;
  readonly top: Given<WrittenLength>;
}

/**
 * The print on its sheet, with a note for all that is taken for granted. Null where only a picture says how
 * large it is, and where something is refused.
 */
export function readPrint(
  reader: RowReader,
  sizes: Sizes,
  places: Places,
  picture: boolean,
  unit: Unit,
): Print | null {
  const { sheet, image } = sizes;
  if (sheet !== null && image !== null) return onSheet(reader, { ...sizes, sheet, image }, places, unit);
  if (image !== null) {
    refusePlaces(reader, places, "sheet");
    reader.note("note", columnOf(sizes.imageFrom, "image width"), { code: "sheet-ends-at-image" });
    const none = `0 ${unit}`;
    return { ...textsOf(image), image: { left: none, top: none, ...textsOf(image) } };
  }
  refusePlaces(reader, places, "image");
  if (sheet !== null) {
    reader.note("note", columnOf(sizes.sheetFrom, "sheet width"), { code: "image-is-sheet" });
    return textsOf(sheet);
  }
  if (picture) reader.note("note", "picture", { code: "size-from-picture" });
  else reader.refuse("sheet width", "", { kind: "some-size" });
  return null;
}

/** A place says nothing without the other size; nought from the edges of an image that ends with its sheet is true. */
function refusePlaces(reader: RowReader, { left, top }: Places, needs: "image" | "sheet"): void {
  for (const [column, place] of [["image left", left] as const, ["image top", top] as const]) {
    if (place.state !== "given" || (needs === "sheet" && place.value.length === ZERO)) continue;
    reader.refuse(column, reader.words(column), { kind: "for-place", needs });
  }
}

type BothSizes = Sizes & { readonly sheet: Size; readonly image: Size };

function onSheet(reader: RowReader, sizes: BothSizes, { left, top }: Places, unit: Unit): Print | null {
  const across = placeOn(reader, "width", sizes, left, unit);
  const down = placeOn(reader, "height", sizes, top, unit);
  if (across === null || down === null) return null;
  if (across.centred || down.centred) {
    const direction = across.centred && down.centred ? "both" : across.centred ? "width" : "height";
    reader.note("note", columnOf(sizes.imageFrom, "image left"), { code: "image-centred", direction });
  }
  return {
    ...textsOf(sizes.sheet),
    image: { left: across.text, top: down.text, ...textsOf(sizes.image) },
  };
}

/** Where the image begins in one direction: as written, or in the middle of the sheet; null where it does not fit. */
function placeOn(
  reader: RowReader,
  direction: "width" | "height",
  { sheet, image, imageFrom }: BothSizes,
  place: Given<WrittenLength>,
  unit: Unit,
): { readonly text: string; readonly centred: boolean } | null {
  const paper = sheet[direction];
  const printed = image[direction];
  const room = subtract(paper.length, printed.length);
  const column = columnOf(imageFrom, direction === "width" ? "image width" : "image height");
  if (room < ZERO) {
    reader.refuse(column, reader.words(column), {
      kind: "within-sheet",
      direction,
      image: printed.text,
      sheet: paper.text,
    });
    return null;
  }
  if (place.state === "bad") return null;
  if (place.state === "given") {
    if (place.value.length <= room) return { text: place.value.text, centred: false };
    const at = direction === "width" ? "image left" : "image top";
    reader.refuse(at, reader.words(at), { kind: "place-on-sheet", direction, most: printExact(room, unit) });
    return null;
  }
  return { text: printExact(half(room, "down"), unit), centred: room > ZERO };
}
