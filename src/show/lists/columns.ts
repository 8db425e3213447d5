/** The columns of a list of works that are understood, as they are written in a header. */
export const COLUMNS = [
  "title",
  "maker",
  "year",
  "process",
  "sheet width",
  "sheet height",
  "image left",
  "image top",
  "image width",
  "image height",
  "show",
  "window width",
  "window height",
  "outer width",
  "outer height",
  "angle",
  "edition",
  "quantity",
  "frame",
  "picture",
  "dimensions",
  "notes",
] as const;

export type Column = (typeof COLUMNS)[number];

/** The columns that hold one length. */
export const LENGTH_COLUMNS = [
  "sheet width",
  "sheet height",
  "image left",
  "image top",
  "image width",
  "image height",
  "window width",
  "window height",
  "outer width",
  "outer height",
] as const satisfies readonly Column[];

export type LengthColumn = (typeof LENGTH_COLUMNS)[number];

/** The columns that hold plain words. */
export const TEXT_COLUMNS = [
  "title",
  "maker",
  "year",
  "process",
  "edition",
  "picture",
  "notes",
] as const satisfies readonly Column[];

export type TextColumn = (typeof TEXT_COLUMNS)[number];
