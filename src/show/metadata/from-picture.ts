import type { WorkDocument } from "../schema.ts";
import type { FieldFrom, PictureField, PictureFields } from "./picture/index.ts";

/** What a work took from its picture, where nobody had told it. */
export interface FromPicture {
  readonly field: Exclude<PictureField, "title">;
  readonly value: string;
  readonly from: FieldFrom;
}

const OF_WORK = ["maker", "year"] as const;
const OF_RECORD = ["description", "subject", "rights", "credit", "inventoryNumber"] as const;

const blank = (text: string | undefined): boolean => (text ?? "").trim() === "";

/** A work with what its picture says of it where it says nothing itself, and what that was. */
export function withPictureFields(
  work: WorkDocument,
  fields: PictureFields,
): { readonly work: WorkDocument; readonly taken: readonly FromPicture[] } {
  const record = work.record ?? {};
  const taken = [
    ...OF_WORK.filter((field) => blank(work[field])),
    ...OF_RECORD.filter((field) => blank(record[field])),
  ].flatMap((field): FromPicture[] => {
    const said = fields[field];
    return said === undefined ? [] : [{ field, ...said }];
  });
  if (taken.length === 0) return { work, taken };
  const valuesOf = (names: readonly FromPicture["field"][]): Readonly<Record<string, string>> =>
    Object.fromEntries(
      taken.filter(({ field }) => names.includes(field)).map(({ field, value }) => [field, value]),
    );
  const more = valuesOf(OF_RECORD);
  return {
    work: {
      ...work,
      ...valuesOf(OF_WORK),
      ...(Object.keys(more).length === 0 ? {} : { record: { ...record, ...more } }),
    },
    taken,
  };
}
