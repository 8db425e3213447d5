/** What an act or a trouble brings up, in one file: it comes when it is wanted, or in a quiet moment before. */
export { bringInList, openCopy, openExample } from "./bring-in.ts";
export { printBenchSheet, printPacket, printPaper, saveCopy } from "./papers.ts";
export { Shows } from "./first/shows.tsx";
export { beginSending } from "./state/sending.ts";
export { Strip } from "./strip.tsx";
export { LeftOut } from "./left-out.tsx";
export { BoardDialog } from "./work/board-dialog.tsx";
export { NameDialog } from "./work/name-dialog.tsx";
export { OuterDialog } from "./work/outer-dialog.tsx";
export { List } from "./works/list.tsx";
