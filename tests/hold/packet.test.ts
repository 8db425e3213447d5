import { expect, test } from "vitest";
import { filesByName, makePacket } from "../../src/packet/index.ts";
import { type ComposeDocument, showReadOf } from "../../src/show/index.ts";
import { printed } from "./works.ts";
import { packetOrder } from "../packet-order.ts";

interface Packeted {
  readonly works: readonly {
    readonly title: string;
    readonly held?: { readonly way: string | null; readonly buffer: string };
  }[];
  readonly problems: readonly { readonly row: number; readonly column: string }[];
}

const designs: readonly (readonly [title: string, process: string, design: ComposeDocument])[] = [
  ["Pocketed", "Cyanotype", printed(5, 7)],
  ["Forbidden", "Drypoint", { ...printed(5, 7), held: { never: ["pockets", "strips", "paste"] } }],
  ["Hinged", "Linocut", { ...printed(5, 7), held: { never: ["pockets", "strips"], grammage: "90 gsm" } }],
  ["Unread", "Linocut", { ...printed(5, 7), held: { grammage: "thick" } }],
  [
    "Without a print",
    "",
    { unit: "in", window: { show: "typed", width: 5, height: 7 }, outer: { width: 8, height: 10 } },
  ],
];

const order = (works: typeof designs) =>
  packetOrder(
    showReadOf({
      format: "margent-show",
      version: 1,
      name: "Slack Water",
      works: works.map(([title, process, design]) => ({ title, process, design })),
    }),
    { seconds: 0.2 },
  );

test("[HO14] a packet tells how every work with a print is held, prints a sheet for it, and names what it cannot read", async () => {
  const made = await makePacket(order(designs));
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  const files = await filesByName(made.value.files);
  const packet = JSON.parse(new TextDecoder().decode(files.get("packet.json"))) as Packeted;
  expect(packet.works.map(({ title, held }) => [title, held === undefined ? "none" : held.way])).toEqual([
    ["Pocketed", "pockets"],
    ["Forbidden", null],
    ["Hinged", "T"],
    ["Unread", "none"],
    ["Without a print", "none"],
  ]);
  // All its papers say the way that was taken: the one that was asked would show.
  const taken = made.value.prepared.works.map(({ composition }) => composition.design.holding);
  expect(taken.slice(0, 3)).toEqual(["pockets", "pockets", "hinges"]);
  expect(packet.works[0]?.held?.buffer).toBe("unbuffered");
  expect(packet.problems).toEqual([expect.objectContaining({ row: 5, column: "held.grammage" })]);
  expect(files.get("mounting-sheets.pdf")?.length).toBeGreaterThan(10_000);
});

test("[HO14] without a print there is no mounting sheet", async () => {
  const made = await makePacket(order(designs.slice(4)));
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  expect([...(await filesByName(made.value.files)).keys()]).not.toContain("mounting-sheets.pdf");
});
