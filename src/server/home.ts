import { homedir } from "node:os";
import { join } from "node:path";

/** The studio's folder where none is named: the one that each system gives a program's own data. */
export function usualHome(
  platform: NodeJS.Platform,
  environment: NodeJS.ProcessEnv,
  user: string = homedir(),
): string {
  if (platform === "darwin") return join(user, "Library", "Application Support", "Margent");
  if (platform === "win32")
    return join(environment["APPDATA"] ?? join(user, "AppData", "Roaming"), "Margent");
  const data = environment["XDG_DATA_HOME"] ?? "";
  return join(data === "" ? join(user, ".local", "share") : data, "margent");
}
