/** The few words that stand on a back view. */
export const WORDS = {
  head: "HEAD",
  out: "OUT",
  atLeftHand: { side: "front’s right,", hand: "at your LEFT hand" },
  atRightHand: { side: "front’s left,", hand: "at your RIGHT hand" },
} as const;
