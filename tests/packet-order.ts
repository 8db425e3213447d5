import type { PacketOrder } from "../src/packet/index.ts";
import type { ShowRead } from "../src/show/index.ts";

/** An order for the packet of a show, with nothing that is not asked for. */
export const packetOrder = (show: ShowRead, more: Partial<PacketOrder> = {}): PacketOrder => ({
  show,
  practice: null,
  stock: null,
  date: "2026-11-25",
  plan: { number: 1, makesVoid: null },
  paper: null,
  picture: () => undefined,
  seconds: 0,
  clock: () => 0,
  progress: () => undefined,
  ...more,
});
