import { packetStops } from "../../src/cli/packet-stops.ts";
import { leftOffWalls, wallsJson } from "../../src/packet/hang.ts";
import {
  filesByName,
  makePacket,
  type PacketOrder,
  type PacketProblem,
  prepare,
} from "../../src/packet/index.ts";
import { type ShowDocument, showDocument, showReadOf, validate } from "../../src/show/index.ts";
import { packetOrder } from "../packet-order.ts";

export type WallShow = Pick<ShowDocument, "practice" | "walls" | "works">;

interface LengthOut {
  readonly mm: number;
  readonly text: string;
}

export interface WallOut {
  readonly rows: readonly number[];
  readonly works: readonly {
    readonly title: string;
    readonly frame: Readonly<Record<"x" | "y" | "width" | "height", LengthOut>>;
    readonly hooks: readonly Readonly<Record<"x" | "bear" | "nail", LengthOut>>[];
    readonly loads: Readonly<Record<string, { readonly N: number; readonly kgf: number }>> | null;
  }[];
}

interface WallsOut {
  readonly hang?: Readonly<Record<string, WallOut>>;
}

const orderOf = (show: WallShow): PacketOrder => {
  const read = validate(showDocument, { format: "margent-show", version: 1, name: "Slack Water", ...show });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return packetOrder(showReadOf(read.value));
};

/** The walls of a packet, as `packet.json` and its messages have them, without its papers. */
export function wallsOf(show: WallShow): {
  readonly hang: Readonly<Record<string, WallOut>>;
  readonly leftOut: readonly string[];
  readonly problems: readonly PacketProblem[];
  readonly stops: readonly string[];
} {
  const read = prepare(orderOf(show));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { walls, works, problems } = read.value;
  const json = wallsJson(walls, works) as WallsOut;
  const packet = { prepared: read.value, boards: [], frames: [], quoted: null, leftOut: [] };
  return { hang: json.hang ?? {}, leftOut: leftOffWalls(walls), problems, stops: packetStops(packet) };
}

/** A whole packet: its files' names, its JSON, and what it says it leaves out. */
export async function packetOf(show: WallShow): Promise<{
  readonly files: readonly string[];
  readonly json: WallsOut;
  readonly leftOut: readonly string[];
}> {
  const made = await makePacket(orderOf(show));
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  const files = await filesByName(made.value.files);
  return {
    files: [...files.keys()],
    json: JSON.parse(new TextDecoder().decode(files.get("packet.json"))) as WallsOut,
    leftOut: made.value.leftOut,
  };
}
