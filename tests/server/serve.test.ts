import { spawn } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createServer, request } from "node:http";
import type { AddressInfo } from "node:net";
import { networkInterfaces, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { unzipSync } from "fflate";
import { afterAll, beforeAll, expect, test } from "vitest";
import { CannotServe, hasScreen, opener, serve, type ServeOptions } from "../../src/server/index.ts";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "margent-page-"));
  writeFileSync(join(folder, "index.html"), "<!doctype html><title>Margent</title>");
});
afterAll(() => rmSync(folder, { recursive: true }));

const nothing = async () => ({ ok: false, problems: [] }) as const;
const options = (more: Partial<ServeOptions>): ServeOptions => ({
  page: folder,
  home: join(folder, "home"),
  open: false,
  papers: { benchSheet: nothing, paper: nothing, previews: nothing, packet: nothing },
  clock: () => new Date(2026, 11, 14),
  ...more,
});

/** Starts a server in this very process; gives its address and what ends it. */
async function started(port = "0"): Promise<{ address: string; lines: string[]; stop: () => Promise<void> }> {
  const end = new AbortController();
  const lines: string[] = [];
  let served: Promise<void> = Promise.resolve();
  const address = await new Promise<string>((said, failed) => {
    const out = (line: string) => {
      lines.push(line);
      said(line.replace("Margent is at ", ""));
    };
    served = serve(options({ port, until: end.signal, out }));
    served.catch(failed);
  });
  const stop = async () => {
    end.abort();
    await served;
  };
  return { address, lines, stop };
}

test("[SV11] says where it is, in one line, once it answers", async () => {
  const { address, lines, stop } = await started();
  expect(lines).toEqual([`Margent is at ${address}`]);
  expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
  expect((await fetch(`${address}health`)).status).toBe(200);
  expect(await (await fetch(address)).text()).toContain("<title>Margent</title>");
  await stop();
  await expect(fetch(`${address}health`)).rejects.toThrow();
});

test("[SV1] cannot be reached by any address but loopback, nor under another name", async () => {
  const { address, stop } = await started();
  const { port } = new URL(address);
  const others = Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .filter(({ internal, family }) => !internal && family === "IPv4")
    .map((one) => one.address);
  for (const other of others) await expect(fetch(`http://${other}:${port}/health`)).rejects.toThrow();
  const status = await new Promise<number | undefined>((answered, failed) => {
    request(
      { host: "127.0.0.1", port, path: "/health", headers: { host: `margent.example:${port}` } },
      (answer) => {
        answer.resume();
        answered(answer.statusCode);
      },
    )
      .once("error", failed)
      .end();
  });
  expect(status).toBe(403);
  await stop();
});

test("[SV11] says in a sentence that the port is taken", async () => {
  const other = createServer();
  await new Promise<void>((done) => other.listen(0, "127.0.0.1", done));
  const { port } = other.address() as AddressInfo;
  await expect(serve(options({ port: String(port) }))).rejects.toThrow(`port ${port} is taken`);
  await new Promise((done) => other.close(done));
});

test.each(["65536", "-1", "4817.5", "x", ""])("[SV11] refuses the port %j", async (port) => {
  await expect(serve(options({ port }))).rejects.toThrow(CannotServe);
});

test("[SV11] says that the page is not built, and that a home must be a folder", async () => {
  await expect(serve(options({ port: "0", page: join(folder, "none") }))).rejects.toThrow("npm start");
  await expect(serve(options({ port: "0", home: join(folder, "index.html") }))).rejects.toThrow(
    "is not a folder",
  );
});

test.each(["SIGINT", "SIGTERM"] as const)(
  "[SV12] ends at %s with status 0, after the answer under way",
  async (signal) => {
    const program = fileURLToPath(new URL("./serving.ts", import.meta.url));
    const child = spawn(process.execPath, ["--import", "tsx", program, folder], {
      stdio: ["ignore", "pipe", "pipe"],
      env: { ...process.env, MARGENT_PORT: "0", MARGENT_HOME: join(folder, "home"), CI: "true" },
    });
    const ended = new Promise<number | null>((done) => child.once("exit", done));
    let said = "";
    const address = await new Promise<string>((found) => {
      child.stdout.on("data", (piece: Buffer) => {
        said += piece.toString();
        const match = /at (http:\S+)\n/.exec(said);
        if (match?.[1]) found(match[1]);
      });
    });
    const packet = fetch(`${address}api/papers/packet`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ show: { format: "margent-show", version: 1, name: "x", works: [] } }),
    });
    // The request must have come in before the signal goes out.
    await new Promise((done) => setTimeout(done, 100));
    child.kill(signal);
    const answer = await packet;
    expect(answer.status).toBe(200);
    expect(Object.keys(unzipSync(new Uint8Array(await answer.arrayBuffer())))).toEqual(["late.txt"]);
    expect(await ended).toBe(0);
    expect(said).toBe(`Margent is at ${address}\n`);
  },
);

test("[SV13] opens a browser only where there is a screen", () => {
  expect(hasScreen("linux", {})).toBe(false);
  expect(hasScreen("linux", { DISPLAY: "" })).toBe(false);
  expect(hasScreen("linux", { DISPLAY: ":0" })).toBe(true);
  expect(hasScreen("linux", { WAYLAND_DISPLAY: "wayland-0" })).toBe(true);
  expect(hasScreen("darwin", {})).toBe(true);
  expect(hasScreen("darwin", { CI: "true" })).toBe(false);
});

test("[SV13] opens it in the system's own way", () => {
  expect(opener("linux", "http://127.0.0.1:1/")).toEqual(["xdg-open", ["http://127.0.0.1:1/"]]);
  expect(opener("darwin", "http://127.0.0.1:1/")).toEqual(["open", ["http://127.0.0.1:1/"]]);
  expect(opener("win32", "http://127.0.0.1:1/")[1].at(-1)).toBe("http://127.0.0.1:1/");
});
