import { capital } from "./capital.ts";
import { wholeWords } from "../figures.ts";

/** What is said of papers that are made and of files that come in. */

export const paperComing = (paper: string): string => `${paper} is being made.`;
export const paperHere = (name: string): string => `${name} is made and saved with your downloads.`;
export const PAPERS = {
  benchSheet: "The bench sheet",
  packet: "The packet",
  offline:
    "It could not be made: Margent's server does not answer. The design stays here; try again when it runs.",
  refused: (status: number): string => `It could not be made: the server answered ${status}.`,
} as const;
export const paperRefused = (found: string, wanted: string): string =>
  `It could not be made: ${found === "" ? "" : `“${found}” stands where `}${wanted}${found === "" ? "" : " is wanted"}.`;

export const listBrought = (works: number, problems: number): string =>
  problems === 0
    ? `${capital(wholeWords(works))} ${works === 1 ? "work" : "works"} brought in.`
    : `${capital(wholeWords(works))} ${works === 1 ? "work" : "works"} brought in; ${wholeWords(problems)} ${problems === 1 ? "cell" : "cells"} could not be read.`;

export const FILES = {
  notAShow: "This file is not a show that Margent has saved.",
  noList: "This list could not be read.",
} as const;
