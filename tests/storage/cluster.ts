import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import pg from "pg";

/** Where systems put PostgreSQL's own programs; Debian keeps a folder for each version. */
const DEBIAN = "/usr/lib/postgresql";
const FOLDERS = [
  ...(existsSync(DEBIAN) ? readdirSync(DEBIAN).map((version) => join(DEBIAN, version, "bin")) : []),
  ...(process.env["PATH"] ?? "").split(":"),
  "/usr/local/pgsql/bin",
  "/opt/homebrew/bin",
];
const folder = FOLDERS.find((one) => ["initdb", "postgres"].every((name) => existsSync(join(one, name))));

/** Why there is no PostgreSQL to test on; null where there is one. */
export const noPostgres: string | null =
  folder === undefined
    ? "left out: no initdb and postgres are found; on Debian install postgresql"
    : unprivileged() === null
      ? "left out: PostgreSQL does not run as root, and there is no user postgres or nobody"
      : null;

/** Whom it runs as: itself, or where this is root somebody who may do less. Null: nobody is there. */
function unprivileged(): { uid?: number; gid?: number } | null {
  if (process.getuid?.() !== 0) return {};
  for (const name of ["postgres", "nobody"]) {
    try {
      const told = (flag: string): number =>
        Number(execFileSync("id", [flag, name], { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] }));
      return { uid: told("-u"), gid: told("-g") };
    } catch (error) {
      // `id` ends with 1 where there is nobody of that name.
      if (!(error instanceof Error)) throw error;
    }
  }
  return null;
}

export interface Cluster {
  /** The address of an empty database of its own. */
  fresh(): Promise<string>;
  stop(): Promise<void>;
}

/** A PostgreSQL of its own in a temporary folder, on a free port of this machine alone. */
export async function startCluster(): Promise<Cluster> {
  const user = unprivileged();
  if (folder === undefined || user === null) throw new Error(noPostgres ?? "no PostgreSQL");
  const home = mkdtempSync(join(tmpdir(), "margent-postgres-"));
  if (user.uid !== undefined) chownSync(home, user.uid, user.gid ?? user.uid);
  const data = join(home, "data");
  const init = ["-D", data, "-U", "margent", "-A", "trust", "-E", "UTF8", "--no-locale", "--no-sync"];
  execFileSync(join(folder, "initdb"), init, { ...user, stdio: "ignore", cwd: home });
  const port = await freePort();
  const server = spawn(
    join(folder, "postgres"),
    ["-D", data, "-p", String(port), "-k", home, "-c", "listen_addresses=127.0.0.1"],
    { ...user, stdio: "ignore", cwd: home },
  );
  const address = (name: string): string => `postgres://margent@127.0.0.1:${port}/${name}`;
  await answering(address("postgres"), server);
  let made = 0;
  return {
    fresh: async () => {
      const name = `studio${++made}`;
      await ask(address("postgres"), `create database ${name}`);
      return address(name);
    },
    stop: async () => {
      const ended = new Promise((done) => server.once("exit", done));
      // The way to stop that lets whoever is leaving leave; one who stays is sent away.
      server.kill("SIGTERM");
      const patience = setTimeout(() => server.kill("SIGINT"), 5000);
      await ended;
      clearTimeout(patience);
      rmSync(home, { recursive: true });
    },
  };
}

async function ask(address: string, question: string): Promise<void> {
  const client = new pg.Client({ connectionString: address });
  await client.connect();
  try {
    await client.query(question);
  } finally {
    await client.end();
  }
}

/** Settles once it answers, and fails when it has ended or a minute is over. */
async function answering(address: string, server: ChildProcess): Promise<void> {
  for (let tries = 0; ; tries++) {
    try {
      return await ask(address, "select 1");
    } catch (error) {
      if (server.exitCode !== null || tries > 600) throw error;
      await new Promise((done) => setTimeout(done, 100));
    }
  }
}

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  const { port } = server.address() as AddressInfo;
  await new Promise((done) => server.close(done));
  return port;
}
