/** What the dialogs say. */

export const OUTER_DIALOG = {
  title: "Outer size",
  how: "How it is found",
  size: "A board [outerWidth]~×~[outerHeight].",
  ready: "Sizes that can be had ready made",
  list: "From which list",
  standard: "On which board",
  cut: "on a board cut to them",
  next: (list: string): string => `on the next of the ${list}`,
} as const;

export const boardDialog = (mat: number) =>
  ({
    name: "What it is called",
    sentence: `It is [boardThickness.${mat}] thick and cut at [bevel.${mat}] to its face.`,
    inUse: "Boards in this show",
  }) as const;

export const saidBoard = (board: string): string => `in ${board}`;

export const NAME_DIALOG = {
  title: "The work",
  titleOf: "Title",
  maker: "Made by",
  process: "Process",
  year: "Year",
  edition: "Number in its edition",
} as const;

export const LEFT_OUT = {
  title: "What could not be read",
  rest: "A row with a fault is left out whole; all others are brought in. Mend these in the list, and bring in the mended rows.",
} as const;
export const moreLeftOut = (count: number): string => `And ${count} more.`;

/** A work's own picture. */
export const PICTURE = {
  label: "Picture",
  add: "Take one from a file",
  other: "Take another from a file",
  takeOff: "Take the picture off",
  how: "It fills the image on the front, and is kept in this browser.",
  on: "a picture added",
  off: "the picture taken off",
  notOne: (name: string): string =>
    `“${name}” is no picture that this browser can read. A JPEG or PNG file is wanted.`,
  tooLarge: "That file is larger than 60 MB. A smaller picture is wanted.",
  notKept: "The picture was not kept: this browser keeps nothing more.",
} as const;
