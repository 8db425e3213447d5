import { join } from "node:path";
import { newId, picturesOf, projectFolder, readExample, usualHome } from "../server/index.ts";
import {
  backup,
  CannotKeep,
  type Elsewhere,
  exportTo,
  importArchive,
  listShows,
  openStore,
  restore,
  type Store,
  type StoreOptions,
} from "../storage/index.ts";
import { CLI } from "../words/cli.ts";
import { readBytes, Unreadable } from "./input.ts";

export interface StudioAsked {
  /** The studio's folder; absent: MARGENT_HOME, else the user's own. */
  readonly home?: string;
  /** Of an export: the one show, by its name or id. */
  readonly show?: string;
}

const optionsOf = ({ home }: StudioAsked): StoreOptions => ({
  home: home ?? process.env["MARGENT_HOME"] ?? usualHome(process.platform, process.env),
  database: process.env["MARGENT_DATABASE"],
  clock: () => new Date(),
  report: ({ message }) => void process.stderr.write(`${message}\n`),
});

/** `margent backup`: a copy of the studio, also while it is served. */
export async function runBackup(file: string, asked: StudioAsked): Promise<void> {
  await withStore(asked, async (store) => backup(store, elsewhere(), file));
  say(CLI.backup.done(file));
}

/** `margent restore`: a backup in the place of all that is there. */
export async function runRestore(file: string, asked: StudioAsked): Promise<void> {
  const { before, shows } = await orUnreadable(restore(optionsOf(asked), file, elsewhere(), newId));
  say(CLI.restore.done(shows, before));
}

/** `margent export`: one show or all of the studio as a zip. */
export async function runExport(file: string, asked: StudioAsked): Promise<void> {
  const { show } = asked;
  await withStore(asked, async (store) => {
    const what = show === undefined ? "studio" : { show: await showNamed(store, show) };
    await exportTo(store, what, elsewhere(), file);
  });
  say(CLI.export.done(file));
}

/** `margent import`: the shows of a zip beside those that are there. */
export async function runImport(file: string, asked: StudioAsked): Promise<void> {
  const bytes = readBytes(file);
  const { shows } = await withStore(asked, async (store) => importArchive(store, bytes, { newId }));
  for (const { name, works } of shows) say(CLI.import.done(name, works));
}

const say = (line: string): void => void process.stderr.write(`${line}\n`);

/** The example's pictures, which a show that began with it may still name. */
const elsewhere = (): Elsewhere => picturesOf(readExample(join(projectFolder(), "examples", "slack-water")));

async function showNamed(store: Store, named: string): Promise<string> {
  const shows = await listShows(store);
  const found = shows.filter(({ id, name }) => id === named || name === named);
  const [first] = found;
  if (first !== undefined && found.length === 1) return first.id;
  const all = (found.length > 1 ? found : shows).map(({ id, name }) => `${name} (${id})`).join(", ");
  throw new Unreadable(CLI.problem("--show", named, CLI.export.oneOf(all)));
}

async function withStore<Result>(
  asked: StudioAsked,
  run: (store: Store) => Promise<Result>,
): Promise<Result> {
  const store = await orUnreadable(openStore(optionsOf(asked)));
  try {
    return await orUnreadable(run(store));
  } finally {
    await store.close();
  }
}

/** What cannot be kept or read is a sentence and status 2; so is a file that cannot be written. */
async function orUnreadable<Result>(result: Promise<Result>): Promise<Result> {
  try {
    return await result;
  } catch (error) {
    const file = error instanceof Error && "code" in error && typeof error.code === "string";
    if (error instanceof CannotKeep || (file && error instanceof Error))
      throw new Unreadable(error.message, { cause: error });
    throw error;
  }
}
