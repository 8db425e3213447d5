/** What an act or a trouble brings up, in one file: it comes when it is wanted, or in a quiet moment before. */
export { BRING_IN } from "./bring-in.ts";
export { withPictures } from "./pictures.ts";
export { Strip } from "./strip.tsx";
export { LeftOut } from "./left-out.tsx";
export { BoardDialog } from "./work/board-dialog.tsx";
export { NameDialog } from "./work/name-dialog.tsx";
export { OuterDialog } from "./work/outer-dialog.tsx";
export { List } from "./works/list.tsx";
