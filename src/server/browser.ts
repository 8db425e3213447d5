import { spawn } from "node:child_process";

/** Whether there is a screen on which a browser could open. */
export function hasScreen(platform: NodeJS.Platform, environment: NodeJS.ProcessEnv): boolean {
  if (environment["CI"] !== undefined) return false;
  if (platform === "darwin" || platform === "win32") return true;
  return (environment["DISPLAY"] ?? "") !== "" || (environment["WAYLAND_DISPLAY"] ?? "") !== "";
}

/** The system's own way to open an address: program and arguments. */
export function opener(platform: NodeJS.Platform, address: string): readonly [string, readonly string[]] {
  if (platform === "darwin") return ["open", [address]];
  if (platform === "win32") return ["cmd", ["/c", "start", "", address]];
  return ["xdg-open", [address]];
}

/** Opens the address in the user's browser; `failed` hears why it could not. Never waits for it. */
export function openBrowser(platform: NodeJS.Platform, address: string, failed: (why: string) => void): void {
  const [program, list] = opener(platform, address);
  const child = spawn(program, list, { detached: true, stdio: "ignore" });
  child.once("error", (error) => failed(error.message));
  child.once("exit", (code) => {
    if (code !== null && code !== 0) failed(`${program} ended with ${code}`);
  });
  child.unref();
}
