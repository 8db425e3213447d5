import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openStore, type Store } from "../../src/storage/index.ts";
import { type Cluster, noPostgres, startCluster } from "./cluster.ts";

/** A database of a kind, started before its tests and taken away after them. */
export interface Kind {
  readonly name: string;
  /** Why there is none here; null where there is one. */
  readonly missing: string | null;
  /** How many stories a property tells on it. */
  readonly runs: number;
  start(): Promise<void>;
  stop(): Promise<void>;
  /** A place for a studio: an empty database, or a folder of its own. */
  place(): Promise<Place>;
}

export interface Place {
  readonly home: string;
  readonly database: string;
}

let day = 0;
/** A clock that is a second later each time. */
export const clock = (): Date => new Date(Date.UTC(2026, 10, 25, 9, 0, day++));

export const open = (place: Place): Promise<Store> =>
  openStore({
    ...place,
    clock,
    report: (fault) => {
      throw fault;
    },
  });

const homes: string[] = [];
function home(): string {
  const folder = mkdtempSync(join(tmpdir(), "margent-home-"));
  homes.push(folder);
  return folder;
}
const clear = (): void => {
  for (const folder of homes.splice(0)) rmSync(folder, { recursive: true, force: true });
};

let cluster: Cluster | null = null;

export const KINDS: readonly Kind[] = [
  {
    name: "SQLite",
    missing: null,
    runs: 40,
    start: async () => undefined,
    stop: async () => clear(),
    place: async () => ({ home: home(), database: "" }),
  },
  {
    name: "PostgreSQL",
    missing: noPostgres,
    runs: 15,
    start: async () => {
      cluster = await startCluster();
    },
    stop: async () => {
      await cluster?.stop();
      clear();
    },
    place: async () => ({ home: home(), database: (await cluster?.fresh()) ?? "" }),
  },
];
