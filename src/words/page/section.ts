import { wholeWords } from "../figures.ts";
import { type Language, VOCABULARY } from "../vocabulary.ts";

/** Layers by the section, from the face down. */
export function layerName(kind: "mat" | "print" | "mount", board: string | null, language: Language): string {
  const { mat } = VOCABULARY[language];
  switch (kind) {
    case "mat":
      return board === null ? `window ${mat}` : `window, ${board}`;
    case "print":
      return "the print";
    case "mount":
      return board === null ? "mount board" : `mount, ${board}`;
  }
}
export const stackSays = "stack, face to back";
export const sectionTimes = (times: number, broken: boolean): string =>
  `face up, ${wholeWords(times)} times the scale of front and back${broken ? ", border broken off" : ""}`;
