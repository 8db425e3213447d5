import type { Wanted } from "../show/problem.ts";
import { sayWanted } from "./problems.ts";

/** What is said where something cannot be kept. */
export const STORAGE = {
  newer: (found: number, reads: number): string =>
    `the studio's tables are of form ${found}, written by a later Margent; this one knows up to ${reads}: use the later one`,
  noSqlite: (file: string, why: string): string => `${file}: cannot be opened (${why})`,
  withoutSqlite: (why: string): string => `this machine's Node has no better-sqlite3 (${why})`,
  notOurs: (file: string): string => `${file}: is no file of a Margent studio`,
  broken: (file: string, found: string): string => `${file}: is damaged (${found}); a backup can be restored`,
  noHome: (home: string, why: string): string => `${home}: cannot be made the studio's folder (${why})`,
  noPostgres: (place: string, why: string): string => `the database at ${place} does not answer (${why})`,
  notDurable:
    "this PostgreSQL acknowledges what is not on the disk yet (fsync or synchronous_commit is off): turn them on",
  badAddress: "MARGENT_DATABASE wants an address such as postgres://user@host/studio",
  noShow: (id: string): string => `there is no show ${id}`,
  tooMuch: "more than one zip can hold (4 GB): back the studio's file up instead",
  missing: (name: string): string => `${name}: is not there`,
  tooLarge: (name: string): string => `${name}: is too large`,
  noPicture: (name: string): string => `${name}: is no picture that can be kept`,
  noJson: (name: string): string => `${name}: is no JSON`,
  noZip: "it is no zip, or a broken one",
  wrong: (name: string, field: string, found: string, wanted: Wanted): string =>
    `${name}${field === "" ? "" : `, ${field}`}: found ${found}; wanted: ${sayWanted(wanted)}`,
  gap: (name: string, number: number): string => `${name}: change ${number} is not where it belongs`,
  laterExport: (version: number): string =>
    `this export is of version ${version}, written by a later Margent`,
  laterShow: (version: number, reads: number): string =>
    `this show is of version ${version}; this Margent reads up to ${reads}`,
  running: (processes: string): string =>
    `Margent is serving this studio (process ${processes}): stop it first, and then restore`,
  otherKind: "this backup is a studio's file; a PostgreSQL is restored from an export (a zip)",
} as const;
