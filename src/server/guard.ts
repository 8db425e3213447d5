import type { MiddlewareHandler } from "hono";
import { SERVER } from "../words/server.ts";
import { refusal } from "./refusal.ts";

/** This machine by every name it has for itself. */
const LOOPBACK = new Set(["127.0.0.1", "localhost", "[::1]"]);

/**
 * Answers only what was addressed to this machine by name and comes from a page given out here. A site
 * elsewhere that makes a browser call 127.0.0.1 is stopped by its origin, one whose own name was made
 * to point here by the host. `port` is the one listened on, null where any will do.
 */
export const guard =
  (port: () => number | null): MiddlewareHandler =>
  async (context, next) => {
    const host = context.req.header("host") ?? "";
    if (!isOurs(`http://${host}`, port()))
      return refusal(context, 403, { field: "Host", found: host, wanted: SERVER.host });
    const origin = context.req.header("origin");
    if (origin !== undefined && origin.toLowerCase() !== `http://${host}`.toLowerCase()) {
      return refusal(context, 403, { field: "Origin", found: origin, wanted: SERVER.origin });
    }
    // Browsers say it where they leave the origin out: a picture or a script asked for by another site.
    const site = context.req.header("sec-fetch-site");
    if (site === "cross-site" && context.req.path.startsWith("/api/")) {
      return refusal(context, 403, { field: "Sec-Fetch-Site", found: site, wanted: SERVER.origin });
    }
    return next();
  };

function isOurs(address: string, port: number | null): boolean {
  if (!URL.canParse(address)) return false;
  const { hostname, port: asked, pathname, username } = new URL(address);
  if (pathname !== "/" || username !== "") return false;
  return LOOPBACK.has(hostname) && (port === null || Number(asked === "" ? 80 : asked) === port);
}

/** Everything that the page does not need is forbidden. Pictures it makes itself are `blob:`, what a person brings in may be `data:`. */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' blob: data:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "form-action 'none'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
].join("; ");

/** The worker that plans brings a solver that is WebAssembly; nothing else may run any. */
const PLANNING = /^\/assets\/planning-worker-[\w-]+\.js$/;
const PLANNING_POLICY = POLICY.replace("script-src 'self'", "script-src 'self' 'wasm-unsafe-eval'");

const HEADERS = {
  "X-Content-Type-Options": "nosniff",
  "X-Frame-Options": "DENY",
  "Referrer-Policy": "no-referrer",
  // Both together let the page share a number with its workers, by which a plan is ended and kept.
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Embedder-Policy": "require-corp",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Permissions-Policy":
    "accelerometer=(), camera=(), display-capture=(), geolocation=(), gyroscope=(), microphone=(), midi=(), payment=(), usb=()",
} as const;

/** The headers of every answer, refusals too. */
export const headers: MiddlewareHandler = async (context, next) => {
  await next();
  const planning = PLANNING.test(context.req.path);
  context.header("Content-Security-Policy", planning ? PLANNING_POLICY : POLICY);
  for (const [name, value] of Object.entries(HEADERS)) context.header(name, value);
};
