/** What is said where something cannot be kept. */
export const STORAGE = {
  newer: (found: number, reads: number): string =>
    `the studio's tables are of form ${found}, written by a later Margent; this one knows up to ${reads}: use the later one`,
  noSqlite: (file: string, why: string): string => `${file}: cannot be opened (${why})`,
  notOurs: (file: string): string => `${file}: is no file of a Margent studio`,
  broken: (file: string, found: string): string => `${file}: is damaged (${found}); a backup can be restored`,
  noHome: (home: string, why: string): string => `${home}: cannot be made the studio's folder (${why})`,
  noPostgres: (place: string, why: string): string => `the database at ${place} does not answer (${why})`,
  notDurable:
    "this PostgreSQL acknowledges what is not on the disk yet (fsync or synchronous_commit is off): turn them on",
  badAddress: "MARGENT_DATABASE wants an address such as postgres://user@host/studio",
} as const;
