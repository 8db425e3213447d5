export { benchSheetJob } from "./bench-sheets.ts";
export { isDay, localDay, noonOf } from "./days.ts";
export { filesByName, type PacketFile } from "./file.ts";
export { type PacketOrder, type PacketProblem, prepare } from "./order.ts";
export { partOf, type ReuseOfOne, reuseOfOne, reuseOfOneJson } from "./reuse-one.ts";
export { makePacket, type Packet, packeted, paperFile, planPacket } from "./packet.ts";
export { leftOutOf, paperPages, type Planned } from "./papers.ts";
export { composeWorks } from "./works.ts";
export { wallSheetJob } from "./hang.ts";
