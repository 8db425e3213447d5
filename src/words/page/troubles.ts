/** What stands between a window and what is kept. */
export const TROUBLES = {
  saveRecord: "Save its text as a file",
  leaveIt: "Leave it",
  keepMine: "Keep mine",
  takeTheirs: "Take theirs",
  word: "Two hands on one word. Another window has changed it meanwhile.",
  theySay: "It says",
  youSay: "you say",
  show: "Two hands on one show. Another window kept it without knowing of your last change.",
  gone: "Another window has taken this work off the table.",
  outside: "This show lies in this browser only, and not yet in the studio.",
  refused: "Not kept: this browser keeps nothing more. Save a copy before you close the page.",
  damaged: (problem: string | undefined): string =>
    `The show kept in this browser was not opened, for it is damaged. ${problem ?? ""} It is left as it is.`,
  unread: (found: string): string =>
    `The show kept in this browser was not opened: it was written by another version (${found}). It is left as it is.`,
} as const;
