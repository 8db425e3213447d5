import { type FromPicture, readPictureFields, type RowWork, withPictureFields } from "../show/index.ts";
import type { PacketOrder } from "./order.ts";

/** Something that a work took from its picture, by row. */
export interface PictureNote extends FromPicture {
  readonly row: number;
}

/** A show's works with what their own pictures say of them, where they say nothing themselves. */
export function withPictures({ show, picture }: PacketOrder): {
  readonly works: readonly RowWork[];
  readonly notes: readonly PictureNote[];
} {
  const notes: PictureNote[] = [];
  const works = show.works.map((listed): RowWork => {
    const { row, work } = listed;
    const bytes = work.picture === undefined ? undefined : picture(work.picture);
    if (bytes === undefined) return listed;
    const filled = withPictureFields(work, readPictureFields(bytes));
    notes.push(...filled.taken.map((taken) => ({ row, ...taken })));
    return filled.taken.length === 0 ? listed : { ...listed, work: filled.work };
  });
  return { works, notes };
}

/** What a work took from its picture, in the open format; nothing where it took nothing. */
export function pictureJson(
  { pictureNotes }: { readonly pictureNotes: readonly PictureNote[] },
  row: number,
): { readonly fromPicture?: object } {
  const own = pictureNotes.filter((note) => note.row === row);
  return own.length === 0
    ? {}
    : { fromPicture: own.map(({ field, value, from }) => ({ field, value, from })) };
}
