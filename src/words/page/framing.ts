import type { Seat } from "../../assembly/index.ts";
import { type Language, VOCABULARY } from "../vocabulary.ts";
import type { Options } from "./options.ts";

/** What is said of the frame of one work. */

export const FRAMING = {
  label: "Its frame",
  kind: "Framed in",
  seat: "How it stands in the frame",
  nothing: "nothing yet",
  checks: "What to look at in its frame",
} as const;

export const SEAT_OPTIONS: Options<Seat> = [
  { key: "foot", words: "on the foot rail" },
  { key: "shimmed", words: "shimmed at the foot" },
];

export const framedIn = (kind: string): string => `framed in ${kind}`;
export const seatSaid = (seat: Seat): string => SEAT_OPTIONS.find(({ key }) => key === seat)?.words ?? seat;

/** `under` as the brief says it, after what the frame is made of. */
export const underWords = (glazing: string | null): string =>
  glazing === null ? "without glazing" : `under ${glazing}`;

/** Sizes and weight of a framed work, and its stack against the rabbet; each figure set already. */
export function framedLine(
  said: {
    readonly outside: string;
    readonly mass: string;
    readonly stack: string;
    readonly rabbet: string | null;
    readonly left: string;
    readonly over: boolean;
  },
  language: Language,
): string {
  const word = VOCABULARY[language].rabbet;
  const depth =
    said.rabbet === null
      ? `the stack is ${said.stack}`
      : `the stack is ${said.stack}, the ${word} ${said.rabbet}: ${said.over ? `over by ${said.left}` : `${said.left} is left`}`;
  return `Outside ${said.outside}, ${said.mass}; ${depth}.`;
}
