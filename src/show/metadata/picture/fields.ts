/** Whose names a field of a picture stands under. */
export type FieldFrom = "XMP" | "IPTC" | "EXIF" | "PNG";

/** What a picture says of the work that it shows. */
export type PictureField =
  | "title"
  | "maker"
  | "year"
  | "description"
  | "subject"
  | "rights"
  | "credit"
  | "inventoryNumber";

export interface Said {
  readonly value: string;
  readonly from: FieldFrom;
}

export type PictureFields = Readonly<Partial<Record<PictureField, Said>>>;

/** A field that is told and is short enough to be one. */
const MOST = 2000;

/** The fields of one block; what is empty is left out. */
export const saidBy = (
  from: FieldFrom,
  values: Readonly<Partial<Record<PictureField, string>>>,
): PictureFields =>
  Object.fromEntries(
    Object.entries(values).flatMap(([field, written]) => {
      const value = written
        .replace(/\p{Cf}/gu, "")
        .replace(/[\s\p{Cc}]+/gu, " ")
        .trim()
        .slice(0, MOST);
      return value === "" ? [] : [[field, { value, from }]];
    }),
  );
