import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { showDocument, validate } from "../show/index.ts";
import { SERVER } from "../words/server.ts";
import { CannotKeep, markServing, openStore, type Store } from "../storage/index.ts";
import { createApp, type Example } from "./app.ts";
import { type Assets, readAssets } from "./assets.ts";
import { hasScreen, openBrowser } from "./browser.ts";
import { usualHome } from "./home.ts";
import { newId } from "./ids.ts";
import { type Listening, listen } from "./listen.ts";
import { newsOf } from "./news.ts";
import type { Papers } from "./papers.ts";
import { projectFolder } from "./project.ts";

export const USUAL_PORT = 4817;

export interface ServeOptions {
  /** As typed after `--port`; absent: MARGENT_PORT, else 4817. */
  readonly port?: string;
  /** As typed after `--home`; absent: MARGENT_HOME, else the user's own folder for a program's data. */
  readonly home?: string;
  /** Absent: a browser is opened when there is a screen and a person at the terminal. */
  readonly open?: boolean;
  /** The folder of the built page; absent: where the build puts it. */
  readonly page?: string;
  readonly papers: Papers;
  readonly clock: () => Date;
  /** Ends the server as a signal does. */
  readonly until?: AbortSignal;
  readonly out?: (line: string) => void;
  readonly err?: (line: string) => void;
}

/** Why the server cannot start, in a sentence. */
export class CannotServe extends Error {}

/**
 * `margent serve`: serves the page until SIGINT, SIGTERM or `until`, then stops cleanly. Once it
 * answers, one line on standard output says where. Rejects with CannotServe when it cannot start.
 */
export async function serve(options: ServeOptions): Promise<void> {
  const { out = toOutput, err = toErrors } = options;
  const environment = process.env;
  const port = readPort(options.port ?? environment["MARGENT_PORT"] ?? String(USUAL_PORT));
  const home = options.home ?? environment["MARGENT_HOME"] ?? usualHome(process.platform, environment);
  checkHome(home);
  const project = projectFolder();
  const page = readPage(options.page ?? join(project, "dist", "web"));
  const report = (fault: unknown) =>
    err(fault instanceof Error ? (fault.stack ?? fault.message) : String(fault));
  const store = await openOrSay(home, environment["MARGENT_DATABASE"], options.clock, report, err);
  const news = store === null ? null : newsOf(store, report);
  const unmark = store === null ? () => undefined : markServing(home);

  let listening: Listening | null = null;
  const app = createApp({
    assets: page,
    example: readExample(join(project, "examples", "slack-water")),
    clock: options.clock,
    papers: options.papers,
    studio: store === null || news === null ? null : { store, news, newId },
    report,
    port: () => listening?.port ?? null,
  });
  listening = await listen(app, port).catch(async (error: NodeJS.ErrnoException) => {
    unmark();
    await store?.close();
    throw error.code === "EADDRINUSE" ? new CannotServe(SERVER.portTaken(port), { cause: error }) : error;
  });

  const ended = untilTold(options.until);
  out(SERVER.at(listening.address));
  const atTerminal = process.stdout.isTTY === true;
  if (options.open ?? (atTerminal && hasScreen(process.platform, environment))) {
    openBrowser(process.platform, listening.address, (why) => err(SERVER.noBrowser(why)));
  }
  await ended;
  news?.end();
  await listening.close();
  await store?.close();
  unmark();
}

/**
 * The studio's store. Where the machine has no SQLite the page is served without one, and that is said; a
 * database that was asked for by name, or a file that cannot be read, is a reason not to start.
 */
async function openOrSay(
  home: string,
  database: string | undefined,
  clock: () => Date,
  report: (fault: unknown) => void,
  err: (line: string) => void,
): Promise<Store | null> {
  try {
    return await openStore({ home, database, clock, report });
  } catch (error) {
    if (!(error instanceof CannotKeep)) throw error;
    if (!error.withoutSqlite) throw new CannotServe(error.message, { cause: error });
    err(SERVER.keepsNothing(error.message));
    return null;
  }
}

const toOutput = (line: string): void => void process.stdout.write(`${line}\n`);
const toErrors = (line: string): void => void process.stderr.write(`${line}\n`);

function readPort(text: string): number {
  const port = Number(text);
  if (!/^\d{1,5}$/.test(text) || port > 65_535) throw new CannotServe(SERVER.badPort(text));
  return port;
}

/** The folder may be missing: it is made. What is there must be a folder. */
function checkHome(home: string): void {
  const found = statSync(home, { throwIfNoEntry: false });
  if (found !== undefined && !found.isDirectory()) throw new CannotServe(SERVER.homeIsNoFolder(home));
}

function readPage(folder: string): Assets {
  const built = statSync(join(folder, "index.html"), { throwIfNoEntry: false });
  if (built === undefined) throw new CannotServe(SERVER.notBuilt(folder));
  return readAssets(folder);
}

/** The example show as it stands in the project. Throws when it does not hold to its own format: that is a fault of ours. */
export function readExample(folder: string): Example {
  const read = validate(showDocument, JSON.parse(readFileSync(join(folder, "show.json"), "utf8")));
  if (!read.ok) throw new Error(`${folder}: ${JSON.stringify(read.problems[0])}`);
  return { show: read.value, pictures: readAssets(join(folder, "pictures")) };
}

/** Settles at the first signal to stop; a second one ends the program at once, as the system would. */
function untilTold(until: AbortSignal | undefined): Promise<void> {
  return new Promise((told) => {
    const stop = () => {
      process.off("SIGINT", stop);
      process.off("SIGTERM", stop);
      until?.removeEventListener("abort", stop);
      told();
    };
    process.on("SIGINT", stop);
    process.on("SIGTERM", stop);
    if (until?.aborted === true) stop();
    until?.addEventListener("abort", stop);
  });
}
