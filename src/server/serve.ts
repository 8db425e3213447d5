import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { showDocument, validate } from "../show/index.ts";
import { SERVER } from "../words/server.ts";
import { createApp, type Example } from "./app.ts";
import { type Assets, readAssets } from "./assets.ts";
import { hasScreen, openBrowser } from "./browser.ts";
import { type Listening, listen } from "./listen.ts";
import type { Papers } from "./papers.ts";
import { projectFolder } from "./project.ts";

export const USUAL_PORT = 4817;

export interface ServeOptions {
  /** As typed after `--port`; absent: MARGENT_PORT, else 4817. */
  readonly port?: string;
  /** As typed after `--home`; absent: MARGENT_HOME. */
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
  checkHome(options.home ?? environment["MARGENT_HOME"]);
  const project = projectFolder();

  let listening: Listening | null = null;
  const app = createApp({
    assets: readPage(options.page ?? join(project, "dist", "web")),
    example: readExample(join(project, "examples", "slack-water")),
    clock: options.clock,
    papers: options.papers,
    report: (fault) => err(fault instanceof Error ? (fault.stack ?? fault.message) : String(fault)),
    port: () => listening?.port ?? null,
  });
  listening = await listen(app, port).catch((error: NodeJS.ErrnoException) => {
    throw error.code === "EADDRINUSE" ? new CannotServe(SERVER.portTaken(port), { cause: error }) : error;
  });

  const ended = untilTold(options.until);
  out(SERVER.at(listening.address));
  const atTerminal = process.stdout.isTTY === true;
  if (options.open ?? (atTerminal && hasScreen(process.platform, environment))) {
    openBrowser(process.platform, listening.address, (why) => err(SERVER.noBrowser(why)));
  }
  await ended;
  await listening.close();
}

const toOutput = (line: string): void => void process.stdout.write(`${line}\n`);
const toErrors = (line: string): void => void process.stderr.write(`${line}\n`);

function readPort(text: string): number {
  const port = Number(text);
  if (!/^\d{1,5}$/.test(text) || port > 65_535) throw new CannotServe(SERVER.badPort(text));
  return port;
}

/** The folder may be missing: nothing is kept in it yet. What is there must be a folder. */
function checkHome(home: string | undefined): void {
  if (home === undefined) return;
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
