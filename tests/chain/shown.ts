import type { PacketOrder } from "../../src/packet/index.ts";
import { type ShowDocument, showDocument, showReadOf, validate } from "../../src/show/index.ts";
import { packetOrder } from "../packet-order.ts";

/** One work from its window to its hook: borders of fixed width, so that a higher window makes everything higher. */
export function shown(windowHeight: string): ShowDocument {
  const moulding = { name: "oak", overall: "3/4", rabbet: "1/4", depth: "3/4", wood: "red oak" as const };
  return {
    format: "margent-show",
    version: 1,
    name: "Slack Water",
    practice: {
      unit: "in",
      moulding,
      glazing: { board: "acrylic", kind: "acrylic" },
      backing: { board: "fluted plastic" },
      hanging: { hookDrop: "1/2" },
    },
    stock: {
      sheets: [{ name: "32 x 40", width: 32, height: 40 }],
      lengths: [{ name: "oak, 10 ft", length: 120 }],
    },
    walls: [{ name: "North wall", width: "144", height: "96" }],
    works: [
      {
        title: "Ebb",
        process: "etching",
        design: {
          print: {
            width: "12",
            height: "16",
            image: { left: "2", top: "2", width: "8", height: "11 1/2" },
          },
          window: { show: "typed", width: "8 1/2", height: windowHeight },
          outer: { borders: { head: "2 1/2", side: "2 1/2", foot: "3" } },
          held: {},
        },
      },
    ],
  };
}

export const orderOf = (document: unknown): PacketOrder => {
  const read = validate(showDocument, document);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return packetOrder(showReadOf(read.value));
};
