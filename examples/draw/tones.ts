/** The colours of each process: its paper, its ink, and what lies between. */
export const TONES = {
  relief: { paper: "#f1ebdd", ink: "#1c1c1f" },
  cyanotype: { paper: "#f3efe3", ink: "#143a66", deep: "#0c2748", pale: "#d9e5ee", mid: "#3f76a8" },
  platinum: { paper: "#f2ecdf", ink: "#3a342d", mid: "#857b6c", pale: "#d9cfbd" },
  silver: { paper: "#f4f2ec", ink: "#151516", mid: "#6b6a69", pale: "#dddcd8" },
  etching: { paper: "#f3ecda", ink: "#33291f", plate: "#ece2c9", mid: "#8d7d63" },
  mezzotint: { paper: "#f2ecdf", ink: "#17140f", mid: "#4a443b", pale: "#cfc4ae" },
  monotype: { paper: "#f1ede3", ink: "#2f3436", mid: "#7d8486", pale: "#cfd0cb" },
} as const;
