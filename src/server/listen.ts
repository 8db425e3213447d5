import type { Server } from "node:http";
import type { AddressInfo } from "node:net";
import { createAdaptorServer } from "@hono/node-server";
import type { Hono } from "hono";

export const LOOPBACK_ADDRESS = "127.0.0.1";

/** A server that answers. */
export interface Listening {
  readonly port: number;
  /** `http://127.0.0.1:4817/` */
  readonly address: string;
  /** Takes no more requests, lets those under way end, and after `patience` milliseconds cuts what is left. */
  close(patience?: number): Promise<void>;
}

/** Listens on this machine alone; port 0 takes any free one. Rejects as the system does, `EADDRINUSE` where the port is taken. */
export function listen(app: Hono, port: number): Promise<Listening> {
  const server = createAdaptorServer({ fetch: app.fetch }) as Server;
  return new Promise((listening, failed) => {
    server.once("error", failed);
    server.listen(port, LOOPBACK_ADDRESS, () => {
      server.off("error", failed);
      const taken = (server.address() as AddressInfo).port;
      listening({
        port: taken,
        address: `http://${LOOPBACK_ADDRESS}:${taken}/`,
        close: (patience = 2000) => closed(server, patience),
      });
    });
  });
}

function closed(server: Server, patience: number): Promise<void> {
  return new Promise((done, failed) => {
    const cut = setTimeout(() => server.closeAllConnections(), patience);
    server.close((error) => {
      clearTimeout(cut);
      if (error) failed(error);
      else done();
    });
    server.closeIdleConnections();
  });
}
