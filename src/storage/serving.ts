import { mkdirSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const MARK = /^serving-(\d+)$/;

/** Notes in a studio's folder that this process serves it; what comes back takes the note away. */
export function markServing(home: string): () => void {
  mkdirSync(home, { recursive: true });
  const mark = join(home, `serving-${process.pid}`);
  writeFileSync(mark, "");
  return () => rmSync(mark, { force: true });
}

/** The processes that serve a studio now. One that was killed leaves its note behind, and is not counted. */
export function servingIn(home: string): number[] {
  return namesIn(home)
    .flatMap((name) => MARK.exec(name)?.slice(1) ?? [])
    .map(Number)
    .filter((id) => id !== process.pid && isAlive(id));
}

function namesIn(home: string): string[] {
  try {
    return readdirSync(home);
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT") return [];
    throw error;
  }
}

function isAlive(id: number): boolean {
  try {
    return process.kill(id, 0);
  } catch (error) {
    // Somebody else's process is alive too.
    return error instanceof Error && "code" in error && error.code === "EPERM";
  }
}
