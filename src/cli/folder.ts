import {
  chmodSync,
  closeSync,
  existsSync,
  fsyncSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
import { hostname } from "node:os";
import { basename, dirname, join, resolve } from "node:path";
import type { PacketFile } from "../packet/index.ts";
import { PACKET } from "../words/packet.ts";
import { Unreadable } from "./input.ts";

/** The plan of the packet that a folder holds, so that its successor can say which one it makes void. */
export interface EarlierPlan {
  readonly number: number;
  readonly date: string;
}

/**
 * What a folder holds: nothing, or an earlier packet. A folder with anything else is refused, since it
 * would be lost. A packet whose replacing was cut off half-way is put back first.
 */
export function earlierPlan(folder: string): EarlierPlan | null {
  const target = resolve(folder);
  const aside = asideOf(target);
  if (!existsSync(target) && existsSync(aside)) renameSync(aside, target);
  if (!existsSync(target)) return null;
  if (!statSync(target).isDirectory()) throw new Unreadable(PACKET.notAPacket(folder));
  const entries = readdirSync(target);
  if (entries.length === 0) return null;
  if (!entries.includes("packet.json")) throw new Unreadable(PACKET.notAPacket(folder));
  return planOf(readFileSync(join(target, "packet.json"), "utf8"), folder);
}

function planOf(text: string, folder: string): EarlierPlan | null {
  let packet: unknown;
  try {
    packet = JSON.parse(text);
  } catch (error) {
    throw new Unreadable(PACKET.notAPacket(folder), { cause: error });
  }
  if (typeof packet !== "object" || packet === null || Reflect.get(packet, "format") !== "margent-packet") {
    throw new Unreadable(PACKET.notAPacket(folder));
  }
  const number: unknown = Reflect.get(packet, "plan");
  const date: unknown = Reflect.get(packet, "date");
  return typeof number === "number" && typeof date === "string" ? { number, date } : null;
}

/** Where the old packet waits while the new one takes its place. */
const asideOf = (target: string): string => join(dirname(target), `.${basename(target)}.before`);

/**
 * Puts a whole packet in a folder: written and flushed beside it, then moved into place. Whatever stops
 * it, the folder holds the old packet or the new one, never half of each. The result is how many files.
 */
export async function replaceFolder(folder: string, files: AsyncIterable<PacketFile>): Promise<number> {
  const target = resolve(folder);
  mkdirSync(dirname(target), { recursive: true });
  sweep(target);
  const fresh = mkdtempSync(join(dirname(target), `${freshStart(target)}${process.pid}-`));
  let count = 0;
  try {
    for await (const { name, bytes } of files) {
      writeFlushed(join(fresh, name), bytes);
      count += 1;
    }
    // A temporary folder is its maker's alone; a packet is as open as any folder made here.
    chmodSync(fresh, 0o777 & ~process.umask());
    flushFolder(fresh);
    const aside = asideOf(target);
    rmSync(aside, { recursive: true, force: true });
    if (existsSync(target)) renameSync(target, aside);
    renameSync(fresh, target);
    flushFolder(dirname(target));
    rmSync(aside, { recursive: true, force: true });
    return count;
  } catch (error) {
    rmSync(fresh, { recursive: true, force: true });
    throw error;
  }
}

/** How the names of folders begin in which this machine writes a target's next packet; the process's id and six signs follow. */
const freshStart = (target: string): string =>
  `.${basename(target)}.new-${hostname().replaceAll(/[^A-Za-z0-9]/g, "")}-`;

const REST_OF_FRESH = /^(\d+)-[A-Za-z0-9]{6}$/;

/** Removes what a packet to the same target left beside it when its process was killed: of this machine and this user alone, and never while that process runs. */
function sweep(target: string): void {
  const parent = dirname(target);
  const start = freshStart(target);
  for (const name of readdirSync(parent)) {
    const match = name.startsWith(start) ? REST_OF_FRESH.exec(name.slice(start.length)) : null;
    if (match === null || isRunning(Number(match[1]))) continue;
    const path = join(parent, name);
    const found = lstatSync(path, { throwIfNoEntry: false });
    const own = process.getuid === undefined || found?.uid === process.getuid();
    if (found?.isDirectory() === true && own) rmSync(path, { recursive: true, force: true });
  }
}

/** Signal 0 only asks: of another user's process it may not, and so that runs. */
function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return !(error instanceof Error && "code" in error && error.code === "ESRCH");
  }
}

function writeFlushed(path: string, bytes: Uint8Array): void {
  const file = openSync(path, "wx", 0o644);
  try {
    for (let written = 0; written < bytes.length; ) written += writeSync(file, bytes, written);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** Makes the names in a folder durable; not every system lets a folder be flushed, and none needs it to be right while it runs. */
function flushFolder(path: string): void {
  if (process.platform === "win32") return;
  const folder = openSync(path, "r");
  try {
    fsyncSync(folder);
  } finally {
    closeSync(folder);
  }
}
