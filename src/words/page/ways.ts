/** The ways out that a check offers. `figure` is the value it sets. */
export const WAYS = {
  cover: (figure: string): string => `Cover ${figure}`,
  showLess: (figure: string): string => `Show ${figure} of paper there`,
  onlyImage: "Show the image alone",
  wholeSheet: "Show the whole sheet",
  smaller: (figure: string): string => `Make the window ${figure}`,
  larger: (figure: string): string => `Put it on ${figure}`,
  lower: (figure: string): string => `Raise it ${figure}`,
  middle: "Keep it in the middle",
  reveal: (figure: string): string => `Ask for ${figure}`,
  hinges: "Hold it with hinges",
  strips: "Hold it with edge strips",
  levelSheet: "Hang the sheet level",
  levelImage: "Hang the image level",
} as const;
