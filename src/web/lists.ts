/** What reads a list and says what of it could not be read. Only who brings one in loads it. */
export { listToWorks, readTable } from "../show/lists/index.ts";
export { sayListProblem } from "../words/lists.ts";
